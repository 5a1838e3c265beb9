import type { Block, CarryOver } from "../../episode";
import { increase } from "../loads/increase";
import { tidy } from "../loads/round-load";
import { weightIn, workWeight, type Weight } from "./weight";

/** Today's weight against last time's; both have the same unit and are for the same number of hands. */
export interface WeightChange {
  readonly now: Weight;
  readonly before: Weight;
  /** Now less before, in their unit. */
  readonly change: number;
  /** The change as a share of the weight before, in percent; negative when it falls. */
  readonly percent: number;
  /** It rises by more than is commonly recommended in one step. */
  readonly beyondRecommended: boolean;
}

/** The heaviest weight of last time: what was really lifted where it was written down, otherwise what was planned. */
function weightOf(last: CarryOver): Weight | null {
  const planned = weightIn(last.sets);
  const lifted = Math.max(...last.actuals.flatMap(({ load }) => load ?? []));
  return planned && lifted > 0 ? { ...planned, value: lifted } : planned;
}

/**
 * What changed in a block's working weight since last time; the heaviest of each counts.
 *
 * Weights that were lifted have no unit of their own and take that of last time's set line.
 * @returns null when either weight is not stated in kg or lb, or the two differ in unit or in hands
 */
export function weightChange(block: Block, last: CarryOver): WeightChange | null {
  const now = workWeight(block);
  const before = weightOf(last);
  if (!now || !before || now.unit !== before.unit || now.perHand !== before.perHand) return null;
  const change = tidy(now.value - before.value);
  return { now, before, change, percent: (100 * change) / before.value, beyondRecommended: now.value > increase(before.value).max };
}
