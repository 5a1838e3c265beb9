import { recording } from "../../../filming";
import { PRACTICE } from "../../blocks";
import { defineRule } from "../../define-rule";

/** What keeps a phone filming. */
const POWER = /\b(?:batter(?:y|ies)|power ?bank|power pack|charger|charging|plug|mains)\b/i;

export const spareBattery = defineRule({
  meta: {
    id: "spare-battery", version: 1, subject: "film", level: "consider", moment: "before filming",
    summary: "The kit holds enough power for what is to be recorded.",
    why: "A phone filming on a warm floor empties faster than in a pocket, and the closing comes last.",
    source: PRACTICE,
    defaults: { batteries: 0.75 },
    messages: { low: "About {minutes} min of recording take most of a battery ({percent} %), and the kit lists no spare power. Pack some." },
  },
  check({ episode }, { batteries }, report) {
    const { minutes, batteries: needed } = recording(episode);
    if (needed <= batteries || episode.session.kit.some((item) => POWER.test(item))) return;
    report({
      words: "no spare power", message: "low", data: { minutes: Math.round(minutes), percent: Math.round(needed * 100) },
      remedies: [{ label: "Adds to the kit: Spare battery", edits: [{ type: "set-facts", fields: { session: { ...episode.session, kit: [...episode.session.kit, "Spare battery"] } } }] }],
    });
  },
});
