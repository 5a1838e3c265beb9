import { blockName, linesOf, type Episode, type Partner } from "../../shared/episode";

/** What a relation means, in words. */
export const RELATION_WORDS: Readonly<Record<Partner["relation"], string>> = {
  paid: "paid", gifted: "gave goods", affiliate: "pays for sales through a link", "own brand": "the coach's own brand",
};

export interface SaidAt {
  readonly block: string;
  readonly line: string;
  /** "Opening" */
  readonly name: string;
}

/** Words compared without case, accents or marks. */
const plain = (text: string): string => text.normalize("NFKD").replace(/[^\p{L}\p{N} ]/gu, "").toLowerCase().replace(/\s+/g, " ").trim();

/** The say lines in which viewers hear of a partner, in order. */
export function disclosurePlaces(episode: Pick<Episode, "blocks">, partner: Pick<Partner, "name">): SaidAt[] {
  const name = plain(partner.name);
  if (name === "") return [];
  return episode.blocks.flatMap((block) =>
    linesOf(block, "say").filter((line) => ` ${plain(line.text)} `.includes(` ${name} `)).map((line) => ({ block: block.id, line: line.id, name: blockName(block) })));
}
