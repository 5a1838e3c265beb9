import { plainNumber, takeWeightUnit } from "./amounts";
import type { Draft } from "./draft";
import { takeLadder } from "./ladder";
import { takeLoad } from "./load";
import { stateLadder, takeWork } from "./one-set";
import type { Reader } from "./reader";
import { plus, REP_WORDS, SET_WORDS, stateSets, takeRange } from "./reps";

/** The third factor of 4 x 10 x 25 kg is the load. */
function thirdFactor(reader: Reader, draft: Draft): void {
  if (reader.peek().text !== "x") return;
  const from = reader.at;
  const sets = reader.sees(() => reader.take("x") && plainNumber(reader) !== null && reader.take(...SET_WORDS));
  if (sets) return;
  reader.at++;
  const load = takeLoad(reader);
  if (!load) {
    reader.at++;
    reader.refuse("A third factor is the load and needs a unit, such as 4 x 10 x 25 kg", from);
  }
  draft.state(reader, from, "load", load);
}

const missing = (reader: Reader, from: number): never => reader.refuse(`Rep count missing after "${reader.since(from)}"`, from);

/** "3 x 8", "three by eight". */
function timesScheme(reader: Reader, draft: Draft): boolean {
  const from = reader.at;
  const sets = reader.attempt(() => {
    const value = plainNumber(reader);
    if (value === null) return null;
    if (reader.take("x", "times")) return value;
    reader.take("-");
    if (!reader.take("by")) return null;
    reader.take("-");
    return value;
  });
  if (sets === null) return false;
  if (draft.hasWork && draft.scheme.sets !== undefined) reader.refuse("Several schemes in one line: write one a line", from);
  if (draft.scheme.emomMinutes !== undefined) reader.refuse("An EMOM has reps a minute and no sets", from);
  stateSets(reader, draft, from, sets);
  if (!takeWork(reader, draft)) missing(reader, from);
  thirdFactor(reader, draft);
  return true;
}

/** "3 sets of 8", "three rounds", "a set of 20", "sets: 3". */
function namedScheme(reader: Reader, draft: Draft): boolean {
  const from = reader.at;
  const sets = reader.attempt(() => {
    const labelled = reader.peek().text === "sets" || reader.peek().text === "rounds";
    if (labelled) {
      reader.at++;
      return reader.take(":", "=") ? plainNumber(reader) : null;
    }
    const value = reader.peek().text === "a" ? (reader.at++, 1) : plainNumber(reader);
    if (value === null) return null;
    reader.take("-");
    reader.take("working", "work", "straight", "hard", "total", "more");
    return reader.take(...SET_WORDS) ? value : null;
  });
  if (sets === null) {
    if (reader.peek().text === "sets" && !draft.hasWork) {
      reader.at++;
      if (draft.scheme.sets === undefined) reader.refuse("Set count missing before \"sets\"", from);
    }
    reader.at = from;
    return false;
  }
  if (draft.scheme.emomMinutes !== undefined) reader.refuse("An EMOM has reps a minute and no sets", from);
  if (draft.scheme.reps !== undefined && draft.scheme.sets === sets) return true;
  stateSets(reader, draft, from, sets);
  const linked = reader.take("of", "x", "by");
  if (draft.hasWork) {
    if (linked) reader.refuse("The work is stated twice: write one scheme a line", from);
    return true;
  }
  const punctuated = reader.peek().text;
  if (linked || !["@", ",", ":", "with"].includes(punctuated)) {
    if (takeWork(reader, draft)) thirdFactor(reader, draft);
    else if (linked) missing(reader, from);
  }
  return true;
}

/** "ladder 5/4/3", "10-8-6 ladder", a bare ladder. */
function ladder(reader: Reader, draft: Draft): boolean {
  const from = reader.at;
  const word = (): boolean => reader.attempt(() => {
    reader.take("descending", "ascending", "rep", "reps", "reverse", "down", "up");
    return reader.take("ladder", "pyramid") || null;
  }) === true;
  if (word()) {
    while (reader.take(":", "of", "-", ",", "x", "reps")) continue;
    const rungs = takeLadder(reader, true);
    if (!rungs) {
      reader.at++;
      reader.refuse("The rungs of the ladder are missing: write them as 10/8/6", from);
    }
    stateLadder(reader, draft, from, rungs);
    reader.take(...REP_WORDS);
    return true;
  }
  const named = reader.attempt(() => {
    const rungs = takeLadder(reader, true);
    reader.take(...REP_WORDS);
    return rungs && word() ? rungs : null;
  });
  const rungs = named ?? takeLadder(reader, false);
  if (!rungs) return false;
  if (draft.hasWork) reader.refuse("Several schemes in one line: write one a line", from);
  stateLadder(reader, draft, from, rungs);
  reader.take(...REP_WORDS);
  return true;
}

/** "10 reps", "reps: 8-10"; a bare number where sets or EMOM minutes wait for their reps. */
function repsAlone(reader: Reader, draft: Draft): boolean {
  return reader.attempt(() => {
    const from = reader.at;
    const labelled = reader.take("reps") && reader.take(":", "=");
    if (!labelled) reader.at = from;
    const range = takeRange(reader);
    if (!range) return null;
    const marked = reader.sees(() => (reader.take("+"), reader.take(...REP_WORDS)));
    const awaited = !draft.hasWork && (draft.scheme.sets !== undefined || draft.scheme.emomMinutes !== undefined) && !["@", "at", "with"].includes(reader.lead);
    if (!labelled && !marked && !awaited) return null;
    if (!marked && reader.peek().text === "x") return null;
    draft.work(reader, from, { repsMin: range.min, repsMax: range.max });
    plus(reader, draft);
    reader.take(...REP_WORDS);
    return true;
  }) === true;
}

/** "x 3" after "30 s" or "10 reps": the sets come last. */
function trailingSets(reader: Reader, draft: Draft): boolean {
  if (!draft.hasWork || draft.scheme.sets !== undefined || draft.scheme.emomMinutes !== undefined) return false;
  return reader.attempt(() => {
    const from = reader.at;
    if (!reader.take("x")) return null;
    const sets = plainNumber(reader);
    if (sets === null || takeWeightUnit(reader)) return null;
    reader.take(...SET_WORDS);
    stateSets(reader, draft, from, sets);
    return true;
  }) === true;
}

/** "8-10 x 3 sets": a range cannot count sets, and the other number says that it does. */
function repsFirst(reader: Reader, draft: Draft): boolean {
  if (draft.hasWork || draft.scheme.sets !== undefined) return false;
  return reader.attempt(() => {
    const from = reader.at;
    const ranged = reader.sees(() => plainNumber(reader) !== null && reader.take("-", "to") && plainNumber(reader) !== null && reader.take("x", "for", ","));
    const range = ranged ? takeRange(reader) : null;
    if (!range || !reader.take("x", "for", ",")) return null;
    const sets = plainNumber(reader);
    if (sets === null || !reader.take(...SET_WORDS)) return null;
    draft.work(reader, from, { repsMin: range.min, repsMax: range.max });
    stateSets(reader, draft, from, sets);
    return true;
  }) === true;
}

/** Refuses "3-4 x 8" and "3 to 4 sets" with their own sentence. */
function refuseSetRange(reader: Reader): void {
  const range = reader.sees(() =>
    plainNumber(reader) !== null && reader.take("-", "to", "or") && plainNumber(reader) !== null && reader.take("x", "by", ...SET_WORDS));
  if (!range) return;
  reader.at += 3;
  reader.refuse("A range of sets cannot be planned: write one number", reader.at - 3);
}

/** How sets and the work in them are put together: "3 x 8", "3 sets of 8", "10 reps x 3", a ladder. */
export function work(reader: Reader, draft: Draft): boolean {
  if (repsFirst(reader, draft)) return true;
  if (!draft.hasWork && draft.scheme.sets === undefined) refuseSetRange(reader);
  // "60 kg x 3 x 5": the load stands first and the x only joins
  if (reader.peek().text === "x" && draft.scheme.load && !draft.hasWork) reader.at++;
  return ladder(reader, draft) || timesScheme(reader, draft) || namedScheme(reader, draft) || repsAlone(reader, draft) || trailingSets(reader, draft);
}
