/**
 * The likeness reader: how much a line resembles lines that people judged, learned from a corpus of our own writing.
 *
 * It reads pictures that no pattern foresees, and it can be wrong; what it says is worded as likeness.
 */
import type { Reading } from "../grammar/context";
import type { Grammatical } from "../grammar";
import type { CueInput, CueLabelName } from "../types";
import { featuresOf } from "./features";
import { opened, type LikenessReader } from "./model";
import { nearest, shelved, type Shelf } from "./nearest";
import trained from "./weights.json";

let reader: LikenessReader | null = null;
const shelves = new Map<CueLabelName, Shelf>();

/**
 * How likely each label is for a line, from 0 to 1, in the order of the label list.
 *
 * @param plain - what the grammar reader found
 */
export function likenessOf(text: Reading, input: CueInput, plain: Grammatical): Float64Array {
  // Unpacking the weights takes a moment, so it waits for the first line.
  reader ??= opened(trained);
  return reader.probabilities(featuresOf(text, input, plain));
}

/** The two judged lines of a label that are most like a text, nearest first. */
export function nearestLines(text: string, label: CueLabelName): readonly string[] {
  const shelf = shelves.get(label) ?? shelved(trained.lines[label].split("\n"));
  shelves.set(label, shelf);
  return nearest(text, shelf, 2);
}
