import type { TrueExercise } from "../learning/truth";
import type { Ordered } from "../schemes/compose";
import type { Scheme } from "../../training";

const WORK = ["seconds", "meters"] as const;

/** Is what a statement says true of some of these set lines? */
export function isTrueOf({ says }: Ordered, lines: readonly Scheme[]): boolean {
  const some = (is: (scheme: Scheme) => boolean): boolean => lines.some(is);
  if (says.sets !== undefined) return some((scheme) => scheme.sets === says.sets || scheme.reps?.length === says.sets);
  if (says.repsMin !== undefined) return some((scheme) => (scheme.repsMin === says.repsMin && scheme.repsMax === says.repsMax) || scheme.reps?.includes(says.repsMin ?? 0) === true);
  for (const field of WORK) if (says[field] !== undefined) return some((scheme) => scheme[field] === says[field]);
  if (says.load !== undefined) return some(({ load }) => load !== undefined && load.value === says.load?.value);
  if (says.restSeconds !== undefined) return some((scheme) => scheme.restSeconds === says.restSeconds);
  if (says.tempo !== undefined) return some((scheme) => scheme.tempo !== undefined);
  if (says.rir !== undefined) return some((scheme) => scheme.rir === says.rir);
  if (says.rpe !== undefined) return some((scheme) => scheme.rpe === says.rpe);
  if (says.eachSide !== undefined) return some((scheme) => scheme.eachSide === true);
  if (says.amrap !== undefined) return some((scheme) => scheme.amrap === true);
  return false;
}

/** Is it true of an exercise? Sets may be counted over all its lines. */
export function isTrueIn(statement: Ordered, { sets }: TrueExercise): boolean {
  const lines = sets.filter(({ role }) => (role === "ramp-up") === (statement.about === "ramp-up")).map(({ scheme }) => scheme);
  return isTrueOf(statement, lines) || (statement.says.sets !== undefined && lines.reduce((sum, scheme) => sum + (scheme.sets ?? 0), 0) === statement.says.sets);
}
