import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { libraryFolder } from "../../../../electron/workspace/folder";

describe("the library folder", () => {
  const home = resolve("/home/o");
  it.each<[string, string | undefined, Record<string, string>, boolean, string]>([
    ["as asked for", "/x/lib", { REPWRIGHT_LIBRARY: "/y" }, true, resolve("/x/lib")],
    ["from the environment", undefined, { REPWRIGHT_LIBRARY: "/y" }, true, resolve("/y")],
    ["empty answers count as none", " ", { REPWRIGHT_LIBRARY: "" }, true, join(home, "Documents", "Repwright")],
    ["in Documents", undefined, {}, true, join(home, "Documents", "Repwright")],
    ["at home", undefined, {}, false, join(home, "Repwright")],
  ])("%s", (_why, asked, env, documents, expected) => {
    expect(libraryFolder(asked, env, home, () => documents)).toBe(expected);
  });
});
