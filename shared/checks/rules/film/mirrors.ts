import { newLine } from "../../../episode";
import { shotsOf } from "../../../filming";
import { PRACTICE } from "../../blocks";
import { defineRule } from "../../define-rule";

export const mirrors = defineRule({
  meta: {
    id: "mirrors", version: 1, subject: "film", level: "consider", moment: "before filming",
    summary: "A note says that the mirrors were thought of.",
    why: "A mirror shows the camera, and the people behind it who did not ask to be filmed.",
    source: PRACTICE,
    defaults: { shots: 6 },
    messages: { unsaid: "{shots} shots and no word about mirrors. Check each mark for what a mirror shows, and note it." },
  },
  check({ episode, newId }, { shots: fewest }, report) {
    const first = episode.blocks[0];
    // A few shots to camera are checked at a glance; details show no mirror.
    const shots = episode.blocks.flatMap((block) => shotsOf(block)).filter(({ line, shot }) => line.text.trim() !== "" && shot.angle !== "insert").length;
    if (!first || shots < fewest || episode.blocks.some((block) => block.lines.some(({ kind, text }) => (kind === "note" || kind === "shot") && /\bmirrors?\b/i.test(text)))) return;
    const text = "Look into each mirror from the camera before the first take.";
    report({ block: first, words: "no word on mirrors", message: "unsaid", data: { shots }, remedies: [{ label: `Adds a note: ${text}`, edits: [{ type: "insert-line", block: first.id, at: null, line: newLine(newId, "note", text) }] }] });
  },
});
