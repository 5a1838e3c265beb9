import { decode, scoreOf, type RowModel } from "../learning/row-model";
import type { Ordered } from "../schemes/compose";
import type { Word } from "../types";
import { featuresOf, stepsOf } from "./features";

/** What a figure is to the set lines of its exercise: nothing, the begin of one, more of the open one, true of all. */
export const [ASIDE, BEGINS, GOES_ON, FOR_ALL] = [0, 1, 2, 3];
export const ASSEMBLY_LABELS = 4;

/** The place of each figure of one exercise in its set lines. */
export const placesOf = (own: readonly Ordered[], words: readonly Word[], model: RowModel): number[] => decode(featuresOf(own, words).map((names) => scoreOf(model, names)), stepsOf(own), model);
