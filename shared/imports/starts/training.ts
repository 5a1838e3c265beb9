import { exerciseById } from "../../exercises";
import { firstReading, type FirstReading } from "../heard";
import type { RowModel } from "../learning/row-model";
import { readMarked, type MarkedTranscript } from "../learning/transcript";
import { namesIn, type Mention } from "../names/find";
import { nameWord } from "../names/lexicon";
import { DOING, type Candidate } from "../order/candidates";
import type { Indexed } from "../order/speech";
import { sentencesIn } from "../sentences/boundaries";
import { hesitationsIn } from "../sentences/hesitations";
import { inOneBreath, splitAtNames } from "../sentences/split-at-names";
import { wordClasses } from "../sentences/word-classes";
import { soundsIn } from "../source/sounds";
import { START } from "./starts";

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

/** The candidates that the marks name as the next exercise; a turn whose name was not found has none. */
export function startsMarked({ candidates }: Indexed, turns: readonly { readonly at: number; readonly to: string }[]): Set<Candidate> {
  const starts = new Set<Candidate>();
  turns.forEach(({ at, to }, place) => {
    const until = Math.min(at + REACH, turns[place + 1]?.at ?? Infinity);
    const found = candidates.find((candidate) => candidate.span.to > at && candidate.span.from < until && isNamed(candidate, to));
    const [near] = candidates.filter((candidate) => candidate.span.to > at && candidate.span.from < until && shared(candidate, to) > (candidate.span.from < at + NEAR ? 0 : 1)).sort((a, b) => shared(b, to) - shared(a, to) || a.span.from - b.span.from);
    if (found ?? near) starts.add((found ?? near) as Candidate);
  });
  return starts;
}

/** A transcript read for the first time, and where its speaker turns. */
export function readFirst(file: string, first: RowModel): { readonly reading: FirstReading; readonly turns: MarkedTranscript["turns"]; readonly mentions: readonly Mention[] } {
  const { words, turns } = readMarked(file);
  const skip = new Set([...soundsIn(words), ...hesitationsIn(words)]);
  const mentions = namesIn(words, skip);
  const sentences = splitAtNames(words, sentencesIn(words, inOneBreath(words, mentions), false), mentions);
  return { reading: firstReading(words, sentences, mentions, skip, wordClasses(words), first), turns, mentions };
}

/** Which candidates begin an exercise: 1 where one does. */
export function labelsOf(speech: Indexed, turns: readonly { readonly at: number; readonly to: string }[]): number[] {
  const starts = startsMarked(speech, turns);
  return speech.candidates.map((candidate) => (starts.has(candidate) ? START : 0));
}
