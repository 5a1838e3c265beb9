import { test as base, expect, type Page } from "@playwright/test";
import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const CLI = new URL("../../dist/electron/cli.mjs", import.meta.url).pathname;

/** A host of its own on an empty library, and the page opened on it. */
export const test = base.extend<{ library: string; address: string; sheet: Page }>({
  // eslint-disable-next-line no-empty-pattern -- the runner reads the parameter to know what a fixture needs
  library: async ({}, use) => {
    const folder = mkdtempSync(join(tmpdir(), "repwright-e2e-"));
    await use(folder);
    rmSync(folder, { recursive: true, force: true });
  },
  address: async ({ library }, use) => {
    const host = spawn(process.execPath, [CLI, "serve", "--port", "0", "--library", library], { stdio: ["ignore", "pipe", "inherit"] });
    const address = await new Promise<string>((resolve, reject) => {
      let said = "";
      host.stdout.on("data", (data: Buffer) => {
        said += data.toString();
        const found = /http:\/\/\S+/.exec(said);
        if (found) resolve(found[0]);
      });
      host.on("exit", (code) => reject(new Error(`the host ended with ${code}: ${said}`)));
    });
    await use(address);
    const ended = new Promise((resolve) => host.once("exit", resolve));
    host.kill();
    await ended;
  },
  sheet: async ({ page, address }, use) => {
    const faults: string[] = [];
    page.on("pageerror", (error) => faults.push(String(error.stack ?? error)));
    page.on("console", (message) => {
      if (message.type() === "error") faults.push(message.text());
    });
    await page.goto(address);
    await expect(page.getByLabel("Title of the episode")).toBeVisible();
    await use(page);
    expect(faults, "the page logged errors").toEqual([]);
  },
});

export { expect };

/** Opens the demo episode from the empty page. */
export async function openDemo(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Look at the demo episode" }).click();
  await expect(page.getByLabel("Title of the episode")).toHaveValue("Rows, presses, carries");
  await expect(page.getByRole("complementary", { name: "Findings" }).getByText("Before you film")).toBeVisible();
}

/** The sheet as lines: "# Title" for heads, "word: text" for rows. */
export const sheetLines = (page: Page): Promise<string[]> =>
  page.locator(".surface > .row").evaluateAll((rows) => rows.map((row) => {
    const text = row.querySelector(".text")?.textContent ?? "";
    return row.classList.contains("block-head") ? `# ${text}` : `${row.querySelector(".margin-word")?.textContent}: ${text}`;
  }));

/** Puts the caret at the end of the row with this text and waits until the editor has noticed. */
export async function caretIn(page: Page, text: string): Promise<void> {
  await page.locator(".surface > .row > .text").filter({ hasText: text }).first().click();
  await page.waitForTimeout(80);
  await page.keyboard.press("End");
  await page.waitForTimeout(80);
}
