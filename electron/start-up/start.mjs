import { spawn } from "node:child_process";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { pathToFileURL } from "node:url";
import { findBrowser } from "./browser.mjs";
import { build } from "./build.mjs";
import { electronRuntime } from "./electron-runtime.mjs";
import { install } from "./install.mjs";
import { step } from "./report.mjs";
import { CACHE, ROOT } from "./stamps.mjs";
import { hasDisplay, windowCommand } from "./window.mjs";

const DIST = join(ROOT, "dist");
/** A window program that ends sooner did not close a window: it handed over to one that was running, or failed. */
const HANDED_OVER_MS = 3000;

const { platform, env } = process;
const isRoot = process.getuid?.() === 0;

/** Starts a program. Resolves to how it ended and after how long. */
function show(command, args, children) {
  const from = Date.now();
  return new Promise((resolve) => {
    const child = spawn(command, args, { stdio: "ignore" });
    children.add(child);
    const end = (code) => {
      children.delete(child);
      resolve({ code, ms: Date.now() - from });
    };
    child.on("error", () => end(null));
    child.on("exit", end);
  });
}

/** The desktop window. @returns whether it came up; a runtime that cannot run here is no reason to give up */
async function electronWindow(runtime, choice, children) {
  const args = [ROOT, `--start=${choice.start}`, ...(choice.library === undefined ? [] : [`--library=${choice.library}`]), ...(isRoot && platform === "linux" ? ["--no-sandbox"] : [])];
  console.log("window: Electron");
  const { code, ms } = await show(runtime, args, children);
  if (code === 0 || ms > HANDED_OVER_MS) return true;
  console.log("window: Electron's runtime is here but did not run; using a browser instead");
  return false;
}

/** The same screens in a browser window, from a host on this computer. Resolves when the window was closed. */
async function browserWindow(choice, children, untilEnd) {
  const { serve } = await import(pathToFileURL(join(DIST, "electron", "serve.mjs")).href);
  const host = await serve({ dist: DIST, start: choice.start, library: choice.library });
  console.log(`library: ${host.library}`);
  console.log(`address: ${host.address}`);
  const plan = windowCommand({ address: host.addressForOnce(), browser: hasDisplay(platform, env) ? await findBrowser() : null, profile: join(CACHE, "window"), platform, env, isRoot });
  if (plan === null) {
    console.log("window: no display here; open the address in a browser on this computer. Ctrl+C ends it.");
    await untilEnd;
  } else {
    console.log(plan.kind === "app" ? "window: Chromium, closing it ends Repwright (or Ctrl+C)" : "window: your browser; Ctrl+C ends Repwright");
    let ending = false;
    void untilEnd.then(() => (ending = true));
    const closed = show(plan.command, plan.args, children).then(async ({ code, ms }) => {
      if (plan.kind === "app" && ms > HANDED_OVER_MS) return;
      if (code !== 0 && !ending) console.log("window: it did not open; open the address in a browser on this computer");
      await untilEnd;
    });
    await Promise.race([closed, untilEnd]);
  }
  await host.close();
}

async function start() {
  const { values } = parseArgs({ options: { library: { type: "string" }, start: { type: "string", default: "demo" } } });
  const choice = { library: values.library, start: values.start === "last" ? "last" : "demo" };
  const children = new Set();
  await step("install", install);
  await step("build", build);

  // Until here Ctrl+C simply stops everything; from here on there is a host and a window to close.
  const untilEnd = new Promise((resolve) => {
    process.once("SIGINT", resolve);
    process.once("SIGTERM", resolve);
  });
  const runtime = electronRuntime();
  if (runtime === null) console.log("desktop: no Electron runtime here, so the same screens open in a browser window");
  const shown = runtime !== null && hasDisplay(platform, env) && (await Promise.race([electronWindow(runtime, choice, children), untilEnd.then(() => true)]));
  if (!shown) await browserWindow(choice, children, untilEnd);
  for (const child of children) child.kill();
  console.log("ended");
}

start().catch((error) => {
  console.error(error instanceof Error ? error.message : String(error));
  process.exitCode = 1;
});
