import { CUE_LABELS, type CueLabelName } from "../types";
import { packed, type LikenessModel } from "./model";

/** One labelled line as the trainer sees it. */
export interface Example {
  readonly features: ReadonlySet<string>;
  readonly labels: readonly CueLabelName[];
}

/** The labels and, last, "acceptable": they compete for each line. */
const CLASSES = CUE_LABELS.length + 1;
/** A feature seen in fewer lines teaches nothing about others. */
const LEAST = 2;
const EPOCHS = 30;
const RATE = 0.1;

/** Whole numbers below a bound, the same ones every time (a linear congruential generator, constants of Numerical Recipes). */
function numbers(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 4294967296) * below);
  };
}

function vocabularyOf(examples: readonly Example[]): Map<string, number> {
  const lines = new Map<string, number>();
  for (const { features } of examples) for (const name of features) lines.set(name, (lines.get(name) ?? 0) + 1);
  return new Map([...lines].filter(([, count]) => count >= LEAST).map(([name], index) => [name, index]));
}

/**
 * Softmax regression over the labels and "acceptable", by stochastic gradient descent with a rate per weight (AdaGrad:
 * Duchi, Hazan and Singer, 2011). A line of two labels aims at half each. The same examples in the same order give the same model.
 */
export function train(examples: readonly Example[]): LikenessModel {
  const vocabulary = vocabularyOf(examples);
  const rows = examples.map(({ features }) => Int32Array.from([...features].map((name) => vocabulary.get(name) ?? -1).filter((index) => index >= 0)));
  const aims = examples.map(({ labels }) => {
    const aim = new Float64Array(CLASSES);
    if (labels.length === 0) aim[CLASSES - 1] = 1;
    for (const label of labels) aim[CUE_LABELS.indexOf(label)] = 1 / labels.length;
    return aim;
  });
  const weights = new Float32Array(vocabulary.size * CLASSES);
  const squares = new Float32Array(weights.length).fill(1e-4);
  const bias = new Float64Array(CLASSES);
  const order = Int32Array.from(examples.keys());
  const pick = numbers(1);
  const scores = new Float64Array(CLASSES);
  for (let epoch = 0; epoch < EPOCHS; epoch += 1) {
    for (let i = order.length - 1; i > 0; i -= 1) {
      const j = pick(i + 1);
      [order[i], order[j]] = [order[j] ?? 0, order[i] ?? 0];
    }
    for (const example of order) {
      const row = rows[example] ?? new Int32Array();
      const aim = aims[example] ?? bias;
      const value = 2 / Math.sqrt(Math.max(1, row.length));
      scores.set(bias);
      for (const index of row) for (let c = 0, at = index * CLASSES; c < CLASSES; c += 1, at += 1) scores[c] = (scores[c] ?? 0) + value * (weights[at] ?? 0);
      let sum = 0;
      const top = Math.max(...scores);
      for (let c = 0; c < CLASSES; c += 1) sum += scores[c] = Math.exp((scores[c] ?? 0) - top);
      for (let c = 0; c < CLASSES; c += 1) {
        scores[c] = (scores[c] ?? 0) / sum - (aim[c] ?? 0);
        bias[c] = (bias[c] ?? 0) - 0.01 * (scores[c] ?? 0);
      }
      for (const index of row) {
        for (let c = 0, at = index * CLASSES; c < CLASSES; c += 1, at += 1) {
          const gradient = value * (scores[c] ?? 0);
          const square = (squares[at] ?? 0) + gradient * gradient;
          squares[at] = square;
          weights[at] = (weights[at] ?? 0) - (RATE * gradient) / Math.sqrt(square);
        }
      }
    }
  }
  return packed([...vocabulary.keys()], weights, bias);
}
