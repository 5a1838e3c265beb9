import { chmodSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { caretIn, expect, openDemo, sheetLines, test } from "./app";

const saved = (library: string): string => readdirSync(library).find((name) => name.endsWith(".episode.json")) ?? "";

test("the demo is saved only once it is changed, and opens again from the library", async ({ sheet: page, library, address }) => {
  await openDemo(page);
  await page.waitForTimeout(2000);
  expect(saved(library)).toBe("");
  await caretIn(page, "Soft knees");
  await page.keyboard.type(", chin level");
  await expect(page.getByRole("status").getByText(/^Saved/)).toBeVisible({ timeout: 15_000 });
  expect(readFileSync(join(library, saved(library)), "utf8")).toContain("Soft knees, ribs over hips, chin level");

  await page.goto(address);
  await page.getByRole("button", { name: /Untitled episode/ }).click();
  await page.getByRole("dialog").getByRole("button", { name: /Rows, presses, carries|Strong for the Trail/ }).first().click();
  await expect.poll(() => sheetLines(page)).toEqual(expect.arrayContaining(["cue: Soft knees, ribs over hips, chin level"]));
});

test("a change made by another program is seen and never overwritten", async ({ sheet: page, library }) => {
  await openDemo(page);
  await caretIn(page, "Soft knees");
  await page.keyboard.type("!");
  await expect(page.getByRole("status").getByText(/^Saved/)).toBeVisible({ timeout: 15_000 });
  const path = join(library, saved(library));
  const theirs = readFileSync(path, "utf8").replace("Soft knees, ribs over hips!", "Changed elsewhere");
  writeFileSync(path, theirs);
  await expect(page.getByText(/changed by another program/i).first()).toBeVisible({ timeout: 15_000 });
  await caretIn(page, "Soft knees");
  await page.keyboard.type(" more");
  await page.waitForTimeout(2500);
  expect(readFileSync(path, "utf8")).toBe(theirs);
  await page.getByRole("button", { name: "Save mine as a new file" }).first().click();
  await expect(page.getByRole("status").getByText(/^Saved/)).toBeVisible({ timeout: 15_000 });
  expect(readFileSync(path, "utf8")).toBe(theirs);
  expect(readdirSync(library).filter((name) => name.endsWith(".episode.json"))).toHaveLength(2);
});

test("a damaged file is listed with its sentence and left untouched", async ({ page, library, address }) => {
  const broken = '{"format":"repwright-episode","version":2,"id":"x",';
  writeFileSync(join(library, "broken.episode.json"), broken);
  await page.goto(address);
  await page.getByRole("button", { name: /Untitled episode/ }).click();
  await expect(page.getByRole("dialog").getByText(/not readable JSON: it breaks at line 1/)).toBeVisible();
  expect(readFileSync(join(library, "broken.episode.json"), "utf8")).toBe(broken);
});

test("words stay in the window when the folder cannot be written, and are saved once it can", async ({ sheet: page, library }) => {
  await openDemo(page);
  await caretIn(page, "Soft knees");
  await page.keyboard.type("!");
  await expect(page.getByRole("status").getByText(/^Saved/)).toBeVisible({ timeout: 15_000 });
  const path = join(library, saved(library));
  const good = readFileSync(path, "utf8");
  // Root may write anywhere, so the folder is put out of the way instead of locked.
  if (process.getuid?.() === 0) {
    await page.route("**/bridge/episode:save", (route) => route.fulfill({ status: 200, contentType: "application/json", body: JSON.stringify({ answer: { ok: false, code: "disk-full", message: "The disk is full; nothing was written." } }) }));
  } else chmodSync(library, 0o500);
  await caretIn(page, "Soft knees");
  await page.keyboard.type(" more");
  await expect(page.getByRole("status").getByText("Not saved")).toBeVisible({ timeout: 15_000 });
  expect(await sheetLines(page)).toEqual(expect.arrayContaining(["cue: Soft knees, ribs over hips! more"]));
  expect(readFileSync(path, "utf8")).toBe(good);
  if (process.getuid?.() === 0) await page.unroute("**/bridge/episode:save");
  else chmodSync(library, 0o700);
  await page.keyboard.type("!");
  await expect(page.getByRole("status").getByText(/^Saved/)).toBeVisible({ timeout: 15_000 });
});
