import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";
import { existsSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Take } from "../../shared/bridge";
import { expect, openDemo, test as base } from "./app";
import { goToSpeak, openInSpeak, talkEpisode } from "./speaking";
import { makeVoice, readWav, type Voice } from "./voice";

const LINES = [
  "Sit back, knees out, and keep both feet flat on the floor.",
  "Stand up in one breath and squeeze at the very top.",
  "Take a lighter pair today if the last set felt rushed.",
  "Breathe out on the way up, and then rest a whole minute.",
];
const EPISODE = talkEpisode([["First", 12, LINES[0] ?? "", LINES[1] ?? ""], ["Second", 12, LINES[2] ?? "", LINES[3] ?? ""]]);

/** A browser whose microphone hears the sentences read aloud, once. */
const test = base.extend<object, { voice: Voice }>({
  // eslint-disable-next-line no-empty-pattern -- the runner reads the parameter to know what a fixture needs
  voice: [async ({}, use) => use(makeVoice(LINES)), { scope: "worker" }],
  launchOptions: [
    async ({ launchOptions, voice }, use) =>
      use({ ...launchOptions, args: [...(launchOptions.args ?? []), "--use-fake-device-for-media-stream", `--use-file-for-fake-audio-capture=${voice.path}%noloop`] }),
    { scope: "worker" },
  ],
});

/** What is noted of the takes; none before the first. */
const takesIn = (library: string): Take[] => {
  const list = join(library, "takes", "talk", "takes.json");
  return existsSync(list) ? (JSON.parse(readFileSync(list, "utf8")) as { takes: Take[] }).takes : [];
};
const dialog = (page: Page) => page.getByRole("dialog", { name: "Read it through" });
const record = (page: Page) => dialog(page).getByRole("button", { name: "Record with the microphone" });

async function openReading(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Read it through" }).click();
  await expect(dialog(page).getByText("Line 1 of 4, 1 First")).toBeVisible();
}

test("a voice is recorded and measured line by line without a touch, kept as WAV files, and its pace is learned", async ({ sheet: page, library, context, address, voice }) => {
  test.info().annotations.push({ type: "voice", description: voice.by });
  await context.grantPermissions(["microphone"], { origin: new URL(address).origin });
  await openInSpeak(page, library, EPISODE);
  const usual = await page.locator(".figures").innerText();
  await openReading(page);
  await record(page).click();
  await expect(dialog(page).getByText(/^Recording with .+The sound stays on this computer\./)).toBeVisible();
  await dialog(page).getByRole("button", { name: "Start reading" }).click();
  await dialog(page).getByLabel("go on by itself when I pause").check();
  await expect(dialog(page).getByRole("meter")).not.toHaveAttribute("aria-valuenow", "0", { timeout: 8000 });
  await expect(dialog(page).getByRole("button", { name: "Read it all again" })).toBeVisible({ timeout: 45_000 });

  await expect.poll(() => takesIn(library).filter(({ seconds }) => seconds !== null).length).toBe(4);
  const takes = takesIn(library);
  expect(takes.map(({ text, chosen }) => [text, chosen])).toEqual(LINES.map((text) => [text, true]));
  expect(takes.map(({ file }) => file)).toEqual(["1-first-line-1-take-1.wav", "1-first-line-2-take-1.wav", "2-second-line-1-take-1.wav", "2-second-line-2-take-1.wav"]);
  takes.forEach((take, i) => {
    expect(Math.abs((take.seconds ?? 0) - (voice.seconds[i] ?? 0)), `line ${i + 1}: ${take.seconds} s measured of ${voice.seconds[i]} s spoken by ${voice.by}`).toBeLessThan(0.2);
    const { rate, samples } = readWav(join(library, "takes", "talk", take.file ?? ""));
    expect(samples.length / rate).toBeCloseTo(take.recorded ?? 0, 2);
    expect(samples.length / rate).toBeGreaterThan(voice.seconds[i] ?? 0);
    // What was spoken is really in the file.
    expect(samples.some((sample) => Math.abs(sample) > 2000)).toBe(true);
  });

  await dialog(page).getByRole("button", { name: "Listen to line 1" }).click();
  await expect(dialog(page).getByRole("button", { name: "Stop listening" })).toBeVisible();
  await dialog(page).getByRole("button", { name: "Stop listening" }).click();
  const planned = dialog(page).locator(".takes tbody td:nth-of-type(1)");
  const before = await planned.allInnerTexts();
  await dialog(page).getByRole("button", { name: "Count everything at this pace" }).click();
  await expect(dialog(page).getByText("Everything is counted at it.")).toBeVisible();
  // What was planned is counted at it here as well.
  expect(before).toHaveLength(4);
  expect(await planned.allInnerTexts()).not.toEqual(before);
  // The file is written a moment after the screen tells it.
  await expect.poll(() => existsSync(join(library, "voice.json"))).toBe(true);
  const kept = JSON.parse(readFileSync(join(library, "voice.json"), "utf8")) as { voice: { lines: number; pace: { syllablesPerSecond: number } } };
  expect(kept.voice.lines).toBe(4);
  await dialog(page).getByRole("button", { name: "Close" }).click();
  await expect(page.getByRole("button", { name: "Read it through" })).toBeFocused();
  expect(await page.locator(".figures").innerText()).not.toBe(usual);
  await expect(page.locator(".figures").getByText("your own pace")).toBeVisible();
  // It is the speaker's, not the window's: it is there after a new start, and can be taken back.
  await page.reload();
  await goToSpeak(page);
  await expect(page.locator(".figures").getByText(kept.voice.pace.syllablesPerSecond.toFixed(1))).toBeVisible();
});

test("a bouncing pedal notes nothing, and what is far too short for its words is no take", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  await openReading(page);
  // In the page, so that a slow machine does not make them presses of a slow foot.
  await page.evaluate(async () => {
    for (let press = 0; press < 5; press++) {
      document.activeElement?.dispatchEvent(new KeyboardEvent("keydown", { key: "PageDown", bubbles: true, cancelable: true }));
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
  });
  await expect(dialog(page).getByText("Line 1 of 4, 1 First")).toBeVisible();
  await expect(dialog(page).getByRole("button", { name: "Next line" })).toBeVisible();
  await page.waitForTimeout(400);
  await page.keyboard.press("PageDown");
  await expect(dialog(page).getByText("Line 2 of 4, 1 First")).toBeVisible();
  await expect(dialog(page).getByRole("alert")).toHaveText(/^[01]\.\d s is too short for line 1, which takes about \d\.\d s: nothing was noted for it\.\s*$/);
  await dialog(page).getByRole("button", { name: "Stop" }).press("Enter");
  // The buttons of the reading go; the keys stay with the line.
  await expect(page.getByLabel("The line at hand")).toBeFocused();
  expect(takesIn(library)).toEqual([]);
});

test("each episode begun from the demo has takes of its own", async ({ sheet: page, library }) => {
  await openDemo(page);
  await goToSpeak(page);
  await page.getByRole("button", { name: "Read it through" }).click();
  await dialog(page).getByRole("button", { name: /^Read line 9/ }).click();
  await page.waitForTimeout(6500);
  await page.keyboard.press("PageDown");
  await expect(dialog(page).getByRole("button", { name: "Read line 9 again" })).toBeVisible();
  await page.keyboard.press("Escape");
  await page.locator(".episode-button").click();
  await page.getByRole("button", { name: "New, from the demo" }).click();
  await goToSpeak(page);
  await page.getByRole("button", { name: "Read it through" }).click();
  await expect(dialog(page).getByRole("button", { name: "Read line 9 alone" })).toBeVisible();
  expect(readdirSync(join(library, "takes"))).toHaveLength(1);
});

test("a line read again is a take more; the newest counts until another is chosen", async ({ sheet: page, library, context, address }) => {
  await context.grantPermissions(["microphone"], { origin: new URL(address).origin });
  await openInSpeak(page, library, EPISODE);
  await openReading(page);
  await record(page).click();
  await expect(dialog(page).getByText(/^Recording with/)).toBeVisible();
  for (let i = 0; i < 2; i++) {
    await dialog(page).getByRole("button", { name: /^Read line 2/ }).click();
    await page.waitForTimeout(900);
    await page.keyboard.press("PageDown");
    await expect(dialog(page).getByRole("button", { name: "Read line 2 again" })).toBeVisible();
  }
  const choice = dialog(page).getByRole("combobox", { name: "The take of line 2 that counts" });
  await expect(choice.locator("option")).toHaveCount(2);
  expect(readdirSync(join(library, "takes", "talk")).filter((name) => name.endsWith(".wav"))).toEqual(["1-first-line-2-take-1.wav", "1-first-line-2-take-2.wav"]);
  await expect.poll(() => takesIn(library).map(({ chosen }) => chosen)).toEqual([false, true]);
  await choice.selectOption({ index: 0 });
  await expect.poll(() => takesIn(library).map(({ chosen }) => chosen)).toEqual([true, false]);
});

test("without a microphone the taps are timed, from keys as a pedal sends them", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  await openReading(page);
  await page.keyboard.press(" ");
  for (const line of [2, 3, 4]) {
    await page.waitForTimeout(1900);
    await page.keyboard.press(line === 3 ? "PageDown" : " ");
    await expect(dialog(page).getByText(`Line ${line} of 4`)).toBeVisible();
  }
  await page.waitForTimeout(400);
  await page.keyboard.press("PageUp");
  await page.waitForTimeout(1900);
  await dialog(page).getByRole("button", { name: "Done" }).click();
  await expect(dialog(page).getByText(/for 4 lines read/)).toBeVisible();
  const takes = takesIn(library);
  expect(takes.map(({ file, recorded }) => [file, recorded])).toEqual(LINES.map(() => [null, null]));
  for (const { seconds } of takes) expect(seconds).toBeGreaterThan(0.6);
  await expect(dialog(page).getByRole("row", { name: /Sit back/ })).toContainText(/take 1, \d\.\d s, tapped/);
});

test("a refused microphone is told in a sentence, and reading goes on with taps", async ({ sheet: page, library, context }) => {
  await context.clearPermissions();
  await openInSpeak(page, library, EPISODE);
  await openReading(page);
  await record(page).click();
  await expect(dialog(page).getByRole("alert")).toHaveText(/^The microphone was refused\. Allow it .+ tap at the end of each line\.\s*$/);
  await dialog(page).getByRole("button", { name: "Start reading" }).click();
  await page.waitForTimeout(1900);
  await page.keyboard.press(" ");
  await expect.poll(() => takesIn(library).length).toBe(1);
});

test("no microphone, or one that another program holds, is told in a sentence", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  await openReading(page);
  for (const [name, sentence] of [["NotFoundError", /^No microphone was found\. Plug one in/], ["NotReadableError", /another program may be using it/]] as const) {
    await page.evaluate((kind) => {
      navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException("", kind));
    }, name);
    await record(page).click();
    await expect(dialog(page).getByRole("alert")).toHaveText(sentence);
  }
});

test("a microphone that goes away in the middle of a take loses nothing", async ({ sheet: page, library, context, address }) => {
  await context.grantPermissions(["microphone"], { origin: new URL(address).origin });
  await openInSpeak(page, library, EPISODE);
  await openReading(page);
  // A browser's stand-in device cannot be unplugged; its track is ended the way an unplugged one ends.
  await page.evaluate(() => {
    const open = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
    navigator.mediaDevices.getUserMedia = async (wants) => {
      const stream = await open(wants);
      Object.assign(window, { unplug: () => stream.getTracks().forEach((track) => { track.stop(); track.dispatchEvent(new Event("ended")); }) });
      return stream;
    };
  });
  await record(page).click();
  await expect(dialog(page).getByText(/^Recording with/)).toBeVisible();
  await dialog(page).getByRole("button", { name: "Start reading" }).click();
  await page.waitForTimeout(2500);
  await page.evaluate(() => (window as unknown as { unplug: () => void }).unplug());
  await expect(dialog(page).getByRole("alert")).toHaveText(/^The microphone is gone: .+ What was recorded of this line, \d\.\d s, is kept\./);
  await expect.poll(() => takesIn(library)[0]?.recorded ?? 0).toBeGreaterThan(1.8);
  const [take] = takesIn(library);
  expect(take).toMatchObject({ seconds: null, text: LINES[0] });
  const { rate, samples } = readWav(join(library, "takes", "talk", take?.file ?? ""));
  expect(samples.length / rate).toBeCloseTo(take?.recorded ?? 0, 2);
  await dialog(page).getByRole("button", { name: "Start reading" }).click();
  await page.waitForTimeout(1900);
  await page.keyboard.press(" ");
  await expect.poll(() => takesIn(library).map(({ file }) => file === null)).toEqual([false, true]);
});

test("sound that could not be written is kept, said, and not left behind by one press", async ({ sheet: page, library, context, address }) => {
  await context.grantPermissions(["microphone"], { origin: new URL(address).origin });
  await openInSpeak(page, library, EPISODE);
  mkdirSync(join(library, "takes", "talk"), { recursive: true });
  const list = join(library, "takes", "talk", "takes.json");
  writeFileSync(list, "{ damaged");
  await openReading(page);
  await expect(dialog(page).getByRole("alert")).toHaveText(/^The list of takes, .+ cannot be read and is left as it is: it is not JSON\./);
  await record(page).click();
  await expect(dialog(page).getByText(/^Recording with/)).toBeVisible();
  await dialog(page).getByRole("button", { name: "Start reading" }).click();
  await page.waitForTimeout(1500);
  await dialog(page).getByRole("button", { name: "Stop" }).click();
  await expect(dialog(page).getByRole("button", { name: "Write 1 take again" })).toBeVisible();
  await page.keyboard.press("Escape");
  await expect(dialog(page).getByText("The sound of 1 take is not written yet.")).toBeVisible();
  writeFileSync(list, JSON.stringify({ format: "repwright-takes", version: 1, takes: [] }));
  await dialog(page).getByRole("button", { name: "Write 1 take again" }).click();
  await expect.poll(() => takesIn(library).map(({ recorded }) => (recorded ?? 0) > 1)).toEqual([true]);
  await page.keyboard.press("Escape");
  await expect(dialog(page)).toHaveCount(0);
});

test("one press too many after the last line begins nothing, and says so", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  await openReading(page);
  for (let press = 0; press < 5; press++) {
    await page.keyboard.press("PageDown");
    await page.waitForTimeout(1900);
  }
  await expect(dialog(page).getByRole("button", { name: "Read it all again" })).toBeVisible();
  await expect.poll(() => takesIn(library).length).toBe(4);
  await page.keyboard.press("PageDown");
  await expect(dialog(page).getByRole("alert")).toHaveText(/^That was the last line; all are read\./);
  await expect(dialog(page).getByRole("button", { name: "Read it all again" })).toBeVisible();
  expect(takesIn(library)).toHaveLength(4);
});

test("a line read again and broken off leaves the good take in its place", async ({ sheet: page, library, context, address }) => {
  await context.grantPermissions(["microphone"], { origin: new URL(address).origin });
  await openInSpeak(page, library, EPISODE);
  await openReading(page);
  await dialog(page).getByRole("button", { name: "Read line 1 alone" }).click();
  await page.waitForTimeout(1900);
  await page.keyboard.press("PageDown");
  await expect.poll(() => takesIn(library).length).toBe(1);
  await record(page).click();
  await expect(dialog(page).getByText(/^Recording with/)).toBeVisible();
  await dialog(page).getByRole("button", { name: "Read line 1 again" }).click();
  await page.waitForTimeout(900);
  await dialog(page).getByRole("button", { name: "Stop" }).click();
  await expect.poll(() => takesIn(library).map(({ chosen, recorded }) => [chosen, (recorded ?? 0) > 0.3])).toEqual([[true, false], [false, true]]);
  await expect(dialog(page).getByRole("row", { name: /Sit back/ }).getByRole("cell").nth(1)).toHaveText(/^\d\.\d s$/);
});

test("a block with the longest name there can be is read and recorded", async ({ sheet: page, library, context, address }) => {
  await context.grantPermissions(["microphone"], { origin: new URL(address).origin });
  await openInSpeak(page, library, talkEpisode([["深".repeat(200), 12, LINES[0] ?? "", LINES[1] ?? ""]]));
  await page.getByRole("button", { name: "Read it through" }).click();
  await dialog(page).getByRole("button", { name: "Read line 2 alone" }).click();
  await page.waitForTimeout(1900);
  await page.keyboard.press("PageDown");
  await expect.poll(() => takesIn(library).length).toBe(1);
  await record(page).click();
  await expect(dialog(page).getByText(/^Recording with/)).toBeVisible();
  await dialog(page).getByRole("button", { name: "Read line 2 again" }).click();
  await page.waitForTimeout(900);
  await page.keyboard.press("PageDown");
  await expect.poll(() => takesIn(library).map(({ file }) => file)).toEqual([null, `1-${"深".repeat(27)}-line-2-take-1.wav`]);
});

test("closing in the middle of a take that cannot be written warns before its sound is lost", async ({ sheet: page, library, context, address }) => {
  await context.grantPermissions(["microphone"], { origin: new URL(address).origin });
  await openInSpeak(page, library, EPISODE);
  mkdirSync(join(library, "takes", "talk"), { recursive: true });
  const list = join(library, "takes", "talk", "takes.json");
  writeFileSync(list, "{ damaged");
  await openReading(page);
  await record(page).click();
  await expect(dialog(page).getByText(/^Recording with/)).toBeVisible();
  await dialog(page).getByRole("button", { name: "Start reading" }).click();
  await page.waitForTimeout(2000);
  await page.keyboard.press("Escape");
  await expect(dialog(page).getByText("The sound of 1 take is not written yet.")).toBeVisible();
  writeFileSync(list, JSON.stringify({ format: "repwright-takes", version: 1, takes: [] }));
  await dialog(page).getByRole("button", { name: "Write 1 take again" }).click();
  await expect.poll(() => takesIn(library).map(({ recorded }) => (recorded ?? 0) > 1)).toEqual([true]);
  await expect(dialog(page).getByText("is not written yet")).toHaveCount(0);
  // A second failure is told like the first.
  writeFileSync(list, "{ damaged");
  await dialog(page).getByRole("button", { name: "Read line 2 alone" }).click();
  await page.waitForTimeout(1500);
  await page.keyboard.press("Escape");
  await expect(dialog(page).getByText("The sound of 1 take is not written yet.")).toBeVisible();
  await page.keyboard.press("Escape");
  await expect(dialog(page)).toHaveCount(0);
});

test("a take that is listened to falls silent when reading begins and when the read-through closes", async ({ sheet: page, library, context, address }) => {
  await context.grantPermissions(["microphone"], { origin: new URL(address).origin });
  await page.addInitScript(() => {
    const heard: HTMLAudioElement[] = [];
    const play = HTMLAudioElement.prototype.play;
    HTMLAudioElement.prototype.play = function (this: HTMLAudioElement) {
      heard.push(this);
      return play.call(this);
    };
    Object.assign(window, { soundsHeard: () => heard.filter((one) => !one.paused).length, soundsStarted: () => heard.length });
  });
  await page.reload();
  await openInSpeak(page, library, EPISODE);
  await openReading(page);
  await record(page).click();
  await expect(dialog(page).getByText(/^Recording with/)).toBeVisible();
  for (const line of [1, 2]) {
    await dialog(page).getByRole("button", { name: `Read line ${line} alone` }).click();
    await page.waitForTimeout(4000);
    await page.keyboard.press("PageDown");
    await expect(dialog(page).getByRole("button", { name: `Listen to line ${line}` })).toBeEnabled();
  }
  const heard = () => page.evaluate(() => (window as unknown as { soundsHeard: () => number }).soundsHeard());
  const started = () => page.evaluate(() => (window as unknown as { soundsStarted: () => number }).soundsStarted());

  // Two pressed in one go: only the second is ever heard.
  await page.evaluate(() => document.querySelectorAll<HTMLButtonElement>("[aria-label^='Listen to line']").forEach((button) => button.click()));
  await expect.poll(heard).toBe(1);
  expect(await started()).toBe(1);
  await dialog(page).getByRole("button", { name: "Read line 3 alone" }).click();
  await expect(dialog(page).getByRole("button", { name: "Done" })).toBeVisible();
  expect(await heard()).toBe(0);
  await expect(dialog(page).getByRole("button", { name: "Listen to line 1" })).toBeDisabled();
  await dialog(page).getByRole("button", { name: "Stop" }).click();
  await dialog(page).getByRole("button", { name: "Listen to line 1" }).click();
  await expect.poll(heard).toBe(1);
  await page.keyboard.press("Escape");
  await expect(dialog(page)).toHaveCount(0);
  await expect.poll(heard).toBe(0);
});

test("a microphone muted by the system in the middle of a take is told, and heard again", async ({ sheet: page, library, context, address }) => {
  await context.grantPermissions(["microphone"], { origin: new URL(address).origin });
  await openInSpeak(page, library, EPISODE);
  await openReading(page);
  await page.evaluate(() => {
    const open = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
    navigator.mediaDevices.getUserMedia = async (wants) => {
      const stream = await open(wants);
      Object.assign(window, { tell: (what: string) => stream.getTracks().forEach((track) => track.dispatchEvent(new Event(what))) });
      return stream;
    };
  });
  const tell = (what: "mute" | "unmute") => page.evaluate((event) => (window as unknown as { tell: (what: string) => void }).tell(event), what);
  await record(page).click();
  await expect(dialog(page).getByText(/^Recording with/)).toBeVisible();
  await dialog(page).getByRole("button", { name: "Start reading" }).click();
  await page.waitForTimeout(2000);
  await tell("mute");
  await expect(dialog(page).getByRole("alert")).toHaveText(/^The microphone is muted: .+ What was recorded of this line, \d\.\d s, is kept\./);
  await expect(dialog(page).getByText(/ is muted; nothing is recorded\./)).toBeVisible();
  await expect(dialog(page).getByRole("meter")).toHaveCount(0);
  await expect.poll(() => takesIn(library)[0]?.recorded ?? 0).toBeGreaterThan(1.3);
  await page.keyboard.press("PageDown");
  await expect(dialog(page).getByRole("button", { name: "Start reading" })).toBeVisible();
  await tell("unmute");
  await expect(dialog(page).getByText(/^Recording with/)).toBeVisible();
  await expect(dialog(page).getByRole("alert")).toHaveText(/^The microphone is heard again\./);
  // A press right behind another is taken for the same one.
  await page.waitForTimeout(400);
  await page.keyboard.press("PageDown");
  await expect(dialog(page).getByRole("button", { name: "Next line" })).toBeVisible();
});

test("keys scroll the table of takes while the focus is in it, and drive the reading elsewhere", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  await openReading(page);
  const region = dialog(page).getByRole("region", { name: "Lines, seconds and takes" });
  await region.focus();
  for (const key of ["ArrowDown", "PageDown", " ", "ArrowRight"]) await page.keyboard.press(key);
  await dialog(page).getByRole("button", { name: "Read line 2 alone" }).focus();
  await page.keyboard.press("ArrowDown");
  await expect(dialog(page).getByRole("button", { name: "Start reading" })).toBeVisible();
  // A line begun from the table hands the keys back to the reading, again and again.
  for (const line of [2, 3]) await dialog(page).getByRole("button", { name: `Read line ${line} alone` }).click();
  await page.waitForTimeout(1900);
  await page.keyboard.press("PageDown");
  await expect.poll(() => takesIn(library).map(({ text }) => text)).toEqual([LINES[2]]);
});

test("an episode changed by another program and saved as a new file keeps its takes", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  await openReading(page);
  await page.keyboard.press("PageDown");
  await page.waitForTimeout(1900);
  await page.keyboard.press("PageDown");
  await expect.poll(() => takesIn(library).length).toBe(1);
  await dialog(page).getByRole("button", { name: "Close" }).click();
  const path = join(library, "talk.episode.json");
  writeFileSync(path, readFileSync(path, "utf8").replace(LINES[3] ?? "", "Changed elsewhere."));
  await page.getByRole("button", { name: "Save mine as a new file" }).first().click({ timeout: 15_000 });
  await expect(page.getByRole("status").getByText(/^Saved/)).toBeVisible({ timeout: 15_000 });
  await openReading(page);
  await expect(dialog(page).getByRole("row", { name: /Sit back/ })).toContainText(/take 1, \d\.\d s, tapped/);
  expect(takesIn(library)).toHaveLength(1);
});

for (const colorScheme of ["light", "dark"] as const) {
  test(`no accessibility fault in the read-through in ${colorScheme}`, async ({ sheet: page, context, address }) => {
    await context.grantPermissions(["microphone"], { origin: new URL(address).origin });
    await page.emulateMedia({ colorScheme });
    await openDemo(page);
    await goToSpeak(page);
    await page.getByRole("button", { name: "Read it through" }).click();
    await record(page).click();
    await dialog(page).getByRole("button", { name: "Start reading" }).click();
    await page.waitForTimeout(600);
    await page.keyboard.press("PageDown");
    await page.waitForTimeout(300);
    const { violations } = await new AxeBuilder({ page }).include(".read-through").analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(" ")).slice(0, 3).join("; ")}`)).toEqual([]);
  });
}

test("undo and another episode wait while it is open, with a sentence", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  await openReading(page);
  await page.keyboard.press("Control+o");
  await expect(dialog(page).getByText('Close "Read it through" first, then go to another episode.')).toBeVisible();
  await page.keyboard.press("Control+z");
  await expect(dialog(page).getByText('Close "Read it through" first, then undo.')).toBeVisible();
  await expect(page.getByRole("dialog")).toHaveCount(1);
});
