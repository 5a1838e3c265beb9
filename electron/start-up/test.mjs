import { existsSync, rmSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { ensureBrowser } from "./browser.mjs";
import { build } from "./build.mjs";
import { countPlaywright, countVitest } from "./count-tests.mjs";
import { electronRuntime } from "./electron-runtime.mjs";
import { install } from "./install.mjs";
import { StepFailed, step } from "./report.mjs";
import { runScript } from "./run.mjs";
import { CACHE, ROOT, writeStamp } from "./stamps.mjs";
import { ensureSynthesiser } from "./synthesiser.mjs";
import { hasDisplay } from "./window.mjs";

const packageScript = (...parts) => join(ROOT, "node_modules", ...parts);
const totals = { passed: 0, failed: 0 };

/** A step of the gate. One that fails without counting tests is itself one failure; the others still run. */
async function gate(name, work) {
  const before = totals.failed;
  try {
    await step(name, work);
    return true;
  } catch {
    if (totals.failed === before) totals.failed++;
    return false;
  }
}

/** A tool that prints nothing worth reading when all is well. */
async function tool(done, script, args) {
  const { code, output } = await runScript(script, args, { cwd: ROOT });
  if (code !== 0) throw new StepFailed("see above", output);
  return done;
}

/** A test runner with a JSON report beside its own words. */
async function tests(script, args, report, count, env = {}) {
  rmSync(report, { force: true });
  const { code, output } = await runScript(script, args, { cwd: ROOT, env: { ...process.env, ...env } });
  const { passed, failed, skipped } = count(report, code);
  totals.passed += passed;
  totals.failed += failed;
  const words = `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ""}`;
  if (failed > 0) throw new StepFailed(words, output);
  return words;
}

/** The desktop window in the real runtime, where there is one; where there is none it says so and counts nothing. */
async function realWindow() {
  const runtime = electronRuntime();
  if (runtime === null) return "not run here: no Electron runtime";
  if (!hasDisplay(process.platform, process.env)) return "not run here: no display";
  const { checkRealWindow } = await import(pathToFileURL(join(ROOT, "tests", "desktop", "real-window.mjs")).href);
  const { passed, failures } = await checkRealWindow(runtime, ROOT);
  totals.passed += passed;
  totals.failed += failures.length;
  if (failures.length > 0) throw new StepFailed(`${passed} passed, ${failures.length} failed`, failures.join("\n"));
  return `${passed} passed, 0 failed`;
}

async function everything() {
  if (!(await gate("install", install))) return;
  let browser = null;
  await gate("browser", async () => {
    browser = await ensureBrowser({ root: ROOT });
    writeStamp("browser", browser);
    return browser;
  });
  await gate("speech synthesiser", () => ensureSynthesiser());
  await gate("types", () => tool("no complaints", packageScript("typescript", "bin", "tsc"), ["--noEmit"]));
  await gate("lint", () => tool("no complaints", packageScript("eslint", "bin", "eslint.js"), ["."]));
  await gate("arrows", () => tool("all one way", packageScript("dependency-cruiser", "bin", "dependency-cruise.mjs"), ["--config", ".dependency-cruiser.cjs", "shared", "electron", "renderer"]));
  const unitReport = join(CACHE, "vitest.json");
  await gate("unit, trade, desktop", () =>
    tests(packageScript("vitest", "vitest.mjs"), ["run", "--reporter=default", "--reporter=json", `--outputFile.json=${unitReport}`], unitReport, countVitest));
  const built = await gate("build", build);
  const e2eReport = join(CACHE, "playwright.json");
  if (built && browser !== null && existsSync(browser)) {
    await gate("browser tests", () =>
      tests(packageScript("@playwright", "test", "cli.js"), ["test", "--reporter=line,json"], e2eReport, countPlaywright, { CHROME_PATH: browser, PLAYWRIGHT_JSON_OUTPUT_FILE: e2eReport }));
    await gate("desktop window", realWindow);
  } else {
    await gate("browser tests", () => { throw new StepFailed("not run, because of what failed above"); });
  }
}

await everything();
console.log(`${totals.passed} passed, ${totals.failed} failed`);
process.exitCode = totals.failed > 0 ? 1 : 0;
