import { blockName, emptyBlock, newLine, type Block, type NewId } from "../../../episode";
import { exerciseOf, firstOfKind, jointName, listed, trainingBlocks } from "../../blocks";
import { defineRule } from "../../define-rule";

/** The joints that the first lifts load, in the order a body is warmed: from the floor up. */
function jointsOfFirst(blocks: readonly Block[], count: number): string[] {
  const order = ["ankle", "knee", "hip", "low back", "upper back", "shoulder", "elbow", "wrist", "neck"] as const;
  const loaded = new Set(blocks.slice(0, count).flatMap((block) => exerciseOf(block)?.loadedJoints ?? []));
  return order.filter((joint) => loaded.has(joint)).map(jointName);
}

function warmUp(newId: NewId, joints: readonly string[], minutes: number): Block {
  return emptyBlock(newId, "warm-up", {
    title: "Warm-up", minutes,
    lines: [
      newLine(newId, "cue", "Three minutes of brisk walking or easy rowing, easy enough to talk"),
      newLine(newId, "cue", joints.length > 0 ? `Ten slow circles or bends each: ${joints.join(", ")}` : "Ten slow circles for every joint, from the ankles up"),
      newLine(newId, "cue", "Ten easy repetitions of the first exercise with no weight"),
      newLine(newId, "shot", "Front, full, 15 s: the circles, one joint after the other"),
    ],
  });
}

export const warmUpRule = defineRule({
  meta: {
    id: "warm-up", version: 2, subject: "structure", level: "fix", moment: "before filming",
    summary: "An episode with loaded exercises begins with a warm-up.",
    why: "Viewers do what they see. If the warm-up is not on screen, they start cold.",
    source: { title: "RAMP warm-up, Jeffreys, Professional Strength & Conditioning, 2007" },
    defaults: { minutes: 8 },
    messages: { none: "No warm-up before {first}. Plan 5 to 10 minutes before the first exercise." },
  },
  check({ episode, newId }, { minutes }, report) {
    const exercises = trainingBlocks(episode);
    const first = exercises[0];
    if (!first || firstOfKind(episode, "warm-up")) return;
    // Drills before the first lift are a warm-up, whatever their blocks are called.
    if (episode.blocks.slice(0, episode.blocks.indexOf(first)).some((block) => exerciseOf(block)?.family === "mobility-warmup")) return;
    const joints = jointsOfFirst(exercises, 2);
    const what = joints.length > 0 ? ` with ${listed(joints)}` : "";
    report({
      block: first, words: "no warm-up", message: "none", data: { first: blockName(first) },
      remedies: [{ label: `Adds an ${minutes}-minute warm-up block${what}`, edits: [{ type: "insert-block", at: episode.blocks.indexOf(first), block: warmUp(newId, joints, minutes) }] }],
    });
  },
});
