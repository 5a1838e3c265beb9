import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decode, packed, unpacked, type RowModel } from "../../../../shared/imports/learning/row-model";
import { train, type Example } from "../../../../shared/imports/learning/train";

const numbers = fc.integer({ min: -9, max: 9 });
const problem = fc.integer({ min: 2, max: 4 }).chain((count) => fc.record({
  count: fc.constant(count),
  scores: fc.array(fc.array(numbers, { minLength: count, maxLength: count }), { minLength: 1, maxLength: 5 }),
  moves: fc.array(fc.array(numbers, { minLength: count, maxLength: count }), { minLength: count, maxLength: count }),
}));

const modelOf = (count: number, moves: readonly (readonly number[])[]): RowModel => ({ count, weights: new Map(), moves: new Map(moves.map((row, last) => [String(last), Float32Array.from(row)])) });

const worth = (labels: readonly number[], scores: readonly (readonly number[])[], moves: readonly (readonly number[])[]): number =>
  labels.reduce((sum, label, at) => sum + (scores[at]?.[label] ?? 0) + (at === 0 ? 0 : (moves[labels[at - 1] ?? 0]?.[label] ?? 0)), 0);

const everyRow = (length: number, count: number): number[][] => (length === 0 ? [[]] : everyRow(length - 1, count).flatMap((row) => Array.from({ length: count }, (_, label) => [...row, label])));

describe("the likeliest labels of a row", () => {
  it("are worth as much as the best of all rows there are", () => {
    fc.assert(fc.property(problem, ({ count, scores, moves }) => {
      const labels = decode(scores.map((row) => Float64Array.from(row)), scores.map(() => ""), modelOf(count, moves));
      expect(worth(labels, scores, moves)).toBe(Math.max(...everyRow(scores.length, count).map((row) => worth(row, scores, moves))));
    }));
  });

  it("are none for no places", () => {
    expect(decode([], [], modelOf(2, []))).toEqual([]);
  });
});

describe("training", () => {
  const examples: Example[] = Array.from({ length: 12 }, (_, at) => ({ features: [["a"], [at % 2 === 0 ? "b" : "c"]], steps: ["", "near"], labels: [0, at % 2 === 0 ? 1 : 2] }));

  it("learns what tells labels apart, and the same examples give the same model", () => {
    const model = train(examples, 3);
    expect([...model.weights.keys()].sort()).toEqual(["a", "b", "c"]);
    expect((model.weights.get("b")?.[1] ?? 0) > (model.weights.get("b")?.[2] ?? 0)).toBe(true);
    expect(packed(train(examples, 3))).toEqual(packed(model));
  });

  it("gives a model that is the same after it was written and read, but for fractions", () => {
    const model = train(examples, 3);
    for (const [name, row] of unpacked(packed(model)).weights) row.forEach((weight, label) => expect(Math.abs(weight - (model.weights.get(name)?.[label] ?? 0))).toBeLessThanOrEqual(0.5));
  });
});
