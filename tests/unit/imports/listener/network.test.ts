import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { added, beside, rowAt, rowsOf, type Matrix } from "../../../../shared/imports/listener/matrix";
import { bothWays, layered, sharesOf, softmax, through, twice, type Linear, type Recurrent } from "../../../../shared/imports/listener/network";

const matrix = (rows: number, columns: number, value: (at: number) => number): Matrix => ({ rows, columns, values: Float32Array.from({ length: rows * columns }, (_, at) => value(at)) });
const linear = (inputs: number, outputs: number, value: (at: number) => number): Linear => ({ weight: matrix(outputs, inputs, value), bias: Float32Array.from({ length: outputs }, (_, at) => value(at + 1000)) });

describe("a layer", () => {
  it("is each row times the weights, whatever the sizes", () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 5 }), fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 }), (rows, inputs, outputs) => {
      const [input, layer] = [matrix(rows, inputs, Math.sin), linear(inputs, outputs, Math.cos)];
      const out = through(input, layer);
      expect([out.rows, out.columns]).toEqual([rows, outputs]);
      for (let row = 0; row < rows; row += 1) for (let to = 0; to < outputs; to += 1) {
        const sum = [...rowAt(input, row)].reduce((total, value, at) => total + value * (rowAt(layer.weight, to)[at] ?? 0), layer.bias[to] ?? 0);
        expect(rowAt(out, row)[to]).toBeCloseTo(sum, 4);
      }
    }));
  });

  it("keeps nothing below zero between two of them", () => {
    const minus: Linear = { weight: matrix(1, 1, () => -1), bias: new Float32Array(1) };
    expect([...twice(matrix(2, 1, (at) => (at === 0 ? 3 : -3)), [minus, minus]).values].map((value) => value + 0)).toEqual([0, -3]);
  });
});

describe("long short-term memory", () => {
  /** Weights and biases as one row of sines, in the order PyTorch keeps them; both of its biases added. */
  const way = (from: number): Recurrent => {
    const sine = (at: number): number => Math.sin(from + at);
    return { input: { weight: matrix(8, 3, sine), bias: Float32Array.from({ length: 8 }, (_, at) => sine(40 + at) + sine(48 + at)) }, state: matrix(8, 2, (at) => sine(24 + at)) };
  };

  it("gives what PyTorch 1.13.1 gives for the same weights (torch.nn.LSTM, both directions, reckoned there)", () => {
    const out = bothWays(matrix(4, 3, (at) => Math.cos(at)), [way(0), way(56)]);
    const known = [[0.046353, 0.149392, -0.050464, 0.419323], [0.295483, 0.032185, 0.498948, 0.009257], [0.15005, 0.169734, -0.051031, 0.366504], [0.218119, 0.079575, 0.480125, 0.008916]];
    known.forEach((row, at) => row.forEach((value, column) => expect(rowAt(out, at)[column]).toBeCloseTo(value, 5)));
  });

  it("hears nothing in no words", () => {
    expect(bothWays(matrix(0, 3, Math.cos), [way(0), way(56)]).rows).toBe(0);
  });
});

describe("layers", () => {
  const way = (inputs: number, from: number): Recurrent => ({ input: linear(inputs, 8, (at) => Math.sin(from + at)), state: matrix(8, 2, (at) => Math.sin(from + 60 + at)) });
  const layer = (inputs: number, from: number): readonly [Recurrent, Recurrent] => [way(inputs, from), way(inputs, from + 7)];

  it("add to what the one below heard", () => {
    const input = matrix(5, 3, Math.cos);
    const [first, second] = [layer(3, 0), layer(4, 20)];
    const once = bothWays(input, first);
    const done: number[] = [];
    const all = layered(input, [first, second], (heard, count) => {
      done.push(count);
      return heard;
    });
    expect([...all.values]).toEqual([...added(once, bothWays(once, second)).values]);
    expect(done).toEqual([1, 2]);
  });

  it("hear what is told them in between", () => {
    const [input, told] = [matrix(5, 3, Math.cos), matrix(5, 4, Math.sin)];
    const [first, second] = [layer(3, 0), layer(4, 20)];
    const once = added(bothWays(input, first), told);
    expect([...layered(input, [first, second], (heard, count) => (count === 1 ? added(heard, told) : heard)).values]).toEqual([...added(once, bothWays(once, second)).values]);
  });
});

describe("rows", () => {
  it("are taken in the order asked for, and put side by side", () => {
    const source = matrix(3, 2, (at) => at);
    expect([...rowsOf(source, [2, 0]).values]).toEqual([4, 5, 0, 1]);
    expect([...beside(source, matrix(3, 1, () => 9)).values]).toEqual([0, 1, 9, 2, 3, 9, 4, 5, 9]);
  });

  it("become shares of one", () => {
    fc.assert(fc.property(fc.array(fc.double({ min: -500, max: 500, noNaN: true }), { minLength: 1, maxLength: 9 }), (values) => {
      const shares = softmax(values);
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 5);
      expect(shares[values.indexOf(Math.max(...values))]).toBe(Math.max(...shares));
    }));
  });

  it("become shares of one each", () => {
    const scores = matrix(3, 4, Math.sin);
    const shares = sharesOf(scores);
    for (let row = 0; row < 3; row += 1) expect([...rowAt(shares, row)]).toEqual([...softmax(rowAt(scores, row))]);
  });
});
