import { blockName, newLine } from "../../../episode";
import { parseShotLine } from "../../../filming";
import { exerciseOf, listed, PRACTICE, wordsOf } from "../../blocks";
import { defineBlockRule } from "../../define-rule";

const SMALL_WORDS = new Set(["the", "and", "with", "your", "from", "over", "under", "into", "then", "that", "while", "when", "only", "keep", "both", "way", "stay"]);
const contentWords = (text: string): Set<string> => new Set(text.toLowerCase().match(/[a-z]{3,}/g)?.map((word) => word.replace(/s$/, "")).filter((word) => !SMALL_WORDS.has(word)));

/** Do two cues say much the same? Most content words of the shorter one stand in the other. */
function alike(a: string, b: string): boolean {
  const [one, other] = [contentWords(a), contentWords(b)];
  const shared = [...one].filter((word) => other.has(word)).length;
  return shared >= 2 && shared / Math.min(one.size, other.size) >= 0.75;
}

export const cueAngle = defineBlockRule({
  meta: {
    id: "cue-angle", version: 1, subject: "film", level: "consider", moment: "before filming",
    summary: "Each cue can be seen from at least one of the planned shots.",
    why: "A cue that no angle shows has to be taken on trust.",
    source: PRACTICE,
    messages: { unseen: "{name}: \"{cue}\" shows from the {angles}, and no shot is planned from there. Add one, or move a camera." },
  },
  check({ block, newId }, _options, report) {
    const exercise = exerciseOf(block);
    const shots = wordsOf(block, "shot").map(({ text }) => parseShotLine(text));
    if (!exercise || shots.length === 0 || shots.some(({ angle }) => angle === null)) return;
    for (const line of wordsOf(block, "cue")) {
      const known = exercise.cues.find(({ text }) => alike(text, line.text));
      if (!known || known.seenFrom.some((angle) => shots.some((shot) => shot.angle === angle))) continue;
      const angle = known.seenFrom[0] ?? "side";
      // Nice to have: the sets may be taken up by the shots that must be had.
      const text = angle === "insert" ? `Insert, 6 s, nice: ${line.text}` : `${angle.charAt(0).toUpperCase()}${angle.slice(1)}, full, 10 s, nice: ${line.text}`;
      report({
        block, line, message: "unseen", data: { name: blockName(block), cue: line.text, angles: listed(known.seenFrom).replace(" and ", " or ") },
        remedies: [{ label: `Adds a shot: ${text}`, edits: [{ type: "insert-line", block: block.id, at: null, line: newLine(newId, "shot", text) }] }],
      });
    }
  },
});
