import type { BlockKind } from "../../episode";
import { decode, scoreOf, type RowModel } from "../learning/row-model";
import type { Indexed } from "../order/speech";
import { featuresOf } from "./features";

/** The parts of an episode, in the order they come. */
export const ZONES: readonly BlockKind[] = ["opening", "warm-up", "exercise", "cool-down", "closing"];

/** Sentences as a row for the model. */
export function rowOf(speech: Indexed): { readonly features: string[][]; readonly steps: string[] } {
  const features = featuresOf(speech);
  return { features, steps: features.map((_, at) => (at === 0 ? "" : `${(speech.silences[at - 1] ?? 0) >= 8}`)) };
}

/** The part each sentence belongs to. */
export function zonesIn(speech: Indexed, model: RowModel): BlockKind[] {
  const { features, steps } = rowOf(speech);
  return decode(features.map((names) => scoreOf(model, names)), steps, model).map((label) => ZONES[label] ?? "exercise");
}
