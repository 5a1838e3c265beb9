import { blockName, emptyBlock, newLine, type Block, type Edit, type Line, type NewId } from "../../../episode";
import type { CheckContext } from "../../types";
import { firstOfKind, wordsOf } from "../../blocks";
import { defineRule } from "../../define-rule";
import { isPlain, names, plainWords, weakWord } from "../../disclosure";

/** Puts the disclosure first in the opening; without one, first in the first block; without any, into a new opening. */
function insertion({ episode }: CheckContext, newId: NewId, text: string): Edit {
  const line = newLine(newId, "say", text);
  const into = firstOfKind(episode, "opening") ?? episode.blocks[0];
  return into ? { type: "insert-line", block: into.id, at: 0, line } : { type: "insert-block", at: 0, block: emptyBlock(newId, "opening", { title: "Opening", lines: [line] }) };
}

interface Mention { readonly block: Block; readonly line: Line }

export const partnerDisclosure = defineRule({
  meta: {
    id: "partner-disclosure", version: 2, subject: "publishing", level: "stop", moment: "before speaking",
    summary: "Each partner is disclosed aloud in the opening, in a plain word, before or with the first mention.",
    why: "Advertising law asks for a disclosure that is hard to miss and plainly worded. A line in the description is not heard by those who only watch.",
    source: { title: "FTC Endorsement Guides, 16 CFR Part 255, 2023; CAP Code (UK) rule 2.1; Directive 2005/29/EC, Annex I no. 11, from memory", at: "255.0(f), 255.5" },
    messages: {
      missing: "{partner} is a partner ({relation}), and no spoken line says so. Say it in the opening, with a plain word such as \"ad\".",
      weak: "{partner} is mentioned with \"{word}\" alone. Say \"ad\", which everybody understands.",
      late: "{partner} is mentioned before the disclosure is heard. Say it first.",
      deep: "{partner} is disclosed only in {block}, block {number} of {count}. Say it in the opening, before anybody has left.",
    },
  },
  check(context, _options, report) {
    const { blocks, partners } = context.episode;
    const said = blocks.flatMap((block): Mention[] => wordsOf(block, "say").map((line) => ({ block, line })));
    // The opening, or whatever is heard first where there is none.
    const opening = firstOfKind(context.episode, "opening") ?? said[0]?.block;
    const early = opening ? blocks.indexOf(opening) : 0;
    for (const partner of partners) {
      const name = partner.name.trim();
      if (name === "") continue;
      const mentions = said.filter(({ line }) => names(line.text, partner));
      const [first] = mentions;
      const plain = mentions.find(({ line }) => isPlain(line.text));
      const text = plainWords(partner);
      const remedies = [{ label: `Says in the opening: ${text}`, edits: [insertion(context, context.newId, text)] }];
      const weak = mentions.find(({ line }) => weakWord(line.text) !== null);
      if (!plain && weak) report({ ...weak, message: "weak", data: { partner: name, word: weakWord(weak.line.text) ?? "" }, remedies });
      else if (!plain) report({ words: name, message: "missing", data: { partner: name, relation: partner.relation }, remedies });
      else if (first && first !== plain) report({ ...first, message: "late", data: { partner: name }, remedies });
      else if (blocks.indexOf(plain.block) > early) report({ ...plain, message: "deep", level: "fix", data: { partner: name, block: blockName(plain.block), number: blocks.indexOf(plain.block) + 1, count: blocks.length }, remedies });
    }
  },
});
