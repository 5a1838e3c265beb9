import type { Tempo } from "../types";
import { plainNumber, takeSecondUnit } from "./amounts";
import type { Draft } from "./draft";
import type { Reader } from "./reader";

/** The longest phase that is still a phase of a rep and not a slip. Seconds. */
export const LONGEST_PHASE = 60;

/** The phases of a tempo in the order of its figures. */
export const PHASES = ["the lowering", "the pause at the bottom", "the lifting", "the pause at the top"] as const;

const LOWERING = ["negative", "negatives", "eccentric", "eccentrics", "ecc", "lowering", "lower", "down", "descent", "descend"];
const LIFTING = ["concentric", "concentrics", "lifting", "lift", "up", "ascent"];
const PAUSES = ["pause", "pauses", "paused", "pausing", "stop"];

/** The end of the range a pause is at: 1 the bottom, 3 the top. */
function place(reader: Reader): 1 | 3 | null {
  return reader.attempt(() => {
    reader.take("at", "in", "on");
    reader.take("the");
    if (reader.take("bottom", "hole", "chest", "stretch")) return 1;
    return reader.take("top", "peak", "lockout") ? 3 : null;
  });
}

/** "on the way down", "to lower", "lowering phase", "up": 0 or 2. */
function movement(reader: Reader): 0 | 2 | null {
  return reader.attempt(() => {
    const led = reader.phrase("on the way") || reader.phrase("to") || reader.phrase("on the") || reader.phrase("on");
    const index = reader.take(...LOWERING) ? 0 : reader.take(...LIFTING) ? 2 : null;
    if (index === null) return null;
    if (!led) reader.take("phase", "phases", "portion", "reps", "rep");
    else reader.take("phase", "portion");
    return index;
  });
}

/** A pause or squeeze with where it is; "hold" says too little without a place. */
function still(reader: Reader): 1 | 3 | null {
  return reader.attempt(() => {
    const before = reader.take("bottom") ? 1 : reader.take("top") ? 3 : null;
    const kind = reader.take(...PAUSES) ? "pause" : reader.take("squeeze", "squeezes") ? "squeeze" : reader.take("hold", "holds", "held") ? "hold" : null;
    if (kind === null) return null;
    if (kind === "pause") reader.take("rep", "reps");
    const where = place(reader) ?? before;
    return where ?? (kind === "pause" ? 1 : kind === "squeeze" ? 3 : null);
  });
}

/** The seconds of a phase; down and up may go without the unit ("3 down, 1 up"). */
function phaseSeconds(reader: Reader, needUnit: boolean): number | null {
  return reader.attempt(() => {
    const value = reader.take("a", "an") ? (plainNumber(reader) ?? 1) : plainNumber(reader);
    if (value === null) return null;
    const unit = takeSecondUnit(reader) || reader.attempt(() => {
      reader.take("-");
      return reader.take("count", "counts", "beat", "beats") || null;
    }) === true;
    if (!unit && needUnit) return null;
    return value;
  });
}

/** A length of a phase first ("four-second negative", "3 s pause at the bottom", "3 down"), or the phase first ("negative of 4 s"). */
function onePhase(reader: Reader): { index: 0 | 1 | 2 | 3; value: number | "X" } | null {
  const rest = ["explosive", "explosively", "explode", "fast"];
  const quick = reader.attempt(() => (reader.take(...rest) && movement(reader) === 2 ? true : null));
  if (quick) return { index: 2, value: "X" };
  const lengthFirst = reader.attempt(() => {
    reader.take("a", "an", "take", "taking");
    reader.take("slow", "controlled");
    const bare = reader.sees(() => phaseSeconds(reader, true) === null);
    const value = phaseSeconds(reader, false);
    if (value === null) return null;
    if (!bare) reader.take("of", "slow", "controlled");
    else reader.take("-");
    const index = movement(reader) ?? (bare ? null : (still(reader) ?? place(reader)));
    return index === null ? null : { index, value };
  });
  if (lengthFirst) return lengthFirst;
  return reader.attempt(() => {
    reader.take("a", "an");
    const from = reader.at;
    const moving = movement(reader);
    const index = moving ?? still(reader);
    if (index === null) {
      // "hold 2 s at the top"
      if (!reader.take("hold", "squeeze")) return null;
      reader.take("for", "of", ":");
      const held = phaseSeconds(reader, true);
      const where = held === null ? null : place(reader);
      return held === null || where === null ? null : { index: where, value: held };
    }
    reader.take("for", "of", "over", "in", ":");
    const value = phaseSeconds(reader, true);
    const where = value !== null && moving === null ? place(reader) : null;
    if (value === null) {
      if (moving !== null || ["for", "of", "over", "in", ":"].includes(reader.tokens[reader.at - 1]?.text ?? "")) {
        reader.at = from;
        return null;
      }
      return { index, value: 1 };
    }
    return { index: where ?? index, value };
  });
}

/** One phase of the tempo in words; several may follow each other if they are different phases. */
export function phase(reader: Reader, draft: Draft): boolean {
  const from = reader.at;
  const found = reader.attempt(() => onePhase(reader));
  if (!found) return false;
  const { index, value } = found;
  if (value !== "X" && (value <= 0 || value > LONGEST_PHASE)) reader.refuse(`A phase of a tempo lasts from a moment to ${LONGEST_PHASE} seconds`, from);
  const known = draft.scheme.tempo ?? [null, null, null, null];
  if (known[index] !== null) reader.refuse(`${PHASES[index].replace(/^t/, "T")} is stated twice`, from);
  const next: (number | "X" | null)[] = [...known];
  next[index] = value;
  draft.scheme.tempo = next as unknown as Tempo;
  void (reader.phrase("on|of each|every rep|repetition") || reader.phrase("each|every|per rep|repetition"));
  return true;
}
