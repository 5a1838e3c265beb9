import { positive } from "./positive";
import { roundLoad } from "./round-load";

export interface RampUpSet {
  /** Unit of the work load. */
  readonly load: number;
  readonly reps: number;
}

/** Share of the work load and reps: five light, three, two. */
const RECIPE = [[0.4, 5], [0.6, 3], [0.8, 2]] as const;
const BAR_REPS = 8;

/**
 * A usual ramp towards a work load: the empty bar, then 40, 60 and 80 percent of the work load for fewer reps each time.
 *
 * A ramp-up set below the bar becomes the bar; sets that would repeat a load or reach the work load are left out.
 * A starting point to edit, not a prescription.
 * @param options.bar - weight of the empty bar, or null where there is none (dumbbells, stacks)
 * @param options.step - smallest step of the load, ties down
 * @throws {RangeError} when work load or step is not positive
 * @source Common practice, no source; that light reps alone are the poorest preparation: PMC7558980, 2020
 */
export function rampUp(workLoad: number, options: { readonly bar: number | null; readonly step: number }): RampUpSet[] {
  positive(workLoad, "A work load");
  const { bar, step } = options;
  const sets: RampUpSet[] = bar === null ? [] : [{ load: bar, reps: BAR_REPS }];
  for (const [share, reps] of RECIPE) sets.push({ load: Math.max(roundLoad(workLoad * share, step), bar ?? 0), reps });
  return sets.filter(({ load }, index) => load > 0 && load < workLoad && load > (sets[index - 1]?.load ?? -1));
}
