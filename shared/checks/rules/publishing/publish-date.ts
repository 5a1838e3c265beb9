import { exerciseBlocks, PRACTICE } from "../../blocks";
import { defineRule } from "../../define-rule";

export const publishDate = defineRule({
  meta: {
    id: "publish-date", version: 1, subject: "publishing", level: "consider", moment: "before publishing",
    summary: "The day of publishing is set and comes after the session.",
    why: "A series keeps its viewers by keeping its day.",
    source: PRACTICE,
    messages: {
      none: "No publishing day. Set one, so that the days until then can be planned.",
      early: "Publishing is set for {publish}, the session for {session}. Move one of them.",
    },
  },
  check({ episode }, _options, report) {
    const { publish, session } = episode;
    if (publish === null) {
      if (exerciseBlocks(episode).length > 0) report({ words: "no day", message: "none" });
    } else if (session.date !== null && publish.date < session.date) {
      report({ words: publish.date, message: "early", level: "fix", data: { publish: publish.date, session: session.date } });
    }
  },
});
