import { describe, expect, it } from "vitest";
import { idMaker, memoOn } from "../../../shared/episode";

describe("idMaker", () => {
  it("makes valid, different ids from a source of random numbers", () => {
    let seed = 7;
    const newId = idMaker(() => (seed = (seed * 16_807) % 2_147_483_647) / 2_147_483_647);
    const ids = Array.from({ length: 2000 }, newId);
    expect(new Set(ids).size).toBe(2000);
    expect(ids.every((id) => /^[a-z2-9]{10}$/.test(id))).toBe(true);
  });
});

describe("memoOn", () => {
  it("computes once per object, also when the answer is undefined", () => {
    let calls = 0;
    const once = memoOn((key: { value?: number }) => {
      calls++;
      return key.value;
    });
    const key = {};
    once(key);
    once(key);
    expect(calls).toBe(1);
    once({});
    expect(calls).toBe(2);
  });
});
