import { repsOf, type Ordered } from "../schemes/compose";
import { BEGINS, GOES_ON } from "./assembly";

/** Sets told one after the other as weight and reps, whichever comes first: "twelve at sixty, ten at seventy, eight at eighty". */

type Half = "load" | "reps";

/** A weight, or the reps of one set; null for any other figure. */
function halfOf({ says }: Ordered): Half | null {
  if (typeof says.load?.value === "number") return "load";
  return repsOf({ says }) === undefined ? null : "reps";
}

/** So many words at most are between a weight and the reps done with it. */
const NEAR = 8;

/** Where the run of weights and reps in turn that begins at a figure ends. */
function runFrom(own: readonly Ordered[], at: number): number {
  let end = at + 1;
  for (; end < own.length; end += 1) {
    const [before, next] = [own[end - 1] as Ordered, own[end] as Ordered];
    const [half, other] = [halfOf(before), halfOf(next)];
    if (half === null || other === null || half === other || before.about !== next.about) break;
  }
  return end;
}

const meanGap = (own: readonly Ordered[], first: number, end: number): number => {
  const gaps: number[] = [];
  for (let at = first; at + 1 < end; at += 2) gaps.push((own[at + 1]?.from ?? 0) - (own[at]?.to ?? 0));
  return gaps.length === 0 ? Infinity : gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length;
};

/**
 * The places of figures, where two pairs and more of weight and reps in a row are a set line each, if the two of a pair stand
 * nearer to each other than the pairs do.
 * @param own - of one exercise, in order; @param places - as they were heard
 */
export function inPairs(own: readonly Ordered[], places: readonly number[]): number[] {
  const out = [...places];
  for (let at = 0; at < own.length;) {
    const end = halfOf(own[at] as Ordered) === null ? at + 1 : runFrom(own, at);
    const isEven = (end - at) % 2 === 0 && end - at >= 4;
    const isNear = isEven && meanGap(own, at, end) <= Math.min(NEAR, meanGap(own, at + 1, end));
    if (isNear) for (let place = at; place < end; place += 1) out[place] = (place - at) % 2 === 0 ? BEGINS : GOES_ON;
    at = end;
  }
  return out;
}
