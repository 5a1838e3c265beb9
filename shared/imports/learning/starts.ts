import { exerciseById } from "../../exercises";
import { nameWord } from "../names/lexicon";
import { DOING, type Candidate } from "../order/candidates";
import type { MarkedTranscript } from "./transcript";

/** Which names of a marked transcript begin its exercises. */

/** So many words after a turn its exercise is named. */
const REACH = 45;

const key = (text: string): string => text.toLowerCase().split(/[^a-z0-9]+/).filter((word) => word !== "").map(nameWord).join("");

const isNamed = ({ name }: Candidate, to: string): boolean => {
  const title = /^"(.*)"$/.exec(to)?.[1];
  if (title === undefined) return name.exercise?.id === to || key(name.title) === key(exerciseById(to)?.name ?? "?");
  return key(name.title) === key(title) || name.letters === key(title);
};

/** So many words after a turn another name of its exercise may stand: "close grip bench", "squats to the chair". */
const NEAR = 14;

const wordsOf = (text: string): string[] => text.toLowerCase().split(/[^a-z0-9]+/).filter((word) => word.length > 2).map((word) => DOING[word] ?? nameWord(word));

/** Words that the candidate's name shares with the exercise turned to; a last word that is the same counts for more. */
function shared({ name }: Candidate, to: string): number {
  const exercise = exerciseById(to);
  const names = (exercise ? [exercise.name, exercise.id, ...exercise.otherNames] : [to]).map(wordsOf);
  const own = new Set(names.flat());
  const heads = new Set(names.map((words) => words.at(-1)));
  const said = name.words.map((word) => DOING[word] ?? word);
  const words = new Set([...said, ...wordsOf(name.exercise?.name ?? "")]);
  const isHead = heads.has(said.at(-1));
  return [...words].filter((word) => own.has(word)).length + (isHead ? 1 : 0);
}

/** For each marked turn the candidate that names its exercise; null where none was found. */
export function startsMarked(candidates: readonly Candidate[], turns: MarkedTranscript["turns"]): (Candidate | null)[] {
  return turns.map(({ at, to }, place) => {
    const until = Math.min(at + REACH, turns[place + 1]?.at ?? Infinity);
    const found = candidates.find((candidate) => candidate.span.to > at && candidate.span.from < until && isNamed(candidate, to));
    const [near] = candidates.filter((candidate) => candidate.span.to > at && candidate.span.from < until && shared(candidate, to) > (candidate.span.from < at + NEAR ? 0 : 1)).sort((a, b) => shared(b, to) - shared(a, to) || a.span.from - b.span.from);
    return found ?? near ?? null;
  });
}
