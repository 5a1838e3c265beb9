import * as fc from "fast-check";
import { beforeEach, describe, expect, it, vi } from "vitest";
import type { Api } from "../../../../shared/bridge";
import { countingIds, emptyBlock, emptyEpisode, newLine, type Episode } from "../../../../shared/episode";
import type { OpenSession } from "../../../../renderer/session/create-session";

// The session waits for idle time, which a page has and Node has not.
vi.stubGlobal("window", { requestIdleCallback: (run: () => void) => setTimeout(run, 0) });
const { createSession } = await import("../../../../renderer/session/create-session");

const refused = { ok: false as const, code: "not-found", message: "not here" };
/** A host without a disk. */
const api = {
  "voice:read": async () => ({ ok: true, voice: null }), "library:list": async () => [], "episode:save": async () => ({ ok: true, stamp: "s", savedAt: "2027-03-04T10:00:00.000Z" }), "episode:open": async () => refused,
  on: () => () => undefined,
} as unknown as Api;

const id = countingIds("u");
const line = newLine(id, "say", "Sit.");
const block = emptyBlock(id, "talk", { clipSeconds: 10, lines: [line] });
const draft: Episode = emptyEpisode(id, { title: "Talk", blocks: [block] });

let session: OpenSession;
beforeEach(async () => {
  // All within the second that undoes as one, however slow the machine is.
  vi.spyOn(performance, "now").mockReturnValue(5000);
  session = createSession(api, (error) => {
    throw error;
  });
  expect(await session.actions.startFrom(draft)).toBeNull();
});

/** The editor commits what a command did a moment later. */
const turn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));
const undo = (): Promise<void> => {
  session.actions.undo();
  return turn();
};
const redo = (): Promise<void> => {
  session.actions.redo();
  return turn();
};
const words = (): string | undefined => session.store.get().episode.blocks[0]?.lines[0]?.text;
const type = (text: string): void => session.actions.apply([{ type: "set-line", line: line.id, fields: { text } }]);
const seconds = (): number | null | undefined => session.store.get().episode.blocks[0]?.clipSeconds;
const clip = (clipSeconds: number): void => session.actions.apply([{ type: "set-block", block: block.id, fields: { clipSeconds } }]);

describe("undo while a line is typed in a place", () => {
  it("takes a second's letters back in one step", async () => {
    for (const text of ["Sit. D", "Sit. Do", "Sit. Dow"]) type(text);
    await undo();
    expect(words()).toBe("Sit.");
    await redo();
    expect(words()).toBe("Sit. Dow");
  });

  it("after an undo takes the next letter back and no more, and redo brings that letter", async () => {
    type("Sit.a");
    await undo();
    type("Sit.b");
    expect(session.store.get().canRedo).toBe(false);
    await undo();
    expect(words()).toBe("Sit.");
    expect(session.store.get().canUndo).toBe(false);
    await redo();
    expect(words()).toBe("Sit.b");
  });

  it("does the same for a clip's end that is moved with arrow keys, and after redo", async () => {
    clip(11);
    clip(12);
    await undo();
    clip(9);
    await undo();
    expect(seconds()).toBe(10);
    await redo();
    clip(8);
    await undo();
    expect(seconds()).toBe(9);
    await undo();
    expect(seconds()).toBe(10);
  });

  it("goes back to where another episode was opened, and not past the first letter typed there", async () => {
    type("Sit.a");
    expect(await session.actions.startFrom(draft)).toBeNull();
    type("Sit.b");
    await undo();
    expect(words()).toBe("Sit.");
  });

  it("leads back through every state a step led to, whatever is typed, undone and done again", async () => {
    const step = fc.oneof(fc.constantFrom("undo", "redo"), fc.constantFrom("a", "b", "c"));
    await fc.assert(fc.asyncProperty(fc.array(step, { maxLength: 14 }), async (steps) => {
      session = createSession(api, (error) => {
        throw error;
      });
      session.actions.restore(draft);
      // What undo and redo should bring: letters typed one after the other are one step, until undo or redo comes between.
      let [past, now, future] = [[] as string[], "Sit.", [] as string[]];
      let joins = false;
      for (const one of steps) {
        if (one === "undo" || one === "redo") {
          if (one === "undo" && past.length > 0) {
            [future, now, past] = [[now, ...future], past.at(-1) ?? "", past.slice(0, -1)];
            await undo();
            joins = false;
          } else if (one === "redo" && future.length > 0) {
            [past, now, future] = [[...past, now], future[0] ?? "", future.slice(1)];
            await redo();
            joins = false;
          }
        } else {
          if (!joins) [past, future] = [[...past, now], []];
          now += one;
          joins = true;
          type(now);
        }
        expect(words()).toBe(now);
      }
    }), { numRuns: 60 });
  });
});
