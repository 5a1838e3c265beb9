import { chmodSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { caretIn, expect, openDemo, sheetLines, test } from "./app";

const saved = (library: string): string => readdirSync(library).find((name) => name.endsWith(".episode.json")) ?? "";

test("the demo is saved only once it is changed, and opens again from the library in another window", async ({ sheet: page, library, address, context }) => {
  await openDemo(page);
  await page.waitForTimeout(2000);
  expect(saved(library)).toBe("");
  await caretIn(page, "Soft knees");
  await page.keyboard.type(", chin level");
  await expect(page.getByRole("status").getByText(/^Saved/)).toBeVisible({ timeout: 15_000 });
  expect(readFileSync(join(library, saved(library)), "utf8")).toContain("Soft knees, ribs over hips, chin level");

  const other = await context.newPage();
  await other.goto(address);
  await other.getByRole("button", { name: /Untitled episode/ }).click();
  await other.getByRole("dialog").getByRole("button", { name: /Rows, presses, carries|Strong for the Trail/ }).first().click();
  await expect.poll(() => sheetLines(other)).toEqual(expect.arrayContaining(["cue: Soft knees, ribs over hips, chin level"]));
});

test("a reload asks while words are not saved, saves them all the same, and opens the same episode again", async ({ sheet: page, library }) => {
  await openDemo(page);
  const asked: string[] = [];
  page.on("dialog", (dialog) => {
    asked.push(dialog.type());
    void dialog.accept();
  });
  await caretIn(page, "Soft knees");
  await page.keyboard.type("!");
  await expect(page.getByRole("status").getByText(/^Saved/)).toBeVisible({ timeout: 15_000 });
  await page.reload();
  await expect(page.getByLabel("Title of the episode")).toHaveValue("Rows, presses, carries");
  expect(asked).toEqual([]);
  await caretIn(page, "Soft knees");
  await page.keyboard.type(" last words");
  await page.reload();
  await expect.poll(() => sheetLines(page)).toEqual(expect.arrayContaining(["cue: Soft knees, ribs over hips! last words"]));
  expect(asked).toEqual(["beforeunload"]);
  expect(readFileSync(join(library, saved(library)), "utf8")).toContain("hips! last words");
});

test("who types without a pause is saved meanwhile", async ({ sheet: page, library }) => {
  await openDemo(page);
  await caretIn(page, "Soft knees");
  for (let letter = 0; letter < 36; letter++) {
    await page.keyboard.type("x");
    await page.waitForTimeout(200);
  }
  expect(readFileSync(join(library, saved(library)), "utf8")).toMatch(/ribs over hipsx{10,}"/);
});

test("how the words are kept is told to its last letter, at every text size", async ({ sheet: page, library }) => {
  await openDemo(page);
  await caretIn(page, "Soft knees");
  await page.keyboard.type("!");
  const status = page.locator(".app-head").getByRole("status");
  const isCut = (): Promise<boolean> => status.evaluate((words) => words.scrollWidth > words.clientWidth + 1);
  await expect(status).toHaveText(/^Saved \d\d:\d\d$/, { timeout: 15_000 });
  for (const size of ["large", "largest"]) {
    await page.evaluate((text) => document.documentElement.setAttribute("data-text", text), size);
    for (const width of [1280, 1000, 861, 720]) {
      await page.setViewportSize({ width, height: 800 });
      expect(await isCut(), `${size} at ${width}`).toBe(false);
      expect(await page.locator(".app-head").evaluate((head) => head.scrollWidth - head.clientWidth), `${size} at ${width}`).toBeLessThanOrEqual(0);
    }
  }
  await page.evaluate(() => document.documentElement.removeAttribute("data-text"));
  await page.setViewportSize({ width: 1280, height: 800 });
  const path = join(library, saved(library));
  writeFileSync(path, readFileSync(path, "utf8").replace("over hips!", "over feet"));
  await expect(status).toHaveText("Changed outside", { timeout: 15_000 });
  expect(await isCut()).toBe(false);
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
