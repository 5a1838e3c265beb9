import heardWeights from "../listener/weights.json";
import { unpackedListener, type Listener, type StoredListener } from "../listener/weights";
import { unpacked, type RowModel, type StoredModel } from "./row-model";
import weights from "./weights.json";

/** Readers that look at one row of places after the other. */
export interface RowModels {
  /** What figures mean at first sight. */
  readonly first: RowModel;
  /** What figures mean, knowing where exercises begin. */
  readonly roles: RowModel;
  /** To which part of an episode a sentence belongs. */
  readonly zones: RowModel;
  /** Which figures make a set line together. */
  readonly assembly: RowModel;
}

/** The readers of speech. */
export interface Models extends RowModels {
  /** What every word means among all the others. */
  readonly listener: Listener;
}

/** What weights.json holds: the models, and a sum of the transcripts they were trained on. */
export interface Trained {
  readonly digest: string;
  readonly models: Readonly<Record<keyof RowModels, StoredModel>>;
}

const stored = weights as unknown as Trained;
let models: Models | null = null;

/** Unpacked when speech is first read. */
export function trainedModels(): Models {
  const { first, roles, zones, assembly } = stored.models;
  return (models ??= { first: unpacked(first), roles: unpacked(roles), zones: unpacked(zones), assembly: unpacked(assembly), listener: unpackedListener(heardWeights as unknown as StoredListener) });
}
