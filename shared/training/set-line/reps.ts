import { plainNumber, seesUnit, takeScale, takeSecondUnit } from "./amounts";
import type { Draft } from "./draft";
import type { Reader } from "./reader";

export const REP_WORDS = ["reps", "rep", "repetitions", "repetition"];
export const SET_WORDS = ["sets", "set", "rounds", "round", "trips", "lengths", "intervals", "holds", "carries"];
/** A mistyped "3 x 1000" is caught here rather than planned. */
const MOST_REPS = 1000;

export function reps(reader: Reader, from: number, value: number): number {
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
    if (high === null) return { min: reps(reader, from, low), max: low };
    if (seesUnit(reader)) {
      takeSecondUnit(reader);
      reader.refuse("A range of times, distances or loads cannot be planned: write one", from);
    }
    if (high < low) reader.refuse(`The rep range runs backwards: ${low} to ${high}`, from);
    return { min: reps(reader, from, low), max: reps(reader, from, high) };
  });
}

/** "5+": at least five. A plus set apart in front of something else only joins. */
export function plus(reader: Reader, draft: Draft): void {
  const sign = reader.peek();
  const next = reader.peek(1);
  const marks = reader.sees(() => reader.take("+") && (reader.done ? !sign.spaced : (next.kind === "sign" && next.text !== "+") || next.text === "reps" || next.text === "rep" || (!sign.spaced && next.spaced && !["drop", "a", "double", "triple"].includes(next.text) && !dropFollows(reader))));
  const words = !marks && (reader.phrase("or more") || (reader.peek().text === "plus" && (reader.peek(1).kind === "sign") && reader.take("plus")));
  if (!marks && !words) return;
  if (marks) reader.at++;
  if (draft.amrap !== null) reader.refuse("AMRAP is stated twice", reader.at - 1);
  draft.amrap = "last";
}

const dropFollows = (reader: Reader): boolean => reader.peek().kind === "number" && /^drop/.test(reader.peek(1).text);
