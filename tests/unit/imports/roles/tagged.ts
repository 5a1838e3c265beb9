import type { Role, Tagged } from "../../../../shared/imports/roles/tagger";
import { tokensOf, type Token } from "../../../../shared/imports/schemes/figures";
import { wordsOfText } from "../../../../shared/imports/source/words";

/** Tokens of some words with the roles written behind them: "twenty/load". */
export function tagged(text: string): { readonly tokens: readonly Token[]; readonly tags: Tagged[] } {
  const pieces = text.split(" ").map((piece) => piece.split("/"));
  const words = wordsOfText(pieces.map(([word]) => word).join(" "));
  const tokens = tokensOf(words, 0, words.length, new Set(), new Set());
  const tags = tokens.flatMap((token, place) => {
    const role = pieces[token.at]?.[1];
    return role !== undefined && tokens.findIndex(({ at }) => at === token.at) === place ? [{ place, role: role as Role }] : [];
  });
  return { tokens, tags };
}
