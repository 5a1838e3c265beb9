import { wordsOfText } from "../source/words";
import type { Word } from "../types";
import type { Role } from "../roles/tagger";

/** Transcripts whose figures are marked with what they mean, for training: "three/s sets of eight/r <split-squat> then". */

/** A mark at the end of a word, and the role it gives to the figure that ends there. With "a" before it the figure is told once for several exercises. */
const MARKS: Readonly<Record<string, Role>> = {
  s: "sets", r: "reps", rh: "reps-high", w: "seconds", m: "meters", l: "load", t: "rest", d: "tempo", e: "effort", side: "side", hand: "hand", bw: "bodyweight", amrap: "amrap", same: "same",
  S: "ramp-sets", R: "ramp-reps", RH: "ramp-reps", L: "ramp-load", W: "ramp-reps", M: "ramp-reps", T: "rest", E: "effort", SIDE: "side", HAND: "hand", BW: "bodyweight",
};
const FOR_SEVERAL = /^a(?!mrap$)/;

export interface MarkedTranscript {
  readonly words: readonly Word[];
  /** The role of the figure that ends in a word, by the word's number. */
  readonly roles: ReadonlyMap<number, Role>;
  /** Words in which figures end that are told once for several exercises. */
  readonly forSeveral: ReadonlySet<number>;
  /** Where the speaker turns to an exercise or a part: the number of the next word, and its id, title or kind. */
  readonly turns: readonly { readonly at: number; readonly to: string }[];
}

/** The words after the head's line of dashes. {12} is twelve seconds of silence. */
export function readMarked(file: string): MarkedTranscript {
  const body = file.split(/\n---\n/)[1] ?? file;
  const roles = new Map<number, Role>();
  const forSeveral = new Set<number>();
  const turns: { at: number; to: string }[] = [];
  const pauses = new Map<number, number>();
  const plain: string[] = [];
  for (const piece of body.match(/<[^>]*>|\S+/g) ?? []) {
    const [turn, silence, mark] = [/^<(.+)>$/.exec(piece), /^\{([\d.]+)\}$/.exec(piece), /^(.+)\/([A-Za-z]+)[.,]?$/.exec(piece)];
    if (turn) turns.push({ at: plain.length, to: (turn[1] ?? "").trim() });
    else if (silence) pauses.set(plain.length, Number(silence[1]));
    else {
      const role = mark ? MARKS[(mark[2] ?? "").replace(FOR_SEVERAL, "")] : undefined;
      if (role) roles.set(plain.length, role);
      if (role && FOR_SEVERAL.test(mark?.[2] ?? "")) forSeveral.add(plain.length);
      plain.push(role ? (mark?.[1] ?? "") : piece);
    }
  }
  const words = wordsOfText(plain.join(" "));
  return { words: words.map((word, at) => ({ ...word, pause: pauses.get(at) ?? 0 })), roles, forSeveral, turns };
}
