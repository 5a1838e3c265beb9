import { exerciseBlocks, PRACTICE } from "../../blocks";
import { defineRule } from "../../define-rule";

export const title = defineRule({
  meta: {
    id: "title", version: 1, subject: "publishing", level: "fix", moment: "before publishing",
    summary: "The episode has a title that shows whole.",
    why: "The title stands on the handout and in every list. A long one is cut where nobody chose.",
    source: PRACTICE,
    defaults: { max: 70 },
    messages: {
      none: "No title. Write one: it stands on the handout.",
      long: "The title has {length} characters, at most {max} expected. Shorten it.",
    },
  },
  check({ episode }, { max }, report) {
    const { length } = episode.title.trim();
    if (length === 0 && exerciseBlocks(episode).length > 0) report({ words: "no title", message: "none" });
    else if (length > max) report({ words: episode.title, message: "long", level: "consider", data: { length, max } });
  },
});
