import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { countingIds, emptyBlock, emptyEpisode, newLine, writeEpisode, type Block, type Episode } from "../../shared/episode";
import { caretIn, expect, openDemo, sheetLines, test } from "./app";

const place = (page: Page, name: string) => page.getByRole("navigation", { name: "Places" }).getByRole("button", { name: new RegExp(`^${name}`) });
const part = (page: Page, name: string) => page.getByRole("region", { name: new RegExp(`^\\d+\\. ${name}$`) });
const figure = (page: Page, label: RegExp) => page.locator(".figures > div").filter({ hasText: label }).locator("dd");

async function openShoot(page: Page): Promise<void> {
  await place(page, "Shoot").click();
  await expect(page.getByRole("heading", { name: "Shoot", level: 1 })).toBeVisible();
}
async function bring(page: Page, name: string) {
  const row = part(page, name);
  await row.scrollIntoViewIfNeeded();
  await expect(row.getByRole("slider").first()).toBeVisible();
  return row;
}
/** Writes a line at the end of the row with this text. */
async function write(page: Page, after: string, line: string): Promise<void> {
  await place(page, "Write").click();
  await caretIn(page, after);
  await page.keyboard.press("Enter");
  await page.keyboard.type(line);
}

/** Puts an episode into the library, opens it and goes to Shoot. */
async function openInShoot(page: Page, library: string, episode: Episode): Promise<void> {
  writeFileSync(join(library, "floor.episode.json"), writeEpisode(episode));
  await page.locator(".episode-button").click();
  await page.getByRole("dialog").getByRole("button", { name: /Floor/ }).first().click();
  await expect(page.getByLabel("Title of the episode")).toHaveValue("Floor");
  await openShoot(page);
}
const newId = countingIds("floor");
const exercise = (title: string, station: string, shots: readonly string[]): Block => emptyBlock(newId, "exercise", {
  title, station, sets: [{ id: newId(), role: "working", text: "3 x 8-10 @ 20 kg, rest 90 s" }], lines: shots.map((text) => newLine(newId, "shot", text)),
});
const longName = (n: number): string => `${n} ${"Half-kneeling single-arm landmine press with a pause, a slow way down and a breath".slice(0, 77)}`;

test.beforeEach(async ({ sheet: page }) => openDemo(page));

test("a mark that is dragged comes to rest, says what it shows, and one undo puts it back", async ({ sheet: page }) => {
  await openShoot(page);
  const row = await bring(page, "Chest-supported row");
  const mark = row.getByRole("slider", { name: /^Mark A/ });
  const before = await mark.getAttribute("aria-valuetext");
  await mark.scrollIntoViewIfNeeded();
  const box = await mark.boundingBox();
  if (!box) throw new Error("the mark is not drawn");
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width / 2 - 26, box.y - 30, { steps: 6 });
  await expect(row.locator("figcaption")).toContainText(/^A: \d\.\d m away/);
  await page.mouse.up();
  await expect(mark).not.toHaveAttribute("aria-valuetext", before ?? "");
  await expect(row.getByRole("button", { name: "Put A back" })).toBeVisible();
  await page.keyboard.press("Control+z");
  await expect(mark).toHaveAttribute("aria-valuetext", before ?? "");
  await expect(row.getByRole("button", { name: "Put A back" })).toHaveCount(0);
});

test("a drag that is given up with Escape changes nothing, and neither does a hand that trembles", async ({ sheet: page }) => {
  await openShoot(page);
  const mark = (await bring(page, "Chest-supported row")).getByRole("slider", { name: /^Mark A/ });
  const before = await mark.getAttribute("aria-valuetext");
  await mark.scrollIntoViewIfNeeded();
  const box = await mark.boundingBox();
  if (!box) throw new Error("the mark is not drawn");
  const [x, y] = [box.x + box.width / 2 + 8, box.y + box.height / 2 + 8];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 2, y + 1);
  await expect(mark).toHaveAttribute("aria-valuetext", before ?? "");
  await page.mouse.move(x - 40, y - 50, { steps: 4 });
  await expect(mark).not.toHaveAttribute("aria-valuetext", before ?? "");
  await page.keyboard.press("Escape");
  await page.mouse.move(x - 60, y - 50, { steps: 2 });
  await page.mouse.up();
  await expect(mark).toHaveAttribute("aria-valuetext", before ?? "");
  await expect(part(page, "Chest-supported row").getByRole("button", { name: "Put A back" })).toHaveCount(0);
});

test("arrow keys move a mark: away, nearer, round; it can be put back", async ({ sheet: page }) => {
  await openShoot(page);
  const row = await bring(page, "Goblet squat");
  const mark = row.getByRole("slider", { name: /^Mark A/ });
  const metres = async () => Number(await mark.getAttribute("aria-valuenow"));
  await mark.focus();
  const start = await metres();
  await page.keyboard.press("ArrowUp");
  await expect.poll(metres).toBeGreaterThan(start);
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("ArrowDown");
  await expect.poll(metres).toBeLessThan(start);
  await expect(row.locator("figcaption")).toContainText(/cut|above|toe|up/);
  const before = await mark.getAttribute("aria-valuetext");
  await page.keyboard.press("ArrowLeft");
  await expect(mark).not.toHaveAttribute("aria-valuetext", before ?? "");
  await row.getByRole("button", { name: "Put A back" }).click();
  await expect.poll(metres).toBe(start);
});

test("two marks for one set lose a shot; the remedy films it on another", async ({ sheet: page }) => {
  await write(page, "knees over toes", "shot: Rear, full, set 2: heels stay down");
  await openShoot(page);
  await expect(figure(page, /shot lost/)).toHaveText("1");
  const row = await bring(page, "Goblet squat");
  await expect(row.locator(".lost li")).toContainText("heels stay down");
  await expect(row.getByText("Set 2 is filmed from the front, head to toe.")).toBeVisible();
  await row.getByRole("button", { name: /^Films "heels stay down" on set 3$/ }).click();
  await expect(figure(page, /shots lost/)).toHaveText("none");
  await place(page, "Write").click();
  expect(await sheetLines(page)).toContain("shot: Rear, full, set 3: heels stay down");
});

test("two cameras share a set, and the table says which stands where", async ({ sheet: page }) => {
  await write(page, "knees over toes", "shot: Rear, full, set 2: heels stay down");
  await openShoot(page);
  await page.getByLabel("Cameras").selectOption("2");
  await expect(figure(page, /shots lost/)).toHaveText("none");
  const row = await bring(page, "Goblet squat");
  const set = row.getByRole("row", { name: /^Set 2/ });
  await expect(set).toContainText("camera 1");
  await expect(set).toContainText("camera 2");
});

test("a room that is too short says by how much and what to do", async ({ sheet: page }) => {
  await openShoot(page);
  const row = await bring(page, "Goblet squat");
  await row.getByText(/^The room round the free floor/).click();
  await row.getByLabel("Wall on the left, m").fill("1.5");
  await row.getByLabel("Wall on the left, m").press("Enter");
  await row.getByLabel("Wall on the right, m").fill("1.5");
  await row.getByLabel("Wall on the right, m").press("Enter");
  await expect(row.locator(".floor-problems")).toContainText(/m too short/);
  await row.getByLabel("Wall on the left, m").fill("near");
  await row.getByLabel("Wall on the left, m").press("Enter");
  await expect(row.getByRole("alert")).toContainText("Write the metres as a number");
  // The room belongs to the station: the warm-up is there as well.
  await (await bring(page, "Warm-up")).getByText(/^The room round the free floor$/).click();
  await expect(part(page, "Warm-up").getByLabel("Wall on the left, m")).toHaveValue("1.5");
});

test("the closing shot that nobody planned is written at a press", async ({ sheet: page }) => {
  await openShoot(page);
  await expect(page.getByText("One block has no shot: Closing.")).toBeVisible();
  const button = page.getByRole("button", { name: /^Write this shot: the closing, to camera/ });
  await button.scrollIntoViewIfNeeded();
  // The stations above are drawn as they come near.
  await expect(part(page, "Cool-down").getByRole("slider").first()).toBeVisible();
  await button.click();
  await expect(page.getByText("One block has no shot: Closing.")).toHaveCount(0);
  await place(page, "Write").click();
  expect((await sheetLines(page)).at(-1)).toMatch(/^shot: Front, medium/);
});

test("what it is filmed with changes distances and the card", async ({ sheet: page }) => {
  await openShoot(page);
  const mark = (await bring(page, "Goblet squat")).getByRole("slider", { name: /^Mark A/ });
  const near = Number(await mark.getAttribute("aria-valuenow"));
  await page.getByLabel("Lens").selectOption("tele");
  await expect.poll(async () => Number(await mark.getAttribute("aria-valuenow"))).toBeGreaterThan(near * 2);
  await page.keyboard.press("Control+z");
  await expect(page.getByLabel("Lens")).toHaveValue("main");
  await expect.poll(async () => Number(await mark.getAttribute("aria-valuenow"))).toBe(near);
  await page.getByLabel("Format").selectOption("4K60 HEVC");
  await page.getByLabel("Free on the phone, GB").fill("2");
  await page.getByLabel("Free on the phone, GB").press("Enter");
  await expect(page.getByText("too little", { exact: true })).toBeVisible();
  await expect(figure(page, /of 2 GB free/)).toContainText("GB");
});

test("the pocket list is previewed as it prints", async ({ sheet: page }) => {
  await openShoot(page);
  await page.getByRole("heading", { name: "On paper" }).scrollIntoViewIfNeeded();
  await page.getByLabel("Show", { exact: true }).selectOption("pocket-list.pdf");
  const preview = page.getByRole("region", { name: "Pocket list, PDF, as it will be printed" });
  await expect(preview.getByText("1 page", { exact: true })).toBeVisible();
});

test("without a pointer: from mark to mark, moved, put back", async ({ sheet: page }) => {
  await openShoot(page);
  const row = await bring(page, "Goblet squat");
  await row.getByRole("button", { name: "Goblet squat" }).focus();
  await page.keyboard.press("Tab");
  const [a, b] = [row.getByRole("slider", { name: /^Mark A/ }), row.getByRole("slider", { name: /^Mark B/ })];
  await expect(a).toBeFocused();
  await page.keyboard.press("Tab");
  await expect(b).toBeFocused();
  const before = await b.getAttribute("aria-valuetext");
  await page.keyboard.press("ArrowRight");
  await expect(b).not.toHaveAttribute("aria-valuetext", before ?? "");
  await expect(b).toBeFocused();
  await page.keyboard.press("Tab");
  await expect(row.getByRole("button", { name: "Put B back" })).toBeFocused();
  await page.keyboard.press("Enter");
  await expect(b).toHaveAttribute("aria-valuetext", before ?? "");
});

test("what has a shot is folded away and leads to it", async ({ sheet: page }) => {
  await openShoot(page);
  const needs = page.getByRole("region", { name: "What the episode needs anyway" });
  await needs.getByText(/have a shot$/).click();
  await needs.getByRole("button", { name: "Go to the shot: the opening, to camera" }).click();
  await expect(page.getByRole("heading", { name: "Shoot", level: 1 })).toHaveCount(0);
  await page.keyboard.type("!");
  expect((await sheetLines(page)).filter((line) => line.includes("!")).join()).toMatch(/^shot: /);
});

test("a camera that stays where it stood is said", async ({ sheet: page, library }) => {
  await openInShoot(page, library, emptyEpisode(newId, { title: "Floor", blocks: [exercise("Row", "bench", ["Side, full, set 1: a"]), exercise("Press", "bench", ["Side, full, set 1: b"])] }));
  await expect((await bring(page, "Press")).getByText("The camera stays at A from the block before.")).toBeVisible();
});

test("an episode without blocks says how to begin", async ({ sheet: page, library }) => {
  await openInShoot(page, library, emptyEpisode(newId, { title: "Floor", blocks: [] }));
  await expect(page.getByText('No shots yet. Write a line that begins with "shot:"')).toBeVisible();
  await expect(figure(page, /every camera stays/)).toHaveText("no moves");
});

test("sixty blocks with long names: drawn as they come near, in a narrow window, and a mark still follows the hand", async ({ sheet: page, library }) => {
  await page.setViewportSize({ width: 900, height: 700 });
  const shots = ["Side, full, set 1, 20 s: the whole arm path", "Front, medium, set 2, 15 s: shoulders level", "Insert, 6 s, nice: grip"];
  await openInShoot(page, library, emptyEpisode(newId, { title: "Floor", blocks: Array.from({ length: 60 }, (_, i) => exercise(longName(i + 1), `station ${i % 7} ${"with a name ".repeat(4)}`.trim(), shots)) }));
  await expect(page.locator(".part")).toHaveCount(60);
  expect(await page.locator(".floor-plan").count()).toBeLessThan(8);
  const wide = await page.locator(".app-place").evaluate((element) => element.scrollWidth - element.clientWidth);
  expect(wide).toBe(0);
  const last = await bring(page, longName(60));
  const mark = last.getByRole("slider", { name: /^Mark A/ });
  const before = await mark.getAttribute("aria-valuetext");
  await mark.focus();
  const started = Date.now();
  await page.keyboard.press("ArrowUp");
  await expect(mark).not.toHaveAttribute("aria-valuetext", before ?? "");
  expect(Date.now() - started).toBeLessThan(2500);
});

for (const colorScheme of ["light", "dark"] as const) {
  test(`nothing stands in the way of a screen reader, ${colorScheme}`, async ({ sheet: page }) => {
    await page.emulateMedia({ colorScheme });
    await openShoot(page);
    const row = await bring(page, "Goblet squat");
    await row.getByText(/^The room round/).click();
    await row.getByLabel("Wall on the left, m").fill("1.5");
    await row.getByLabel("People walk past").selectOption("behind");
    await row.getByLabel("Mirror ahead").check();
    await row.getByLabel("Wall ahead, m").fill("2.5");
    await row.getByLabel("Wall ahead, m").press("Enter");
    await expect(row.locator(".plan-mirror")).toContainText("mirror");
    await expect(row.locator(".plan-aisle")).toContainText("keep free");
    for (const summary of await page.locator(".needs summary").all()) await summary.click();
    await row.getByRole("slider", { name: /^Mark A/ }).focus();
    const { violations } = await new AxeBuilder({ page }).include(".app-place").analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(" | ")}`)).toEqual([]);
  });
}
