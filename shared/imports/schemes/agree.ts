import type { Scheme } from "../../training";
import { made, WORK_FIELDS, type MadeSet, type SchemeRead } from "./compose";

/** Two readings of one exercise brought together: of its single figures, and of whole phrases. */

/** What one reading may have missed. */
const EXTRAS = ["restSeconds", "load", "eachSide", "tempo", "rir", "rpe"] as const;

const isSameWork = (a: Scheme, b: Scheme): boolean => a.sets === b.sets && WORK_FIELDS.every((field) => JSON.stringify(a[field]) === JSON.stringify(b[field]));

const working = ({ sets }: SchemeRead): MadeSet[] => sets.filter(({ role }) => role === "working");

/** The set with what the other reading says more of it. */
function filled(set: MadeSet, other: MadeSet): MadeSet {
  const more = Object.fromEntries(EXTRAS.filter((field) => set.scheme[field] === undefined && other.scheme[field] !== undefined).map((field) => [field, other.scheme[field]]));
  const scheme = { ...set.scheme, ...more };
  return (Object.keys(more).length > 0 ? made(set.role, scheme) : null) ?? set;
}

/**
 * The better of both: figures as a rule; phrases where the figures gave no count, or nothing. Where both tell of the same work,
 * what one of them missed is filled in from the other.
 * @param uncounted - the figures gave no number of sets
 */
export function agreed(figures: SchemeRead, phrases: SchemeRead, uncounted: boolean): SchemeRead {
  const [mine, theirs] = [working(figures), working(phrases)];
  const counts = theirs.some(({ scheme }) => (scheme.sets ?? 0) > 1 || scheme.emomMinutes !== undefined);
  if (mine.length === 0 || (uncounted && counts)) {
    if (theirs.length === 0 || (mine.length > 0 && !counts)) return figures;
    const ramps = figures.sets.filter(({ role }) => role === "ramp-up");
    return { sets: [...(ramps.length > 0 ? ramps : phrases.sets.filter(({ role }) => role === "ramp-up")), ...theirs], remarks: phrases.remarks };
  }
  return { ...figures, sets: figures.sets.map((set) => {
    const other = set.role === "working" ? theirs.find(({ scheme }) => isSameWork(scheme, set.scheme)) : undefined;
    return other ? filled(set, other) : set;
  }) };
}
