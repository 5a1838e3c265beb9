import { JOINTS } from "./types";
import type { Joint } from "./types";
import { phrases, wordsOf } from "./words";

/** How coaches say a joint, singular, longest first where one holds another; "back" alone is too often a direction. */
const SPOKEN: readonly (readonly [pattern: RegExp, joints: readonly Joint[]])[] = [
  [/\b(?:every|each|all|all the|all your|main|major) joint\b|\bjoint by joint\b|\bhead to toe\b|\btoe to head\b/g, JOINTS],
  [/\b(?:low|lower|small of (?:the|your)) back\b|\blumbar(?: spine)?\b/g, ["low back"]],
  [/\b(?:upper|mid|middle|middle of the) back\b|\b(?:t|thoracic|upper|mid) spine\b|\bthoracic\b|\bshoulder blade\b|\bscapula(?:r|e)?\b|\brib ?cage\b/g, ["upper back"]],
  [/\bneck\b|\bcervical(?: spine)?\b|\bc spine\b/g, ["neck"]],
  [/\b(?:whole |entire )?(?:spine|spinal|backbone)\b|\bwhole back\b/g, ["low back", "upper back"]],
  [/\bshoulder\b|\brotator cuff\b/g, ["shoulder"]],
  [/\belbow\b/g, ["elbow"]],
  [/\bwrist\b/g, ["wrist"]],
  [/\bhip\b|\bgroin\b|\bpelvis\b/g, ["hip"]],
  [/\bknee\b|\bkneecap\b/g, ["knee"]],
  [/\bankle\b|\bachill(?:es|e)\b/g, ["ankle"]],
];

/**
 * The joints a text names in a coach's words, in anatomical order from the floor up, each once.
 * "T-spine and ankles" gives ankle and upper back. It reads words only: whether they are moved is for the caller.
 */
export function jointsIn(text: string): Joint[] {
  const named = new Set<Joint>();
  for (const phrase of phrases(text)) {
    let rest = wordsOf(phrase).map((word) => word.text).join(" ");
    for (const [pattern, joints] of SPOKEN) {
      const without = rest.replace(pattern, "|");
      if (without !== rest) joints.forEach((joint) => named.add(joint));
      rest = without;
    }
  }
  return JOINTS.filter((joint) => named.has(joint));
}
