import type { Pronunciation } from "../../../shared/speech";
import type { Reading } from "../../fields/read";

/** Words the series' own list holds, as the document has it. */
export const MOST_WORDS = 300;

export const isSameWord = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();

/** How a word sounds, as it is typed. */
export const readSaid = (text: string): Reading<string> => (text.trim().length > 0 && text.trim().length <= 200 ? { ok: true, value: text.trim() } : { ok: false, problem: "Write it as it sounds, in at most 200 letters." });

/** The list with one word said another way, in its place when it is there already; said as written takes it off the list. */
export function withPronunciation(list: readonly Pronunciation[], written: string, said: string | null): Pronunciation[] {
  if (said === null) return list.filter((one) => !isSameWord(one.written, written));
  const entry = { written: written.trim(), said };
  return list.some((one) => isSameWord(one.written, written)) ? list.map((one) => (isSameWord(one.written, written) ? entry : one)) : [...list, entry];
}

/** Why a word cannot go onto the list; null when it can. A word that is there already is only changed. */
export function listIsFull(list: readonly Pronunciation[], written: string): string | null {
  if (list.length < MOST_WORDS || list.some((one) => isSameWord(one.written, written))) return null;
  return `Your pronunciations are full at ${MOST_WORDS} words. Take one out first.`;
}
