import { emptyBlock, newLine, type Block, type NewId } from "../../../episode";
import { exerciseBlocks, exerciseOf, firstOfKind, jointName, listed } from "../../blocks";
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
    id: "warm-up", version: 1, subject: "structure", level: "fix", moment: "before filming",
    summary: "An episode with loaded exercises begins with a warm-up.",
    why: "Viewers do what they see. If the warm-up is not on screen, they start cold.",
    source: { title: "RAMP warm-up, Jeffreys, Professional Strength & Conditioning, 2007" },
    defaults: { minutes: 8 },
    messages: {
      none: "No warm-up before {first}. Plan 5 to 10 minutes before the first exercise.",
      late: "The warm-up stands after {first}. Move it in front of the first exercise.",
    },
  },
  check({ episode, newId }, { minutes }, report) {
    const exercises = exerciseBlocks(episode);
    const first = exercises[0];
    if (!first) return;
    const place = episode.blocks.indexOf(first);
    const existing = firstOfKind(episode, "warm-up");
    if (!existing) {
      const joints = jointsOfFirst(exercises, 2);
      const what = joints.length > 0 ? ` with ${listed(joints)}` : "";
      report({
        block: first, words: "no warm-up", message: "none", data: { first: first.title.trim() || "the first exercise" },
        remedies: [{ label: `Adds an ${minutes}-minute warm-up block${what}`, edits: [{ type: "insert-block", at: place, block: warmUp(newId, joints, minutes) }] }],
      });
    } else if (episode.blocks.indexOf(existing) > place) {
      report({
        block: existing, words: "late warm-up", message: "late", data: { first: first.title.trim() || "the first exercise" },
        remedies: [{ label: "Moves the warm-up in front of the first exercise", edits: [{ type: "move-block", block: existing.id, to: place }] }],
      });
    }
  },
});
