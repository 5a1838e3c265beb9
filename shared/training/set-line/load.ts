import type { Scheme } from "../types";
import { plainNumber, takeDuration, takeWeightUnit } from "./amounts";
import type { Draft } from "./draft";
import type { Reader } from "./reader";

type Load = NonNullable<Scheme["load"]>;

/** Nobody lifts a tonne; a load above this is a slip. */
const HEAVIEST = 1000;
/** A set above 120 % of the most that can be lifted once is impossible. */
const HIGHEST_PERCENT = 120;

const IMPLEMENTS = ["dumbbells", "dbs", "kettlebells", "kbs", "bells"];
const IMPLEMENT = ["dumbbell", "db", "kettlebell", "kb", "bell", "barbell", "bar", "plate", "sandbag", "vest"];
const COLOURS = [
  "red", "green", "blue", "black", "yellow", "purple", "orange", "grey", "gray", "pink", "white", "silver", "gold", "teal", "brown",
  "violet", "turquoise", "navy", "lilac", "beige",
];
const STRENGTHS = [
  "light", "medium", "heavy", "strong", "thick", "thin", "extra", "mini", "loop", "long", "short", "wide", "narrow", "resistance", "hip", "easy",
  "hard", "single", "tube", "pull", "stiff", "soft", "dark", "lighter", "heavier", "lightest", "heaviest", "elastic", "power", "closed",
];

/** A weight that somebody lifts, in either unit; `from` is the token to blame. */
function weight(reader: Reader, from: number, value: number): number {
  if (value <= 0) reader.refuse("A load is more than zero", from);
  if (value > HEAVIEST) reader.refuse(`A load of ${value} is more than anyone lifts`, from);
  return value;
}

/** "per hand", "in each hand", "/hand". */
export function perHand(reader: Reader): boolean {
  return reader.attempt(() => {
    reader.take("in", "for");
    return reader.take("per", "each", "/", "a", "ea", "every") && reader.take("hand", "hands", "dumbbell", "db", "kettlebell", "kb", "bell", "implement") ? true : null;
  }) === true;
}

/** Which hand or bell a weight is for; "each" straight after a weight is each implement. */
function hands(reader: Reader): boolean {
  const noun = reader.take(...IMPLEMENTS);
  if (!noun) reader.take(...IMPLEMENT);
  if (perHand(reader)) return true;
  const sides = ["side", "leg", "arm", "foot", "hip", "knee", "set", "rep", "way", "shoulder", "direction"];
  const each = (reader.peek().text === "each" || reader.peek().text === "ea" || reader.peek().text === "apiece") && !sides.includes(reader.peek(1).text);
  if (each) reader.at++;
  return each || noun;
}

function withHands(load: Load, each: boolean): Load {
  return each ? { ...load, perHand: true } : load;
}

/** "80%", "80 % of 1RM", "ninety percent". */
function percent(reader: Reader): Load | null {
  return reader.attempt(() => {
    const from = reader.at;
    const value = plainNumber(reader);
    if (value === null || !(reader.take("%", "percent", "pct") || reader.phrase("per cent"))) return null;
    reader.attempt(() => {
      reader.take("of");
      reader.take("your", "the");
      if (reader.peek().text === "1" || reader.peek().text === "one") {
        reader.at++;
        reader.take("-");
        return reader.take("rm") || reader.phrase("rep -? max") || null;
      }
      return reader.take("max", "1rm") || null;
    });
    if (value <= 0 || value > HIGHEST_PERCENT) reader.refuse(`A percentage of the one-rep max lies above 0 and at most at ${HIGHEST_PERCENT}, not ${value}`, from);
    return { value, unit: "%1RM" };
  });
}

/** "BW", "bodyweight + 10 kg", "BW-10kg". */
function bodyweight(reader: Reader): Load | null {
  const from = reader.at;
  const assisted = reader.take("assisted") && (reader.take(":", ",") || true);
  reader.take("own", "your");
  if (!(reader.take("bw", "bodyweight") || reader.phrase("body -? weight"))) {
    reader.at = from;
    return null;
  }
  reader.take("only");
  const sign = reader.peek().text;
  const plus = sign === "+" || sign === "plus";
  const minus = sign === "-" || sign === "minus" || sign === "less";
  if ((plus || minus) && reader.peek(1).kind === "number" && !(sign === "-" && reader.peek(1).spaced && reader.peek().spaced && !seesWeight(reader))) {
    reader.at++;
    const value = plainNumber(reader) ?? 0;
    const unit = takeWeightUnit(reader);
    if (!unit) reader.refuse("Say kg or lb after the weight added to bodyweight", from);
    if (assisted && !minus) reader.refuse("Assisted takes weight off: write BW - 10 kg", from);
    if (minus) reader.phrase(",|(? assisted|assistance|assist");
    return { value: minus ? -weight(reader, from, value) : weight(reader, from, value), unit: `bodyweight+${unit}` };
  }
  if (plus) {
    reader.at++;
    reader.refuse(`Weight missing after "${reader.since(from)}"`, from);
  }
  if (assisted) reader.refuse("How much help? Write BW - 10 kg", from);
  return { value: null, unit: "bodyweight" };
}

/** "assisted 15 kg", "15 kg assisted", "15 kg of assistance": help is weight taken off bodyweight. */
function assistance(reader: Reader): Load | null {
  const HELP = ["assisted", "assistance", "assist"];
  return reader.attempt(() => {
    const from = reader.at;
    const first = reader.take(...HELP);
    if (first) reader.take(":", "by", "with", "of");
    const banded = first ? band(reader) : null;
    if (banded) return banded;
    const value = plainNumber(reader);
    if (first && value === null) reader.refuse("How much help? Write BW - 10 kg", from);
    const unit = value === null ? null : takeWeightUnit(reader);
    if (value === null || unit === null) return null;
    if (!first) {
      reader.take("of");
      if (!reader.take(...HELP)) return null;
    }
    return { value: -weight(reader, from, value), unit: `bodyweight+${unit}` };
  });
}

/** After a dash: is it a weight (an assisted BW - 10 kg) or something else (BW - 60 s)? */
function seesWeight(reader: Reader): boolean {
  return reader.sees(() => {
    reader.at += 2;
    return takeWeightUnit(reader) !== null;
  });
}

/** "red band", "with a light resistance band": colour and strength are not kept. */
function band(reader: Reader): Load | null {
  return reader.attempt(() => {
    reader.take("a", "the");
    while (reader.take(...COLOURS, ...STRENGTHS) || (["-", "/"].includes(reader.peek().text) && !reader.peek().spaced && reader.take("-", "/"))) continue;
    if (!reader.take("band", "bands", "banded") && !reader.phrase("mini -? band|bands")) return null;
    void reader.phrase("-? assisted|assistance|assist");
    return { value: null, unit: "band" };
  });
}

/** "2x24kg", "pair of 24s", "two 24 kg dumbbells": the weight of one. */
function pair(reader: Reader): Load | null {
  return reader.attempt(() => {
    const from = reader.at;
    reader.take("a");
    const named = reader.take("pair", "pairs", "double", "doubles");
    if (named) {
      reader.take("of");
      reader.take("dumbbells", "kettlebells", "dbs", "kbs");
      reader.take("of", ":");
    } else {
      const count = plainNumber(reader);
      if (count === null) return null;
      const times = reader.take("x");
      if (!times && !reader.peek().spaced) return null;
      if (count !== 2) return null;
    }
    const plural = reader.lead === "@" || reader.lead === "at" || named;
    const value = plainNumber(reader);
    if (value === null) return null;
    const unit = takeWeightUnit(reader);
    if (!unit && !(plural && reader.peek().text === "s" && !reader.peek().spaced && reader.take("s"))) return null;
    hands(reader);
    return { value: weight(reader, from, value), unit: unit ?? "kg", perHand: true };
  });
}

/** "@ 24s": the bells are named by their weight, two of them. */
function plural(reader: Reader): Load | null {
  if (reader.lead !== "@" && reader.lead !== "at") return null;
  return reader.attempt(() => {
    const from = reader.at;
    reader.take("the");
    const value = plainNumber(reader);
    if (value === null || reader.peek().text !== "s" || reader.peek().spaced) return null;
    reader.at++;
    hands(reader);
    return { value: weight(reader, from, value), unit: "kg", perHand: true };
  });
}

/** "40 kg", "185#", "27,5kg per hand". */
function plain(reader: Reader): Load | null {
  return reader.attempt(() => {
    const from = reader.at;
    const value = plainNumber(reader);
    if (value === null) return null;
    const unit = takeWeightUnit(reader);
    if (!unit) return null;
    return withHands({ value: weight(reader, from, value), unit }, hands(reader));
  });
}

/** Refuses "40-45 kg" and "70 to 75 %": one load a line. */
function refuseRange(reader: Reader): void {
  const between = reader.peek(1);
  if (reader.peek().kind !== "number" || !["-", "to", "/"].includes(between.text) || reader.peek(2).kind !== "number") return;
  const ranged = reader.sees(() => {
    reader.at += 2;
    return (plain(reader) ?? percent(reader)) !== null;
  });
  const apart = between.text === "-" && between.spaced && reader.peek(2).spaced;
  if (ranged && !apart && reader.lead !== "") {
    reader.at += 3;
    reader.refuse("A range of loads cannot be planned: write one", reader.at - 3);
  }
}

/** The next load, or null. */
export function takeLoad(reader: Reader): Load | null {
  refuseRange(reader);
  return bodyweight(reader) ?? assistance(reader) ?? band(reader) ?? pair(reader) ?? plural(reader) ?? percent(reader) ?? plain(reader);
}

/** A load anywhere in the line, or the hand it is for. */
export function load(reader: Reader, draft: Draft): boolean {
  const from = reader.at;
  if (reader.sees(() => reader.take("load", "weight", "loading"))) {
    reader.at++;
    reader.take(":", "=", "of", "is");
    if (reader.lead === "") reader.lead = "@";
  }
  const found = takeLoad(reader);
  if (found) {
    if ((reader.lead === "+" || reader.lead === "plus") && found.unit !== "band" && found.unit !== "bodyweight") {
      reader.refuse(`"${reader.since(from)}" is added to what? Write BW + for a weight added to bodyweight`, from);
    }
    draft.state(reader, from, "load", found);
    return true;
  }
  reader.at = from;
  if (takeWeightUnit(reader) ?? (reader.take("%", "percent") ? "%" : null)) reader.refuse(`Number missing before "${reader.since(from)}"`, from);
  if (perHand(reader)) {
    draft.perHand = true;
    return true;
  }
  // "24s in hand" and the like were read with their load; a lone 20 s after @ is a time
  if ((reader.lead === "@" || reader.lead === "at") && takeDuration(reader) !== null) reader.refuse(`"${reader.since(from)}" after ${reader.lead} is neither a load nor an effort`, from);
  reader.at = from;
  return false;
}
