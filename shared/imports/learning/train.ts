import { chances } from "./chances";
import { decode, scoreOf, type RowModel } from "./row-model";

/** One row as the trainer sees it: features, way from the one before, and true label of each place. */
export interface Example {
  readonly features: readonly (readonly string[])[];
  readonly steps: readonly string[];
  readonly labels: readonly number[];
}

const EPOCHS = 8;
const MARGIN = 250;
/** A feature seen less often teaches nothing about other speech. */
const LEAST = 2;

class Averaged {
  constructor(private readonly count: number) {}

  readonly rows = new Map<string, Float32Array>();
  private readonly sums = new Map<string, Float64Array>();
  private readonly seen = new Map<string, Float64Array>();

  change(name: string, label: number, by: number, now: number): void {
    let row = this.rows.get(name);
    if (!row) {
      row = new Float32Array(this.count);
      this.rows.set(name, row);
      this.sums.set(name, new Float64Array(this.count));
      this.seen.set(name, new Float64Array(this.count));
    }
    const [sum, seen] = [this.sums.get(name) as Float64Array, this.seen.get(name) as Float64Array];
    sum[label] = (sum[label] ?? 0) + (now - (seen[label] ?? 0)) * (row[label] ?? 0);
    seen[label] = now;
    row[label] = (row[label] ?? 0) + by;
  }

  mean(now: number): Map<string, Float32Array> {
    const out = new Map<string, Float32Array>();
    for (const [name, row] of this.rows) {
      const [sum, seen] = [this.sums.get(name) as Float64Array, this.seen.get(name) as Float64Array];
      out.set(name, row.map((weight, label) => ((sum[label] ?? 0) + (now - (seen[label] ?? 0)) * weight) / now));
    }
    return out;
  }
}

/**
 * An averaged perceptron over whole rows (Collins, 2002): where the likeliest labels of a row are wrong, the weights of the
 * right ones rise and those of the wrong ones fall. The same examples in the same order give the same model.
 */
export function train(examples: readonly Example[], count: number): RowModel {
  const counts = new Map<string, number>();
  for (const { features } of examples) for (const names of features) for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  const rows = examples.map((example) => ({ ...example, features: example.features.map((names) => names.filter((name) => (counts.get(name) ?? 0) >= LEAST)) }));
  const [weights, moves] = [new Averaged(count), new Averaged(count)];
  const model: RowModel = { count, weights: weights.rows, moves: moves.rows };
  const order = rows.map((_, at) => at);
  const chance = chances(1);
  let now = 1;
  for (let epoch = 0; epoch < EPOCHS; epoch += 1) {
    for (let i = order.length - 1; i > 0; i -= 1) {
      const j = Math.floor(chance() * (i + 1));
      [order[i], order[j]] = [order[j] ?? 0, order[i] ?? 0];
    }
    for (const at of order) {
      const { features, steps, labels } = rows[at] as Example;
      const guess = decode(features.map((names, place) => {
        const scores = scoreOf(model, names);
        for (let label = 0; label < count; label += 1) if (label !== labels[place]) scores[label] = (scores[label] ?? 0) + MARGIN;
        return scores;
      }), steps, model);
      labels.forEach((label, place) => {
        const wrong = guess[place] ?? 0;
        if (label !== wrong) for (const name of features[place] ?? []) {
          weights.change(name, label, 1, now);
          weights.change(name, wrong, -1, now);
        }
        if (place === 0) return;
        const [last, lastWrong] = [labels[place - 1] ?? 0, guess[place - 1] ?? 0];
        if (label === wrong && last === lastWrong) return;
        for (const tail of ["", ` ${steps[place]}`]) {
          moves.change(`${last}${tail}`, label, 1, now);
          moves.change(`${lastWrong}${tail}`, wrong, -1, now);
        }
      });
      now += 1;
    }
  }
  return { count, weights: weights.mean(now), moves: moves.mean(now) };
}
