import { refuseAmountRange, takeDistance, takeDuration } from "./amounts";
import { amrapTime, takeAmrap } from "./amrap";
import type { Draft } from "./draft";
import { commaLadder, takeLadder } from "./ladder";
import type { Reader } from "./reader";
import { plus, REP_WORDS, takeRange } from "./reps";

/** States a ladder: its reps, and as many sets as it has rungs. */
export function stateLadder(reader: Reader, draft: Draft, from: number, rungs: readonly number[]): void {
  draft.work(reader, from, { reps: rungs });
  const { sets } = draft.scheme;
  if (sets !== undefined && sets !== rungs.length) reader.refuse(`${sets} sets are stated, but the ladder has ${rungs.length} rungs`, from);
  if (sets === undefined) draft.scheme.sets = rungs.length;
  plus(reader, draft);
}

/** What one set consists of: reps, a range, a ladder, a time, a distance, AMRAP. */
export function takeWork(reader: Reader, draft: Draft): boolean {
  const from = reader.at;
  if (reader.take("hold", "holds")) reader.take("of", "for");
  const kind = takeAmrap(reader);
  if (kind) {
    if (draft.amrap !== null) reader.refuse("AMRAP is stated twice", from);
    draft.amrap = kind;
    amrapTime(reader, draft, kind);
    return true;
  }
  const rungs = takeLadder(reader, false) ?? commaLadder(reader, draft);
  if (rungs) {
    stateLadder(reader, draft, from, rungs);
    reader.take(...REP_WORDS);
    return true;
  }
  const meters = takeDistance(reader, true);
  if (meters !== null) {
    refuseAmountRange(reader, from);
    if (meters <= 0) reader.refuse("A distance is more than zero", from);
    draft.work(reader, from, { meters });
    return true;
  }
  const length = takeDuration(reader);
  if (length) {
    refuseAmountRange(reader, from);
    if (length.seconds <= 0) reader.refuse("A working time is more than zero", from);
    draft.work(reader, from, { seconds: length.seconds });
    reader.take("-");
    reader.take("isometric", "iso", "static");
    reader.take("hold", "holds", "on", "work");
    if (!reader.take("amrap")) return true;
    draft.amrap = "open";
    return true;
  }
  const range = takeRange(reader);
  if (!range) {
    reader.at = from;
    return false;
  }
  draft.work(reader, from, { repsMin: range.min, repsMax: range.max });
  plus(reader, draft);
  reader.take(...REP_WORDS);
  return true;
}
