import { aboutWord } from "../learning/feature-names";
import type { Mention } from "../names/find";
import { nameWord } from "../names/lexicon";
import type { Part } from "../order/speech";
import type { Ordered } from "../schemes/compose";
import type { Scheme } from "../../training";
import type { Span, Word } from "../types";
import { headOf, isNamed } from "./claims";
import type { Turned } from "./turned";

/** The exercises of a session and the figures that are said in it, ready to be brought together. */

/** What a figure says, and of which sets. */
export function kindOf({ says, about }: Ordered): string {
  const field = (Object.keys(says) as (keyof Scheme)[]).filter((each) => each !== "repsMax")[0] ?? "nothing";
  return `${aboutWord(about)}${field}`;
}

/** Everything the features are drawn from. */
export interface Scene {
  readonly exercises: readonly Turned[];
  readonly statements: readonly Ordered[];
  readonly mentions: readonly Mention[];
  readonly words: readonly Word[];
  /** The part of the running order a sentence belongs to. */
  readonly zoneOf: (sentence: number) => string;
}

/** The exercise in whose time a word is said, by its number; -1 before the first. */
export const homeOf = (exercises: readonly Turned[], word: number): number => exercises.findLastIndex(({ turn }) => turn <= word);

/** The exercises of a running order and the figures said in it, as the reader of owners sees them. */
export function sceneOf(parts: readonly Part[], statements: readonly Ordered[], mentions: readonly Mention[], words: readonly Word[]): Scene {
  const exercises = parts.flatMap((part) => (part.kind === "exercise" && part.begins ? [{ part, turn: part.begins.turn, at: part.begins.name }] : []));
  return { exercises, statements, mentions, words, zoneOf: (sentence) => parts.find(({ from, to }) => sentence >= from && sentence < to)?.kind ?? "talk" };
}

/** Sets that are counted of one exercise, whatever is said of its circuit. */
export const OWN_SETS = "own sets";

/** What is reckoned once for a speech. */
export interface Reckoned {
  /** Statements of a kind, whether of one exercise or of a circuit, by the exercise in whose time they are said. */
  readonly said: ReadonlyMap<string, ReadonlyMap<number, readonly number[]>>;
  readonly kinds: readonly string[];
  readonly homes: readonly number[];
  /** Each mention of exercises of the session, with the numbers of those it may be. */
  readonly named: readonly { readonly mention: Span; readonly of: readonly number[] }[];
}

export function reckoned({ exercises, statements, mentions, words }: Scene): Reckoned {
  const full = mentions.flatMap((mention) => {
    const exact = exercises.flatMap(({ part }, at) => (mention.name.exercise !== null && mention.name.exercise.id === part.exercise?.id ? [at] : []));
    const all = exact.length > 0 ? exact : exercises.flatMap((each, at) => (isNamed(mention, each) ? [at] : []));
    return all.length > 0 ? [{ mention: { from: mention.from, to: mention.to }, of: all }] : [];
  });
  // "Ten on the press": the last word of a name is enough.
  const taken = new Set(full.flatMap(({ mention: { from, to } }) => Array.from({ length: to - from }, (_, at) => from + at)));
  const last = exercises.map(headOf);
  const heads = words.flatMap(({ plain: word }, at) => {
    const of = taken.has(at) || word === "" ? [] : last.flatMap((head, place) => (head === nameWord(word) ? [place] : []));
    return of.length > 0 ? [{ mention: { from: at, to: at + 1 }, of }] : [];
  });
  const [kinds, homes] = [statements.map(kindOf), statements.map(({ from }) => homeOf(exercises, from))];
  const said = new Map<string, Map<number, number[]>>();
  const note = (kind: string, at: number): void => {
    const places = said.get(kind) ?? new Map<number, number[]>();
    const home = homes[at] ?? -1;
    said.set(kind, places.set(home, [...(places.get(home) ?? []), at]));
  };
  kinds.forEach((kind, at) => {
    note(kind.replace(/^all /, ""), at);
    if (kind === "sets") note(OWN_SETS, at);
  });
  return {
    kinds, homes, said,
    named: [...full, ...heads].sort((a, b) => a.mention.from - b.mention.from),
  };
}
