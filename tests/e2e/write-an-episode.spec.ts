import { existsSync, readFileSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { caretIn, expect, openDemo, sheetLines, test } from "./app";

test("a coach types an episode from an empty page to exported files", async ({ sheet: page, library }) => {
  test.setTimeout(120_000);
  const type = (text: string) => page.keyboard.type(text);
  const enter = () => page.keyboard.press("Enter");

  await page.getByLabel("Title of the episode").fill("Steps, steep ones");
  await page.locator(".surface .text").first().click();
  await page.waitForTimeout(80);

  await type("Opening");
  await enter();
  await type("Today we climb, slowly. All you need is a step and a wall.");
  await enter();
  await type("shot: Front, medium, 10 s: to camera beside the box");
  await enter();
  await enter();
  await type("Warm-up");
  await enter();
  await type("Ten slow circles each: ankles, knees, hips");
  await enter();
  await enter();
  await type("goblet sq");
  await expect(page.getByRole("option", { name: /Goblet squat/ })).toBeVisible();
  await page.keyboard.press("ArrowDown");
  await enter();
  await enter();
  await type("3 x 10 @ 16 kg, tempo 3-1-1-0, rest 90 s");
  await enter();
  await type("Round your back to reach the bell");
  await enter();
  await type("avoid: Letting the knees fall in: push the floor apart");
  await enter();
  await type("caution: Knee pain: squat to a box or leave it out");
  await enter();
  await type("say: Three sets of twelve, slowly down.");
  await enter();
  await type("shot: Side, full, set 1, 15 s: back shape at the bottom");

  await expect.poll(() => sheetLines(page)).toEqual([
    "# Opening", "say: Today we climb, slowly. All you need is a step and a wall.", "shot: Front, medium, 10 s: to camera beside the box",
    "# Warm-up", "cue: Ten slow circles each: ankles, knees, hips",
    "# Goblet squat", "sets: 3 x 10 @ 16 kg, tempo 3-1-1-0, rest 90 s", "cue: Round your back to reach the bell", "avoid: Letting the knees fall in: push the floor apart",
    "caution: Knee pain: squat to a box or leave it out", "say: Three sets of twelve, slowly down.", "shot: Side, full, set 1, 15 s: back shape at the bottom",
  ]);
  // The set line is read back in words beside it.
  await expect(page.locator(".set-line .remark")).toHaveAttribute("data-remark", /three sets of ten/);

  const findings = page.getByRole("complementary", { name: "Findings" });
  await expect(findings.getByText("stop", { exact: true }).first()).toBeVisible();
  await expect(findings.getByText(/cool-down/i).first()).toBeVisible();
  await expect(findings.getByText(/closing/i).first()).toBeVisible();
  // Said twelve, written ten.
  await expect(findings.getByText(/twelve|12/).first()).toBeVisible();

  // The unsafe cue: press the sentence, its words are selected; write a safe one over them.
  await caretIn(page, "Round your back");
  await page.keyboard.press("Shift+Home");
  await type("Bell close, elbows inside the knees");
  await expect(findings.getByText("stop", { exact: true })).toHaveCount(0);

  // Saved by itself, as one readable file.
  await expect(page.getByRole("status").getByText(/^Saved/)).toBeVisible({ timeout: 15_000 });
  const file = readdirSync(library).find((name) => name.endsWith(".episode.json")) ?? "";
  const saved = JSON.parse(readFileSync(join(library, file), "utf8")) as { title: string; blocks: { title: string; exercise: string | null }[] };
  expect(saved.title).toBe("Steps, steep ones");
  expect(saved.blocks.map((block) => [block.title, block.exercise])).toEqual([["Opening", null], ["Warm-up", null], ["Goblet squat", "goblet-squat"]]);

  // Out with the papers.
  await page.getByRole("button", { name: "Make papers" }).click();
  const dialog = page.getByRole("dialog", { name: /papers/i });
  for (const word of await dialog.getByRole("checkbox", { name: /DOCX|WebVTT|Plain text/ }).all()) await word.check();
  await dialog.getByRole("button", { name: "Make 8 papers" }).click();
  await expect(dialog.getByText(/steps-steep-ones.*handout\.pdf/)).toBeVisible({ timeout: 60_000 });
  const papers = join(library, "papers");
  const [folder = ""] = readdirSync(papers);
  const made = readdirSync(join(papers, folder));
  expect(made).toHaveLength(8);
  for (const name of made.filter((each) => /\.(?:pdf|docx)$/.test(each))) expect(statSync(join(papers, folder, name)).size).toBeGreaterThan(5000);
  expect(made.filter((name) => name.endsWith(".pdf")).every((name) => readFileSync(join(papers, folder, name)).subarray(0, 5).toString() === "%PDF-")).toBe(true);
  expect(made.filter((name) => name.endsWith(".vtt")).map((name) => readFileSync(join(papers, folder, name), "utf8").slice(0, 6))).toEqual(["WEBVTT"]);
  expect(existsSync(join(library, file))).toBe(true);
});

test("blocks and lines are split, joined, moved, duplicated and removed, and undo goes all the way back", async ({ sheet: page }) => {
  await page.getByRole("button", { name: /^Lay out/ }).click();
  const titles = async (): Promise<string[]> => (await sheetLines(page)).filter((line) => line.startsWith("#"));
  await expect.poll(titles).toEqual(["# Opening", "# Warm-up", "# ", "# Cool-down", "# Closing"]);

  await caretIn(page, "Opening");
  await page.keyboard.press("Enter");
  await page.keyboard.type("One two");
  for (let i = 0; i < 3; i++) {
    await page.keyboard.press("ArrowLeft");
    await page.waitForTimeout(80);
  }
  await page.keyboard.press("Enter");
  await expect.poll(() => sheetLines(page)).toEqual(expect.arrayContaining(["say: One", "say: two"]));
  await page.keyboard.press("Backspace");
  await expect.poll(() => sheetLines(page)).toEqual(expect.arrayContaining(["say: Onetwo"]));

  await caretIn(page, "Closing");
  await page.keyboard.press("Alt+ArrowUp");
  await expect.poll(titles).toEqual(["# Opening", "# Warm-up", "# ", "# Closing", "# Cool-down"]);

  await page.keyboard.press("F2");
  await page.getByRole("dialog", { name: "About Closing" }).getByRole("button", { name: "Duplicate" }).click();
  await expect.poll(titles).toEqual(["# Opening", "# Warm-up", "# ", "# Closing", "# Closing", "# Cool-down"]);
  await page.waitForTimeout(80);
  await page.keyboard.press("F2");
  await page.getByRole("dialog", { name: "About Closing" }).getByRole("button", { name: "Remove block" }).click();
  await expect.poll(titles).toHaveLength(5);

  await page.keyboard.press("F2");
  await page.getByRole("dialog").getByRole("button", { name: "Join with the block above" }).click();
  await expect.poll(titles).toHaveLength(4);

  for (let i = 0; i < 30; i++) await page.keyboard.press("Control+z");
  await expect.poll(() => sheetLines(page)).toEqual(["# "]);
  for (let i = 0; i < 30; i++) await page.keyboard.press("Control+Shift+z");
  await expect.poll(titles).toHaveLength(4);
});

test("a line's kind changes from the margin, by mouse and by keyboard", async ({ sheet: page }) => {
  await page.locator(".surface .text").first().click();
  await page.waitForTimeout(80);
  await page.keyboard.type("Talk");
  await page.keyboard.press("Enter");
  await page.keyboard.type("Pinch at the front of the shoulder");
  await page.locator(".margin-word", { hasText: "say" }).click();
  await page.getByRole("menuitemradio", { name: /caution/ }).click();
  await expect.poll(() => sheetLines(page)).toEqual(["# Talk", "caution: Pinch at the front of the shoulder"]);
  await page.waitForTimeout(80);
  await page.keyboard.press("F2");
  await expect(page.getByRole("menuitemradio", { name: /caution/ })).toBeFocused();
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("Enter");
  await expect.poll(() => sheetLines(page)).toEqual(["# Talk", "say: Pinch at the front of the shoulder"]);
});

test("pasted notes become blocks, set lines and lines; copied rows paste back", async ({ sheet: page }) => {
  await page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
  await page.locator(".surface .text").first().click();
  await page.waitForTimeout(80);
  await page.evaluate(() => navigator.clipboard.writeText("Warm-up\n- ten wall slides\n1. Goblet squat\n3 x 10 @ 16 kg\ncue: elbows inside\navoid: rushing"));
  await page.keyboard.press("Control+v");
  const pasted = ["# Warm-up", "note: Ten wall slides", "# Goblet squat", "sets: 3 x 10 @ 16 kg", "cue: elbows inside", "avoid: rushing"];
  await expect.poll(() => sheetLines(page)).toEqual(pasted);
  await page.keyboard.press("Control+a");
  await page.keyboard.press("Control+c");
  await page.keyboard.press("End");
  await caretIn(page, "rushing");
  await page.keyboard.press("Control+v");
  await expect.poll(() => sheetLines(page)).toEqual([...pasted, ...pasted]);
});

test("a cold start, keyboard only: the title has the caret, Enter goes on to the first block, the facts close again", async ({ sheet: page }) => {
  await expect(page.getByLabel("Title of the episode")).toBeFocused();
  await page.keyboard.type("Stairs");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await expect(page.getByRole("heading", { name: "Facts about this episode" })).toBeAttached();
  await page.keyboard.press("Escape");
  await expect(page.getByRole("heading", { name: "Facts about this episode" })).toHaveCount(0);
  await page.keyboard.press("Shift+Tab");
  await page.keyboard.press("Enter");
  await page.waitForTimeout(80);
  await page.keyboard.type("Opening");
  await page.keyboard.press("Enter");
  for (let i = 1; i <= 30; i++) {
    await page.keyboard.type(`Line ${i}`);
    await page.keyboard.press("Enter");
  }
  // The line being typed stays clear of the lower edge, and the window itself does not scroll.
  const room = await page.evaluate(() => {
    const row = [...document.querySelectorAll(".surface > .row")].at(-1)?.getBoundingClientRect();
    const place = document.querySelector(".app-place")?.getBoundingClientRect();
    return { below: (place?.bottom ?? 0) - (row?.bottom ?? 0), page: document.scrollingElement?.scrollHeight, window: innerHeight };
  });
  expect(room.below).toBeGreaterThan(40);
  expect(room.page).toBe(room.window);
});

test("the start and the end of the script, three clicks and everything deleted do what a page of text does", async ({ sheet: page }) => {
  await openDemo(page);
  await expect(page.locator(".surface")).toBeFocused();
  await page.keyboard.press("Control+End");
  await page.waitForTimeout(80);
  await page.keyboard.press("Control+Home");
  await page.waitForTimeout(80);
  await page.keyboard.press("ArrowDown");
  await page.waitForTimeout(80);
  await page.keyboard.type("So: ");
  await expect.poll(async () => (await sheetLines(page))[1]).toMatch(/^say: So: A heavy backpack/);

  await page.locator(".surface .text").first().click({ clickCount: 3 });
  await page.waitForTimeout(80);
  await page.keyboard.type("Hello");
  await expect.poll(async () => (await sheetLines(page)).slice(0, 2)).toEqual(["# Hello", expect.stringMatching(/^say: So: A heavy/)]);

  await page.keyboard.press("Control+a");
  await page.waitForTimeout(80);
  await page.keyboard.press("Delete");
  await expect.poll(() => sheetLines(page)).toEqual(["# "]);
  await page.keyboard.type("Talk");
  await expect.poll(() => sheetLines(page)).toEqual(["# Talk"]);
});

test("a small window keeps order, words and findings in sight, and what opens at its edge comes into it", async ({ sheet: page }) => {
  await page.setViewportSize({ width: 760, height: 700 });
  await openDemo(page);
  expect(await page.evaluate(() => document.scrollingElement?.scrollHeight)).toBe(700);
  await expect(page.getByRole("complementary", { name: "Findings" }).getByText("Before you film")).toBeInViewport();
  await caretIn(page, "Three minutes on the rower");
  for (let i = 0; i < 7; i++) await page.keyboard.press("ArrowDown");
  await page.waitForTimeout(80);
  await page.keyboard.press("F2");
  const opened = page.locator(".sheet-menu, .block-panel");
  await expect(opened).toBeVisible();
  await expect(opened).toBeInViewport({ ratio: 0.95 });
});
