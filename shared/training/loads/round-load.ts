import { positive } from "./positive";

/** Loads are kept to a thousandth, so that 0.1 + 0.2 is 0.3, and zero has no sign. */
export const tidy = (load: number): number => Math.round(load * 1000) / 1000 + 0;

/**
 * The nearest load that can be made in steps; on a tie the lighter one, because lighter is safer.
 * @param step - kg or lb, above 0, the unit of `load`
 * @throws {RangeError} when the step is not positive
 * @source Common practice, no source
 */
export function roundLoad(load: number, step: number): number {
  positive(step, "A step");
  // a hair below the half counts as the half, so that ties stay ties in binary
  return tidy(Math.ceil(tidy(load / step) - 0.5) * step);
}
