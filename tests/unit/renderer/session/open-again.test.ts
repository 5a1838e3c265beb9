import { describe, expect, it } from "vitest";
import type { Answer } from "../../../../shared/bridge";
import { fileBefore, noteOpenFile, openFirst } from "../../../../renderer/session/open-again";
import { createStore } from "../../../../renderer/session/store";
import type { FileState } from "../../../../renderer/session/types";

const state = (name: string | null): FileState => ({ name, status: "saved", savedAt: null, message: null });

/** A window's storage, or one that is refused. */
function storage(refuses = false) {
  const kept = new Map<string, string>();
  return () => {
    if (refuses) throw new Error("refused");
    return { getItem: (key: string) => kept.get(key) ?? null, setItem: (key: string, value: string) => void kept.set(key, value), removeItem: (key: string) => void kept.delete(key) };
  };
}

describe("the file that is open in a window", () => {
  it("is known after a reload, and forgotten with an episode that is on no disk", () => {
    const [file, own] = [createStore(state(null)), storage()];
    noteOpenFile(file, own);
    expect(fileBefore(own)).toBeNull();
    file.set(state("a.episode.json"));
    expect(fileBefore(own)).toBe("a.episode.json");
    file.set(state("b.episode.json"));
    expect(fileBefore(own)).toBe("b.episode.json");
    file.set(state(null));
    expect(fileBefore(own)).toBeNull();
  });

  it("is none where storage is refused", () => {
    const [file, refused] = [createStore(state(null)), storage(true)];
    noteOpenFile(file, refused);
    file.set(state("a.episode.json"));
    expect(fileBefore(refused)).toBeNull();
  });
});

describe("a window begins with", () => {
  const entry = (file: string, problem: string | null = null) => ({ file, title: "", series: "", savedAt: "", problem });
  /** What was opened, in order. */
  async function opened(before: string | null, start: "demo" | "last" | null, there: readonly ReturnType<typeof entry>[] = []): Promise<string[]> {
    const seen: string[] = [];
    const about: Answer<"app:about"> = { version: "1", window: "browser", library: "/library", start };
    await openFirst({ "app:about": async () => about, "library:list": async () => [...there] }, {
      openDemo: () => void seen.push("the demo"),
      openFile: async (file) => {
        if (!there.some((one) => one.file === file)) return "It is not there.";
        seen.push(file);
        return null;
      },
    }, before);
    return seen;
  }
  const [a, b, damaged] = [entry("a.episode.json"), entry("b.episode.json"), entry("c.episode.json", "It is damaged.")];

  it.each([
    ["the episode that was open in it", "b.episode.json", "demo", [a, b], ["b.episode.json"]],
    ["what the start-up asked for when that is gone", "b.episode.json", "demo", [a], ["the demo"]],
    ["the demo at a first start", null, "demo", [a], ["the demo"]],
    ["the newest that can be opened", null, "last", [damaged, b, a], ["b.episode.json"]],
    ["the empty page when there is none", null, "last", [damaged], []],
    ["the empty page otherwise", null, null, [a], []],
  ] as const)("%s", async (_what, before, start, there, wanted) => expect(await opened(before, start, there)).toEqual(wanted));
});
