import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";
import { expect, openDemo, test } from "./app";
import { goToSpeak, openInSpeak, talkEpisode } from "./speaking";

/** Two short clips: the first has words for about three seconds, the second for more than its clip. */
const EPISODE = talkEpisode([
  ["First", 5, "Sit back and down. / Then stand up."],
  ["Second", 2, "Breathe out on the way up, and keep both feet on the floor until you are done."],
]);

/** How far the text is pushed up; pixels. */
const push = (page: Page): Promise<number> => page.locator(".prompt-text").evaluate((node) => -new DOMMatrix(getComputedStyle(node).transform).m42);
const current = (page: Page): Promise<string> => page.locator(".prompt-stretch[aria-current='true']").innerText();
const status = (page: Page) => page.locator(".prompter").getByRole("status");
const left = (page: Page) => page.getByRole("timer").locator(".figure");

async function openPrompter(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Open the prompter" }).click();
  await expect(page.getByRole("dialog", { name: "Prompter" })).toBeVisible();
}

test("it fills the screen, waits, runs with the space key, counts the clip down and waits again at the next block", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  await openPrompter(page);
  await expect.poll(() => page.evaluate(() => document.fullscreenElement?.classList.contains("stage"))).toBe(true);
  await expect(status(page)).toHaveText("First waits");
  await expect(left(page)).toHaveText("0:05");
  const before = await push(page);
  await page.keyboard.press(" ");
  await expect(status(page)).toHaveText("Running");
  await expect(left(page)).toHaveText("0:03", { timeout: 4000 });
  expect(await push(page)).toBeGreaterThan(before);
  await expect(status(page)).toHaveText("Second waits", { timeout: 6000 });
  await expect(left(page)).toHaveText("0:02");
  // More words than clip: it goes on and says by how much.
  await page.keyboard.press(" ");
  await expect(left(page)).toHaveText(/^\d(\.\d)? s over$/, { timeout: 6000 });
  await expect(status(page)).toHaveText("Stopped", { timeout: 8000 });
});

test("it rests in a marked breath", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, talkEpisode([["First", 9, "Sit. / Stand. / Walk. / Rest."]]));
  await openPrompter(page);
  await page.keyboard.press(" ");
  const seen = await page.locator(".prompt-text").evaluate((node) => new Promise<number[]>((resolve) => {
    const pushes: number[] = [];
    const start = performance.now();
    requestAnimationFrame(function look(now) {
      pushes.push(-new DOMMatrix(getComputedStyle(node).transform).m42);
      if (now - start < 4000) requestAnimationFrame(look);
      else resolve(pushes);
    });
  }));
  const moves = seen.slice(1).map((at, i) => at - (seen[i] ?? 0));
  // Moving, resting, moving, resting, moving: at least two rests of several frames between movements.
  const runs = moves.map((move) => (Math.abs(move) < 0.01 ? "rest" : "move")).join(" ").match(/(?:rest ?){5,}/g) ?? [];
  expect(moves.every((move) => move > -0.01)).toBe(true);
  expect(runs.length).toBeGreaterThanOrEqual(3);
});

test("page and arrow keys, as pedals send them, go breath by breath and block by block", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  await openPrompter(page);
  await page.keyboard.press("PageDown");
  await expect(status(page)).toHaveText("Running");
  await page.keyboard.press(" ");
  await expect(status(page)).toHaveText("Stopped");
  await page.keyboard.press("PageDown");
  await expect.poll(() => current(page)).toBe("Then stand up.");
  await page.keyboard.press("ArrowUp");
  await expect.poll(() => current(page)).toMatch(/^Sit back and down\./);
  await page.keyboard.press("ArrowRight");
  await expect(status(page)).toHaveText("Second waits");
  await expect.poll(() => current(page)).toMatch(/^Breathe out/);
  await page.keyboard.press("ArrowLeft");
  await expect(status(page)).toHaveText("First waits");
});

test("a clip takes its own seconds at any pace, and a change of pace moves no second of it", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  await openPrompter(page);
  await page.keyboard.press(" ");
  const began = Date.now();
  await expect(left(page)).toHaveText("0:04");
  for (let i = 0; i < 10; i++) await page.keyboard.press("f");
  await expect(page.locator(".prompter").getByText("150 %")).toBeVisible();
  await expect(left(page)).toHaveText(/^0:0[34]$/);
  await expect(status(page)).toHaveText("Second waits", { timeout: 7000 });
  expect(Date.now() - began).toBeGreaterThan(4500);
});

test("a pedal on a block's last breath stops before the next block where each waits, and Enter starts it as Space does", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  await openPrompter(page);
  await page.keyboard.press("Enter");
  await expect(status(page)).toHaveText("Running");
  await page.keyboard.press("PageDown");
  await expect.poll(() => current(page)).toBe("Then stand up.");
  await page.keyboard.press("PageDown");
  await expect(status(page)).toHaveText("Second waits");
  await expect(left(page)).toHaveText("0:02");
  await page.keyboard.press("PageDown");
  await expect(status(page)).toHaveText("Running");
  await page.keyboard.press("Enter");
  await expect(status(page)).toHaveText("Stopped");
});

test("a clip without words is waited through with its seconds and what is seen, where no block waits", async ({ sheet: page, library }) => {
  const episode = talkEpisode([["First", 2, "Sit."], ["Second", 3], ["Third", 4, "Stand."]]);
  const [, second] = episode.blocks;
  second?.lines.push({ id: "shot", kind: "shot", text: "Side, full, 3 s: squats to a box" });
  await openInSpeak(page, library, episode);
  await page.getByRole("button", { name: "Open the prompter" }).click();
  const prompter = page.getByRole("dialog", { name: "Prompter" });
  await prompter.getByLabel("wait at each block").uncheck();
  await page.keyboard.press("s");
  await prompter.getByRole("button", { name: "Next block" }).click();
  await expect(prompter.locator("[aria-current]")).toHaveText("No words for 3 s. On screen: squats to a box.");
  await expect(prompter.getByRole("timer")).toHaveText("0:03of 0:03, Second");
  await page.keyboard.press("Enter");
  await expect(prompter.getByRole("timer")).toHaveText("0:02of 0:03, Second");
  await page.waitForTimeout(1000);
  await expect(prompter.getByRole("timer")).toHaveText(/Second$/);
  await expect(prompter.getByRole("timer")).toHaveText(/of 0:04, Third$/);
});

test("a held key starts once and mirrors once, and makes letters larger as long as it is held", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  await openPrompter(page);
  const dialog = page.getByRole("dialog", { name: "Prompter" });
  const size = (): Promise<number> => page.locator(".prompt-stretch").first().evaluate((node) => parseFloat(getComputedStyle(node).fontSize));
  const before = await size();
  const hold = async (key: string, times: number): Promise<void> => {
    for (let i = 0; i < times; i++) await page.keyboard.down(key);
    await page.keyboard.up(key);
  };
  await hold("m", 4);
  await expect(dialog.getByLabel("mirrored")).toBeChecked();
  await hold("+", 4);
  expect(await size()).toBe(before + 24);
  await hold(" ", 4);
  await expect(status(page)).toHaveText("Running");
});

test("letters, pace, mirror and light are set by keys and presses, and kept for the next time", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  await openPrompter(page);
  const dialog = page.getByRole("dialog", { name: "Prompter" });
  const size = (): Promise<number> => page.locator(".prompt-stretch").first().evaluate((node) => parseFloat(getComputedStyle(node).fontSize));
  const before = await size();
  await page.keyboard.press("+");
  await dialog.getByRole("button", { name: "Larger letters" }).click();
  expect(await size()).toBe(before + 12);
  await page.keyboard.press("s");
  await expect(dialog.getByText("95 %")).toBeVisible();
  await page.keyboard.press("m");
  await expect(dialog.getByLabel("mirrored")).toBeChecked();
  expect(await page.locator(".glass").evaluate((node) => new DOMMatrix(getComputedStyle(node).transform).m11)).toBe(-1);
  const ground = (): Promise<string> => page.locator(".stage").evaluate((node) => getComputedStyle(node).backgroundColor);
  expect(await ground()).toBe("rgb(13, 15, 16)");
  await dialog.getByRole("checkbox", { name: "light" }).check();
  expect(await ground()).toBe("rgb(255, 255, 255)");
  await dialog.getByRole("button", { name: "Leave" }).click();
  await expect(dialog).toHaveCount(0);
  await openPrompter(page);
  expect(await size()).toBe(before + 12);
  await expect(dialog.getByLabel("mirrored")).toBeChecked();
});

test("Escape leaves, the keys go back to where they were, and nothing of the episode changed", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  await page.getByRole("button", { name: "Prompter from here" }).nth(1).click();
  await expect(status(page)).toHaveText("Second waits");
  await page.keyboard.press("Escape");
  await expect(page.getByRole("dialog", { name: "Prompter" })).toHaveCount(0);
  await expect(page.getByRole("button", { name: "Prompter from here" }).nth(1)).toBeFocused();
  await expect(page.getByText(/^Saved/)).toBeVisible();
});

test("undo, redo and another episode wait behind it with a sentence, and the episode stays as it is", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  await page.locator(".place .ruled-word", { hasText: "Sit" }).first().click();
  await page.keyboard.type("Please ");
  await page.keyboard.press("Escape");
  await openPrompter(page);
  await page.keyboard.press("Control+z");
  const refusal = page.getByRole("alert");
  await expect(refusal).toHaveText('Close "Prompter" first, then undo.');
  // Inside of what has the whole screen, or it would not be seen.
  await expect(page.locator(".stage .refusal")).toBeVisible();
  await page.keyboard.press("Control+o");
  await expect(refusal).toHaveText('Close "Prompter" first, then go to another episode.');
  await expect(page.getByRole("dialog")).toHaveCount(1);
  await page.keyboard.press("Escape");
  await expect(page.getByRole("dialog")).toHaveCount(0);
  await expect(refusal).toHaveCount(0);
  await expect(page.locator(".place .ruled-word", { hasText: "Please" })).toBeVisible();
  await page.keyboard.press("Control+z");
  await expect(page.locator(".place .ruled-word", { hasText: "Please" })).toHaveCount(0);
});

test("for people who asked for less motion the text jumps from breath to breath", async ({ sheet: page, library }) => {
  await page.emulateMedia({ reducedMotion: "reduce" });
  await openInSpeak(page, library, EPISODE);
  await openPrompter(page);
  await page.keyboard.press(" ");
  const pushes = await page.locator(".prompt-text").evaluate((node) => new Promise<number[]>((resolve) => {
    const seen = new Set<number>();
    const start = performance.now();
    requestAnimationFrame(function look(now) {
      seen.add(Math.round(-new DOMMatrix(getComputedStyle(node).transform).m42));
      if (now - start < 3500) requestAnimationFrame(look);
      else resolve([...seen]);
    });
  }));
  expect(pushes.length).toBeGreaterThanOrEqual(2);
  expect(pushes.length).toBeLessThanOrEqual(3);
});

test("no accessibility fault in the prompter, dark or light", async ({ sheet: page }) => {
  await openDemo(page);
  await goToSpeak(page);
  await openPrompter(page);
  for (const _ of ["dark", "light"]) {
    await page.waitForTimeout(200);
    const { violations } = await new AxeBuilder({ page }).include(".prompter").analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(" ")).slice(0, 3).join("; ")}`)).toEqual([]);
    await page.getByRole("checkbox", { name: "light" }).check();
  }
});
