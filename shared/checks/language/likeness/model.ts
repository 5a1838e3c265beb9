import { CUE_LABELS } from "../types";

/** The labels and, last, "acceptable". */
const CLASSES = CUE_LABELS.length + 1;
/** Features whose weights are all this small next to the largest of their class are left out. */
const FAINT = 2;

/** A trained reader as it is kept: names of features, and for each a row of weights in steps of its class. */
export interface LikenessModel {
  readonly bias: readonly number[];
  /** What one step is worth, by class. */
  readonly steps: readonly number[];
  /** One name a line. */
  readonly features: string;
  /** Signed bytes, a row of classes for each feature, in base 64. */
  readonly weights: string;
}

/** Rounds weights to signed bytes and leaves the faint rows out. */
export function packed(names: readonly string[], weights: Float32Array, bias: Float64Array): LikenessModel {
  const largest = new Float64Array(CLASSES);
  weights.forEach((weight, at) => {
    const c = at % CLASSES;
    largest[c] = Math.max(largest[c] ?? 0, Math.abs(weight));
  });
  const steps = Array.from(largest, (most) => (most === 0 ? 1 : most / 127));
  const kept: string[] = [];
  const bytes: number[] = [];
  names.forEach((name, index) => {
    const row = steps.map((step, c) => Math.round((weights[index * CLASSES + c] ?? 0) / step));
    if (!row.some((value) => Math.abs(value) > FAINT)) return;
    kept.push(name);
    bytes.push(...row);
  });
  let binary = "";
  for (const byte of bytes) binary += String.fromCharCode(byte & 255);
  return { bias: Array.from(bias, (value) => Number(value.toFixed(5))), steps: steps.map((step) => Number(step.toPrecision(6))), features: kept.join("\n"), weights: btoa(binary) };
}

/** A model made ready to read with. */
export interface LikenessReader {
  /** How likely each label is, 0 to 1, in the order of the label list; what is missing to 1 is "acceptable". */
  probabilities(features: ReadonlySet<string>): Float64Array;
}

export function opened(model: LikenessModel): LikenessReader {
  const rows = new Map(model.features.split("\n").map((name, index) => [name, index * CLASSES]));
  const weights = Int8Array.from(atob(model.weights), (char) => (char.charCodeAt(0) << 24) >> 24);
  return {
    probabilities(features) {
      const sums = new Float64Array(CLASSES);
      let known = 0;
      for (const name of features) {
        const row = rows.get(name);
        if (row === undefined) continue;
        known += 1;
        for (let c = 0; c < CLASSES; c += 1) sums[c] = (sums[c] ?? 0) + (weights[row + c] ?? 0);
      }
      const value = 2 / Math.sqrt(Math.max(1, known));
      let total = 0;
      for (let c = 0; c < CLASSES; c += 1) {
        const odds = Math.exp((sums[c] ?? 0) * (model.steps[c] ?? 0) * value + (model.bias[c] ?? 0));
        sums[c] = odds;
        total += odds;
      }
      return sums.subarray(0, CLASSES - 1).map((odds) => odds / total);
    },
  };
}
