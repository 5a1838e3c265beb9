import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { demoEpisode } from "../../shared/episode";
import { temporaryFolder } from "./temporary-folder";
import type * as StandIn from "./electron-stand-in";

vi.mock("electron", () => import("./electron-stand-in"));

/** The same stand-in that the modules under test get. */
const electron = (await import("electron")) as unknown as typeof StandIn;

/** Each test loads the modules anew, into a runtime that has seen nothing yet. */
beforeEach(() => {
  vi.resetModules();
  electron.resetStandIn();
});

const library = join(temporaryFolder(), "library");
const OUR_PAGE = "app://repwright/index.html";

/** Starts the app as the runtime would, and returns its window. */
async function boot(options: Record<string, string> = {}): Promise<StandIn.BrowserWindow> {
  electron.switches.set("library", library);
  for (const [name, value] of Object.entries(options)) electron.switches.set(name, value);
  await import("../../electron/main");
  await vi.waitFor(() => expect(electron.windows).toHaveLength(1));
  return electron.windows[0] ?? expect.fail("no window");
}

const frame = (url: string, parent: unknown = null) => ({ senderFrame: { url, parent } });
const call = (event: unknown, channel: unknown, request: unknown): Promise<unknown> => {
  const handler = electron.ipcHandlers.get("repwright:call") ?? expect.fail("no bridge");
  return Promise.resolve(handler(event, channel, request));
};

describe("starting the desktop app", () => {
  it("closes the doors before the window opens", async () => {
    await boot();
    expect(electron.order).toEqual(["enableSandbox", "registerSchemes", "requestSingleInstanceLock", "whenReady", "lockDown", "serveApp", "serveBridge", "menu", "window"]);
  });

  it("opens its own page in a window without Node", async () => {
    const window = await boot();
    expect(window.loaded).toBe(OUR_PAGE);
    expect(window.options.webPreferences).toMatchObject({
      contextIsolation: true, sandbox: true, nodeIntegration: false, nodeIntegrationInWorker: false, nodeIntegrationInSubFrames: false,
      webSecurity: true, webviewTag: false, spellcheck: false, allowRunningInsecureContent: false, preload: join(process.cwd(), "dist", "electron", "preload.cjs"),
    });
  });

  it("shows the window only when there is something to see", async () => {
    const window = await boot();
    expect(window.options.show).toBe(false);
    window.emit("ready-to-show");
    expect(window.show).toHaveBeenCalledOnce();
  });

  it("hands a second start over to the first", async () => {
    electron.setLock(false);
    await import("../../electron/main");
    expect(electron.app.quit).toHaveBeenCalledOnce();
    expect(electron.windows).toHaveLength(0);
  });

  it("comes to the front when it is started again", async () => {
    const window = await boot();
    electron.app.emit("second-instance");
    expect(window.restore).toHaveBeenCalledOnce();
    expect(window.focus).toHaveBeenCalledOnce();
  });

  it("ends when its window is closed", async () => {
    await boot();
    electron.app.emit("window-all-closed");
    expect(electron.app.quit).toHaveBeenCalledOnce();
  });
});

describe("what a page cannot do", () => {
  const leaving = ["https://example.invalid/", "http://127.0.0.1:4000/", "file:///etc/passwd", "app://elsewhere/index.html", "javascript:alert(1)", "app://user@repwright/index.html", "not an address"];

  it.each(leaving)("leave for %s", async (url) => {
    const window = await boot();
    for (const way of ["will-navigate", "will-redirect", "will-frame-navigate"]) {
      const event = { url, preventDefault: vi.fn() };
      window.webContents.emit(way, event);
      expect(event.preventDefault).toHaveBeenCalledOnce();
    }
  });

  it("may go to its own page", async () => {
    const window = await boot();
    const event = { url: OUR_PAGE, preventDefault: vi.fn() };
    window.webContents.emit("will-navigate", event);
    expect(event.preventDefault).not.toHaveBeenCalled();
  });

  it("open windows or embed pages", async () => {
    const window = await boot();
    expect(window.webContents.openHandler?.()).toEqual({ action: "deny" });
    const event = { preventDefault: vi.fn() };
    window.webContents.emit("will-attach-webview", event);
    expect(event.preventDefault).toHaveBeenCalledOnce();
  });

  it.each([
    ["media", OUR_PAGE, false], ["geolocation", OUR_PAGE, false], ["notifications", OUR_PAGE, false], ["openExternal", OUR_PAGE, false],
    ["clipboard-read", OUR_PAGE, false], ["clipboard-sanitized-write", OUR_PAGE, true], ["clipboard-sanitized-write", "https://example.invalid/", false],
    ["fullscreen", OUR_PAGE, true], ["fullscreen", "https://example.invalid/", false],
  ])("ask for %s from %s: %s", async (permission, url, granted) => {
    await boot();
    const answer = vi.fn();
    electron.permissions.request?.({ getURL: () => url }, permission, answer, {});
    expect(answer).toHaveBeenCalledWith(granted);
    expect(electron.permissions.check?.(null, permission, url, {})).toBe(granted);
    expect(electron.permissions.device?.()).toBe(false);
  });

  it.each([
    [["audio"], OUR_PAGE, true], [["video"], OUR_PAGE, false], [["audio", "video"], OUR_PAGE, false], [["audio"], "https://example.invalid/", false],
  ])("have %j of a person's devices from %s: %s", async (mediaTypes, url, granted) => {
    await boot();
    const answer = vi.fn();
    electron.permissions.request?.({ getURL: () => url }, "media", answer, { mediaTypes });
    expect(answer).toHaveBeenCalledWith(granted);
    expect(mediaTypes.every((mediaType) => electron.permissions.check?.(null, "media", url, { mediaType }))).toBe(granted);
  });

  describe("on macOS, which asks the person itself", () => {
    const real = process.platform;
    beforeEach(() => void Object.defineProperty(process, "platform", { value: "darwin" }));
    afterEach(() => void Object.defineProperty(process, "platform", { value: real }));

    it.each([["allowed", () => Promise.resolve(true), true], ["refused", () => Promise.resolve(false), false], ["not able to ask", () => Promise.reject(new Error("no")), false]])("have the microphone as it was answered: %s", async (_how, ask, granted) => {
      await boot();
      electron.systemPreferences.askForMediaAccess.mockImplementation(ask);
      const answer = vi.fn();
      electron.permissions.request?.({ getURL: () => OUR_PAGE }, "media", answer, { mediaTypes: ["audio"] });
      await vi.waitFor(() => expect(answer).toHaveBeenCalledExactlyOnceWith(granted));
      expect(electron.systemPreferences.askForMediaAccess).toHaveBeenCalledExactlyOnceWith("microphone");
    });

    it.each([[["audio"], "https://example.invalid/"], [["video"], OUR_PAGE]])("never make it ask about %j for %s", async (mediaTypes, url) => {
      await boot();
      const answer = vi.fn();
      electron.permissions.request?.({ getURL: () => url }, "media", answer, { mediaTypes });
      expect(answer).toHaveBeenCalledExactlyOnceWith(false);
      expect(electron.systemPreferences.askForMediaAccess).not.toHaveBeenCalled();
    });
  });

  it.each([["https://example.invalid/x.js", true], ["ws://127.0.0.1:9/", true], ["file:///etc/hosts", true], [OUR_PAGE, false], ["blob:app://repwright/1", false]])("fetch %s: refused is %s", async (url, cancel) => {
    await boot();
    const answer = vi.fn();
    electron.permissions.network?.({ url }, answer);
    expect(answer).toHaveBeenCalledWith({ cancel });
  });
});

describe("the app's own origin", () => {
  it("serves a file of the screens with the strict policy, and nothing outside them", async () => {
    const screens = join(temporaryFolder(), "renderer");
    mkdirSync(screens);
    writeFileSync(join(screens, "index.html"), "<title>screens</title>");
    writeFileSync(join(screens, "..", "secret.txt"), "secret");
    const { serveApp } = await import("../../electron/app-origin");
    serveApp(screens);
    const get = async (url: string, method = "GET"): Promise<Response> => (await electron.scheme?.(new Request(url, { method }))) ?? expect.fail("no scheme");
    const page = await get(OUR_PAGE);
    expect(await page.text()).toBe("<title>screens</title>");
    expect(page.headers.get("content-security-policy")).toContain("default-src 'none'; script-src 'self'");
    expect(page.headers.get("content-type")).toBe("text/html; charset=utf-8");
    expect((await get("app://repwright/%2e%2e/secret.txt")).status).toBe(404);
    expect((await get("app://repwright/..%2fsecret.txt")).status).toBe(404);
    expect((await get("app://elsewhere/index.html")).status).toBe(403);
    expect((await get(OUR_PAGE, "POST")).status).toBe(403);
  });
});

describe("the bridge in the main process", () => {
  it("answers the app's own page", async () => {
    await boot({ start: "demo" });
    expect(await call(frame(OUR_PAGE), "app:about", {})).toEqual({ answer: { version: "0.1.0", window: "electron", library, start: "demo" } });
  });

  it.each([
    ["another site", frame("https://example.invalid/")],
    ["another app host", frame("app://elsewhere/index.html")],
    ["a frame inside the page", frame(OUR_PAGE, {})],
    ["a frame that is gone", { senderFrame: null }],
  ])("refuses %s before it looks at the request", async (_who, event) => {
    await boot();
    expect(await call(event, "no such channel", undefined)).toEqual({ error: "Only Repwright's own page is answered." });
  });

  it.each([["shell:run", {}], ["__proto__", {}], ["constructor", {}], [42, {}]])("refuses the channel %s", async (channel, request) => {
    await boot();
    expect(await call(frame(OUR_PAGE), channel, request)).toEqual({ error: `There is nothing called "${String(channel)}" to ask for.` });
  });

  it.each([{ file: "../../etc/passwd" }, { file: "a/b.episode.json" }, {}, null, "text", { file: 7 }])("refuses the request %j", async (request) => {
    await boot();
    expect(await call(frame(OUR_PAGE), "episode:open", request)).toEqual({ error: expect.stringMatching(/^The request episode:open is not understood, at .+\.$/) as unknown });
  });

  it("saves and opens through the bridge", async () => {
    await boot();
    const file = "bridge.episode.json";
    expect(await call(frame(OUR_PAGE), "episode:save", { file, episode: demoEpisode, basedOn: null })).toMatchObject({ answer: { ok: true } });
    expect(await call(frame(OUR_PAGE), "episode:open", { file })).toMatchObject({ answer: { ok: true, episode: demoEpisode, migratedFrom: null } });
  });
});

describe("the window's menu", () => {
  it("sends what was chosen to the page and leaves its keys to the page", async () => {
    const window = await boot();
    const items = electron.menu.flatMap((part) => part.submenu ?? []).filter((item) => item.click);
    for (const item of items) item.click?.();
    expect(window.webContents.sent).toEqual(["new", "open", "save", "make-papers", "undo", "redo", "checks"].map((item) => ["repwright:event", "menu:chosen", { item }]));
    expect(items.filter((item) => item.accelerator).every((item) => item.registerAccelerator === false)).toBe(true);
  });

  it("sends nothing to a window that is gone", async () => {
    const window = await boot();
    window.webContents.destroyed = true;
    for (const item of electron.menu.flatMap((part) => part.submenu ?? [])) item.click?.();
    expect(window.webContents.sent).toEqual([]);
  });
});

describe("closing with unsaved words", () => {
  it.each([[0, false], [1, true]])("answer %i of the question closes: %s", async (choice, closes) => {
    const window = await boot();
    electron.dialog.showMessageBoxSync.mockReturnValue(choice);
    const event = { preventDefault: vi.fn() };
    window.webContents.emit("will-prevent-unload", event);
    expect(event.preventDefault).toHaveBeenCalledTimes(closes ? 1 : 0);
  });
});
