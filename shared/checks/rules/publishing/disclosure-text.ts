import { shortened } from "../../blocks";
import { defineRule } from "../../define-rule";
import { isPlain, names, plainWords } from "../../disclosure";

export const disclosureText = defineRule({
  meta: {
    id: "disclosure-text", version: 1, subject: "publishing", level: "stop", moment: "before publishing",
    summary: "The written disclosure of each partner names the partner and says plainly that it is an ad.",
    why: "These words open the description and stand on the handout. Readers must not have to guess.",
    source: { title: "FTC Endorsement Guides, 16 CFR Part 255, 2023; CAP Code (UK) rule 2.1 and ASA guidance on wording, from memory", at: "255.0(f), 255.5" },
    messages: {
      unclear: "{partner}: the written disclosure \"{text}\" has no plain word. Begin it with \"Ad:\".",
      nameless: "{partner}: the written disclosure \"{text}\" does not name the partner. Name it.",
    },
  },
  check({ episode }, _options, report) {
    for (const partner of episode.partners) {
      const text = partner.disclosure.trim();
      const name = partner.name.trim();
      // Left empty, the documents write one themselves.
      if (text === "" || name === "" || (isPlain(text) && names(text, partner))) continue;
      const better = plainWords(partner);
      const partners = episode.partners.map((each) => (each === partner ? { ...each, disclosure: better } : each));
      report({
        words: text, message: isPlain(text) ? "nameless" : "unclear", data: { partner: name, text: shortened(text, 80) },
        remedies: [{ label: `Writes: ${better}`, edits: [{ type: "set-facts", fields: { partners } }] }],
      });
    }
  },
});
