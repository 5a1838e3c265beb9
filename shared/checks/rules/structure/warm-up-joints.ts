import { blockName, newLine } from "../../../episode";
import { exercisesMentioned, jointsIn, type Joint } from "../../../exercises";
import { exerciseBlocks, exerciseOf, firstOfKind, jointName, listed, wordsOf } from "../../blocks";
import { defineRule } from "../../define-rule";

export const warmUpJoints = defineRule({
  meta: {
    id: "warm-up-joints", version: 1, subject: "structure", level: "fix", moment: "before filming",
    summary: "The warm-up moves the joints that the first exercise loads.",
    why: "The first exercise is done on joints that have moved the least that day.",
    source: { title: "RAMP warm-up (activate and mobilise), Jeffreys, Professional Strength & Conditioning, 2007" },
    messages: { missing: "{name} leaves out {joints}, which {first} loads. Add a few circles or bends for {them}." },
  },
  check({ episode, newId }, _options, report) {
    const warmUp = firstOfKind(episode, "warm-up");
    const first = exerciseBlocks(episode)[0];
    const exercise = first && exerciseOf(first);
    if (!warmUp || !first || !exercise) return;
    const lines = (["cue", "say", "note"] as const).flatMap((kind) => wordsOf(warmUp, kind));
    const moved = new Set<Joint>(lines.flatMap(({ text }) => [...jointsIn(text), ...exercisesMentioned(text).flatMap(({ loadedJoints }) => loadedJoints)]));
    const missing = exercise.loadedJoints.filter((joint) => !moved.has(joint));
    if (missing.length === 0) return;
    const names = missing.map(jointName);
    report({
      block: warmUp, words: names.join(", "), message: "missing",
      data: { name: blockName(warmUp), joints: listed(names), first: blockName(first), them: names.length === 1 ? "it" : "them" },
      remedies: [{ label: `Adds a cue with slow circles for ${listed(names)}`, edits: [{ type: "insert-line", block: warmUp.id, at: null, line: newLine(newId, "cue", `Ten slow circles or bends each: ${names.join(", ")}`) }] }],
    });
  },
});
