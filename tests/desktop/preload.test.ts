import { build } from "esbuild";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { bridge, type Api } from "../../shared/bridge";
import type * as StandIn from "./electron-stand-in";

vi.mock("electron", () => import("./electron-stand-in"));

/** The same stand-in that the modules under test get. */
const electron = (await import("electron")) as unknown as typeof StandIn;

/** Each test loads the modules anew, into a runtime that has seen nothing yet. */
beforeEach(() => {
  vi.resetModules();
  electron.resetStandIn();
});

async function page(): Promise<Api> {
  await import("../../electron/preload");
  return electron.exposed.get("repwright") as Api;
}

describe("what the page is given", () => {
  it("is one object: every channel of the bridge and `on`, nothing else", async () => {
    const api = await page();
    expect([...electron.exposed.keys()]).toEqual(["repwright"]);
    expect(Object.keys(api).sort()).toEqual([...Object.keys(bridge), "on"].sort());
  });

  it("carries a call over the one line and gives its answer back", async () => {
    electron.ipcRenderer.invoke.mockResolvedValue({ answer: { cancelled: true } });
    const api = await page();
    expect(await api["papers:cancel"]({ job: "j1" })).toEqual({ cancelled: true });
    expect(electron.ipcRenderer.invoke).toHaveBeenCalledWith("repwright:call", "papers:cancel", { job: "j1" });
  });

  it("turns a refusal into an error with the sentence alone", async () => {
    electron.ipcRenderer.invoke.mockResolvedValue({ error: "The disk is full." });
    const api = await page();
    await expect(api["library:list"]({})).rejects.toThrow(/^The disk is full\.$/);
  });

  it("gives listeners the payload and never the runtime's event object", async () => {
    const api = await page();
    const heard = vi.fn();
    const stop = api.on("library:changed", heard);
    electron.ipcRenderer.emit("repwright:event", { sender: "the runtime" }, "library:changed", { file: "a.episode.json", stamp: null });
    electron.ipcRenderer.emit("repwright:event", { sender: "the runtime" }, "menu:chosen", { item: "save" });
    electron.ipcRenderer.emit("repwright:event", { sender: "the runtime" }, "no such event", {});
    expect(heard.mock.calls).toEqual([[{ file: "a.episode.json", stamp: null }]]);
    stop();
    electron.ipcRenderer.emit("repwright:event", {}, "library:changed", { file: "a.episode.json", stamp: null });
    expect(heard).toHaveBeenCalledOnce();
  });

  it("refuses to listen to an event that is not declared", async () => {
    const api = await page();
    const on = api.on as (event: string, listener: () => void) => () => void;
    expect(() => on("constructor", () => undefined)).toThrow('There is no event called "constructor".');
  });

  it("is bundled into a script that needs nothing but Electron, as the sandbox demands", async () => {
    const { metafile } = await build({ entryPoints: ["electron/preload.ts"], bundle: true, platform: "node", format: "cjs", external: ["electron"], write: false, metafile: true, outfile: "preload.cjs" });
    const asked = Object.values(metafile.outputs).flatMap((output) => output.imports.map((each) => each.path));
    expect([...new Set(asked)]).toEqual(["electron"]);
  });
});
