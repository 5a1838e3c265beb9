import AxeBuilder from "@axe-core/playwright";
import type { Locator, Page } from "@playwright/test";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { demoEpisode, writeEpisode, type Episode } from "../../shared/episode";
import { caretIn, expect, openDemo, sheetLines, test } from "./app";

const panelOf = (page: Page): Locator => page.getByRole("complementary", { name: "Findings" });
const bookOf = (page: Page): Locator => page.getByRole("dialog", { name: "What Repwright checks" });

/** The demo without its frame, its words replaced by ones that hurt: more findings than the panel shows at once. */
const bare: Episode = {
  ...demoEpisode, id: "bare", title: "Bare bones",
  blocks: demoEpisode.blocks.filter(({ kind }) => kind === "exercise").map((block) => ({
    ...block, alternates: [],
    lines: [{ id: `${block.id}-cue`, kind: "cue", text: "Arch your low back hard and hold your breath for the whole set" }, { id: `${block.id}-say`, kind: "say", text: "Bounce out of the bottom and push through the pain." }],
  })),
};

async function openBare(page: Page, library: string): Promise<void> {
  writeFileSync(join(library, "bare.episode.json"), writeEpisode(bare));
  await page.keyboard.press("Control+o");
  await page.getByRole("button", { name: /Bare bones/ }).click();
  await expect(page.getByLabel("Title of the episode")).toHaveValue("Bare bones");
  await expect(panelOf(page).locator(".finding").first()).toBeVisible();
}

/** Notes every finding that comes to or goes from the panel from now on, and whether those shown now keep their places. */
async function watchPanel(page: Page): Promise<() => Promise<{ came: string[]; went: string[]; scroll: number; moved: number }>> {
  await page.evaluate(() => {
    const panel = document.querySelector<HTMLElement>(".findings");
    if (!panel) throw new Error("no findings");
    const items = [...panel.querySelectorAll<HTMLElement>(".finding")];
    const inView = items.find((item) => item.getBoundingClientRect().top > panel.getBoundingClientRect().top) ?? items[0];
    const top = inView?.getBoundingClientRect().top ?? 0;
    const came: string[] = [];
    const went: string[] = [];
    const note = (nodes: NodeList, list: string[]): void => {
      for (const node of nodes) {
        if (node instanceof Element && (node.matches(".finding, .moment") || node.querySelector(".finding"))) list.push(node.textContent ?? "");
      }
    };
    new MutationObserver((records) => {
      for (const record of records) {
        note(record.addedNodes, came);
        note(record.removedNodes, went);
      }
    }).observe(panel, { childList: true, subtree: true });
    Object.assign(window, { watched: () => ({ came, went, scroll: panel.scrollTop, moved: Math.abs((inView?.getBoundingClientRect().top ?? 0) - top) }) });
  });
  return () => page.evaluate(() => (window as unknown as { watched: () => { came: string[]; went: string[]; scroll: number; moved: number } }).watched());
}

test("while a set line is typed letter by letter no finding comes or goes, and what is wrong with it is told when the hand rests", async ({ sheet: page, library }) => {
  await openBare(page, library);
  await panelOf(page).getByRole("button", { name: /^Show \d+ more/ }).click().catch(() => undefined);
  await caretIn(page, "4 x 40 m");
  await page.keyboard.press("Enter");
  await page.keyboard.type("sets: ");
  await page.waitForTimeout(1600);
  await page.locator(".findings").evaluate((panel) => panel.scrollTo(0, 400));
  const read = await watchPanel(page);
  // Slower than the pause after which the checks run again: each letter is checked by itself.
  await page.keyboard.type("3 x 10 @ 20 k", { delay: 260 });
  const typed = await read();
  expect([typed.came, typed.went]).toEqual([[], []]);
  expect(typed.scroll).toBe(400);
  await expect.poll(async () => (await read()).came.length).toBeGreaterThan(0);
  expect((await read()).went).toEqual([]);
  expect((await read()).moved).toBeLessThanOrEqual(1);
});

test("a finding whose words are being typed stays the same item, with its reason open", async ({ sheet: page }) => {
  await openDemo(page);
  await caretIn(page, "Drive the elbows towards the back pockets");
  await page.keyboard.press("Enter");
  await page.keyboard.type("Push through the pain");
  const item = panelOf(page).locator(".finding", { hasText: "sends people on through a warning sign" });
  await expect(item).toBeVisible();
  await item.getByRole("button", { name: "Why" }).click();
  await expect(item.getByText("Strangers copy the words")).toBeVisible();
  await caretIn(page, "Push through the pain");
  const read = await watchPanel(page);
  await page.keyboard.type(" and on to the next set", { delay: 200 });
  await page.waitForTimeout(600);
  const { came, went } = await read();
  expect([came, went]).toEqual([[], []]);
  await expect(item.getByText("Strangers copy the words")).toBeVisible();
});

test("a new stop is told to screen readers once, politely, and not on opening", async ({ sheet: page, library }) => {
  await openBare(page, library);
  const told = page.locator(".findings > [aria-live='polite']");
  await expect(told).toHaveText("");
  await caretIn(page, "Bounce out of the bottom");
  await page.keyboard.press("Enter");
  await page.keyboard.type("cue: Lock your knees hard at the top");
  await expect(told).toHaveText(/^Stop\. .*Lock your knees hard/);
});

test("a remedy shows beside the panel what it would do, by pointer and by key, and Escape takes it away", async ({ sheet: page }) => {
  await openDemo(page);
  const remedy = panelOf(page).getByRole("button", { name: /^Adds a shot/ });
  const slip = page.getByRole("tooltip");
  await remedy.hover();
  await expect(slip).toContainText("Closing");
  await expect(slip).toContainText("added Front, medium, 12 s: to camera, goodbye");
  const [paper, words] = [await slip.boundingBox(), await panelOf(page).boundingBox()];
  expect((paper?.x ?? 0) + (paper?.width ?? 0)).toBeLessThanOrEqual(words?.x ?? 0);
  await page.mouse.move(200, 500);
  await expect(slip).toHaveCount(0);
  await panelOf(page).getByRole("button", { name: /Closing: no shot planned/ }).focus();
  await page.keyboard.press("Tab");
  await expect(remedy).toBeFocused();
  await expect(remedy).toHaveAccessibleDescription(/Closing.*Front, medium/);
  await page.keyboard.press("Escape");
  await expect(slip).toHaveCount(0);
});

test("a remedy pressed twice is done once, undone in one step, and the focus goes on to the next finding", async ({ sheet: page }) => {
  await openDemo(page);
  const before = await sheetLines(page);
  const remedy = panelOf(page).getByRole("button", { name: /^Adds a shot/ });
  await remedy.focus();
  await page.keyboard.press("Enter");
  await page.keyboard.press("Enter");
  await expect(remedy).toHaveCount(0);
  expect(await sheetLines(page)).toHaveLength(before.length + 1);
  await expect(panelOf(page).locator(".finding").first().getByRole("button").first()).toBeFocused();
  await page.keyboard.press("Control+z");
  await expect(remedy).toBeVisible();
  expect(await sheetLines(page)).toEqual(before);
});

test("two remedies pressed one after the other are two steps of undo", async ({ sheet: page, library }) => {
  await openBare(page, library);
  const before = await sheetLines(page);
  await panelOf(page).getByRole("button", { name: /^Adds an opening/ }).click();
  await panelOf(page).getByRole("button", { name: /^Adds a closing/ }).click();
  const both = await sheetLines(page);
  await page.keyboard.press("Control+z");
  await expect.poll(() => sheetLines(page).then((lines) => lines.length)).toBeLessThan(both.length);
  expect((await sheetLines(page)).length).toBeGreaterThan(before.length);
  await page.keyboard.press("Control+z");
  await expect.poll(() => sheetLines(page)).toEqual(before);
});

test("each place says how many findings concern it and how grave they are, and the moments count by level", async ({ sheet: page, library }) => {
  await openBare(page, library);
  const nav = page.getByRole("navigation", { name: "Places" });
  await expect(nav.getByRole("button", { name: /^Write ?, open findings: \d+ stop, \d+ fix/ })).toBeVisible();
  await expect(nav.getByText(/^\d+ stop$/).first()).toBeVisible();
  const words = await page.locator(".moment-counts, .app-head nav .visually-hidden").evaluateAll((all) => all.map((each) => ({ moment: each.matches(".moment-counts"), sum: (each.textContent ?? "").match(/\d+/g)?.reduce((sum, n) => sum + Number(n), 0) ?? 0 })));
  const total = (moment: boolean): number => words.filter((each) => each.moment === moment).reduce((sum, each) => sum + each.sum, 0);
  expect(total(true)).toBeGreaterThan(10);
  expect(total(false)).toBe(total(true));
});

test("the panel shows on request only what concerns the open place", async ({ sheet: page, library }) => {
  await openBare(page, library);
  const shoot = page.getByRole("navigation", { name: "Places" }).getByRole("button", { name: /^Shoot/ });
  await shoot.click();
  const all = await page.locator(".moment-counts").allTextContents();
  await panelOf(page).getByRole("button", { name: /^Show only the \d+ that concerns? Shoot$/ }).click();
  const counts = /open findings: (.*)$/.exec((await shoot.textContent()) ?? "")?.[1];
  await expect(page.locator(".moment-counts")).toHaveText([counts ?? "none"]);
  await panelOf(page).getByRole("button", { name: /^Show all \d+, of every place$/ }).click();
  await expect(page.locator(".moment-counts")).toHaveText(all);
});

test("a finding opens the list of checks at its own, with its source, and closing it gives the focus back", async ({ sheet: page }) => {
  await openDemo(page);
  const item = panelOf(page).locator(".finding", { hasText: "RIR" });
  await expect(item.getByText("Source:")).toBeHidden();
  await item.getByRole("button", { name: "Why" }).click();
  await expect(item.getByText("Source:")).toBeVisible();
  await item.getByRole("button", { name: "About this check" }).click();
  const entry = bookOf(page).locator("[data-asked='true']");
  await expect(entry.getByRole("button").first()).toBeFocused();
  await expect(entry.getByText("Source:")).toBeInViewport();
  await page.keyboard.press("Escape");
  await expect(bookOf(page)).toBeHidden();
  await expect(item.getByRole("button", { name: "About this check" })).toBeFocused();
});

test("the list of checks is searched, and a check left out of the series and taken up again, from the keyboard", async ({ sheet: page }) => {
  await openDemo(page);
  const item = panelOf(page).locator(".finding", { hasText: "RIR" });
  await expect(item).toBeVisible();
  await panelOf(page).getByRole("button", { name: "What Repwright checks" }).focus();
  await page.keyboard.press("Enter");
  const book = bookOf(page);
  await expect(book.getByLabel("Find", { exact: true })).toBeFocused();
  await expect(book.getByRole("status")).toHaveText(/^\d+ checks$/);
  await page.keyboard.type("jargon explained consider");
  await expect(book.getByRole("status")).toHaveText(/^1 of \d+ checks$/);
  const entry = book.locator(".entry");
  await entry.getByRole("button", { name: "Leave this check out of the series" }).press("Enter");
  await expect(entry).toContainText("Left out of this series.");
  await expect(item).toHaveCount(0);
  await entry.getByRole("button", { name: "Check it again in this series" }).press("Enter");
  await expect(item).toHaveCount(1);
  await book.getByLabel("Find", { exact: true }).fill("no rule says this");
  await expect(book.getByRole("status")).toHaveText("no check says that");
});

for (const colorScheme of ["light", "dark"] as const) {
  test(`the list of checks and the slip have no serious accessibility fault in ${colorScheme}`, async ({ sheet: page }) => {
    await page.emulateMedia({ colorScheme });
    await openDemo(page);
    await panelOf(page).getByRole("button", { name: /^Adds a shot/ }).hover();
    await expect(page.getByRole("tooltip")).toBeVisible();
    const serious = async (): Promise<string[]> => (await new AxeBuilder({ page }).analyze()).violations.filter(({ impact }) => impact === "serious" || impact === "critical").map(({ id, nodes }) => `${id} ${nodes.map((node) => node.target.join(" ")).slice(0, 3).join("; ")}`);
    expect(await serious()).toEqual([]);
    await panelOf(page).getByRole("button", { name: "What Repwright checks" }).click();
    await bookOf(page).getByRole("button", { name: "Show every reason" }).click();
    expect(await serious()).toEqual([]);
  });
}
