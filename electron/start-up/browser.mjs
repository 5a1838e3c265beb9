import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { StepFailed } from "./report.mjs";
import { run } from "./run.mjs";

const NAMES = ["chromium", "chromium-browser", "google-chrome-stable", "google-chrome", "microsoft-edge-stable", "microsoft-edge"];

/** Where a Chromium usually lies on this system, best first. */
export function usualPlaces(platform, env) {
  if (platform === "darwin") {
    const apps = ["Chromium.app/Contents/MacOS/Chromium", "Google Chrome.app/Contents/MacOS/Google Chrome", "Microsoft Edge.app/Contents/MacOS/Microsoft Edge"];
    return ["/Applications", join(env.HOME ?? "/", "Applications")].flatMap((folder) => apps.map((app) => join(folder, app)));
  }
  if (platform === "win32") {
    const programs = ["Chromium\\Application\\chrome.exe", "Google\\Chrome\\Application\\chrome.exe", "Microsoft\\Edge\\Application\\msedge.exe"];
    return [env.LOCALAPPDATA, env.PROGRAMFILES, env["PROGRAMFILES(X86)"]].filter(Boolean).flatMap((folder) => programs.map((program) => `${folder}\\${program}`));
  }
  const folders = [...(env.PATH ?? "").split(delimiter).filter(Boolean), "/usr/bin", "/usr/local/bin", "/snap/bin", "/opt/google/chrome"];
  return NAMES.flatMap((name) => folders.map((folder) => join(folder, name)));
}

/** The path Playwright would use for a browser of its own; null when Playwright is not installed. */
async function playwrightPath() {
  try {
    const { chromium } = await import("@playwright/test");
    return chromium.executablePath();
  } catch {
    return null;
  }
}

/**
 * A Chromium on this computer: $CHROME_PATH, else the system's, else Playwright's own. Null when there is none.
 * @throws StepFailed when $CHROME_PATH names nothing: that is a mistake to mend, not to pass over
 */
export async function findBrowser({ env = process.env, platform = process.platform, exists = existsSync, playwright = playwrightPath } = {}) {
  if (env.CHROME_PATH) {
    if (exists(env.CHROME_PATH)) return env.CHROME_PATH;
    throw new StepFailed(`CHROME_PATH names ${env.CHROME_PATH}, and there is nothing there.`);
  }
  const found = usualPlaces(platform, env).find((path) => exists(path));
  if (found !== undefined) return found;
  const own = await playwright();
  return own !== null && exists(own) ? own : null;
}

const MINUTE_MS = 60_000;

/** Ways of getting a browser, in order; each is tried within its time. */
function ways({ platform, isRoot, exists, root }) {
  const cli = join(root, "node_modules", "@playwright", "test", "cli.js");
  const list = [{ name: "Playwright's own Chromium", commands: [[process.execPath, [cli, "install", "chromium"], 4 * MINUTE_MS]] }];
  if (platform === "linux" && isRoot && exists("/usr/bin/apt-get")) {
    list.push({
      name: "the system's Chromium (apt-get)",
      commands: [
        ["apt-get", ["update", "-qq"], 3 * MINUTE_MS],
        ["apt-get", ["install", "-y", "-qq", "--no-install-recommends", "chromium"], 8 * MINUTE_MS],
      ],
    });
  }
  return list;
}

/**
 * Finds a Chromium or gets one. Never passes silently: without a browser the tests that need one would not run.
 * @returns its path
 * @throws StepFailed with what was tried
 */
export async function ensureBrowser({ root, isRoot = process.getuid?.() === 0, runCommand = run, ...probes }) {
  const found = await findBrowser(probes);
  if (found !== null) return found;
  const { platform = process.platform, exists = existsSync } = probes;
  let said = "";
  const tried = [];
  for (const way of ways({ platform, isRoot, exists, root })) {
    tried.push(way.name);
    for (const [command, args, timeoutMs] of way.commands) {
      const result = await runCommand(command, args, { cwd: root, timeoutMs, env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" } });
      said += result.output;
      if (result.code !== 0) break;
    }
    const got = await findBrowser(probes);
    if (got !== null) return got;
  }
  throw new StepFailed(`there is no Chromium on this computer and none could be had (tried: ${tried.join(", then ")}). Install Chromium or Chrome, or set CHROME_PATH.`, said);
}
