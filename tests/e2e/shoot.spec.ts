import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";
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
  await page.getByRole("button", { name: /^Write this shot: the closing, to camera/ }).click();
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
  await page.getByLabel("Format").selectOption("4K60 HEVC");
  await page.getByLabel("Free on the phone, GB").fill("2");
  await page.getByLabel("Free on the phone, GB").press("Enter");
  await expect(page.getByText("too little", { exact: true })).toBeVisible();
});

test("the pocket list is previewed as it prints", async ({ sheet: page }) => {
  await openShoot(page);
  await page.getByRole("heading", { name: "On paper" }).scrollIntoViewIfNeeded();
  await page.getByLabel("Show", { exact: true }).selectOption("pocket-list.pdf");
  const preview = page.getByRole("region", { name: "Pocket list, PDF, as it will be printed" });
  await expect(preview.getByText("1 page", { exact: true })).toBeVisible();
});

for (const colorScheme of ["light", "dark"] as const) {
  test(`nothing stands in the way of a screen reader, ${colorScheme}`, async ({ sheet: page }) => {
    await page.emulateMedia({ colorScheme });
    await openShoot(page);
    await bring(page, "Chest-supported row");
    const { violations } = await new AxeBuilder({ page }).include(".app-place").analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(" | ")}`)).toEqual([]);
  });
}
