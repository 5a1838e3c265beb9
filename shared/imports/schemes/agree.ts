import type { MadeSet, SchemeRead } from "./compose";

/** Two readings of one exercise brought together: of its single figures, and of whole phrases. */

const working = ({ sets }: SchemeRead): MadeSet[] => sets.filter(({ role }) => role === "working");

/**
 * Figures as a rule; phrases where the figures gave no count, or nothing.
 * @param uncounted - the figures gave no number of sets
 */
export function agreed(figures: SchemeRead, phrases: SchemeRead, uncounted: boolean): SchemeRead {
  const [mine, theirs] = [working(figures), working(phrases)];
  const counts = theirs.some(({ scheme }) => (scheme.sets ?? 0) > 1 || scheme.emomMinutes !== undefined);
  if (theirs.length === 0 || (mine.length > 0 && !(uncounted && counts))) return figures;
  const ramps = figures.sets.filter(({ role }) => role === "ramp-up");
  return { sets: [...(ramps.length > 0 ? ramps : phrases.sets.filter(({ role }) => role === "ramp-up")), ...theirs], remarks: phrases.remarks };
}
