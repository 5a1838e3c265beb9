import type { Example } from "../learning/train";
import type { Indexed } from "../order/speech";
import { startsMarked } from "../starts/training";
import { wayTo } from "./features";
import { inOrder, TURN } from "./turns";

/** A turn that stands further from every word it may begin at teaches nothing. */
const NEAR = 4;

/** A row for each marked turn whose exercise is named. */
export function turnExamples(speech: Indexed, turns: readonly { readonly at: number; readonly to: string }[]): Example[] {
  let from = 0;
  return inOrder(startsMarked(speech, turns)).flatMap((candidate) => {
    const way = wayTo(speech, candidate, from);
    from = candidate.span.to;
    const mark = turns.findLast(({ at }) => at <= candidate.span.from)?.at ?? candidate.span.from;
    const away = way.places.map((place) => Math.abs(place - mark));
    const best = Math.min(...away);
    const turn = away.indexOf(best);
    return best > NEAR ? [] : [{ ...way, labels: way.places.map((_, at) => (at < turn ? 0 : at === turn ? TURN : 2)) }];
  });
}
