import AxeBuilder from "@axe-core/playwright";
import type { Locator, Page } from "@playwright/test";
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { DEFAULT_PACE } from "../../shared/speech/pace";
import { chunk, formatChunk, PLAIN, riff, sampleBytes, wav, type WavKind } from "../unit/speech/recording/wav";
import { expect, test } from "./app";
import { openInSpeak, talkEpisode } from "./speaking";
import { makeVoice, readWav } from "./voice";

const LINES = [
  "Sit back, knees out, and keep both feet flat on the floor.",
  "Stand up in one breath and squeeze at the very top.",
  "Take a lighter pair today if the last set felt rushed.",
  "Breathe out on the way up, and then rest a whole minute.",
];
const EPISODE = talkEpisode([["First", 12, LINES[0] ?? "", LINES[1] ?? ""], ["Second", 12, LINES[2] ?? "", LINES[3] ?? ""]]);
/** Somebody reading the lines, with silence before, between and after them. */
const voice = makeVoice(LINES);

const dialog = (page: Page): Locator => page.getByRole("dialog", { name: "Your pace from a recording" });
const goBack = (page: Page): Locator => page.getByRole("button", { name: "Go back to the usual pace" });

async function openRecording(page: Page): Promise<Locator> {
  await page.getByRole("button", { name: "Measure it on a recording" }).click();
  await expect(dialog(page).getByText("the words of this episode (4 lines), all in order")).toBeVisible();
  return dialog(page);
}

interface Kept {
  readonly voice: { readonly lines: number; readonly seconds: number; readonly pace: { readonly syllablesPerSecond: number } } | null;
}
const kept = (library: string): Kept["voice"] => (JSON.parse(readFileSync(join(library, "voice.json"), "utf8")) as Kept).voice;

/** Chooses the voice's recording and takes its pace over. */
async function learn(page: Page): Promise<void> {
  const learning = await openRecording(page);
  await learning.locator("input[type=file]").setInputFiles(voice.path);
  await learning.getByRole("button", { name: "Count everything at this pace" }).click();
  await expect(learning).toBeHidden();
  await expect(page.locator(".figures").getByText("your own pace")).toBeVisible();
}

test("a recording of the lines is measured, its pace taken over and taken back", async ({ sheet: page, library }) => {
  test.info().annotations.push({ type: "voice", description: voice.by });
  await openInSpeak(page, library, EPISODE);
  const usual = await page.locator(".figures").innerText();
  const learning = await openRecording(page);
  expect((await new AxeBuilder({ page }).include("dialog[open]").analyze()).violations).toEqual([]);
  await learning.locator("input[type=file]").setInputFiles(voice.path);
  await expect(learning.getByText(/^voice\.wav: \d+ s of speech in \d:\d\d of sound, \d+ s of silence left out\.$/)).toBeVisible();
  await expect(learning.getByText(new RegExp(`^\\d+ s for 4 lines read, \\d+ s planned: .+\\.$`))).toBeVisible();
  expect((await new AxeBuilder({ page }).include("dialog[open]").analyze()).violations).toEqual([]);
  // Nothing is taken over unasked.
  expect(existsSync(join(library, "voice.json"))).toBe(false);
  await learning.getByRole("button", { name: "Another recording" }).click();
  await learning.getByRole("button", { name: "Close" }).click();
  await expect(page.getByRole("button", { name: "Measure it on a recording" })).toBeFocused();

  await learn(page);
  const own = kept(library);
  const spoken = voice.seconds.reduce((sum, one) => sum + one, 0) + 3 * DEFAULT_PACE.sentenceSeconds;
  expect(own?.lines).toBe(4);
  expect(Math.abs((own?.seconds ?? 0) / spoken - 1), `${own?.seconds} s heard of about ${spoken} s`).toBeLessThan(0.1);
  expect(await page.locator(".figures").innerText()).not.toBe(usual);
  await expect(page.getByText(/^Your pace was measured on 4 lines, \d+ s of speech\./)).toBeVisible();
  await page.reload();
  await openInSpeak(page, library, EPISODE);
  await expect(page.locator(".figures").getByText(own?.pace.syllablesPerSecond.toFixed(1) ?? "none")).toBeVisible();
  await goBack(page).press("Enter");
  await expect(page.locator(".figures").getByText("a usual pace")).toBeVisible();
  // The button goes with the pace; the keys stay beside it.
  await expect(page.getByRole("button", { name: "Measure it on a recording" })).toBeFocused();
  await expect.poll(() => kept(library)).toBe(null);
  await expect(page.getByText("Reading it through once measures your own pace.")).toBeVisible();
});

test("going back to the usual pace tells when it could not be written", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  await learn(page);
  rmSync(join(library, "voice.json"));
  mkdirSync(join(library, "voice.json"));
  await goBack(page).click();
  const told = page.getByRole("alert").filter({ hasText: "The usual pace was not noted: there is a folder of this name. Until the app is closed, everything is counted at the usual pace; then your own is back." });
  await expect(told).toBeVisible();
  rmSync(join(library, "voice.json"), { recursive: true });
  await told.getByRole("button", { name: "Try again" }).click();
  await expect(told).toBeHidden();
  await expect.poll(() => existsSync(join(library, "voice.json")) && kept(library) === null).toBe(true);
});

test("a pace that cannot be written is told where it was taken over", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  mkdirSync(join(library, "voice.json"));
  const learning = await openRecording(page);
  await learning.locator("input[type=file]").setInputFiles(voice.path);
  const planned = new RegExp(`\\d+ s planned: `);
  await learning.getByRole("button", { name: "Count everything at this pace" }).click();
  await expect(learning.getByRole("alert")).toHaveText("Your pace was not kept: there is a folder of this name. Until the app is closed, everything is counted at this pace all the same.");
  await expect(learning.getByText(planned)).toBeVisible();
});

test("what is no recording of the lines is told in a sentence, and nothing is taken over", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  const learning = await openRecording(page);
  const { rate, samples } = readWav(voice.path);
  const sound = Float32Array.from(samples, (sample) => sample / 32_768);
  const plain: WavKind = { ...PLAIN, rate };
  const first = sound.slice(0, Math.round((5 + (voice.seconds[0] ?? 0)) * rate));
  const thrice = Float32Array.from({ length: 3 * sound.length }, (_, i) => sound[i % sound.length] ?? 0);
  const files: readonly (readonly [string, Buffer, RegExp])[] = [
    ["empty.wav", Buffer.alloc(0), /^empty\.wav was not measured\. The file is empty\.$/],
    ["notes.wav", Buffer.from("Sit back, knees out.".repeat(20)), /no WAV file/],
    ["small.wav", riff(formatChunk(PLAIN, 85), chunk("data", Buffer.alloc(4000))), /compressed, with codec number 85/],
    ["cut.wav", wav(sound, plain).subarray(0, 100_000), /cut short/],
    ["silent.wav", wav(new Float32Array(rate), plain), /No voice is heard/],
    ["one line.wav", wav(first, plain), /too little for a pace/],
    ["three times.wav", wav(thrice, plain), /too much for these words/],
  ];
  for (const [name, bytes, sentence] of files) {
    writeFileSync(join(library, name), bytes);
    await learning.locator("input[type=file]").setInputFiles(join(library, name));
    await expect(learning.getByRole("alert")).toHaveText(sentence);
    await expect(learning.getByRole("button", { name: "Count everything at this pace" })).toHaveCount(0);
    const another = learning.getByRole("button", { name: "Another recording" });
    if (await another.isVisible()) await another.click();
  }
  expect(existsSync(join(library, "voice.json"))).toBe(false);
  await expect(page.locator(".figures").getByText("a usual pace")).toBeAttached();
});

test("a recording of more than 50 MB is measured", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  const learning = await openRecording(page);
  const { rate, samples } = readWav(voice.path);
  const kind: WavKind = { kind: "float", bits: 64, channels: 2, rate };
  const quiet = Buffer.alloc(25 * 2 ** 20);
  const data = Buffer.concat([quiet, sampleBytes(Float32Array.from(samples, (sample) => sample / 32_768), kind), quiet]);
  writeFileSync(join(library, "long.wav"), riff(formatChunk(kind), chunk("data", data)));
  await learning.locator("input[type=file]").setInputFiles(join(library, "long.wav"));
  await expect(learning.getByText(/^long\.wav: \d+ s of speech in \d:\d\d of sound/)).toBeVisible({ timeout: 20_000 });
  await expect(learning.getByRole("button", { name: "Count everything at this pace" })).toBeVisible();
});
