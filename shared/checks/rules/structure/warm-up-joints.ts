import { blockName, newLine, type Block } from "../../../episode";
import { exerciseById, exercisesMentioned, jointsIn, JOINTS, type Joint } from "../../../exercises";
import { exerciseOf, jointName, listed, trainingBlocks, wordsOf } from "../../blocks";
import { defineRule } from "../../define-rule";

/** The joints a warm-up moves: those its words name, and those of the exercises they name. */
function jointsMoved(warmUp: Block): Set<Joint> {
  const lines = (["cue", "say", "note"] as const).flatMap((kind) => wordsOf(warmUp, kind));
  const exercises = [warmUp.exercise === null ? undefined : exerciseById(warmUp.exercise), ...lines.flatMap(({ text }) => exercisesMentioned(text))];
  return new Set([...lines.flatMap(({ text }) => jointsIn(text)), ...exercises.flatMap((exercise) => exercise?.loadedJoints ?? [])]);
}

/** The first exercise, and the next one when it is heavy or fast: what comes later has been moved by then. */
function firstLifts(blocks: readonly Block[]): Block[] {
  return blocks.slice(0, 2).filter((block, i) => i === 0 || exerciseOf(block)?.rampUp === true || exerciseOf(block)?.power === true);
}

export const warmUpJoints = defineRule({
  meta: {
    id: "warm-up-joints", version: 2, subject: "structure", level: "fix", moment: "before filming",
    summary: "The warm-up moves the joints that the first lifts load.",
    why: "The first lifts are done on joints that have moved the least that day.",
    source: { title: "RAMP warm-up (activate and mobilise), Jeffreys, Professional Strength & Conditioning, 2007" },
    yieldsTo: ["warm-up-first"],
    messages: { missing: "{name} leaves out the {joints}, and {lifts} will load {them}. Add a few circles or bends." },
  },
  check({ episode, newId }, _options, report) {
    const training = trainingBlocks(episode);
    const warmUp = episode.blocks.find(({ kind }) => kind === "warm-up");
    const [first] = training;
    if (!warmUp || !first) return;
    // Drills that are exercises of their own, before the first lift, warm up as well.
    const before = episode.blocks.slice(0, episode.blocks.indexOf(first)).filter(({ kind }) => kind === "exercise" || kind === "warm-up");
    const ready = new Set([warmUp, ...before].flatMap((block) => [...jointsMoved(block)]));
    const missing = new Set<Joint>();
    const lifts: string[] = [];
    for (const block of firstLifts(training)) {
      const cold = exerciseOf(block)?.loadedJoints.filter((joint) => !ready.has(joint)) ?? [];
      if (cold.length > 0) lifts.push(blockName(block));
      // What the first lift moves is no longer cold for the second, but is named once.
      for (const joint of cold) { missing.add(joint); ready.add(joint); }
      exerciseOf(block)?.loadedJoints.forEach((joint) => ready.add(joint));
    }
    const names = JOINTS.filter((joint) => missing.has(joint)).map(jointName);
    if (names.length === 0) return;
    report({
      block: warmUp, words: names.join(", "), message: "missing",
      data: { name: blockName(warmUp), joints: listed(names), lifts: listed(lifts), them: names.length === 1 && /(?:back|neck)$/.test(names[0] ?? "") ? "it" : "them" },
      remedies: [{ label: `Adds a cue with slow circles for ${listed(names)}`, edits: [{ type: "insert-line", block: warmUp.id, at: null, line: newLine(newId, "cue", `Ten slow circles or bends each: ${names.join(", ")}`) }] }],
    });
  },
});
