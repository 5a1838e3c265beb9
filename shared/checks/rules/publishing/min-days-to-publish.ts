import { PRACTICE } from "../../blocks";
import { defineRule } from "../../define-rule";

const DAY = 86_400_000;

export const minDaysToPublish = defineRule({
  meta: {
    id: "min-days-to-publish", version: 1, subject: "publishing", level: "consider", moment: "before publishing",
    summary: "Between session and publishing there is time to speak, cut and check.",
    why: "One person does it all. What is rushed is the check, and the check is what keeps people safe.",
    source: PRACTICE,
    defaults: { days: 2 },
    messages: {
      past: "Publishing is set for {publish}, which is past. Set a new day.",
      close: "{days} between the session and publishing, at least {min} expected. Move one of them.",
    },
  },
  check({ episode, now }, { days: min }, report) {
    const { publish, session } = episode;
    if (publish === null) return;
    const day = Date.parse(publish.date);
    if (day < Date.parse(now.slice(0, 10))) {
      report({ words: publish.date, message: "past", data: { publish: publish.date } });
      return;
    }
    const days = session.date === null ? null : Math.round((day - Date.parse(session.date)) / DAY);
    if (days !== null && days >= 0 && days < min) report({ words: `${days} days`, message: "close", data: { days: days === 1 ? "One day" : "No day", min: `${min} days` } });
  },
});
