import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pathSteps } from "../../../electron/static-files";

describe("the steps of a URL's path", () => {
  it.each<[string, string[] | null]>([
    ["/", []], ["/a/b.js", ["a", "b.js"]], ["//a//b", ["a", "b"]], ["/a%20b.js", ["a b.js"]], ["/%252e%252e", ["%2e%2e"]],
    ["/..", null], ["/a/%2e%2e/b", null], ["/a%2f..%2fb", null], ["/.env", null], ["/a\\b", null], ["/a%5cb", null], ["/%00", null], ["/C:/x", null], ["/%", null],
  ])("of %s are %j", (path, steps) => {
    expect(pathSteps(path)).toEqual(steps);
  });

  it("never hold a way up, however it is written", () => {
    const piece = fc.constantFrom("..", ".", "%2e", "%2E", "/", "%2f", "\\", "%5c", "a", "%00", "%25");
    fc.assert(fc.property(fc.array(piece, { maxLength: 12 }), (pieces) => {
      for (const step of pathSteps(pieces.join("")) ?? []) expect(step).toMatch(/^[^./\\][^/\\]*$/);
    }));
  });
});
