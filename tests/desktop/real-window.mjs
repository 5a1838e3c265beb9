/* global window, document, location -- the checks run in the page */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** What must hold in the real runtime, which a stand-in cannot show. Evaluated in the page. */
const CHECKS = [
  ["the page comes from the app's own origin", () => location.href.startsWith("app://repwright/")],
  ["the page has no Node", () => typeof process === "undefined" && typeof require === "undefined"],
  ["the page has the bridge", () => typeof window.repwright?.on === "function"],
  ["the bridge answers through the sandboxed preload", async () => (await window.repwright["app:about"]({})).window === "electron"],
  ["a wrong request is refused with a sentence", () => window.repwright["episode:open"]({ file: "../x" }).then(() => false, (error) => /not understood/.test(error.message))],
  ["the policy stops inline scripts", () => {
    const script = document.createElement("script");
    script.textContent = "window.__ran = true";
    document.head.append(script);
    return window.__ran === undefined;
  }],
  ["the policy stops the network", () => fetch("https://127.0.0.1:9/").then(() => false, () => true)],
  ["new windows are refused", () => window.open("https://example.invalid/") === null],
];

/**
 * Opens the desktop window in Electron's own runtime with a library of its own.
 * @returns how many checks passed, and a sentence for each that failed
 */
export async function checkRealWindow(runtime, root) {
  const { _electron } = await import("@playwright/test");
  const library = mkdtempSync(join(tmpdir(), "repwright-window-"));
  const failures = [];
  let passed = 0;
  try {
    const asRoot = process.platform === "linux" && process.getuid?.() === 0;
    const app = await _electron.launch({ executablePath: runtime, args: [root, "--start=demo", `--library=${library}`, ...(asRoot ? ["--no-sandbox"] : [])], timeout: 60_000 });
    try {
      const page = await app.firstWindow({ timeout: 60_000 });
      await page.waitForLoadState("load");
      for (const [name, holds] of CHECKS) {
        const held = await page.evaluate(holds).catch((error) => String(error));
        if (held === true) passed++;
        else failures.push(`${name}: ${String(held)}`);
      }
    } finally {
      await app.close();
    }
  } catch (error) {
    failures.push(`the window did not open: ${error instanceof Error ? error.message : String(error)}`);
  } finally {
    rmSync(library, { recursive: true, force: true });
  }
  return { passed, failures };
}
