/** A row of places that each get a label: what speaks for it at the place, and what follows what. */
export interface RowModel {
  /** Labels there are. */
  readonly count: number;
  /** Weights by feature, a number for each label. */
  readonly weights: ReadonlyMap<string, Float32Array>;
  /** Weights of a label after another one ("3"), and of that by the way between them ("3 near"). */
  readonly moves: ReadonlyMap<string, Float32Array>;
}

export const scoreOf = (model: RowModel, features: readonly string[]): Float64Array => {
  const scores = new Float64Array(model.count);
  for (const feature of features) {
    const weights = model.weights.get(feature);
    if (weights) for (let label = 0; label < scores.length; label += 1) scores[label] = (scores[label] ?? 0) + (weights[label] ?? 0);
  }
  return scores;
};

/** The likeliest labels of a row (Viterbi, 1967). @param steps - the way to each place from the one before */
export function decode(scores: readonly Float64Array[], steps: readonly string[], model: RowModel): number[] {
  const { count } = model;
  const from: Int32Array[] = [];
  let best = scores[0] ?? new Float64Array(count);
  for (let at = 1; at < scores.length; at += 1) {
    const here = scores[at] as Float64Array;
    const next = new Float64Array(count);
    const source = new Int32Array(count);
    const rows = Array.from({ length: count }, (_, last) => [model.moves.get(`${last}`), model.moves.get(`${last} ${steps[at]}`)] as const);
    for (let label = 0; label < count; label += 1) {
      let [top, chosen] = [-Infinity, 0];
      for (let last = 0; last < count; last += 1) {
        const [plain, kind] = rows[last] ?? [];
        const sum = (best[last] ?? 0) + (plain?.[label] ?? 0) + (kind?.[label] ?? 0);
        if (sum > top) [top, chosen] = [sum, last];
      }
      next[label] = top + (here[label] ?? 0);
      source[label] = chosen;
    }
    from.push(source);
    best = next;
  }
  let label = best.indexOf(Math.max(...best));
  const labels = [label];
  for (let at = from.length - 1; at >= 0; at -= 1) {
    label = from[at]?.[label] ?? 0;
    labels.unshift(label);
  }
  return scores.length === 0 ? [] : labels;
}

/** A model on paper: for each feature pairs of a label's number and a whole weight. */
export interface StoredModel {
  readonly count: number;
  readonly weights: Readonly<Record<string, readonly number[]>>;
  readonly moves: Readonly<Record<string, readonly number[]>>;
}

/** Smaller weights decide nothing, and most are small. */
const LEAST = 4;

const stored = (rows: ReadonlyMap<string, Float32Array>): Record<string, number[]> =>
  Object.fromEntries([...rows].sort(([a], [b]) => (a < b ? -1 : 1)).flatMap(([name, row]) => {
    const pairs = [...row].flatMap((weight, label) => (Math.abs(weight) < LEAST ? [] : [label, Math.round(weight)]));
    return pairs.length === 0 ? [] : [[name, pairs]];
  }));

const rowsOf = (rows: Readonly<Record<string, readonly number[]>>, count: number): Map<string, Float32Array> =>
  new Map(Object.entries(rows).map(([name, pairs]) => {
    const row = new Float32Array(count);
    for (let at = 0; at < pairs.length; at += 2) row[pairs[at] ?? 0] = pairs[at + 1] ?? 0;
    return [name, row];
  }));

export const packed = ({ count, weights, moves }: RowModel): StoredModel => ({ count, weights: stored(weights), moves: stored(moves) });
export const unpacked = ({ count, weights, moves }: StoredModel): RowModel => ({ count, weights: rowsOf(weights, count), moves: rowsOf(moves, count) });
