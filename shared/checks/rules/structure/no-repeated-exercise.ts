import { blockName } from "../../../episode";
import { exerciseBlocks, exerciseOf, PRACTICE, wordsOf } from "../../blocks";
import { defineRule } from "../../define-rule";

export const noRepeatedExercise = defineRule({
  meta: {
    id: "no-repeated-exercise", version: 1, subject: "structure", level: "consider", moment: "before filming",
    summary: "No exercise stands twice in the running order without a word on why.",
    why: "A block copied and forgotten costs floor minutes. When it is meant, a note tells you so on the floor.",
    source: PRACTICE,
    messages: { twice: "{name} stands at {first} and again at {second}. Join them, or note why it comes twice." },
  },
  check({ episode }, _options, report) {
    const seen = new Map<string, number>();
    for (const block of exerciseBlocks(episode)) {
      const id = exerciseOf(block)?.id;
      const number = episode.blocks.indexOf(block) + 1;
      const first = id === undefined ? undefined : seen.get(id);
      if (id !== undefined && first === undefined) seen.set(id, number);
      if (first === undefined || wordsOf(block, "note").length > 0) continue;
      report({ block, words: "again", message: "twice", data: { name: blockName(block), first, second: number } });
    }
  },
});
