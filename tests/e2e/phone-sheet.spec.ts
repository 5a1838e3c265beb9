import AxeBuilder from "@axe-core/playwright";
import { execFileSync } from "node:child_process";
import { copyFileSync, existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, BrowserContext, Locator, Page } from "@playwright/test";
import { expect, openDemo, test as appTest } from "./app";

const CLI = new URL("../../dist/electron/cli.mjs", import.meta.url).pathname;
const START = new Date("2027-03-04T06:45:00Z");
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2, offline: true, acceptDownloads: true } as const;

const test = appTest.extend<{ folder: string; file: string; phone: Page }>({
  // eslint-disable-next-line no-empty-pattern -- the runner reads the parameter to know what a fixture needs
  folder: async ({}, use) => {
    const folder = mkdtempSync(join(tmpdir(), "repwright-phone-"));
    await use(folder);
    rmSync(folder, { recursive: true, force: true });
  },
  /** The demo's phone sheet as the command line writes it. */
  file: async ({ folder }, use) => {
    const episode = join(folder, "demo.episode.json");
    execFileSync(process.execPath, [CLI, "demo", "--to", episode]);
    const out = execFileSync(process.execPath, [CLI, "export", episode, "--to", folder, "--only", "phone-sheet"], { encoding: "utf8" });
    await use(out.trim());
  },
  /** A phone without a network that has opened the file; whatever the page asks for beside itself is a fault. */
  phone: async ({ browser, file }, use) => {
    const { page, faults, context } = await openPhone(browser, file);
    await use(page);
    await context.close();
    expect(faults).toEqual([]);
  },
});

async function openPhone(browser: Browser, file: string, more: Parameters<Browser["newContext"]>[0] = {}): Promise<{ page: Page; context: BrowserContext; faults: string[] }> {
  const context = await browser.newContext({ ...PHONE, ...more });
  const page = await context.newPage();
  const faults: string[] = [];
  const address = pathToFileURL(file).href;
  page.on("request", (request) => {
    if (request.url() !== address && !request.url().startsWith("blob:")) faults.push(`asked for ${request.url()}`);
  });
  page.on("pageerror", (error) => faults.push(String(error.stack ?? error)));
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") faults.push(message.text());
  });
  await page.addInitScript(() => {
    const buzzes: number[][] = [];
    Object.assign(window, { buzzes });
    navigator.vibrate = (pattern) => buzzes.push([pattern].flat() as number[]) > 0;
  });
  await page.clock.install({ time: START });
  await page.goto(address);
  return { page, context, faults };
}

const main = (page: Page): Locator => page.locator(".main");
const press = (page: Page, name: string | RegExp): Promise<void> => page.getByRole("button", { name }).first().tap();
const heading = (page: Page): Locator => page.getByRole("heading", { level: 1 });
const changed = (page: Page): Locator => page.getByRole("region", { name: "What changed" });
const buzzes = (page: Page): Promise<number[][]> => page.evaluate(() => (window as unknown as { buzzes: number[][] }).buzzes);

/** Does the set that is next: starts it, lets its time pass, ends it, and answers yes for all it filmed. */
async function doSet(page: Page): Promise<void> {
  await expect(main(page)).toHaveText(/^Start /);
  await main(page).tap();
  await page.clock.runFor(20_000);
  await main(page).tap();
  const answers = page.locator("section:has(> #answers)").getByRole("button", { name: "In the box", pressed: false });
  for (let left = await answers.count(); left > 0; left = await answers.count()) await answers.first().tap();
}

/** Goes on until the set with these words is next. */
async function goTo(page: Page, block: string, set: string): Promise<void> {
  for (let i = 0; i < 40; i++) {
    if ((await page.locator(".title .over").innerText()).includes(block) && (await heading(page).innerText()) === set) return;
    await doSet(page);
  }
  throw new Error(`never came to ${set} of ${block}`);
}

test("a whole session: a lost angle, a taken station, a reload, the closing that must not be forgotten, and the way back", async ({ phone: page, folder, library, sheet }) => {
  test.setTimeout(180_000);
  await expect(heading(page)).toHaveText("Rows, presses, carries");
  await expect(page.getByText("Ask at the desk before you film")).toBeVisible();
  await press(page, "Begin: Opening");

  await goTo(page, "Chest-supported row", "Set 2");
  await expect(page.getByRole("region", { name: "Where the camera stands" })).toContainText("from the side, head to toe");
  await expect(page.getByRole("region", { name: "Where the camera stands" })).toContainText(/2½ steps|3 steps|3½ steps/);

  // From here the clock goes on only when it is told to: a busy machine lets seconds pass between two looks.
  await page.clock.pauseAt((await page.evaluate(() => Date.now())) + 1000);

  // The set counts up and buzzes at its planned time.
  await main(page).tap();
  await page.clock.runFor(30_000);
  await expect(page.getByRole("timer", { name: "Time of this set" })).toHaveText("0:30");
  await page.clock.runFor(20_000);
  expect(await buzzes(page)).toEqual([[120]]);

  // Locked for a while and loaded anew: nothing is lost, the timer shows the time that really passed.
  await page.clock.fastForward(25_000);
  await page.reload();
  await expect(heading(page)).toHaveText("Set 2");
  // A busy machine takes seconds to load it again.
  await expect(page.getByRole("timer", { name: "Time of this set" })).toHaveText(/^1:[1-5]\d$/);
  await press(page, "End set 2");

  // The rest counts down, names the move that is due, warns and ends with a buzz.
  await expect(page.getByRole("timer", { name: "Rest left" })).toHaveText("1:30");
  await expect(page.getByText("Move the camera from A to B.")).toBeVisible();
  await press(page, /^In the box$/);
  await page.clock.runFor(81_000);
  await expect(page.getByRole("timer", { name: "Rest left" })).toHaveText("0:09");
  await expect(page.locator(".sr[role=status]")).toHaveText("10 seconds of rest left. Move the camera from A to B.");
  await page.clock.runFor(12_000);
  await expect(page.getByRole("timer", { name: "Rest left" })).toHaveText("+0:03");
  expect(await buzzes(page)).toEqual([[80], [200, 100, 200]]);

  // Numbers: prefilled with the plan, one step more, one typed.
  await press(page, "Load, kg: 2.5 more");
  await page.getByLabel("Reps", { exact: true }).fill("9");
  await page.getByLabel("Reps", { exact: true }).blur();
  await expect(page.getByText("Written down: 24.5 kg, 9 reps, 2 in reserve")).toBeVisible();
  await page.getByLabel("Reps", { exact: true }).fill("many");
  await page.getByLabel("Reps", { exact: true }).blur();
  await expect(page.getByRole("alert").filter({ hasText: '"many" is not written down' })).toBeVisible();

  // The rear angle is lost: it is said what that costs, and one press takes it back.
  await press(page, "Angle B is lost");
  await expect(changed(page)).toContainText("Lost now: Rear, medium: shoulder blades together, then apart (Chest-supported row).");
  await press(page, "Undo: angle lost");
  await expect(changed(page)).toHaveCount(0);
  await press(page, "Angle B is lost");
  await doSet(page);

  // The landmine corner is taken: later; it comes back before the cool-down.
  await expect(page.locator(".title .over").first()).toContainText("Half-kneeling landmine press");
  await press(page, "Station is taken");
  await press(page, "Come back to it later");
  await expect(changed(page)).toContainText("Half-kneeling landmine press comes later, after Anti-rotation press.");
  await expect(page.locator(".title .over").first()).toContainText("Goblet squat");
  await goTo(page, "Half-kneeling landmine press", "Ramp-up 1");
  await goTo(page, "Closing", "Closing");
  await main(page).tap();
  await main(page).tap();

  // Nothing is over while the closing is missing; leaving without it asks.
  await expect(heading(page)).toHaveText("The closing is missing");
  await press(page, "End without the closing");
  await expect(page.getByRole("dialog")).toContainText("Without it the video has no end.");
  await press(page, "Film it now");
  await expect(heading(page)).toHaveText("The closing is missing");
  await page.getByRole("region", { name: "closing", exact: true }).getByRole("button").tap();
  await expect(heading(page)).toHaveText("Everything is answered for");
  await press(page, "The session is over");
  await expect(heading(page)).toHaveText("The session is over");
  await expect(page.getByText("15 of 16 shots in the box, 1 set written down.")).toBeVisible();

  // The way back: a file and a code that say the same.
  const saving = page.waitForEvent("download");
  await press(page, "Save the file");
  const download = await saving;
  expect(download.suggestedFilename()).toBe("strong-for-the-trail-7.session.json");
  const back = join(folder, download.suggestedFilename());
  await download.saveAs(back);
  const code = await page.getByLabel(/letters; send them/).inputValue();
  expect(code).toMatch(/^RWS1\.[A-Za-z0-9_-]+\.[0-9a-z]{7}$/);

  // At the desk, where the episode is that the phone sheet was made of.
  copyFileSync(join(folder, "demo.episode.json"), join(library, "demo.episode.json"));
  await sheet.locator(".episode-button").click();
  await sheet.getByRole("dialog").getByRole("button", { name: /Rows, presses, carries/ }).first().click();
  await expect(sheet.getByLabel("Title of the episode")).toHaveValue("Rows, presses, carries");
  await sheet.getByRole("button", { name: /^Shoot/ }).click();
  const desk = sheet.getByRole("region", { name: "Back from the gym" });
  await desk.getByLabel("Or paste its code").fill(code.slice(0, -30));
  await desk.getByRole("button", { name: "Read the code" }).click();
  await expect(desk.getByRole("alert")).toContainText("The code is damaged");
  await desk.getByLabel(/The file the phone sheet handed back/).setInputFiles(back);
  const preview = desk.getByRole("group", { name: "What came back" });
  await expect(preview).toContainText("1 set logged, 15 shots in the box, 1 shot lost.");
  await expect(preview).toContainText("Half-kneeling landmine press: was done later, for its station was taken");
  expect((await new AxeBuilder({ page: sheet }).include(".back-from-gym").analyze()).violations).toEqual([]);
  await preview.getByRole("button", { name: "Take it over" }).click();
  await expect(desk.getByText("Set 2: 24.5 kg, 9 reps, 2 in reserve")).toBeVisible();
  await expect(desk.getByText(/^Lost: Rear, medium, set 3/)).toBeVisible();

  // The code knows nothing new; one undo takes all of it back.
  await desk.getByLabel("Or paste its code").fill(code);
  await desk.getByRole("button", { name: "Read the code" }).click();
  await expect(preview).toContainText("The episode knows all of it already.");
  await preview.getByRole("button", { name: "Leave it" }).click();
  await sheet.keyboard.press("Control+z");
  await expect(desk.getByText("Known from the gym")).toHaveCount(0);
});

test("what is no session is refused in a sentence, and the episode stays as it is", async ({ sheet }) => {
  await openDemo(sheet);
  await sheet.getByRole("button", { name: /^Shoot/ }).click();
  const desk = sheet.getByRole("region", { name: "Back from the gym" });
  const file = desk.getByLabel(/The file the phone sheet handed back/);
  const give = (name: string, buffer: Buffer): Promise<void> => file.setInputFiles({ name, mimeType: "application/json", buffer });
  const other = { format: "repwright-session", version: 1, episode: "another", title: "Legs", plan: "x", units: "kg", sets: [], shots: [], blocks: [], extras: [] };
  for (const [name, buffer, words] of [
    ["empty.session.json", Buffer.alloc(0), "There is nothing in it."],
    ["photo.jpg", Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16]), '"photo.jpg" is no text.'],
    ["huge.session.json", Buffer.alloc(3_000_000, 32), '"huge.session.json" is far more than a session: 3 MB.'],
    ["half.session.json", Buffer.from('{"format":"repwright-se'), "The file is damaged: it is cut short"],
    ["other.session.json", Buffer.from(JSON.stringify(other)), 'This is another episode\'s session: "Legs".'],
  ] as const) {
    await give(name, buffer);
    await expect(desk.getByRole("alert")).toContainText(words);
  }
  await expect(desk.getByText("Known from the gym")).toHaveCount(0);
});

test("leaving without the closing is one answer, and is handed back as such", async ({ phone: page }) => {
  await press(page, "Begin: Opening");
  for (let i = 0; i < 20 && (await heading(page).innerText()) !== "The closing is missing"; i++) {
    await press(page, "Station is taken");
    await press(page, "Leave it out today");
  }
  await press(page, "End without the closing");
  await press(page, "Leave without it");
  await expect(heading(page)).toHaveText("The session is over");
  await expect(page.getByText("The closing was not filmed.")).toBeVisible();
  await expect(page.getByRole("heading", { name: "Not filmed" })).toBeVisible();
});

test("a shot that was not in the box is planned again, and any set can be jumped to", async ({ phone: page }) => {
  await press(page, "Begin: Opening");
  await press(page, "Order");
  await page.getByRole("region", { name: "5. Goblet squat" }).getByRole("button", { name: /^Set 1/ }).tap();
  await expect(page.locator(".title .over").first()).toContainText("Goblet squat, 1 of 9");
  await main(page).tap();
  await page.clock.runFor(40_000);
  await main(page).tap();
  await press(page, "Not in it");
  await expect(changed(page)).toContainText("Side, full: back shape at the bottom: now on set 3 of Goblet squat instead of set 1.");
  await press(page, "Order");
  await page.getByRole("region", { name: "1. Goblet squat" }).getByRole("button", { name: /^Set 1/ }).tap();
  await press(page, "As planned: 20 kg, 10 reps");
  await expect(page.getByText("Written down: 20 kg, 10 reps")).toBeVisible();
  // The next block is the first one again.
  await press(page, "Now");
  await expect(page.locator(".title .over").first()).toContainText("Goblet squat, 1 of 9");
});

test("a phone that keeps nothing says so and works", async ({ browser, file }) => {
  const { page, context, faults } = await openPhone(browser, file);
  await page.addInitScript(() => {
    Object.defineProperty(window, "localStorage", {
      get() {
        throw new DOMException("denied", "SecurityError");
      },
    });
  });
  await page.reload();
  await expect(page.getByText("This phone keeps nothing for this page.")).toBeVisible();
  await press(page, "Begin: Opening");
  await expect(heading(page)).toHaveText("Run 1");
  expect(faults).toEqual([]);
  await context.close();
});

for (const scheme of ["light", "dark"] as const) {
  for (const width of [320, 430, 844]) {
    test(`thumbs and eyes at ${width} px, ${scheme}: big enough, nothing cut off, no complaint`, async ({ browser, file }) => {
      test.setTimeout(120_000);
      const { page, context, faults } = await openPhone(browser, file, { viewport: { width, height: width === 844 ? 390 : 740 }, colorScheme: scheme });
      const judge = async (): Promise<void> => {
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
        const small = await page.locator("button:visible, input:visible, summary:visible").evaluateAll((all) => all.filter((each) => each.getBoundingClientRect().height < 56 || each.getBoundingClientRect().width < 56).map((each) => each.textContent));
        expect(small).toEqual([]);
        const fine = await page.locator("#sheet p:visible, #sheet li:visible, #sheet dt:visible, #sheet label:visible, #sheet button:visible").evaluateAll((all) => all.filter((each) => Number.parseFloat(getComputedStyle(each).fontSize) < 18).map((each) => each.textContent));
        expect(fine).toEqual([]);
        expect((await new AxeBuilder({ page }).analyze()).violations.map(({ id, nodes }) => [id, nodes.map(({ target }) => target)])).toEqual([]);
      };
      await judge();
      await press(page, "Begin: Opening");
      await judge();
      await goTo(page, "Chest-supported row", "Set 2");
      await judge();
      await press(page, "Angle A is lost");
      await judge();
      await main(page).tap();
      await judge();
      await press(page, "Order");
      await judge();
      await press(page, "Hand back");
      await judge();
      expect(faults).toEqual([]);
      await context.close();
    });
  }
}

test("Make papers writes the phone sheet into the library, small and whole", async ({ sheet, library }) => {
  await openDemo(sheet);
  await sheet.getByRole("button", { name: "Make papers" }).click();
  const dialog = sheet.getByRole("dialog", { name: "Make papers" });
  const checked = dialog.getByRole("checkbox", { checked: true });
  for (let left = await checked.count(); left > 0; left = await checked.count()) await checked.first().uncheck();
  await dialog.getByRole("group", { name: "Phone sheet" }).getByRole("checkbox", { name: "HTML" }).check();
  await dialog.getByRole("button", { name: "Make 1 paper" }).click();
  await expect(dialog.getByText("strong-for-the-trail-7-phone-sheet.html")).toBeVisible();
  const papers = join(library, "papers");
  const written = readdirSync(papers).map((folder) => join(papers, folder, "strong-for-the-trail-7-phone-sheet.html")).find((path) => existsSync(path)) ?? "";
  expect(readFileSync(written, "utf8")).toMatch(/^<!doctype html>/);
  expect(statSync(written).size).toBeLessThan(150_000);
});
