import { plainNumber, takeCount } from "./amounts";
import type { Draft } from "./draft";
import type { Reader } from "./reader";

/** Refuses "RPE 7-8": one figure each. */
function refuseRange(reader: Reader, from: number, what: string): void {
  const between = reader.peek().text;
  if ((between === "-" || between === "to" || between === "/") && reader.peek(1).kind === "number" && (between !== "-" || !reader.peek().spaced)) {
    reader.at += 2;
    reader.refuse(`A range of ${what} cannot be planned: write one`, from);
  }
}

function stateRpe(reader: Reader, draft: Draft, from: number, value: number): true {
  if (value < 1 || value > 10) reader.refuse(`RPE goes from 1 to 10, not ${value}`, from);
  draft.state(reader, from, "rpe", value);
  return true;
}

function stateRir(reader: Reader, draft: Draft, from: number, value: number): true {
  // more than twenty reps left is a mistyped figure, not an effort
  if (value > 20) reader.refuse(`${value} reps in reserve is no effort anyone can judge`, from);
  draft.state(reader, from, "rir", value);
  return true;
}

/** "RPE 8", "RPE8", "RIR: 2". */
function scaleFirst(reader: Reader, draft: Draft): boolean {
  const from = reader.at;
  reader.take("a", "an");
  const scale = reader.take("rpe") ? "RPE" : reader.take("rir") ? "RIR" : null;
  if (!scale) {
    reader.at = from;
    return false;
  }
  while (reader.take(":", "=", "of", "at", "@", "is")) continue;
  if (reader.peek().text === "-" && (!reader.peek().spaced || reader.peek(1).spaced) && scale === "RPE") reader.at++;
  if (reader.peek().text === "-") {
    reader.at += 2;
    reader.refuse(`${scale} cannot be negative`, from);
  }
  const value = plainNumber(reader);
  if (value === null) return reader.refuse(`Number missing after "${scale}"`, from);
  if (scale === "RPE" && reader.peek(1).value === 10) void (reader.phrase("/ 10") || reader.phrase("of ten|10"));
  refuseRange(reader, from, scale === "RPE" ? "RPEs" : "reps in reserve");
  return scale === "RPE" ? stateRpe(reader, draft, from, value) : stateRir(reader, draft, from, value);
}

/** The reps left, in words, after their number: "in reserve", "left in the tank", "short of failure". */
function reserve(reader: Reader): boolean {
  return reader.attempt(() => {
    reader.take("-");
    reader.take("more", "good", "clean");
    reader.take("rep", "reps", "repetition", "repetitions");
    reader.take("left", "still", "kept");
    return reader.phrase("in the? reserve") || reader.phrase("in the tank") ||
      reader.phrase("short|shy|away|off of|from? failure") || reader.phrase("before|from failure") || null;
  }) === true;
}

/** "8 RPE", "2 RIR", "leaving two in the tank", "one short of failure". */
function numberFirst(reader: Reader, draft: Draft): boolean {
  return reader.attempt(() => {
    const from = reader.at;
    const verb = reader.take("leaving", "leave", "leaves", "keeping", "keep", "saving", "save", "stop", "stopping", "holding", "have", "having");
    if (reader.take("nothing", "none")) {
      reader.take("left");
      return reader.phrase("in the tank") || reader.phrase("in reserve") ? stateRir(reader, draft, from, 0) : null;
    }
    const low = reader.at;
    const value = reader.take("no") ? 0 : takeCount(reader);
    if (value === null) return null;
    const between = reader.peek().text;
    const ranged = (between === "-" || between === "to" || between === "or") && reader.peek(1).kind === "number";
    const end = ranged ? reader.at + 2 : reader.at;
    reader.at = end;
    const scale = !verb && reader.take("rpe") ? "RPE" : reader.take("rir") || reserve(reader) || (verb && reader.take("left")) ? "RIR" : null;
    if (!scale) return null;
    // "3 x 8-2 RIR" would be a slip; "1-2 RIR" is a range, and neither can be planned
    if (ranged) reader.refuse(scale === "RPE" ? "A range of RPEs cannot be planned: write one" : "A range of reps in reserve cannot be planned: write one", low);
    return scale === "RPE" ? stateRpe(reader, draft, from, value) : stateRir(reader, draft, from, value);
  }) === true;
}

/** RPE and reps in reserve. */
export function effort(reader: Reader, draft: Draft): boolean {
  return scaleFirst(reader, draft) || numberFirst(reader, draft);
}

/**
 * Do an RPE and reps in reserve that stand in one line say the same?
 * RIR = 10 - RPE, half a rep either way; RPE 5 and 6 are a band of four to six reps, and below that none is defined.
 * @source Zourdos et al., J Strength Cond Res 30(1):267-275, 2016
 */
export function effortsAgree(rpe: number, rir: number): boolean {
  return rpe > 6 ? Math.abs(10 - rpe - rir) <= 0.5 : rir >= 4;
}
