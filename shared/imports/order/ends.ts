import type { Candidate } from "./candidates";
import { CLOSING, FAREWELL, SURE_CLOSING } from "./signals";
import { isMobile, statementsIn, type Indexed, type Opened, type Speech } from "./speech";

/** The ends of an episode: exercises told only in a list, easy exercises before and after the work, the farewell. */

/** Exercises that were only ever named in a list of what is to come, where nothing of it came by itself. */
export function fromLists(speech: Speech, opened: readonly Opened[]): Opened[] {
  const { candidates, said } = speech;
  const titles = new Set(opened.map(({ candidate }) => candidate?.name.title));
  const spoken = candidates.filter(({ listed, passing, takenBack, isThing, name }) => listed && !passing && !takenBack && isThing && !titles.has(name.title));
  const byOne = new Map<number, Candidate[]>();
  for (const candidate of spoken) byOne.set(candidate.sentence, [...(byOne.get(candidate.sentence) ?? []), candidate]);
  const mains = opened.filter(({ kind }) => kind === "exercise").length;
  const warm = opened.find(({ kind }) => kind === "warm-up")?.sentence ?? Infinity;
  const firstMain = opened.find(({ kind }) => kind === "exercise")?.sentence ?? Infinity;
  const cool = opened.find(({ kind }) => kind === "cool-down")?.sentence ?? Infinity;
  // A circuit that is told in one breath, and nothing else in the episode that it could be a preview of.
  const whole = [...byOne].find(([sentence, list]) => list.length >= 2 && list.length > mains && !(sentence > warm && sentence < firstMain) && sentence < cool && !/\b(?:next (?:week|time)|last (?:week|time)|later)\b/.test(said[sentence] ?? ""));
  if (!whole) return [];
  const seen = new Set<string>();
  return whole[1].filter(({ name }) => !seen.has(name.title) && seen.add(name.title)).map((candidate) => ({ sentence: whole[0], kind: "exercise", candidate }));
}

/** A run of easy exercises before the work is the warm-up, after it the cool-down, where the coach gave them no name. */
export function unnamedEnds(opened: readonly Opened[], speech: Indexed): Opened[] {
  const isMain = ({ candidate, kind }: Opened): boolean => kind === "exercise" && candidate !== null && !isMobile(candidate);
  const mains = opened.filter(isMain).length;
  const exercises = opened.filter(({ kind }) => kind === "exercise").length;
  if (mains === 0 || mains < exercises * 0.4) return [...opened];
  const counted = (at: number): boolean => {
    const from = opened[at]?.sentence ?? 0;
    return statementsIn(speech, from, Math.min(from + 5, opened[at + 1]?.sentence ?? Infinity)).some(({ says }) => (says.sets ?? 0) > 1);
  };
  const first = opened.findIndex(isMain);
  const last = opened.findLastIndex(isMain);
  const out: Opened[] = [];
  opened.forEach((each, at) => {
    const easy = each.kind === "exercise" && !isMain(each) && each.candidate !== null && !counted(at);
    if (easy && at < first) {
      if (!out.some(({ kind }) => kind === "warm-up")) out.push({ sentence: each.sentence, kind: "warm-up", candidate: null });
    } else if (easy && at > last) {
      if (!out.some(({ kind }) => kind === "cool-down")) out.push({ sentence: each.sentence, kind: "cool-down", candidate: null });
    } else out.push(each);
  });
  return out;
}

/** The sentence the closing begins with, or null. It is looked for in the last part, from the back. */
export function closingFrom({ said, sentences, statements, candidates }: Speech, after: number): number | null {
  const least = Math.max(after + 1, Math.floor(sentences.length * 0.5));
  // A farewell after which exercises still begin was only a manner of speaking.
  const lastStart = candidates.reduce((last, { sentence, strength, passing }) => (strength === 2 && !passing ? Math.max(last, sentence) : last), -1);
  const sure = said.findIndex((text, number) => number >= least && SURE_CLOSING.test(text) && lastStart < number + 5);
  const late = said.findLastIndex((text, number) => number >= least && CLOSING.test(text));
  const last = said.findIndex((text, number) => number >= Math.max(least, sentences.length - 3) && FAREWELL.test(text) && !statements.some(({ sentence }) => sentence === number));
  let from = sure >= 0 ? sure : late >= sentences.length - 6 ? late : last;
  if (from < 0) return null;
  // Earlier sentences of farewell belong to it, as long as nothing is taught or counted between.
  for (let number = from - 1; number >= least && number >= from - 5; number -= 1) {
    if (statements.some(({ sentence }) => sentence === number)) break;
    if (CLOSING.test(said[number] ?? "")) from = number;
  }
  return from;
}
