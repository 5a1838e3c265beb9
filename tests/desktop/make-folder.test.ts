import { statSync, writeFileSync } from "node:fs";
import { mkdir } from "node:fs/promises";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { makeFolder } from "../../electron/workspace/make-folder";
import { temporaryFolder } from "./temporary-folder";

const root = temporaryFolder();
const real = { mkdir };

/** A disk that answers every new folder with one error. */
function refusing(code: string): { disk: { mkdir: typeof mkdir }; asked: string[] } {
  const asked: string[] = [];
  const refuse = (path: unknown) => {
    asked.push(String(path));
    return Promise.reject(Object.assign(new Error(code), { code }));
  };
  return { disk: { mkdir: refuse as typeof mkdir }, asked };
}

describe("making a folder", () => {
  it("makes those above it too, and says whether it was missing", async () => {
    const deep = join(root, "a", "b", "c");
    expect(await makeFolder(deep, real)).toBe(true);
    expect(statSync(deep).isDirectory()).toBe(true);
    expect(await makeFolder(deep, real)).toBe(false);
  });

  it("asks nothing of the disk for a folder that is there", async () => {
    const { disk, asked } = refusing("EROFS");
    expect(await makeFolder(root, disk)).toBe(false);
    expect(asked).toEqual([]);
  });

  it.each(["EROFS", "EACCES", "ENOSPC"])("passes on the disk's own answer: %s", async (code) => {
    await expect(makeFolder(join(root, "x", "y"), refusing(code).disk)).rejects.toMatchObject({ code });
  });

  it("gives up where the folder above is there and the disk still finds it missing", async () => {
    const { disk, asked } = refusing("ENOENT");
    await expect(makeFolder(join(root, "nobody-makes-folders-here"), disk)).rejects.toMatchObject({ code: "ENOENT" });
    expect(asked).toHaveLength(1);
  });

  it("refuses a path through a file", async () => {
    const file = join(root, "file");
    writeFileSync(file, "words");
    await expect(makeFolder(file, real)).rejects.toMatchObject({ code: "EEXIST" });
    await expect(makeFolder(join(file, "below"), real)).rejects.toMatchObject({ code: expect.stringMatching(/^ENOTDIR|ENOENT|EEXIST$/) as string });
  });

  it("is content when somebody else makes it at the same moment", async () => {
    const target = join(root, "raced");
    const raced = { mkdir: (async (path: string) => { await mkdir(path); throw Object.assign(new Error("EEXIST"), { code: "EEXIST" }); }) as unknown as typeof mkdir };
    expect(await makeFolder(target, raced)).toBe(false);
    expect(dirname(target)).toBe(root);
  });
});
