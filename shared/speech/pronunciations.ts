import { memoOn } from "../episode";
import type { Pronunciation } from "./types";

const escaped = (text: string): string => text.replace(/[\\^$.*+?()[\]{}|/]/g, "\\$&").replace(/\s+/g, "\\s+");

/** Longest first, so that "farmer's carry" is found before "carry"; whole words only, whatever their case. */
const finder = memoOn((pronunciations: readonly Pronunciation[]) => {
  const said = new Map(pronunciations.filter(({ written }) => written.trim() !== "").map((one) => [one.written.trim().replace(/\s+/g, " ").toLowerCase(), one.said]));
  const written = [...said.keys()].sort((a, b) => b.length - a.length || (a < b ? -1 : 1)).map(escaped);
  return { said, pattern: written.length > 0 ? new RegExp(`(?<![\\p{L}\\p{N}])(?:${written.join("|")})(?![\\p{L}\\p{N}])`, "giu") : null };
});

/** The text with the speaker's own words for what they say differently. */
export function withPronunciations(text: string, pronunciations: readonly Pronunciation[]): string {
  const { said, pattern } = finder(pronunciations);
  return pattern ? text.replace(pattern, (found) => said.get(found.replace(/\s+/g, " ").toLowerCase()) ?? found) : text;
}
