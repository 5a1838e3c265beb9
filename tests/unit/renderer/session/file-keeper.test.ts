import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { Api } from "../../../../shared/bridge";
import { countingIds, emptyEpisode, type Episode } from "../../../../shared/episode";
import { createFileKeeper, type FileKeeper } from "../../../../renderer/session/file-keeper";
import { guardLeaving } from "../../../../renderer/session/guard-leaving";

const first = emptyEpisode(countingIds("f"), { title: "0" });
const words = (title: string): Episode => ({ ...first, title });

/** A keeper over a disk that notes each title it was given. */
function keeper(): { files: FileKeeper; saved: string[]; disk: { until: Promise<void>; refuses: boolean } } {
  const saved: string[] = [];
  const disk = { until: Promise.resolve(), refuses: false };
  const answers: Partial<Api> = {
    "library:list": async () => [],
    "episode:save": async ({ episode }) => {
      saved.push(episode.title);
      await disk.until;
      return disk.refuses ? { ok: false, code: "disk-full", message: "The disk is full." } : { ok: true, stamp: `s${saved.length}`, savedAt: "2027-03-04T10:00:00.000Z" };
    },
  };
  const files = createFileKeeper(answers as Api);
  files.opened("a.episode.json", "s0", first);
  return { files, saved, disk };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe("words on their way to the disk", () => {
  it("wait for a pause", async () => {
    const { files, saved } = keeper();
    files.changed(words("1"));
    await vi.advanceTimersByTimeAsync(1000);
    files.changed(words("2"));
    await vi.advanceTimersByTimeAsync(1100);
    expect([saved, files.hasUnsaved()]).toEqual([[], true]);
    await vi.advanceTimersByTimeAsync(200);
    expect([saved, files.hasUnsaved()]).toEqual([["2"], false]);
    expect(files.state.get()).toMatchObject({ status: "saved" });
  });

  it("wait at most five seconds while somebody writes without one", async () => {
    const { files, saved } = keeper();
    for (let letter = 1; letter <= 80; letter++) {
      files.changed(words(String(letter)));
      await vi.advanceTimersByTimeAsync(200);
    }
    expect(saved).toHaveLength(3);
    await vi.advanceTimersByTimeAsync(1500);
    expect(saved.at(-1)).toBe("80");
  });

  it("go there one save at a time, however many are asked for", async () => {
    const { files, saved, disk } = keeper();
    disk.until = new Promise((resolve) => setTimeout(resolve, 500));
    files.changed(words("1"));
    const saves = [files.saveNow(), files.saveNowIfChanged()];
    await vi.advanceTimersByTimeAsync(10);
    files.changed(words("2"));
    saves.push(files.saveNow(), files.saveNow());
    await vi.advanceTimersByTimeAsync(10);
    expect(saved).toEqual(["1"]);
    await vi.advanceTimersByTimeAsync(3000);
    await Promise.all(saves);
    expect(saved).toEqual(["1", "2"]);
  });
});

describe("a window that is left", () => {
  function window() {
    const { files, saved, disk } = keeper();
    const page = Object.assign(new EventTarget(), { visibilityState: "visible" as DocumentVisibilityState });
    const frame = new EventTarget();
    const stop = guardLeaving(files, page, frame);
    /** Whether it asks before it closes. */
    const asks = (): boolean => !frame.dispatchEvent(new Event("beforeunload", { cancelable: true }));
    return { files, saved, disk, page, frame, asks, stop };
  }
  const turn = (): Promise<unknown> => vi.advanceTimersByTimeAsync(1);

  it("asks nothing when everything is on the disk", async () => {
    const { files, asks, saved } = window();
    expect(asks()).toBe(false);
    files.changed(words("1"));
    await files.saveNow();
    expect([asks(), saved]).toEqual([false, ["1"]]);
  });

  it("asks while words are not there yet, and brings them there meanwhile", async () => {
    const { files, asks, saved } = window();
    files.changed(words("1"));
    expect(asks()).toBe(true);
    await turn();
    expect([saved, asks()]).toEqual([["1"], false]);
  });

  it("asks when they cannot be brought there, and when another program has the file", async () => {
    const { files, asks, disk } = window();
    disk.refuses = true;
    files.changed(words("1"));
    await files.saveNow();
    expect(asks()).toBe(true);
    disk.refuses = false;
    await files.saveNow();
    expect(asks()).toBe(false);
    files.changedOutside("a.episode.json", "theirs");
    expect(asks()).toBe(true);
  });

  it("saves at once when it is put out of sight or taken away, and not when it is seen again", async () => {
    const { files, saved, page, frame, stop } = window();
    files.changed(words("1"));
    page.dispatchEvent(new Event("visibilitychange"));
    await turn();
    expect(saved).toEqual([]);
    page.visibilityState = "hidden";
    page.dispatchEvent(new Event("visibilitychange"));
    await turn();
    expect(saved).toEqual(["1"]);
    files.changed(words("2"));
    frame.dispatchEvent(new Event("pagehide"));
    await turn();
    expect(saved).toEqual(["1", "2"]);
    stop();
    files.changed(words("3"));
    frame.dispatchEvent(new Event("pagehide"));
    await turn();
    expect(saved).toEqual(["1", "2"]);
  });
});
