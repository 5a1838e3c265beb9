import { parseShotLine } from "./shot-line";
import type { Shot } from "./types";

const joined = (numbers: readonly (number | string)[]): string =>
  numbers.length < 2 ? numbers.join("") : `${numbers.slice(0, -1).join(", ")} and ${numbers.at(-1) ?? ""}`;

/** "set 2", "sets 1-3", "sets 1, 3 and 5". */
function setsText(sets: readonly number[]): string {
  const first = sets[0] ?? 0;
  const run = sets.length > 1 && sets.every((set, index) => set === first + index);
  return `set${sets.length > 1 ? "s" : ""} ${run ? `${first}-${sets.at(-1) ?? first}` : joined(sets)}`;
}

/** What the shot states, in the order a shot line is usually written. */
function factTexts(shot: Shot): string[] {
  const both = shot.angle === "insert" || shot.size === "insert";
  return [
    shot.angle ?? (both ? "any angle" : ""),
    shot.size === shot.angle ? "" : (shot.size ?? (both ? "any size" : "")),
    shot.on === "demonstration" ? "demo" : [shot.on ?? "", shot.sets && shot.sets.length > 0 ? setsText(shot.sets) : shot.on ? "set" : ""].filter(Boolean).join(" "),
    shot.on === "demonstration" && shot.sets && shot.sets.length > 0 ? setsText(shot.sets) : "",
    shot.seconds === null ? "" : `${shot.seconds} s`,
    shot.need === "nice" ? "nice" : "",
  ].filter(Boolean);
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/**
 * Writes a shot as a line that reads back as the same shot.
 * @param shot - sets in order and each once; subject one trimmed line
 */
export function printShotLine(shot: Shot): string {
  const facts = factTexts(shot);
  const line = capital(facts.join(", ")) + (facts.length > 0 && shot.subject ? `: ${shot.subject}` : shot.subject);
  // A subject that happens to begin like facts needs a fact before it to stay a subject.
  const asFacts = facts.length === 0 && parseShotLine(line).subject !== shot.subject;
  return asFacts ? `Must: ${shot.subject}` : line;
}
