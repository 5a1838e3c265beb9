import type { Block } from "../../episode";
import { lbToKg } from "../loads/units";
import { parseSetLine } from "../set-line/parse";
import type { Scheme } from "../types";

/** A load that can be reckoned with: above 0, in kilograms or pounds. */
export type Weight = NonNullable<Scheme["load"]> & { readonly value: number; readonly unit: "kg" | "lb" };

function isWeight(load: Scheme["load"]): load is Weight {
  return load !== undefined && load.value !== null && load.value > 0 && (load.unit === "kg" || load.unit === "lb");
}

/** The weight a set line states; null when it states none in kg or lb, or cannot be read. */
export function weightIn(setLine: string): Weight | null {
  const parsed = parseSetLine(setLine);
  return parsed.ok && isWeight(parsed.scheme.load) ? parsed.scheme.load : null;
}

const inKg = ({ value, unit }: Weight): number => (unit === "lb" ? lbToKg(value) : value);

/** The heaviest weight of a block's working sets, as its line states it; null when none is stated in kg or lb. */
export function workWeight(block: Block): Weight | null {
  const weights = block.sets.filter((set) => set.role === "working").flatMap((set) => weightIn(set.text) ?? []);
  return weights.reduce<Weight | null>((most, weight) => (most === null || inKg(weight) > inKg(most) ? weight : most), null);
}
