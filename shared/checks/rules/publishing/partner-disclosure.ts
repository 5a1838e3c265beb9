import { emptyBlock, newLine, type Edit, type NewId, type Partner } from "../../../episode";
import type { CheckContext } from "../../types";
import { firstOfKind, wordsOf } from "../../blocks";
import { defineRule } from "../../define-rule";

/** Understood by anybody as "I am paid or favoured". */
const PLAIN = /\b(?:ad|advert|advertisement|advertising|paid|pays? (?:me|for)|i earn (?:a )?commission|my own (?:business|brand|company|shop)|i own)\b/i;
/** Heard often and found unclear by regulators when it stands alone. */
const WEAK = /\b(?:gifted|sponsored|spon|affiliate|collab|thanks to|in association with|supported by|free)\b/i;

const RELATION_WORDS: Readonly<Record<Partner["relation"], (name: string) => string>> = {
  paid: (name) => `Ad: ${name} pays for this episode.`,
  gifted: (name) => `Ad: ${name} sent me products for free.`,
  affiliate: (name) => `Ad: I earn a commission when you buy from ${name}.`,
  "own brand": (name) => `Ad: ${name} is my own business.`,
};

interface Spoken { readonly text: string; readonly place: number }

/** Everything said, in order. */
const spoken = ({ episode }: CheckContext): Spoken[] => episode.blocks.flatMap((block, place) => wordsOf(block, "say").map(({ text }) => ({ text, place })));

/** Puts the disclosure first in the opening; without one, first in the first block; without any, into a new opening. */
function insertion({ episode }: CheckContext, newId: NewId, text: string): Edit {
  const line = newLine(newId, "say", text);
  const into = firstOfKind(episode, "opening") ?? episode.blocks[0];
  return into ? { type: "insert-line", block: into.id, at: 0, line } : { type: "insert-block", at: 0, block: emptyBlock(newId, "opening", { title: "Opening", lines: [line] }) };
}

export const partnerDisclosure = defineRule({
  meta: {
    id: "partner-disclosure", version: 1, subject: "publishing", level: "stop", moment: "before speaking",
    summary: "Each partner is disclosed aloud, in a plain word, before or with the first mention.",
    why: "Advertising law asks for a disclosure that is hard to miss and plainly worded. A line in the description is not heard by those who only watch.",
    source: { title: "FTC Endorsement Guides, 16 CFR Part 255, 2023; CAP Code (UK) rule 2.1; Directive 2005/29/EC, Annex I no. 11, from memory", at: "255.0(f), 255.5" },
    messages: {
      missing: "{partner} is a partner ({relation}), and no spoken line says so. Say it in the opening, with a plain word such as \"ad\".",
      weak: "{partner} is mentioned with \"{word}\" alone. Say \"ad\", which everybody understands.",
      late: "{partner} is mentioned before the disclosure is heard. Say it first.",
    },
  },
  check(context, _options, report) {
    const said = spoken(context);
    for (const partner of context.episode.partners) {
      const name = partner.name.trim();
      if (name === "") continue;
      const mentions = said.filter(({ text }) => text.toLowerCase().includes(name.toLowerCase()));
      const plain = mentions.find(({ text }) => PLAIN.test(text));
      const own = partner.disclosure.trim();
      const text = PLAIN.test(own) && own.toLowerCase().includes(name.toLowerCase()) ? own : RELATION_WORDS[partner.relation](name);
      const remedies = [{ label: `Says in the opening: ${text}`, edits: [insertion(context, context.newId, text)] }];
      const weak = mentions.map((mention) => WEAK.exec(mention.text)).find((match) => match !== null);
      if (!plain && weak) report({ words: name, message: "weak", data: { partner: name, word: weak[0] }, remedies });
      else if (!plain) report({ words: name, message: "missing", data: { partner: name, relation: partner.relation }, remedies });
      else if (mentions[0] && mentions[0].place < plain.place) report({ words: name, message: "late", data: { partner: name }, remedies });
    }
  },
});
