import { unpacked, type RowModel, type StoredModel } from "./row-model";
import weights from "./weights.json";

/** The readers of speech, in the order they read. */
export interface Models {
  /** What figures mean at first sight. */
  readonly first: RowModel;
  /** Which names begin exercises, at first sight. */
  readonly starts: RowModel;
  /** What figures mean, knowing where exercises begin. */
  readonly roles: RowModel;
  /** Which names begin exercises, knowing what figures mean. */
  readonly startsAgain: RowModel;
  /** Where the speaker turns to an exercise. */
  readonly turns: RowModel;
  /** To which part of an episode a sentence belongs. */
  readonly zones: RowModel;
  /** For which exercises a figure holds. */
  readonly owners: RowModel;
  /** Which figures make a set line together. */
  readonly assembly: RowModel;
}

/** What weights.json holds: the models, and a sum of the transcripts they were trained on. */
export interface Trained {
  readonly digest: string;
  readonly models: Readonly<Record<keyof Models, StoredModel>>;
}

const stored = weights as unknown as Trained;
let models: Models | null = null;

/** Unpacked when speech is first read. */
export const trainedModels = (): Models => (models ??= Object.fromEntries(Object.entries(stored.models).map(([name, model]) => [name, unpacked(model)])) as unknown as Models);
