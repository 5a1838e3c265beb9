import type { Mention } from "../names/find";
import type { Span, Word } from "../types";

const TURN = /^(?:then|next|after|followed|straight|finally|into|okay|alright|onto|superset|superseted|followed)$/;
const LEAD = /^(?:and|so|right|now|we|just)$/;
/** How many words may stand between the turn and the name. */
const NEAR = 6;

/** Cuts a sentence where it turns to another exercise: "squats for ten | then straight into push ups". */
export function splitAtNames(words: readonly Word[], sentences: readonly Span[], mentions: readonly Mention[]): Span[] {
  let next = 0;
  return sentences.flatMap(({ from, to }) => {
    const cuts: number[] = [];
    let seen = false;
    for (; next < mentions.length && (mentions[next]?.from ?? Infinity) < to; next += 1) {
      const mention = mentions[next] as Mention;
      for (let at = mention.from - 1; seen && at > from && at >= mention.from - NEAR && at >= (mentions[next - 1]?.to ?? 0); at -= 1) {
        if (!TURN.test(words[at]?.plain ?? "")) continue;
        while (at - 1 >= (mentions[next - 1]?.to ?? 0) && (LEAD.test(words[at - 1]?.plain ?? "") || TURN.test(words[at - 1]?.plain ?? ""))) at -= 1;
        if (at > from) cuts.push(at);
        break;
      }
      seen = true;
    }
    const edges = [from, ...cuts, to];
    return edges.slice(1).map((edge, place) => ({ from: edges[place] ?? from, to: edge }));
  });
}
