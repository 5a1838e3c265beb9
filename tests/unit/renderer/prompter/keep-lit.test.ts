import { describe, expect, it } from "vitest";
import { keepLit } from "../../../../renderer/prompter/keep-lit";

class Page extends EventTarget {
  visibilityState: DocumentVisibilityState = "visible";
  becomes(state: DocumentVisibilityState): void {
    this.visibilityState = state;
    this.dispatchEvent(new Event("visibilitychange"));
  }
}

/** A system that gives locks and takes them away when the page is covered. */
function system(refuses = false) {
  const locks: { released: boolean; release: () => Promise<undefined> }[] = [];
  const request = async () => {
    if (refuses) throw new Error("not allowed");
    const lock = { released: false, release: async () => void (lock.released = true) as undefined };
    locks.push(lock);
    return lock;
  };
  return { locks, request };
}
const turn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

describe("the screen", () => {
  it("is kept lit again after another window covered the page", async () => {
    const [page, { locks, request }] = [new Page(), system()];
    const stop = keepLit(page as unknown as Document, request);
    await turn();
    expect(locks).toHaveLength(1);
    await locks[0]?.release();
    page.becomes("hidden");
    await turn();
    expect(locks).toHaveLength(1);
    page.becomes("visible");
    await turn();
    expect(locks.map(({ released }) => released)).toEqual([true, false]);
    stop();
    expect(locks.map(({ released }) => released)).toEqual([true, true]);
  });

  it("has one lock at a time, and none after the prompter is left", async () => {
    const [page, { locks, request }] = [new Page(), system()];
    const stop = keepLit(page as unknown as Document, request);
    page.becomes("visible");
    await turn();
    page.becomes("visible");
    await turn();
    expect(locks).toHaveLength(1);
    stop();
    page.becomes("visible");
    await turn();
    expect(locks.map(({ released }) => released)).toEqual([true]);
    const late = system();
    keepLit(page as unknown as Document, late.request)();
    await turn();
    expect(late.locks.map(({ released }) => released)).toEqual([true]);
  });

  it("is asked for once more when it was refused", async () => {
    const [page, { request }] = [new Page(), system(true)];
    let times = 0;
    keepLit(page as unknown as Document, () => {
      times++;
      return request();
    });
    await turn();
    page.becomes("visible");
    await turn();
    expect(times).toBe(2);
  });
});
