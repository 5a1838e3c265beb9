import { unpacked, type RowModel, type StoredModel } from "./row-model";
import weights from "./weights.json";

/** The three readers of speech: what figures mean at first sight, where exercises begin, and what figures mean knowing both. */
export interface Models {
  readonly first: RowModel;
  readonly starts: RowModel;
  readonly roles: RowModel;
}

/** What weights.json holds: the models, and a sum of the transcripts they were trained on. */
export interface Trained {
  readonly digest: string;
  readonly first: StoredModel;
  readonly starts: StoredModel;
  readonly roles: StoredModel;
}

const stored = weights as unknown as Trained;
let models: Models | null = null;

/** Unpacked when speech is first read. */
export const trainedModels = (): Models => (models ??= { first: unpacked(stored.first), starts: unpacked(stored.starts), roles: unpacked(stored.roles) });
