import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, it, vi } from "vitest";
import { temporaryFolder } from "./temporary-folder";

type Probes = Readonly<Record<string, unknown>>;
interface Result { readonly code: number | null; readonly output: string }
interface WindowCommand { readonly kind: "app" | "default"; readonly command: string; readonly args: readonly string[] }
interface Count { readonly passed: number; readonly failed: number; readonly skipped: number }

/** The start-up scripts run before anything is installed, so they are plain JavaScript; this is what the tests use of them. */
interface StartUp {
  refuseOldNode(version: string): string | null;
  whyInstall(asked: Probes, installed: Probes | null): string | null;
  install(probes: Probes): Promise<string>;
  electronRuntime(probes: Probes): string | null;
  findBrowser(probes: Probes): Promise<string | null>;
  ensureBrowser(probes: Probes): Promise<string>;
  hasDisplay(platform: string, env: Probes): boolean;
  windowCommand(facts: Probes): WindowCommand | null;
  hashOf(paths: readonly string[], root: string): string;
  countVitest(path: string, code: number): Count;
  countPlaywright(path: string, code: number): Count;
  step(name: string, work: () => Promise<string>): Promise<void>;
  StepFailed: new (message: string, output?: string) => Error;
}

const load = async (name: string): Promise<unknown> => import(pathToFileURL(join(process.cwd(), "electron", "start-up", `${name}.mjs`)).href);
const parts = await Promise.all(["install", "electron-runtime", "browser", "window", "stamps", "count-tests", "report"].map(load));
const startUp = Object.assign({}, ...parts) as StartUp;
const root = temporaryFolder();

describe("Node's version", () => {
  it.each([["v20.19.0", null], ["v22.3.0", null], ["v100.0.0", null], ["v20.18.9", "Repwright needs Node 20.19 or newer; this is v20.18.9."], ["v18.20.0", "Repwright needs Node 20.19 or newer; this is v18.20.0."]])("%s: %s", (version, sentence) => {
    expect(startUp.refuseOldNode(version)).toBe(sentence);
  });
});

describe("installing packages", () => {
  const asked = { "": {}, "node_modules/a": { version: "1.0.0" }, "node_modules/b": { version: "2.0.0", optional: true } };

  it.each<[string, Probes | null, string | null]>([
    ["nothing is there", null, "nothing was installed yet"],
    ["everything is there", { "node_modules/a": { version: "1.0.0" }, "node_modules/b": { version: "2.0.0" } }, null],
    ["a package for another system is not there", { "node_modules/a": { version: "1.0.0" } }, null],
    ["a package is missing", { "node_modules/b": { version: "2.0.0" } }, "the list of packages changed"],
    ["a package has another version", { "node_modules/a": { version: "1.0.1" } }, "the list of packages changed"],
    ["an optional package has another version", { "node_modules/a": { version: "1.0.0" }, "node_modules/b": { version: "1.9.0" } }, "the list of packages changed"],
  ])("when %s: %s", (_when, installed, why) => {
    expect(startUp.whyInstall(asked, installed)).toBe(why);
  });

  /** A project with a lock file, and perhaps what npm noted it installed. */
  function project(name: string, installed: Probes | null): string {
    const folder = join(root, name);
    mkdirSync(join(folder, "node_modules"), { recursive: true });
    writeFileSync(join(folder, "package-lock.json"), JSON.stringify({ packages: asked }));
    if (installed) writeFileSync(join(folder, "node_modules", ".package-lock.json"), JSON.stringify({ packages: installed }));
    return folder;
  }
  const npm = (code: number) => vi.fn(async (_args: readonly string[], _options: { env: Record<string, string> }): Promise<Result> => ({ code, output: "npm says no" }));

  it("runs npm ci on a fresh clone, without fetching Electron's runtime", async () => {
    const runNpm = npm(0);
    expect(await startUp.install({ root: project("fresh", null), runNpm })).toBe("packages installed, because nothing was installed yet");
    expect(runNpm.mock.calls[0]?.[0][0]).toBe("ci");
    expect(runNpm.mock.calls[0]?.[1].env).toMatchObject({ ELECTRON_SKIP_BINARY_DOWNLOAD: "1" });
  });

  it("runs nothing the second time", async () => {
    const runNpm = npm(0);
    expect(await startUp.install({ root: project("again", { "node_modules/a": { version: "1.0.0" } }), runNpm })).toBe("packages are up to date");
    expect(runNpm).not.toHaveBeenCalled();
  });

  it("fails with a sentence and npm's own words", async () => {
    await expect(startUp.install({ root: project("offline", null), runNpm: npm(1) })).rejects.toMatchObject({ message: expect.stringMatching(/^npm ci did not work/) as unknown, output: "npm says no" });
    await expect(startUp.install({ root: join(root, "empty"), runNpm: npm(0) })).rejects.toThrow("package-lock.json is missing or damaged");
    await expect(startUp.install({ root, version: "v16.0.0", runNpm: npm(0) })).rejects.toThrow("Repwright needs Node 20.19");
  });
});

describe("looking for Electron's runtime", () => {
  const there = (...paths: string[]) => (path: string) => paths.includes(path);
  const packageFolder = () => "/p/electron";

  it.each<[string, Probes, string | null]>([
    ["the package is not installed", { packageFolder: () => null, exists: () => true, env: {} }, null],
    ["only the wrapper is", { packageFolder, exists: () => false, env: {} }, null],
    ["path.txt names a program that is not there", { packageFolder, exists: there("/p/electron/path.txt"), read: () => "electron", env: {} }, null],
    ["the runtime is there", { packageFolder, exists: there("/p/electron/path.txt", "/p/electron/dist/electron"), read: () => "electron\n", env: {} }, "/p/electron/dist/electron"],
    ["it lies elsewhere", { packageFolder, exists: there("/else/electron"), env: { ELECTRON_OVERRIDE_DIST_PATH: "/else" }, platform: "linux" }, "/else/electron"],
    ["elsewhere is empty", { packageFolder, exists: () => false, env: { ELECTRON_OVERRIDE_DIST_PATH: "/else" }, platform: "linux" }, null],
  ])("when %s: %s", (_when, probes, found) => {
    expect(startUp.electronRuntime(probes)).toBe(found);
  });

  it("loads none of the package's code, which would start a download", () => {
    const source = readFileSync(join(process.cwd(), "electron", "start-up", "electron-runtime.mjs"), "utf8");
    expect(source).not.toMatch(/(?:import\(|from |require\()\s*["']electron["']/);
  });
});

describe("looking for a browser", () => {
  const nowhere = { env: {}, exists: () => false, playwright: async () => null, platform: "linux" };
  const only = (path: string) => ({ exists: (asked: string) => asked === path });

  it.each<[string, Probes, string | null]>([
    ["there is none", nowhere, null],
    ["CHROME_PATH names it", { ...nowhere, env: { CHROME_PATH: "/my/chrome" }, ...only("/my/chrome") }, "/my/chrome"],
    ["it is on the PATH", { ...nowhere, env: { PATH: "/a:/b" }, ...only("/b/chromium-browser") }, "/b/chromium-browser"],
    ["it is where Linux has it", { ...nowhere, ...only("/usr/bin/google-chrome") }, "/usr/bin/google-chrome"],
    ["it is an app on macOS", { ...nowhere, platform: "darwin", env: { HOME: "/Users/o" }, ...only("/Applications/Chromium.app/Contents/MacOS/Chromium") }, "/Applications/Chromium.app/Contents/MacOS/Chromium"],
    ["it is a program on Windows", { ...nowhere, platform: "win32", env: { PROGRAMFILES: "C:\\Programs" }, ...only("C:\\Programs\\Chromium\\Application\\chrome.exe") }, "C:\\Programs\\Chromium\\Application\\chrome.exe"],
    ["only Playwright has one", { ...nowhere, playwright: async () => "/pw/chrome", ...only("/pw/chrome") }, "/pw/chrome"],
    ["Playwright's was never fetched", { ...nowhere, playwright: async () => "/pw/chrome" }, null],
  ])("when %s: %s", async (_when, probes, found) => {
    expect(await startUp.findBrowser(probes)).toBe(found);
  });

  it("takes a wrong CHROME_PATH as a mistake, not as none", async () => {
    await expect(startUp.findBrowser({ ...nowhere, env: { CHROME_PATH: "/gone" } })).rejects.toThrow("CHROME_PATH names /gone, and there is nothing there.");
  });

  it("gets Playwright's own, then the system's as root, and says what it tried when neither comes", async () => {
    const run = vi.fn(async (command: string, args: readonly string[]): Promise<Result> => ({ code: 1, output: `${command} ${args.at(-1)} failed\n` }));
    const probes = { ...nowhere, root: "/r", isRoot: true, exists: (path: string) => path === "/usr/bin/apt-get", runCommand: run };
    await expect(startUp.ensureBrowser(probes)).rejects.toMatchObject({
      message: expect.stringContaining("tried: Playwright's own Chromium, then the system's Chromium (apt-get)") as unknown,
      output: expect.stringContaining("apt-get -qq failed") as unknown,
    });
    expect(run.mock.calls.map(([command]) => command)).toEqual([process.execPath, "apt-get"]);
    await expect(startUp.ensureBrowser({ ...probes, isRoot: false })).rejects.toThrow(/tried: Playwright's own Chromium\)/);
  });

  it("stops trying once one is there", async () => {
    let installed = false;
    const run = vi.fn(async (): Promise<Result> => {
      installed = true;
      return { code: 0, output: "" };
    });
    const probes = { ...nowhere, root: "/r", isRoot: true, playwright: async () => "/pw/chrome", exists: (path: string) => path === "/usr/bin/apt-get" || (installed && path === "/pw/chrome"), runCommand: run };
    expect(await startUp.ensureBrowser(probes)).toBe("/pw/chrome");
    expect(run).toHaveBeenCalledOnce();
  });
});

describe("showing the window", () => {
  const facts = { address: "http://127.0.0.1:4000/?token=t", browser: "/usr/bin/chromium", profile: "/p", platform: "linux", env: { DISPLAY: ":0" }, isRoot: false };

  it.each<[string, Probes, boolean]>([["linux", {}, false], ["linux", { DISPLAY: ":0" }, true], ["linux", { WAYLAND_DISPLAY: "wayland-0" }, true], ["darwin", {}, true], ["win32", {}, true]])("%s with %j has a display: %s", (platform, env, has) => {
    expect(startUp.hasDisplay(platform, env)).toBe(has);
  });

  it("shows nothing without a display", () => {
    expect(startUp.windowCommand({ ...facts, env: {} })).toBeNull();
  });

  it("opens a window of its own with a profile of its own, and drops the sandbox for root only", () => {
    const plain = startUp.windowCommand(facts);
    expect(plain).toMatchObject({ kind: "app", command: "/usr/bin/chromium" });
    expect(plain?.args).toEqual(expect.arrayContaining(["--app=http://127.0.0.1:4000/?token=t", "--user-data-dir=/p"]));
    expect(plain?.args).not.toContain("--no-sandbox");
    expect(startUp.windowCommand({ ...facts, isRoot: true })?.args).toEqual(expect.arrayContaining(["--no-sandbox", "--test-type"]));
  });

  it.each([["linux", "xdg-open"], ["darwin", "open"], ["win32", "cmd"]])("without a Chromium %s opens the default browser with %s", (platform, command) => {
    const plan = startUp.windowCommand({ ...facts, browser: null, platform });
    expect(plan).toMatchObject({ kind: "default", command });
    expect(plan?.args.at(-1)).toBe(facts.address);
  });
});

describe("knowing what changed", () => {
  it("sees new words, new names and removed files, and nothing else", () => {
    const folder = join(root, "sources");
    mkdirSync(join(folder, "a"), { recursive: true });
    writeFileSync(join(folder, "a", "one.ts"), "1");
    const before = startUp.hashOf(["a", "missing"], folder);
    writeFileSync(join(folder, "a", "one.ts"), "1");
    expect(startUp.hashOf(["a", "missing"], folder)).toBe(before);
    writeFileSync(join(folder, "a", "one.ts"), "2");
    const changed = startUp.hashOf(["a", "missing"], folder);
    writeFileSync(join(folder, "a", "two.ts"), "");
    const added = startUp.hashOf(["a", "missing"], folder);
    expect(new Set([before, changed, added]).size).toBe(3);
  });
});

describe("counting what the test runners report", () => {
  const report = (name: string, json: unknown): string => {
    const path = join(root, name);
    writeFileSync(path, JSON.stringify(json));
    return path;
  };

  it("adds up what each says", () => {
    const vitest = report("v.json", { numPassedTests: 5, numFailedTests: 2, numPendingTests: 1, numTodoTests: 1 });
    expect(startUp.countVitest(vitest, 1)).toEqual({ passed: 5, failed: 2, skipped: 2 });
    const playwright = report("p.json", { stats: { expected: 3, unexpected: 1, flaky: 1, skipped: 0 } });
    expect(startUp.countPlaywright(playwright, 1)).toEqual({ passed: 3, failed: 2, skipped: 0 });
  });

  it("counts a runner that breaks, or reports nothing, as a failure", () => {
    const clean = report("clean.json", { numPassedTests: 5, numFailedTests: 0, numPendingTests: 0, numTodoTests: 0 });
    expect(startUp.countVitest(clean, 0)).toEqual({ passed: 5, failed: 0, skipped: 0 });
    expect(startUp.countVitest(clean, 1)).toEqual({ passed: 5, failed: 1, skipped: 0 });
    expect(startUp.countVitest(join(root, "none.json"), 0)).toEqual({ passed: 0, failed: 1, skipped: 0 });
    expect(startUp.countPlaywright(join(root, "none.json"), 1)).toEqual({ passed: 0, failed: 1, skipped: 0 });
  });
});

describe("a step", () => {
  it("is one line, and a failing one shows its output in full before it", async () => {
    const log = vi.spyOn(console, "log").mockImplementation(() => undefined);
    try {
      await startUp.step("build", async () => "done");
      await expect(startUp.step("lint", () => Promise.reject(new startUp.StepFailed("see above", "line 1\nline 2\n")))).rejects.toThrow("see above");
      const lines = log.mock.calls.map(([line]) => String(line));
      expect(lines).toEqual([expect.stringMatching(/^build: done \(0\.\d s\)$/), "line 1\nline 2", expect.stringMatching(/^lint: FAILED, see above \(0\.\d s\)$/)]);
    } finally {
      log.mockRestore();
    }
  });
});
