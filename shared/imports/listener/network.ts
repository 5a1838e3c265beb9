/** The arithmetic of a recurrent network: rows of numbers one after the other in one array. */

/** @param values - rows of `columns` numbers */
export interface Matrix {
  readonly rows: number;
  readonly columns: number;
  readonly values: Float32Array;
}

/** A layer of weights with what is added to each of its outputs. */
export interface Linear {
  readonly weight: Matrix;
  readonly bias: Float32Array;
}

/** Adds to `out` a row of a matrix times a layer's weights. Four outputs at a time: each number of the row is fetched once for them. */
function multiply(input: Float32Array, from: number, { rows, columns, values }: Matrix, out: Float32Array, at: number): void {
  let to = 0;
  for (; to + 3 < rows; to += 4) {
    let [s0, s1, s2, s3] = [0, 0, 0, 0];
    let w0 = to * columns;
    let [w1, w2, w3] = [w0 + columns, w0 + 2 * columns, w0 + 3 * columns];
    for (let place = from; place < from + columns; place += 1) {
      const value = input[place] as number;
      s0 += value * (values[w0++] as number);
      s1 += value * (values[w1++] as number);
      s2 += value * (values[w2++] as number);
      s3 += value * (values[w3++] as number);
    }
    out[at + to] = (out[at + to] as number) + s0;
    out[at + to + 1] = (out[at + to + 1] as number) + s1;
    out[at + to + 2] = (out[at + to + 2] as number) + s2;
    out[at + to + 3] = (out[at + to + 3] as number) + s3;
  }
  for (; to < rows; to += 1) {
    let sum = 0;
    for (let place = 0; place < columns; place += 1) sum += (input[from + place] as number) * (values[to * columns + place] as number);
    out[at + to] = (out[at + to] as number) + sum;
  }
}

/** The same for four rows at once, two outputs at a time: each number that is fetched serves several products. */
function multiplyFour(input: Float32Array, from: number, { rows, columns, values }: Matrix, out: Float32Array, at: number): void {
  for (let to = 0; to < rows; to += 2) {
    let [a0, a1, a2, a3, b0, b1, b2, b3] = [0, 0, 0, 0, 0, 0, 0, 0];
    let x0 = from;
    let x1 = x0 + columns;
    let x2 = x1 + columns;
    let x3 = x2 + columns;
    let v = to * columns;
    let w = v + columns;
    for (let column = 0; column < columns; column += 1) {
      const first = values[v++] as number;
      const second = values[w++] as number;
      const r0 = input[x0++] as number;
      const r1 = input[x1++] as number;
      const r2 = input[x2++] as number;
      const r3 = input[x3++] as number;
      a0 += r0 * first;
      a1 += r1 * first;
      a2 += r2 * first;
      a3 += r3 * first;
      b0 += r0 * second;
      b1 += r1 * second;
      b2 += r2 * second;
      b3 += r3 * second;
    }
    const place = at + to;
    out[place] = (out[place] as number) + a0;
    out[place + 1] = (out[place + 1] as number) + b0;
    out[place + rows] = (out[place + rows] as number) + a1;
    out[place + rows + 1] = (out[place + rows + 1] as number) + b1;
    out[place + 2 * rows] = (out[place + 2 * rows] as number) + a2;
    out[place + 2 * rows + 1] = (out[place + 2 * rows + 1] as number) + b2;
    out[place + 3 * rows] = (out[place + 3 * rows] as number) + a3;
    out[place + 3 * rows + 1] = (out[place + 3 * rows + 1] as number) + b3;
  }
}

/** Each row times a layer. @returns as many rows of the layer's outputs */
export function through({ rows, columns, values }: Matrix, { weight, bias }: Linear): Matrix {
  const out = new Float32Array(rows * weight.rows);
  for (let row = 0; row < rows; row += 1) out.set(bias, row * weight.rows);
  let row = 0;
  if (weight.rows % 2 === 0) for (; row + 3 < rows; row += 4) multiplyFour(values, row * columns, weight, out, row * weight.rows);
  for (; row < rows; row += 1) multiply(values, row * columns, weight, out, row * weight.rows);
  return { rows, columns: weight.rows, values: out };
}

/** Negative numbers become nothing. */
const rectified = ({ values, ...shape }: Matrix): Matrix => ({ ...shape, values: values.map((value) => Math.max(0, value)) });

/** Two layers with a rectifier between them. */
export const twice = (input: Matrix, [inner, outer]: readonly [Linear, Linear]): Matrix => through(rectified(through(input, inner)), outer);

/** Matrices of as many rows side by side. */
export function beside(...parts: readonly Matrix[]): Matrix {
  const rows = parts[0]?.rows ?? 0;
  const columns = parts.reduce((sum, part) => sum + part.columns, 0);
  const values = new Float32Array(rows * columns);
  let at = 0;
  for (const part of parts) {
    for (let row = 0; row < rows; row += 1) values.set(part.values.subarray(row * part.columns, (row + 1) * part.columns), row * columns + at);
    at += part.columns;
  }
  return { rows, columns, values };
}

/** Some rows of a matrix, in the order asked for. */
export function rowsOf({ columns, values }: Matrix, rows: readonly number[]): Matrix {
  const out = new Float32Array(rows.length * columns);
  rows.forEach((row, at) => out.set(values.subarray(row * columns, (row + 1) * columns), at * columns));
  return { rows: rows.length, columns, values: out };
}

export const rowAt = ({ columns, values }: Matrix, row: number): Float32Array => values.subarray(row * columns, (row + 1) * columns);

/** Shares of one, by the exponents of the numbers. */
export function softmax(values: ArrayLike<number>): Float32Array {
  let most = -Infinity;
  for (let at = 0; at < values.length; at += 1) most = Math.max(most, values[at] as number);
  const out = Float32Array.from(values, (value) => Math.exp(value - most));
  const sum = out.reduce((total, value) => total + value, 0);
  return out.map((value) => value / sum);
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
  const sums = new Float32Array(4 * size);
  for (let step = 0; step < input.rows; step += 1) {
    const row = backwards ? input.rows - 1 - step : step;
    sums.set(rowAt(gates, row));
    multiply(last, 0, state, sums, 0);
    for (let at = 0; at < size; at += 1) {
      const kept = sigmoid(sums[size + at] as number) * (cell[at] as number) + sigmoid(sums[at] as number) * Math.tanh(sums[2 * size + at] as number);
      cell[at] = kept;
      last[at] = sigmoid(sums[3 * size + at] as number) * Math.tanh(kept);
    }
    out.set(last, row * size);
  }
  return { rows: input.rows, columns: size, values: out };
}

/** Both directions side by side: each word with what came before it and what comes after. */
export const bothWays = (input: Matrix, [on, back]: readonly [Recurrent, Recurrent]): Matrix => beside(remembered(input, on, false), remembered(input, back, true));
