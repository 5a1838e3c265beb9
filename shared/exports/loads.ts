import type { Units } from "../episode";
import { kgToLb, lbToKg } from "../training";

/**
 * A load of the other unit in this one, as a rack has it: pounds to the whole above ten and to the half below,
 * kilograms to the half. Every paper rounds with it, so that no two of them name different weights.
 * @param value - in the other unit; negative for help
 */
export function convertLoad(value: number, to: Units): number {
  const exact = to === "lb" ? kgToLb(Math.abs(value)) : lbToKg(Math.abs(value));
  const step = to === "lb" && exact >= 10 ? 1 : 0.5;
  return Math.sign(value) * Math.round(exact / step) * step;
}
