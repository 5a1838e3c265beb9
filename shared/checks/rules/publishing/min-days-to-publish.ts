import { PRACTICE } from "../../blocks";
import { defineRule } from "../../define-rule";

const DAY = 86_400_000;
const inWords = (days: number): string => (days === 0 ? "No day" : days === 1 ? "One day" : `${days} days`);

export const minDaysToPublish = defineRule({
  meta: {
    id: "min-days-to-publish", version: 2, subject: "publishing", level: "consider", moment: "before publishing",
    summary: "Between session and publishing, and between today and publishing, there is time to speak, cut and check.",
    why: "One person does it all. What is rushed is the check, and the check is what keeps people safe.",
    source: PRACTICE,
    yieldsTo: ["publish-date"],
    defaults: { days: 2 },
    messages: {
      past: "Publishing is set for {publish}, which is past. Set a new day.",
      close: "{days} between the session and publishing, at least {min} expected. Move one of them.",
      left: "{days} left until publishing, and {open} of {all} blocks have no clip yet. Cut them first, or move the day.",
    },
  },
  check({ episode, now }, { days: min }, report) {
    const { publish, session } = episode;
    if (publish === null) return;
    const day = Date.parse(publish.date);
    const today = Date.parse(now.slice(0, 10));
    if (day < today) {
      report({ words: publish.date, message: "past", level: "fix", data: { publish: publish.date } });
      return;
    }
    const between = session.date === null ? null : Math.round((day - Date.parse(session.date)) / DAY);
    const left = Math.round((day - today) / DAY);
    const filmed = episode.blocks.filter(({ lines }) => lines.some(({ kind, text }) => (kind === "say" || kind === "shot") && text.trim() !== ""));
    const open = filmed.filter(({ clipSeconds }) => clipSeconds === null).length;
    if (between !== null && between >= 0 && between < min) report({ words: `${between} days`, message: "close", data: { days: inWords(between), min: `${min} days` } });
    else if (left < min && open > 0) report({ words: `${left} days left`, message: "left", data: { days: inWords(left), open, all: filmed.length } });
  },
});
