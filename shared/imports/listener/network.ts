import { added, beside, rowAt, type Matrix } from "./matrix";
import { products, productsWith } from "./products";

/** The arithmetic of a recurrent network. */

/** A layer of weights with what is added to each of its outputs. */
export interface Linear {
  readonly weight: Matrix;
  readonly bias: Float32Array;
}

/** Each row times a layer. @returns as many rows of the layer's outputs */
export function through(input: Matrix, { weight, bias }: Linear): Matrix {
  const sums = products(input, weight);
  for (let row = 0; row < sums.rows; row += 1) rowAt(sums, row).forEach((sum, at, out) => { out[at] = sum + (bias[at] as number); });
  return sums;
}

/** Negative numbers become nothing. */
const rectified = ({ values, ...shape }: Matrix): Matrix => ({ ...shape, values: values.map((value) => Math.max(0, value)) });

/** Two layers with a rectifier between them. */
export const twice = (input: Matrix, [inner, outer]: readonly [Linear, Linear]): Matrix => through(rectified(through(input, inner)), outer);

/** Shares of one, by the exponents of the numbers. */
export function softmax(values: ArrayLike<number>): Float32Array {
  let most = -Infinity;
  for (let at = 0; at < values.length; at += 1) most = Math.max(most, values[at] as number);
  const out = Float32Array.from(values, (value) => Math.exp(value - most));
  const sum = out.reduce((total, value) => total + value, 0);
  return out.map((value) => value / sum);
}

/** Each row as shares of one. */
export function sharesOf({ values, ...shape }: Matrix): Matrix {
  const shares: Matrix = { ...shape, values: new Float32Array(values.length) };
  for (let row = 0; row < shape.rows; row += 1) rowAt(shares, row).set(softmax(rowAt({ values, ...shape }, row)));
  return shares;
}

export const sigmoid = (x: number): number => 1 / (1 + Math.exp(-x));

/** A direction of a recurrent layer: weights of the input, and of what was kept from the word before, for its four gates. */
export interface Recurrent {
  readonly input: Linear;
  readonly state: Matrix;
}

/** Long short-term memory (Hochreiter and Schmidhuber, 1997, with the forget gate of Gers and others, 2000) in one direction. @returns its output after each row */
function remembered(input: Matrix, { input: layer, state }: Recurrent, backwards: boolean): Matrix {
  const size = state.columns;
  const gates = through(input, layer);
  const out = new Float32Array(input.rows * size);
  const cell = new Float32Array(size);
  const last = new Float32Array(size);
  const kept = productsWith(state);
  for (let step = 0; step < input.rows; step += 1) {
    const row = backwards ? input.rows - 1 - step : step;
    const own = rowAt(gates, row);
    const sums = kept(last);
    const gate = (at: number): number => (own[at] as number) + (sums[at] as number);
    for (let at = 0; at < size; at += 1) {
      const now = sigmoid(gate(size + at)) * (cell[at] as number) + sigmoid(gate(at)) * Math.tanh(gate(2 * size + at));
      cell[at] = now;
      last[at] = sigmoid(gate(3 * size + at)) * Math.tanh(now);
    }
    out.set(last, row * size);
  }
  return { rows: input.rows, columns: size, values: out };
}

/** A recurrent layer: on, and back. */
export type BothWays = readonly [Recurrent, Recurrent];

/** Both directions side by side: each word with what came before it and what comes after. */
export const bothWays = (input: Matrix, [on, back]: BothWays): Matrix => beside(remembered(input, on, false), remembered(input, back, true));

/** One layer upon the other; each adds to what the one below it heard. @param after - is given what is heard when so many layers are done, and returns what the next one hears */
export function layered(input: Matrix, layers: readonly BothWays[], after: (heard: Matrix, done: number) => Matrix): Matrix {
  return layers.reduce((below, layer, at) => {
    const heard = bothWays(below, layer);
    return after(at === 0 ? heard : added(below, heard), at + 1);
  }, input);
}
