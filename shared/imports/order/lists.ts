import type { Candidate } from "./candidates";
import type { Opened, Speech } from "./speech";

/** Exercises that are told only in a list. */

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
  return whole[1].filter(({ name }) => !seen.has(name.title) && seen.add(name.title)).map((candidate) => ({ sentence: whole[0], kind: "exercise", turn: null, candidate }));
}
