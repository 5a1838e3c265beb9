import type { Part } from "../order/speech";
import type { Ordered } from "../schemes/compose";
import type { Scheme } from "../../training";
import type { Word } from "../types";
import type { Turned } from "./turned";

/** The exercises of a session and the figures that are said in it, ready to be brought together. */

/** What a figure says, and of which sets. */
export function kindOf({ says, about }: Ordered): string {
  const field = (Object.keys(says) as (keyof Scheme)[]).filter((each) => each !== "repsMax")[0] ?? "nothing";
  return about === "ramp-up" ? `ramp ${field}` : field;
}

/** Everything the features are drawn from. */
export interface Scene {
  readonly exercises: readonly Turned[];
  readonly statements: readonly Ordered[];
  readonly words: readonly Word[];
}

/** The exercise in whose time a word is said, by its number; -1 before the first. */
export const homeOf = (exercises: readonly Turned[], word: number): number => exercises.findLastIndex(({ turn }) => turn <= word);

/** The exercises of a running order and the figures said in it, as the reader of owners sees them. */
export function sceneOf(parts: readonly Part[], statements: readonly Ordered[], words: readonly Word[]): Scene {
  const exercises = parts.flatMap((part) => (part.kind === "exercise" && part.begins ? [{ part, turn: part.begins.turn, at: part.begins.name }] : []));
  return { exercises, statements, words };
}
