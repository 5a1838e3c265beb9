import type { Matrix } from "./matrix";

/** Products of rows of numbers, reckoned by a WebAssembly module: four at a time, many times as fast as one by one. */

/** products.wat in its binary form (base64). After a change of it: npx vitest run tests/unit/imports/listener/products.test.ts prints the new one. */
export const MODULE = [
  "AGFzbQEAAAABFwNgAXsBfWAGf39/f39/AGAFf39/f38AAwQDAAECBQMBAAEHFwMGbWVtb3J5AgAEcm93cwABA3JvdwACCuEFAxkAIAD9HwAgAP0fAZIgAP0fAiAA/R8DkpILygMCCH8LeyAFQQJ0IQ",
  "YgBEECdCEHIAAgAyAGbGohCAJAA0AgACAITw0BIAEhCyACIQogAiAHaiEJA0D9DAAAAAAAAAAAAAAAAAAAAAAhESARIRIgESETIBEhFCARIRUgESEWIBEhFyARIRggACEMIAsgBmohDQNAIAv9AAQA",
  "IQ8gCyAGav0ABAAhECAM/QAEACEOIBEgDiAP/eYB/eQBIREgFSAOIBD95gH95AEhFSAMIAZq/QAEACEOIBIgDiAP/eYB/eQBIRIgFiAOIBD95gH95AEhFiAMIAZBAXRq/QAEACEOIBMgDiAP/eYB/e",
  "QBIRMgFyAOIBD95gH95AEhFyAMIAZBA2xq/QAEACEOIBQgDiAP/eYB/eQBIRQgGCAOIBD95gH95AEhGCAMQRBqIQwgC0EQaiELIAsgDUkNAAsgCiAREAA4AgAgCiAVEAA4AgQgCiAHaiEMIAwgEhAA",
  "OAIAIAwgFhAAOAIEIAwgB2ohDCAMIBMQADgCACAMIBcQADgCBCAMIAdqIQwgDCAUEAA4AgAgDCAYEAA4AgQgDSAGaiELIApBCGohCiAKIAlJDQALIAAgBkECdGohACACIAdBAnRqIQIMAAsLC/gBAg",
  "R/BXsgBEECdCEFIAIgA0ECdGohBiAAIAVqIQgDQP0MAAAAAAAAAAAAAAAAAAAAACEKIAohCyAKIQwgCiENIAAhBwNAIAf9AAQAIQkgCiAJIAH9AAQA/eYB/eQBIQogCyAJIAEgBWr9AAQA/eYB/eQB",
  "IQsgDCAJIAEgBUEBdGr9AAQA/eYB/eQBIQwgDSAJIAEgBUEDbGr9AAQA/eYB/eQBIQ0gAUEQaiEBIAdBEGohByAHIAhJDQALIAIgChAAOAIAIAIgCxAAOAIEIAIgDBAAOAIIIAIgDRAAOAIMIAEgBU",
  "EDbGohASACQRBqIQIgAiAGSQ0ACws=",
].join("");

interface Module {
  readonly memory: WebAssembly.Memory;
  readonly rows: (input: number, weights: number, out: number, rows: number, outputs: number, columns: number) => void;
  readonly row: (input: number, weights: number, out: number, outputs: number, columns: number) => void;
}

let loaded: Module | null = null;

/** Loaded when numbers are first multiplied. */
function loadedModule(): Module {
  const bytes = (): Uint8Array<ArrayBuffer> => Uint8Array.from(atob(MODULE), (char) => char.charCodeAt(0));
  return (loaded ??= new WebAssembly.Instance(new WebAssembly.Module(bytes())).exports as unknown as Module);
}

/** Bytes of a number, and of a page of memory. */
const [FLOAT, PAGE] = [4, 65_536];
const upTo = (count: number, step: number): number => Math.ceil(count / step) * step;

/** The module's memory as numbers, with room for so many. */
function room({ memory }: Module, count: number): Float32Array {
  const missing = count * FLOAT - memory.buffer.byteLength;
  if (missing > 0) memory.grow(Math.ceil(missing / PAGE));
  return new Float32Array(memory.buffer);
}

/** Puts rows of a matrix into memory, each filled up with zeros to `width` numbers. */
function put(memory: Float32Array, at: number, { columns, values }: Matrix, from: number, to: number, width: number): void {
  if (width === columns) memory.set(values.subarray(from * columns, to * columns), at);
  else for (let row = from; row < to; row += 1) memory.fill(0, at + (row - from) * width, at + (row - from + 1) * width).set(values.subarray(row * columns, (row + 1) * columns), at + (row - from) * width);
}

/** So many rows are in memory at once. */
const AT_ONCE = 256;

/** Each row of `input` with each row of `weights`, as long. @returns for each row of the input a row of as many sums as there are rows of weights */
export function products(input: Matrix, weights: Matrix): Matrix {
  const module = loadedModule();
  const [width, outputs] = [upTo(weights.columns, 4), upTo(weights.rows, 2)];
  const from = outputs * width;
  const to = from + AT_ONCE * width;
  const memory = room(module, to + AT_ONCE * outputs);
  put(memory, 0, weights, 0, weights.rows, width);
  const values = new Float32Array(input.rows * weights.rows);
  for (let first = 0; first < input.rows; first += AT_ONCE) {
    const last = Math.min(first + AT_ONCE, input.rows);
    put(memory, from, input, first, last, width);
    module.rows(from * FLOAT, 0, to * FLOAT, upTo(last - first, 4), outputs, width);
    for (let row = first; row < last; row += 1) values.set(memory.subarray(to + (row - first) * outputs, to + (row - first) * outputs + weights.rows), row * weights.rows);
  }
  return { rows: input.rows, columns: weights.rows, values };
}

/** One row after another with the same rows of weights, which stay in memory: no other product may be asked for meanwhile. @returns the sums of a row; they stand until the next are asked for */
export function productsWith(weights: Matrix): (row: Float32Array) => Float32Array {
  const module = loadedModule();
  const [width, outputs] = [upTo(weights.columns, 4), upTo(weights.rows, 4)];
  const from = outputs * width;
  const to = from + width;
  const memory = room(module, to + outputs);
  put(memory, 0, weights, 0, weights.rows, width);
  memory.fill(0, from, to);
  const sums = memory.subarray(to, to + weights.rows);
  return (row) => {
    memory.set(row, from);
    module.row(from * FLOAT, 0, to * FLOAT, outputs, width);
    return sums;
  };
}
