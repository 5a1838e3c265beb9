import { muscleSets } from "../../../training";
import { PRACTICE } from "../../blocks";
import { defineRule } from "../../define-rule";

export const maxMuscleSets = defineRule({
  meta: {
    id: "max-muscle-sets", version: 1, subject: "dose", level: "consider", moment: "before filming",
    summary: "One session does not give one muscle more sets than most people do in a week.",
    why: "Viewers copy the whole session. Many sets for one muscle at once bring soreness, and little more for it.",
    source: PRACTICE,
    defaults: { sets: 12 },
    messages: { many: "{muscle}: {counted} sets in this session (helping ones counted half), at most {max} expected. Spread them over the week." },
  },
  check({ episode }, { sets }, report) {
    for (const { muscle, counted } of muscleSets(episode)) {
      if (counted > sets) report({ words: muscle, message: "many", data: { muscle: muscle.charAt(0).toUpperCase() + muscle.slice(1), counted, max: sets } });
    }
  },
});
