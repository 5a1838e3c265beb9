import { decode, scoreOf, type RowModel } from "../learning/row-model";
import { contextOf } from "./context";
import type { Token } from "../schemes/figures";
import { featuresOf, type Heard } from "./hear";
import { candidatesIn, NAME } from "./stream";

/** What a figure or a word says about the sets of an exercise. */
export const ROLES = [
  "none", "sets", "reps", "reps-high", "seconds", "meters", "load", "rest", "tempo", "effort", "side", "hand", "bodyweight", "amrap", "same",
  "ramp-sets", "ramp-reps", "ramp-load",
] as const;
export type Role = (typeof ROLES)[number];

/** The role of the upper figure of a range, by that of the lower one; a longer time is what is taken of two. */
export const upperOf = (role: Role): Role => (role === "reps" ? "reps-high" : role === "seconds" || role === "rest" ? role : "none");

/** A token that says something, and what. */
export interface Tagged {
  readonly place: number;
  readonly role: Role;
}

/** How the way from one candidate to the next is described. */
export function stepKind(tokens: readonly Token[], from: number, to: number): string {
  const between = tokens.slice(from + 1, to);
  const gap = to - from;
  return `${between.some(({ text }) => text === NAME) ? "n" : ""}${gap <= 1 ? "1" : gap <= 3 ? "3" : gap <= 8 ? "8" : gap <= 20 ? "20" : "far"}`;
}

/** The candidates of some speech with their features and ways, ready for a model. */
export interface Row {
  readonly places: readonly number[];
  readonly features: readonly (readonly string[])[];
  readonly steps: readonly string[];
}

export function rowOf(heard: Heard): Row {
  const places = candidatesIn(heard.tokens);
  return { places, features: featuresOf(heard, places), steps: places.map((place, at) => (at === 0 ? "" : stepKind(heard.tokens, places[at - 1] ?? 0, place))) };
}

/** So many points of the model are worth as much as a share that is e times as large. */
const WORTH = 400;
/** Shares below this speak no more against a role. */
const LEAST = 1e-5;

/** The number of the likeliest role of each candidate. @param shares - how likely each role is by what was listened to; null where that is not known, left out at the first reading */
export function rolesOf({ features, steps }: Row, model: RowModel, shares?: readonly (Float32Array | null)[]): number[] {
  const scores = features.map((names, at) => scoreOf(model, names).map((score, role) => score + WORTH * Math.log(Math.max(LEAST, shares?.[at]?.[role] ?? 1))));
  return decode(scores, steps, model);
}

/** The row with what a first reading of it tells. @param begins - words at which exercises begin, in order */
export function withContext(row: Row, heard: Heard, first: readonly number[], begins: readonly number[]): Row {
  const context = contextOf(heard.tokens, row.places, first, begins);
  return { ...row, features: row.features.map((names, at) => [...names, ...(context[at] ?? [])]) };
}

/** The candidates that say something, and what. */
export const taggedBy = ({ places }: Row, roles: readonly number[]): Tagged[] => places.flatMap((place, at) => (roles[at] === 0 ? [] : [{ place, role: ROLES[roles[at] ?? 0] ?? "none" }]));
