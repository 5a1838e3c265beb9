import { breaths, sentencesOf, spokenForm, type Pace } from "../../speech";
import type { Run } from "../paper";

/** Signs for a breath, explained in the legend: the coach's own mark, and a place we suggest. */
export const MARKED_BREATH = "/";
export const SUGGESTED_BREATH = "¦";

/** Minutes and seconds of a running time: 83.4 is "1:23". */
export function minutesSeconds(seconds: number): string {
  const whole = Math.max(0, Math.round(seconds));
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
}

/** "1 word", "12 words" */
export const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? "" : "s"}`;

/** Seconds as a person says them: whole, but never 0 for something that is there. */
export const wholeSeconds = (seconds: number): string => `${seconds > 0 ? Math.max(1, Math.round(seconds)) : 0} s`;

/**
 * The words of a say line with a sign at every breath: bold where the coach marked one, grey where one is suggested.
 * A sentence's end needs no sign.
 */
export function breathRuns(text: string, pace: Pace): Run[] {
  return breaths(text, pace).flatMap((segment, at): Run[] => {
    const words: Run = { text: `${at === 0 ? "" : " "}${segment.text}` };
    if (segment.breathAfter === "marked") return [words, { text: ` ${MARKED_BREATH}`, weight: "bold" }];
    return segment.breathAfter === "suggested" ? [words, { text: ` ${SUGGESTED_BREATH}`, grey: true }] : [words];
  });
}

/** The words alone, so that commas, capitals and breath marks make no difference. */
const bare = (text: string): string => text.toLowerCase().replace(/[‘’ʼ]/g, "'").replace(/[^\p{L}\p{M}\p{N}']+/gu, " ").replace(/(?<!\p{L})'|'(?!\p{L})/gu, "").trim();

/**
 * The sentences that are not said as they are written, as they are said: "Three sets of eight to ten at twenty-two kilos."
 * @returns empty when every word is said as it stands
 */
export function saidDifferently(text: string): string[] {
  return text
    .split(/(?<=^|\s)\/(?=\s|$)/)
    .flatMap(sentencesOf)
    .flatMap((sentence) => {
      const said = spokenForm(sentence);
      return said === "" || bare(said) === bare(sentence) ? [] : [said];
    });
}
