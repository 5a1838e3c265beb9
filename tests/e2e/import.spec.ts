import AxeBuilder from "@axe-core/playwright";
import { mkdirSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Locator, Page } from "@playwright/test";
import { expect, sheetLines, test } from "./app";

const CAPTIONS = `WEBVTT

00:00:00.500 --> 00:00:03.500
okay hello everyone welcome back um today

00:00:03.500 --> 00:00:06.500
we train legs so let's warm up first ten leg

00:00:06.500 --> 00:00:09.500
swings each side and ten hip circles

00:00:20.000 --> 00:00:23.000
right first exercise goblin squats three sets

00:00:23.000 --> 00:00:26.500
of eight no sorry ten at twenty kilos with

00:00:26.500 --> 00:00:29.500
ninety seconds rest and keep your chest up

00:00:29.500 --> 00:00:32.000
don't let your knees cave in

00:01:10.000 --> 00:01:13.500
and that's it for today thanks for watching

00:01:13.500 --> 00:01:15.500
see you next week
`;

/** The reader of speech is loaded when it is first needed. */
const expectRead = expect.configure({ timeout: 20_000 });

const dialogOf = (page: Page): Locator => page.getByRole("dialog", { name: "Start from old footage or notes" });

async function openImport(page: Page): Promise<Locator> {
  await page.keyboard.press("Control+o");
  await page.getByRole("button", { name: "Start from old footage or notes" }).click();
  await expect(dialogOf(page)).toBeVisible();
  return dialogOf(page);
}

/** The import dialog with the captions chosen. */
async function readCaptions(page: Page, library: string): Promise<Locator> {
  const captions = join(library, "legs last month.vtt");
  writeFileSync(captions, CAPTIONS);
  const dialog = await openImport(page);
  await dialog.locator("input[type=file]").setInputFiles(captions);
  return dialog;
}

const saved = (library: string): string[] => readdirSync(library).filter((name) => name.endsWith(".episode.json"));

test("captions of an earlier episode become a draft that is shown first, created and saved", async ({ sheet: page, library }) => {
  const dialog = await readCaptions(page, library);
  await expectRead(dialog.getByText("Goblet squat")).toBeVisible();
  await expect(dialog.getByText("3 x 10 @ 20 kg, rest 90 s")).toBeVisible();
  await expect(dialog.getByRole("region", { name: "Not understood" }).getByText("Hesitations, left out of the lines.")).toBeVisible();
  await expect(dialog.getByText("Not found: cool-down.")).toBeVisible();
  expect(saved(library)).toEqual([]);
  expect((await new AxeBuilder({ page }).include("dialog[open]").analyze()).violations).toEqual([]);

  await dialog.getByRole("button", { name: "Create the episode" }).click();
  await expect(page.getByLabel("Title of the episode")).toHaveValue("Legs last month");
  const lines = await sheetLines(page);
  expect(lines.filter((line) => line.startsWith("# "))).toEqual(["# Opening", "# Warm-up", "# Goblet squat", "# Closing"]);
  expect(lines).toContain("avoid: Don't let your knees cave in");
  await expect(page.getByRole("status").getByText(/^Saved/)).toBeVisible({ timeout: 15_000 });
  const [file = ""] = saved(library);
  expect(readFileSync(join(library, file), "utf8")).toContain('"exercise": "goblet-squat"');
});

test("pasted notes become blocks, and other words can be read instead", async ({ sheet: page }) => {
  const dialog = await openImport(page);
  await dialog.getByLabel("Or paste the words").fill("Warm-up\n- hip circles\n\nRomanian deadlift 3x8 @ 60 kg, rest 2 min\ncue: push the hips back\navoid: rounding the back\n\nOutro\nthanks and see you");
  await dialog.getByRole("button", { name: "Read the words" }).click();
  await expectRead(dialog.getByRole("status")).toHaveText(/^Pasted: \d+ words, 3 blocks\.$/);
  await expect(dialog.getByRole("region", { name: "The draft" })).toBeFocused();
  await expect(dialog.getByRole("region", { name: "The draft" }).getByText("3x8 @ 60 kg, rest 2 min")).toBeVisible();
  await dialog.getByRole("button", { name: "Other words" }).click();
  await expect(dialog.getByLabel("Or paste the words")).toBeFocused();
  await dialog.getByLabel("Or paste the words").fill("Plank\n3 x 40 s");
  await dialog.getByRole("button", { name: "Read the words" }).click();
  await dialog.getByRole("button", { name: "Create the episode" }).click();
  await expect.poll(() => sheetLines(page)).toEqual(["# Plank", "sets: 3 x 40 s"]);
});

test("what was not understood stays with the episode, as notes in its blocks", async ({ sheet: page }) => {
  const dialog = await openImport(page);
  await dialog.getByLabel("Or paste the words").fill("first exercise goblet squats three sets of ten with twenty kilos then the second exercise lunges do seventeen of them times the number of your age plus three");
  await dialog.getByRole("button", { name: "Read the words" }).click();
  await expectRead(dialog.getByLabel("Keep 1 piece that was not understood as a note in its block")).toBeChecked();
  await dialog.getByRole("button", { name: "Create the episode" }).click();
  await expect.poll(() => sheetLines(page)).toContain('note: "seventeen": No number of sets was heard; one was written.');
});

test("pasted words stay through other words, Escape and opening again", async ({ sheet: page }) => {
  const dialog = await openImport(page);
  const words = dialog.getByLabel("Or paste the words");
  await words.fill("Plank\n3 x 40 s");
  await dialog.getByRole("button", { name: "Read the words" }).click();
  await expectRead(dialog.getByRole("region", { name: "The draft" })).toBeVisible();
  await dialog.getByRole("button", { name: "Other words" }).click();
  await expect(words).toHaveValue("Plank\n3 x 40 s");
  await page.keyboard.press("Escape");
  await expect(dialog).toBeHidden();
  await openImport(page);
  await expect(words).toHaveValue("Plank\n3 x 40 s");
  await dialog.getByRole("button", { name: "Read the words" }).click();
  await expectRead(dialog.getByRole("region", { name: "The draft" })).toBeVisible();
  await page.keyboard.press("Escape");
  await openImport(page);
  await expect(words).toHaveValue("Plank\n3 x 40 s");
});

test("a long line of the draft goes on under its own words, and a pace is kept only when that is asked for", async ({ sheet: page, library }) => {
  const said = "keep your chest up and your heels down and push the floor apart with both feet while you breathe out slowly all the way to the top of it";
  const captions = `WEBVTT\n\n00:00:01.000 --> 00:00:06.000\nfirst exercise goblet squats three sets of ten at twenty kilos\n\n00:00:06.000 --> 00:00:16.000\n${said}\n\n00:00:16.000 --> 00:00:26.000\n${said}\n`;
  writeFileSync(join(library, "squats.vtt"), captions);
  const dialog = await openImport(page);
  await dialog.locator("input[type=file]").setInputFiles(join(library, "squats.vtt"));
  await expectRead(dialog.getByRole("region", { name: "The draft" })).toBeVisible();
  for (const summary of await dialog.locator(".import-blocks summary").all()) await summary.click();
  const edges = await dialog.locator(".import-blocks details li").evaluateAll((lines) => lines.map((line) => {
    const range = document.createRange();
    range.selectNodeContents(line.lastElementChild ?? line);
    return Array.from(range.getClientRects(), ({ left }) => Math.round(left));
  }));
  expect(Math.max(...edges.map(({ length }) => length))).toBeGreaterThan(1);
  for (const rows of edges) expect(new Set(rows).size).toBe(1);
  await dialog.getByRole("button", { name: "Create the episode" }).click();
  await expect.poll(() => saved(library)).toHaveLength(1);
  expect(readdirSync(library)).not.toContain("voice.json");
});

test("an episode whose pace could not be written down is made, and the pace is told of", async ({ sheet: page, library }) => {
  const dialog = await readCaptions(page, library);
  await expectRead(dialog.getByLabel("Count every episode at the pace of this recording")).not.toBeChecked();
  await dialog.getByLabel("Count every episode at the pace of this recording").check();
  // A folder stands where the file would be.
  mkdirSync(join(library, "voice.json"));
  await dialog.getByRole("button", { name: "Create the episode" }).click();
  await expect(dialog.getByRole("alert")).toHaveText(/^The episode is made\. Your pace was not kept/);
  await dialog.getByRole("button", { name: "Go to the episode" }).click();
  await expect(page.getByLabel("Title of the episode")).toHaveValue("Legs last month");
  await expect.poll(() => saved(library)).toHaveLength(1);
});

test("what cannot be read is told in a sentence, and the open episode stays", async ({ sheet: page, library }) => {
  const dialog = await openImport(page);
  const files: readonly (readonly [string, Buffer, RegExp])[] = [
    ["clip.mp4", Buffer.from(Array.from({ length: 4000 }, (_, at) => (at * 7) % 32)), /not text/],
    ["empty.srt", Buffer.alloc(0), /empty/],
    ["huge.vtt", Buffer.alloc(50 * 1024 * 1024, "a "), /50\.0 MB/],
  ];
  for (const [name, bytes, sentence] of files) {
    writeFileSync(join(library, name), bytes);
    await dialog.locator("input[type=file]").setInputFiles(join(library, name));
    await expectRead(dialog.getByRole("alert")).toHaveText(sentence);
  }
  await dialog.getByRole("button", { name: "Close" }).click();
  await expect(page.getByLabel("Title of the episode")).toHaveValue("");
  expect(saved(library)).toEqual([]);
});

test("a long reading can be stopped, and the words stay", async ({ sheet: page }) => {
  const dialog = await openImport(page);
  const words = "right so next up we have got goblet squats three sets of ten with twenty kilos and rest ninety seconds keep your chest up and your heels down ".repeat(600);
  await dialog.getByLabel("Or paste the words").fill(words);
  await dialog.getByRole("button", { name: "Read the words" }).click();
  await expect(dialog.getByRole("status")).toHaveText("Reading the words.");
  await dialog.getByRole("button", { name: "Stop reading" }).click();
  await expect(dialog.getByLabel("Or paste the words")).toHaveValue(words);
  await expect(dialog.getByLabel("Or paste the words")).toBeEnabled();
  await expect(dialog.getByText("Understood")).toHaveCount(0);
});

test("a reader that cannot be loaded is told in a sentence", async ({ sheet: page }) => {
  await page.route("**/reader-*.js", (route) => route.abort());
  const dialog = await openImport(page);
  await dialog.getByLabel("Or paste the words").fill("Plank\n3 x 40 s");
  await dialog.getByRole("button", { name: "Read the words" }).click();
  await expect(dialog.getByRole("alert")).toHaveText(/could not be read\. .+/);
  await expect(dialog.getByLabel("Or paste the words")).toHaveValue("Plank\n3 x 40 s");
});
