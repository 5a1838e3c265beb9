import type { PromptStretch } from "./script";

/** Where a stretch lies in the text as laid out: pixels from its top to the middle of its first line. */
export type StretchPlaces = readonly number[];

/**
 * How far the text is pushed up so that the words being read lie on the reading line.
 * While a stretch is read the next one comes up to the line; in the pause after it the text rests.
 * @param places - one per stretch
 * @param smooth - false moves from stretch to stretch at once, for people who asked for less motion
 * @returns pixels
 */
export function pushAt(stretches: readonly PromptStretch[], places: StretchPlaces, at: number, smooth: boolean): number {
  const index = stretches.findIndex(({ to }) => at < to);
  const last = stretches.length - 1;
  if (last < 0) return 0;
  if (index < 0) return places[last] ?? 0;
  const stretch = stretches[index];
  const here = places[index] ?? 0;
  if (!stretch || !smooth || at <= stretch.from || index === last) return here;
  const share = (at - stretch.from) / Math.max(1e-6, stretch.to - stretch.from);
  return here + ((places[index + 1] ?? here) - here) * share;
}
