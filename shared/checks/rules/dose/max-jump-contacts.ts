import { exerciseBlocks, exerciseOf, workingSets } from "../../blocks";
import { defineRule } from "../../define-rule";

export const maxJumpContacts = defineRule({
  meta: {
    id: "max-jump-contacts", version: 1, subject: "dose", level: "consider", moment: "before filming",
    summary: "The landings of one session stay within what the audience is used to.",
    why: "Every landing counts, also the easy ones. Tendons and shins complain days later.",
    source: { title: "NSCA Essentials of Strength Training and Conditioning, 4th ed., 2016 (from memory)", at: "plyometrics: foot contacts by experience" },
    defaults: { beginner: 100, intermediate: 120, advanced: 140 },
    messages: { many: "{contacts} landings in the session, at most {max} expected for this audience. Fewer sets or repetitions." },
  },
  check({ episode }, options, report) {
    const contacts = exerciseBlocks(episode).filter((block) => exerciseOf(block)?.family === "plyometric").flatMap(workingSets).reduce((sum, { scheme }) => {
      const reps = scheme.reps?.reduce((a, b) => a + b, 0) ?? (scheme.sets ?? 1) * (scheme.repsMax ?? 0);
      return sum + reps * (scheme.eachSide ? 2 : 1);
    }, 0);
    const { level } = episode.audience;
    const max = level === "advanced" || level === "intermediate" ? options[level] : options.beginner;
    if (contacts > max) report({ words: String(contacts), message: "many", data: { contacts, max } });
  },
});
