import fc from "fast-check";
import { readFileSync } from "node:fs";
import { expect, describe, it } from "vitest";
import wabt from "wabt";
import { rowAt, type Matrix } from "../../../../shared/imports/listener/matrix";
import { MODULE, products, productsWith } from "../../../../shared/imports/listener/products";

const SOURCE = new URL("../../../../shared/imports/listener/products.wat", import.meta.url);

const matrix = (rows: number, columns: number, value: (at: number) => number): Matrix => ({ rows, columns, values: Float32Array.from({ length: rows * columns }, (_, at) => value(at)) });
const sumOf = (a: Float32Array, b: Float32Array): number => a.reduce((sum, value, at) => sum + value * (b[at] ?? 0), 0);

describe("products", () => {
  it("are those of each row with each row, whatever the sizes", () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 13 }), (rows, outputs, columns) => {
      const [input, weights] = [matrix(rows, columns, Math.sin), matrix(outputs, columns, Math.cos)];
      const out = products(input, weights);
      expect([out.rows, out.columns, out.values.length]).toEqual([rows, outputs, rows * outputs]);
      for (let row = 0; row < rows; row += 1) for (let to = 0; to < outputs; to += 1) expect(rowAt(out, row)[to]).toBeCloseTo(sumOf(rowAt(input, row), rowAt(weights, to)), 4);
    }));
  });

  it("are right beyond the rows that are in memory at once", () => {
    const [input, weights] = [matrix(600, 7, Math.sin), matrix(3, 7, Math.cos)];
    const out = products(input, weights);
    for (const row of [0, 255, 256, 511, 512, 599]) expect(rowAt(out, row)[2]).toBeCloseTo(sumOf(rowAt(input, row), rowAt(weights, 2)), 4);
  });

  it("of one row after another are those of all rows", () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 13 }), (outputs, columns) => {
      const [input, weights] = [matrix(3, columns, Math.sin), matrix(outputs, columns, Math.cos)];
      const all = products(input, weights);
      const sums = productsWith(weights);
      for (let row = 0; row < 3; row += 1) sums(rowAt(input, row)).forEach((sum, at) => expect(sum).toBeCloseTo(rowAt(all, row)[at] ?? 0, 4));
    }));
  });

  it("are reckoned by the module that is written in products.wat", async () => {
    const module = (await wabt()).parseWat("products.wat", readFileSync(SOURCE, "utf8"), { simd: true });
    module.resolveNames();
    module.validate();
    expect(MODULE).toBe(Buffer.from(module.toBinary({}).buffer).toString("base64"));
  });
});
