import { plainNumber, seesUnit, takeScale, takeSecondUnit } from "./amounts";
import type { Draft } from "./draft";
import type { Reader } from "./reader";

/** Words that name reps, and words that name sets. */
export const REP_WORDS = ["reps", "rep", "repetitions", "repetition"];
export const SET_WORDS = ["sets", "set", "rounds", "round", "trips", "lengths", "intervals", "holds", "carries"];
/** A mistyped "3 x 1000" is caught here rather than planned. */
const MOST_REPS = 1000;

/** The number of reps of a set, refused unless it is whole and a set holds it; `from` is the token to blame. */
export function wholeReps(reader: Reader, from: number, value: number): number {
  if (!Number.isInteger(value)) reader.refuse(`The number of reps is whole, not ${value}`, from);
  if (value < 1) reader.refuse("There is at least one rep", from);
  if (value > MOST_REPS) reader.refuse(`${value} reps are more than a set holds`, from);
  return value;
}

export interface Range {
  readonly min: number;
  readonly max: number;
}

/** "8", "8-10", "8 to 10"; a number with a unit is not reps. A dash set apart before a unit parts two statements. */
export function takeRange(reader: Reader): Range | null {
  return reader.attempt(() => {
    const from = reader.at;
    const low = plainNumber(reader);
    if (low === null) return null;
    if (seesUnit(reader)) return null;
    const dash = reader.peek();
    const high = reader.attempt(() => {
      if (!reader.take("-", "to")) return null;
      const value = plainNumber(reader);
      return value !== null && !(seesUnit(reader) && dash.text === "-" && dash.spaced) && !takeScale(reader) ? value : null;
    });
    if (high === null) return { min: wholeReps(reader, from, low), max: low };
    if (seesUnit(reader)) {
      takeSecondUnit(reader);
      reader.refuse("A range of times, distances or loads cannot be planned: write one", from);
    }
    if (high < low) reader.refuse(`The rep range runs backwards: ${low} to ${high}`, from);
    return { min: wholeReps(reader, from, low), max: wholeReps(reader, from, high) };
  });
}

const dropFollows = (reader: Reader): boolean => reader.peek().kind === "number" && /^drop/.test(reader.peek(1).text);

/** Is the plus after a number "or more"? It ends the line or stands before a sign or "reps"; tight, it may stand before a word too. */
function plusMarks(reader: Reader): boolean {
  const [sign, next] = [reader.peek(), reader.peek(1)];
  return reader.sees(() => {
    if (!reader.take("+")) return false;
    if (reader.done) return !sign.spaced;
    if ((next.kind === "sign" && next.text !== "+") || next.text === "reps" || next.text === "rep") return true;
    return !sign.spaced && next.spaced && !["drop", "a", "double", "triple"].includes(next.text) && !dropFollows(reader);
  });
}

/** "5+": at least five. A plus set apart in front of something else only joins. */
export function plus(reader: Reader, draft: Draft): void {
  const marks = plusMarks(reader);
  const words = !marks && (reader.phrase("or more") || (reader.peek().text === "plus" && reader.peek(1).kind === "sign" && reader.take("plus")));
  if (!marks && !words) return;
  if (marks) reader.at++;
  if (draft.amrap !== null) reader.refuse("AMRAP is stated twice", reader.at - 1);
  draft.amrap = "last";
}

/** States the number of sets, which is whole and at least one. */
export function stateSets(reader: Reader, draft: Draft, from: number, sets: number): void {
  if (!Number.isInteger(sets)) reader.refuse(`The number of sets is whole, not ${sets}`, from);
  if (sets < 1) reader.refuse("There is at least one set", from);
  if (sets > 100) reader.refuse(`${sets} sets are more than a session holds`, from);
  draft.state(reader, from, "sets", sets);
}
