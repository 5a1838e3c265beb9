import { readFileSync } from "node:fs";
import { defineConfig } from "@playwright/test";

/** The Chromium that start-up found; the usual place when the browser tests are run by hand before that. */
function browserPath(): string {
  if (process.env["CHROME_PATH"]) return process.env["CHROME_PATH"];
  try {
    return readFileSync(new URL(".cache/browser", import.meta.url), "utf8").trim();
  } catch {
    return "/usr/bin/chromium";
  }
}

const asRoot = process.getuid?.() === 0;

/** Browser tests of the built screens: each starts a host of its own (tests/e2e), so none sees another's library. */
export default defineConfig({
  testDir: "tests/e2e",
  outputDir: "test-results",
  timeout: 60_000,
  workers: 2,
  retries: 0,
  forbidOnly: true,
  use: {
    locale: "en-GB",
    timezoneId: "UTC",
    viewport: { width: 1280, height: 860 },
    trace: "retain-on-failure",
    launchOptions: {
      executablePath: browserPath(),
      args: [
        ...(asRoot ? ["--no-sandbox"] : []),
        "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
      ],
    },
  },
});
