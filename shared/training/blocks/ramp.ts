import type { Block } from "../../episode";
import { exerciseById } from "../../exercises";
import { ASSUMED } from "../clock/assumptions";
import { rampUp, type RampUpSet } from "../loads/ramp-up";
import { printSetLine } from "../set-line/print";
import { workWeight, type Weight } from "./weight";

/** The usual empty bar, and the steps from one dumbbell or plate load to the next. Common practice, no source. */
const BAR = { kg: 20, lb: 45 } as const;
const STEP = { kg: { hand: 2, other: 2.5 }, lb: { hand: 5, other: 5 } } as const;

/** A usual way up to a block's working weight. */
export interface Ramp {
  readonly weight: Weight;
  /** Every load is a multiple of it, or the empty bar; unit of the weight. */
  readonly step: number;
  readonly sets: readonly (RampUpSet & { /** Share of the working weight. */ readonly percent: number })[];
  /** The same as set lines, in order. */
  readonly lines: readonly string[];
}

/**
 * The ramp for a block: where its exercise usually has one and its weight leaves room for lighter sets; null otherwise.
 * A starting point to edit, not a prescription.
 */
export function rampOf(block: Block): Ramp | null {
  const weight = workWeight(block);
  const exercise = block.exercise === null ? undefined : exerciseById(block.exercise);
  if (!weight || !exercise?.rampUp) return null;
  const step = STEP[weight.unit][weight.perHand ? "hand" : "other"];
  const sets = rampUp(weight.value, { bar: exercise.equipment.includes("barbell") ? BAR[weight.unit] : null, step });
  if (sets.length === 0) return null;
  const side = exercise.sides === "each side" ? { eachSide: true as const } : {};
  return {
    weight, step,
    sets: sets.map((set) => ({ ...set, percent: (100 * set.load) / weight.value })),
    lines: sets.map(({ load, reps }) => printSetLine({ sets: 1, repsMin: reps, repsMax: reps, ...side, load: { ...weight, value: load }, restSeconds: ASSUMED.rest["ramp-up"] })),
  };
}
