import AxeBuilder from "@axe-core/playwright";
import type { Locator, Page } from "@playwright/test";
import { expect, openDemo, sheetLines, test } from "./app";
import { goToSpeak, openInSpeak, talkEpisode } from "./speaking";

const EPISODE = talkEpisode([
  ["First", 12, "Sit back, knees out.", "Then stand up again."],
  ["Second", null, "Breathe out on the way up."],
  ["Third", 20],
]);

const part = (page: Page, name: string): Locator => page.locator(".place").getByRole("region", { name: new RegExp(name) });
const boxOf = async (element: Locator): Promise<{ x: number; y: number; width: number; height: number }> => {
  const box = await element.boundingBox();
  if (!box) throw new Error("It is not on the page");
  return box;
};
/** Where a word stands: pixels from the window's left edge. */
const wordAt = async (line: Locator, word: string): Promise<number> => (await boxOf(line.locator(".ruled-word", { hasText: word }).first())).x;
const clockOf = (page: Page, name: string, line: number): Promise<string> => part(page, name).locator(".line-time button").nth(line).innerText();

test("words stand on the ruler in the order and at the distance they are spoken", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  const line = part(page, "First").locator(".ruled-line").first();
  const [sit, back, knees] = [await wordAt(line, "Sit"), await wordAt(line, "back,"), await wordAt(line, "knees")];
  expect(back).toBeGreaterThan(sit);
  // A comma is a pause: the gap before "knees" is wider than the one between the words around it.
  const widthOf = async (word: string): Promise<number> => (await line.locator(".ruled-word", { hasText: word }).first().boundingBox())?.width ?? 0;
  expect(knees - back - (await widthOf("back,"))).toBeGreaterThan(back - sit - (await widthOf("Sit")));
});

test("typing in a line moves what follows at once, and the app's undo takes it back in every place", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  const before = await clockOf(page, "First", 1);
  await part(page, "First").locator(".ruled-word", { hasText: "knees" }).click();
  await page.keyboard.type("slowly and with all the care you have got today, ");
  await expect(page.getByRole("textbox", { name: /^Words from/ })).toHaveValue("Sit back, slowly and with all the care you have got today, knees out.");
  await expect.poll(() => clockOf(page, "First", 1)).not.toBe(before);
  await expect(part(page, "First").locator(".ruled-word", { hasText: "today," })).toBeVisible();
  await page.keyboard.press("Escape");
  await page.keyboard.press("Control+z");
  await expect.poll(() => clockOf(page, "First", 1)).toBe(before);
  await page.keyboard.press("Control+Shift+z");
  await page.getByRole("navigation", { name: "Places" }).getByRole("button", { name: /^Write/ }).click();
  expect(await sheetLines(page)).toContain("say: Sit back, slowly and with all the care you have got today, knees out.");
});

test("a letter changes the line it is typed in and leaves the lines before it and the other clips alone; clips out of sight are not drawn", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, talkEpisode(Array.from({ length: 12 }, (_, i) => [`Clip ${i}`, 60, "Sit back, knees out, and keep the heels where they are.", "Then stand up again, slowly, all the way to the top."] as const)));
  await part(page, "Clip 0").locator(".ruled-line").nth(1).getByText("slowly").click();
  await page.evaluate(() => {
    const changed = new Set<string>();
    (window as unknown as { changed: Set<string> }).changed = changed;
    new MutationObserver((records) => records.forEach(({ target }) => {
      const node = target instanceof Element ? target : target.parentElement;
      const line = node?.closest(".ruled-line");
      const clip = node?.closest(".part")?.getAttribute("aria-label");
      if (clip) changed.add(line ? `${clip}, line ${Array.from(line.parentElement?.children ?? []).indexOf(line) + 1}` : clip);
    })).observe(document.querySelector(".place") ?? document, { subtree: true, childList: true, characterData: true, attributes: true });
  });
  await page.keyboard.type("very ");
  await expect(part(page, "Clip 0").locator(".ruled-word", { hasText: "very" })).toBeVisible();
  expect(await page.evaluate(() => [...(window as unknown as { changed: Set<string> }).changed].sort())).toEqual(["1. Clip 0", "1. Clip 0, line 2"]);
  const isDrawn = (name: string) => part(page, name).locator(".part-body").evaluate((body) => body.checkVisibility({ contentVisibilityAuto: true }));
  expect([await isDrawn("Clip 0"), await isDrawn("Clip 11")]).toEqual([true, false]);
  await part(page, "Clip 11").scrollIntoViewIfNeeded();
  await expect.poll(() => isDrawn("Clip 11")).toBe(true);
});

test("a line is cut in two, joined again and added from the keyboard alone", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  const first = part(page, "First");
  await first.getByRole("button", { name: /change the words "Sit back/ }).focus();
  await page.keyboard.press("Enter");
  for (let i = 0; i < "knees out.".length; i++) await page.keyboard.press("ArrowLeft");
  await page.keyboard.press("Enter");
  await expect(first.locator(".ruled-line")).toHaveCount(3);
  await expect(page.getByRole("textbox", { name: /^Words from/ })).toHaveValue("knees out.");
  await page.keyboard.press("Backspace");
  await expect(first.locator(".ruled-line")).toHaveCount(2);
  await expect(page.getByRole("textbox", { name: /^Words from/ })).toHaveValue("Sit back, knees out.");
  await page.keyboard.press("Escape");
  await part(page, "Third").getByRole("button", { name: "Write words for this clip" }).press("Enter");
  await page.keyboard.type("Walk it off.");
  await page.keyboard.press("Escape");
  await expect(part(page, "Third").locator(".ruled-word")).toHaveText(["Walk ", "it ", "off. "]);
  // A line without words is not left behind.
  await part(page, "Third").getByRole("button", { name: "Add a line" }).click();
  await page.keyboard.press("Escape");
  await expect(part(page, "Third").locator(".ruled-line")).toHaveCount(1);
});

test("a line that was begun and left leaves nothing to undo, and one that was written is undone as one", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  const first = part(page, "First");
  const lines = first.locator(".ruled-line");
  await first.getByRole("textbox", { name: "Clip" }).fill("0:13");
  await page.keyboard.press("Enter");
  await first.getByRole("button", { name: "Add a line" }).press("Enter");
  await expect(lines).toHaveCount(3);
  await page.keyboard.press("Escape");
  await expect(lines).toHaveCount(2);
  await expect(first.getByRole("button", { name: "Add a line" })).toBeFocused();
  await lines.first().locator(".line-time button").press("Enter");
  await page.keyboard.press("End");
  await page.keyboard.press("Enter");
  await expect(lines).toHaveCount(3);
  await page.keyboard.press("Backspace");
  await expect(lines).toHaveCount(2);
  await expect(page.getByRole("textbox", { name: /^Words from/ })).toHaveValue("Sit back, knees out.");
  await page.keyboard.press("Escape");
  await page.keyboard.press("Control+z");
  await expect(first.getByRole("textbox", { name: "Clip" })).toHaveValue("0:12");
  await first.getByRole("button", { name: "Add a line" }).press("Enter");
  await page.keyboard.type("Now.");
  await expect(first.locator(".ruled-word").last()).toHaveText("Now. ");
  await page.keyboard.press("Control+z");
  await expect(lines).toHaveCount(2);
  await expect(first.getByRole("button", { name: "Add a line" })).toBeFocused();
  await page.keyboard.press("Control+Shift+z");
  await expect(first.locator(".ruled-word").last()).toHaveText("Now. ");
});

test("the keys go on where they were when what had them goes away", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, talkEpisode([["First", 9, "Sit back / knees out, and feel the psoas."], ["Second", 2, "Just sit back. Basically, really stand up again."]]));
  const [first, second] = [part(page, "First"), part(page, "Second")];
  const time = first.locator(".line-time button");
  await time.press("Enter");
  await page.keyboard.press("Escape");
  await expect(time).toBeFocused();
  await first.getByRole("button", { name: "breath, take it out" }).press("Enter");
  await expect(first.getByRole("button", { name: "breath, take it out" })).toHaveCount(0);
  await expect(time).toBeFocused();
  await time.press("Enter");
  await first.getByRole("textbox", { name: /^All is said as written/ }).fill("psoas");
  await page.keyboard.press("Enter");
  await first.getByRole("textbox", { name: "psoas is said" }).fill("so as");
  await page.keyboard.press("Enter");
  await expect(first.getByRole("textbox", { name: "Another word you say in a way of your own" })).toBeFocused();
  await first.getByRole("button", { name: "Say psoas as usual again" }).press("Enter");
  await expect(first.getByRole("textbox", { name: /^All is said as written/ })).toBeFocused();
  // Each press takes words out; the list is found anew, and in the end it is gone.
  const ways = second.getByRole("list", { name: "Ways of saying less" }).getByRole("button", { name: /^(?:Takes out|Says)/ });
  await expect(ways.first()).toBeVisible();
  for (let left = await ways.count(); left > 0; left = await ways.count()) {
    const before = await second.locator(".fit").innerText();
    await ways.first().press("Enter");
    await expect(second.locator(".fit")).not.toHaveText(before);
    await expect.poll(() => second.evaluate((section) => section.contains(document.activeElement))).toBe(true);
  }
});

test("no empty line stays behind: Enter at a line's start, arrows out of an empty line", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  const first = part(page, "First");
  const lines = first.locator(".ruled-line");
  const words = page.getByRole("textbox", { name: /^Words from/ });
  await lines.first().locator(".ruled-word", { hasText: "Sit" }).click();
  await page.keyboard.press("Enter");
  await expect(lines).toHaveCount(3);
  await expect(words).toHaveValue("");
  await page.keyboard.press("Enter");
  await expect(lines).toHaveCount(3);
  await page.keyboard.press("ArrowDown");
  await expect(lines).toHaveCount(2);
  await expect(words).toHaveValue("Sit back, knees out.");
  await page.keyboard.press("End");
  await page.keyboard.press("Enter");
  await expect(lines).toHaveCount(3);
  await expect(words).toHaveValue("");
  await page.keyboard.press("ArrowUp");
  await expect(lines).toHaveCount(2);
  await expect(words).toHaveValue("Sit back, knees out.");
  await page.keyboard.press("Home");
  await page.keyboard.press("Enter");
  await page.keyboard.type("Now.");
  await page.keyboard.press("Escape");
  await expect(first.locator(".ruled-word")).toHaveText(["Now. ", "Sit ", "back, ", "knees ", "out. ", "Then ", "stand ", "up ", "again. "]);
});

/** A press as a hand does it: down, a moment, up; nothing is looked for anew in between. */
const press = async (page: Page, target: Locator): Promise<void> => {
  await target.scrollIntoViewIfNeeded();
  const box = await boxOf(target);
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.waitForTimeout(60);
  await page.mouse.up();
};

test("one press while a line is changed does what was pressed", async ({ sheet: page, library }) => {
  const long = "Set the feet first, then the hands, and look at one spot on the floor before the first rep begins, and keep looking at it until the very last one is done.";
  await openInSpeak(page, library, talkEpisode([["First", 30, "Sit back, knees out.", long]]));
  const first = part(page, "First");
  const lines = first.locator(".ruled-line");
  const words = page.getByRole("textbox", { name: /^Words from/ });
  const edit = async (): Promise<void> => {
    await press(page, lines.first().locator(".ruled-word", { hasText: "Sit" }));
    await expect(words).toHaveValue("Sit back, knees out.");
  };
  await edit();
  await press(page, lines.first().locator(".ruled-word", { hasText: "knees" }));
  await expect(words).toBeFocused();
  // The same word once more brings the caret back to it.
  await press(page, lines.first().locator(".ruled-word", { hasText: "knees" }));
  await expect(words).toBeFocused();
  await page.keyboard.type("both ");
  await expect(words).toHaveValue("Sit back, both knees out.");
  await page.keyboard.press("Control+z");
  await page.keyboard.press("Escape");

  await edit();
  await press(page, lines.nth(1).locator(".ruled-word", { hasText: "feet" }));
  await expect(words).toHaveValue(long);
  await expect(words).toBeFocused();

  await edit();
  await press(page, lines.nth(1).getByRole("button", { name: "suggested breath, mark it" }).first());
  await expect(lines.nth(1).getByRole("button", { name: "breath, take it out" })).toHaveCount(1);
  await expect(words).toHaveCount(0);

  await edit();
  await press(page, first.getByRole("button", { name: "Add a line" }));
  await expect(lines).toHaveCount(3);
  await expect(words).toHaveValue("");
  await expect(words).toBeFocused();
  // An empty line is left by a press like any other, and not left behind.
  await press(page, lines.nth(1).locator(".ruled-word", { hasText: "feet" }));
  await expect(lines).toHaveCount(2);
  await page.keyboard.press("Escape");
  await press(page, first.getByRole("button", { name: "Add a line" }));
  await expect(lines).toHaveCount(3);
  await press(page, page.getByRole("navigation", { name: "Places" }).getByRole("button", { name: /^Write/ }));
  await goToSpeak(page);
  await expect(lines).toHaveCount(2);
});

test("one press on a way of saying less takes it while a line is changed", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, talkEpisode([["First", 5, "Keep both knees wide over the toes. I really just want you to breathe out on the way up.", "Remember to keep your knees wide over your toes."]]));
  const first = part(page, "First");
  await press(page, first.locator(".ruled-word", { hasText: "Keep" }).first());
  await expect(page.getByRole("textbox", { name: /^Words from/ })).toBeFocused();
  await press(page, first.getByRole("button", { name: /^Takes out "Remember to keep/ }));
  await expect(first.locator(".ruled-line")).toHaveCount(1);
  await expect(page.getByRole("textbox", { name: /^Words from/ })).toHaveCount(0);
});

test("more words than a line holds are refused with a sentence, and none of those that stand are lost", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  await part(page, "First").locator(".ruled-word", { hasText: "knees" }).click();
  const words = page.getByRole("textbox", { name: /^Words from/ });
  await page.keyboard.insertText("word ".repeat(900));
  await expect(page.getByRole("alert").filter({ hasText: /^A line holds at most 4000 letters, with this it would have 4520\./ })).toBeVisible();
  await expect(words).toHaveValue("Sit back, knees out.");
  await page.keyboard.type("both ");
  await expect(words).toHaveValue("Sit back, both knees out.");
  await expect(page.getByRole("alert").filter({ hasText: "A line holds" })).toHaveCount(0);
});

test("the clip's end is dragged, one step of undo, and words that no longer fit are counted", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  const first = part(page, "First");
  const clip = first.getByRole("textbox", { name: "Clip" });
  await expect(clip).toHaveValue("0:12");
  const end = first.getByRole("slider");
  const box = await boxOf(end);
  const strip = await boxOf(first.locator(".strip"));
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  for (const share of [0.5, 0.3, 0.2, 0.11]) await page.mouse.move(strip.x + strip.width * share, box.y + 30);
  // Before it is let go: the words show what would happen, the episode is as it was.
  await expect(first.getByText(/hang over the end/)).toBeVisible();
  await expect(clip).toHaveValue("0:12");
  await page.mouse.up();
  await expect(clip).toHaveValue(/^0:0[1-4]$/);
  await expect(first.getByText(/s over, cut about \d+ words?/)).toBeVisible();
  expect(await first.locator(".ruled-word.hangs").count()).toBe(Number(/(\d+) words? hangs? over/.exec(await first.locator(".fit").innerText())?.[1]));
  await page.keyboard.press("Control+z");
  await expect(clip).toHaveValue("0:12");
  await expect(first.getByText(/hang over the end/)).toHaveCount(0);
});

test("words that fit while the clip's end is dragged are not to be made fewer, and nothing below the ruler stands on anything else", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, talkEpisode([["First", 10, "Sit back, knees out, and stand up again, slowly, all the way. Then do it once more, and breathe out on the way up, all the way to the top of it."], ["Second", 60, "Sit."]]));
  const first = part(page, "First");
  const ways = first.getByRole("list", { name: "Ways of saying less" });
  // Where the clip ends on a whole five, the end is told and not the five.
  await first.getByRole("textbox", { name: "Clip" }).fill("5");
  await page.keyboard.press("Enter");
  await expect(ways).toBeVisible();
  await expect(first.locator(".end-words")).toHaveText("5 s, clip ends");
  await expect(first.locator(".ruler-mark")).not.toContainText(["0:05"]);
  const below = await first.locator(".row-of-ruler").evaluateAll((rows) => rows.map((row) => Array.from(row.querySelectorAll(".ruler-mark, .end-words, .quiet-words.below"), (words) => {
    const { left, right } = words.getBoundingClientRect();
    return [left, right] as const;
  }).sort((a, b) => a[0] - b[0])));
  for (const row of below) row.forEach(([, right], i) => expect(row[i + 1]?.[0] ?? Infinity).toBeGreaterThanOrEqual(right - 0.5));
  const end = await boxOf(first.getByRole("slider"));
  await page.mouse.move(end.x + end.width / 2, end.y + end.height / 2);
  await page.mouse.down();
  await page.mouse.move(end.x + 300, end.y + end.height / 2, { steps: 4 });
  await expect(first.locator(".fit")).toContainText("free");
  await expect(ways).toHaveCount(0);
  await page.keyboard.press("Escape");
  await page.mouse.up();
  await expect(ways).toBeVisible();
});

test("Escape while the clip's end is dragged gives its seconds back", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  const first = part(page, "First");
  const box = await boxOf(first.getByRole("slider"));
  const strip = await boxOf(first.locator(".strip"));
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(strip.x + strip.width * 0.11, box.y + 30, { steps: 4 });
  await expect(first.getByText(/hang over the end/)).toBeVisible();
  await page.keyboard.press("Escape");
  await expect(first.getByText(/hang over the end/)).toHaveCount(0);
  await page.mouse.move(strip.x + strip.width * 0.2, box.y + 30);
  await page.mouse.up();
  await expect(first.getByRole("textbox", { name: "Clip" })).toHaveValue("0:12");
  await expect(first.getByText(/hang over the end/)).toHaveCount(0);
});

test("the clip's end moves with arrow keys, or is typed in seconds; an empty field lets the words set it", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, EPISODE);
  const first = part(page, "First");
  const [clip, end] = [first.getByRole("textbox", { name: "Clip" }), first.getByRole("slider")];
  await end.focus();
  await page.keyboard.press("ArrowRight");
  await expect(clip).toHaveValue("0:13");
  await page.keyboard.press("PageDown");
  await expect(clip).toHaveValue("0:03");
  await expect(end).toHaveAttribute("aria-valuetext", /s of words over a 0:03 clip: .* over/);
  await clip.fill("95");
  await clip.press("Enter");
  await expect(clip).toHaveValue("1:35");
  // Free seconds are drawn where they may stay silent: after each line, most of them after the last.
  await expect(first.locator(".quiet-words")).toHaveText([/^room for [1-4] s of quiet$/, /^room for [6-9]\d s of quiet$/]);
  await expect(first.locator(".quiet-part")).toHaveCount(2);
  await clip.fill("");
  await clip.press("Enter");
  await expect(first.getByText(/no clip length yet/)).toBeVisible();
  await expect(first.locator(".quiet-words, .quiet-part, .strip-quiet")).toHaveCount(0);
});

test("a suggested breath is marked by a press and taken out by another", async ({ sheet: page, library }) => {
  const long = "Set the feet first, then the hands, and look at one spot on the floor before the first rep begins, and keep looking at it until the very last one is done.";
  await openInSpeak(page, library, talkEpisode([["First", 30, long]]));
  const first = part(page, "First");
  await first.getByRole("button", { name: "suggested breath, mark it" }).first().click();
  await expect(first.getByRole("button", { name: "breath, take it out" })).toHaveCount(1);
  await first.getByRole("button", { name: "breath, take it out" }).click();
  await expect(first.getByRole("button", { name: "breath, take it out" })).toHaveCount(0);
});

test("words that do not fit come with ways of saying less, each one step of undo", async ({ sheet: page, library }) => {
  const lines = ["Keep both knees wide over the toes. I really just want you to breathe out on the way up.", "Remember to keep your knees wide over your toes."];
  await openInSpeak(page, library, talkEpisode([["First", 5, ...lines]]));
  const first = part(page, "First");
  const ways = first.getByRole("list", { name: "Ways of saying less" });
  await ways.getByRole("button", { name: /^Takes out "Remember to keep/ }).click();
  await expect(first.locator(".ruled-line")).toHaveCount(1);
  await page.keyboard.press("Control+z");
  await expect(first.locator(".ruled-line")).toHaveCount(2);
  await first.getByRole("button", { name: /^Do (?:the first|all of these)/ }).click();
  await expect(first.locator(".ruled-line")).toHaveCount(1);
  await expect(first.locator(".ruled-word", { hasText: "really" })).toHaveCount(0);
  await page.keyboard.press("Control+z");
  await expect(first.locator(".ruled-line")).toHaveCount(2);
  await expect(first.locator(".ruled-word", { hasText: "really" })).toHaveCount(1);
});

test("what forbids or warns is in none of the ways of saying less, and stays when all are taken", async ({ sheet: page, library }) => {
  const lines = ["Just press the bar up. Never bounce it off the ribs.", "Do not lock the elbows hard at the top. Make sure your hips stay level. Go ahead and breathe out on the way up."];
  await openInSpeak(page, library, talkEpisode([["First", 3, ...lines]]));
  const first = part(page, "First");
  const ways = first.getByRole("list", { name: "Ways of saying less" });
  await expect(ways.getByRole("button", { name: 'Says "Press the bar up."', exact: true })).toBeVisible();
  await expect(ways.getByRole("button", { name: /bounce|lock|hips stay level\.?"$/ }).filter({ hasText: /^(?:Takes out|Says)/ })).toHaveCount(0);
  await first.getByRole("button", { name: /^Do (?:the first|all of these)/ }).click();
  await expect(first.locator(".ruled-word", { hasText: "Just" })).toHaveCount(0);
  await page.getByRole("navigation", { name: "Places" }).getByRole("button", { name: /^Write/ }).click();
  const left = await sheetLines(page);
  expect(left).toContain("say: Press the bar up. Never bounce it off the ribs.");
  expect(left).toContain("say: Do not lock the elbows hard at the top. Make sure your hips stay level. Breathe out on the way up.");
});

test("what is said otherwise than written is shown and corrected, for the whole series", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, talkEpisode([["First", 20, "Do 3x8-10 @ 42.5 kg and feel the psoas."], ["Second", 20, "The psoas again."]]));
  const first = part(page, "First");
  await first.locator(".ruled-word").first().click();
  const said = first.getByRole("group", { name: "Said otherwise than written" });
  await expect(said.getByRole("textbox", { name: /3x8-10.* is said/ })).toHaveValue(/three sets of eight to ten/);
  const before = await part(page, "Second").locator(".line-time .second").innerText();
  await said.getByRole("textbox", { name: "Another word you say in a way of your own" }).fill("psoas");
  await page.keyboard.press("Enter");
  await said.getByRole("textbox", { name: "psoas is said" }).fill("the very deep hip muscle");
  await page.keyboard.press("Enter");
  await expect(said.getByRole("button", { name: "Say psoas as usual again" })).toBeVisible();
  await expect.poll(() => part(page, "Second").locator(".line-time .second").innerText()).not.toBe(before);
  await said.getByRole("button", { name: "Say psoas as usual again" }).click();
  await expect.poll(() => part(page, "Second").locator(".line-time .second").innerText()).toBe(before);
});

test("your pronunciations are listed, changed and taken out, whatever line their words stand in", async ({ sheet: page, library }) => {
  const episode = talkEpisode([["First", 20, "RDL 3x8, then rest."]]);
  await openInSpeak(page, library, { ...episode, series: { ...episode.series, pronunciations: [{ written: "RDL", said: "Romanian deadlift" }, { written: "x".repeat(190), said: "long" }] } });
  await page.getByText("Your pronunciations").press("Enter");
  const list = page.getByRole("list", { name: "Your pronunciations" });
  await expect(list.getByRole("listitem")).toHaveCount(2);
  expect(await page.locator(".app-place").evaluate((place) => place.scrollWidth - place.clientWidth)).toBeLessThanOrEqual(0);
  const said = list.getByRole("textbox", { name: "RDL is said" });
  await expect(said).toHaveValue("Romanian deadlift");
  await said.fill("R D L");
  await said.press("Enter");
  await expect(said).toHaveValue("R D L");
  await list.getByRole("button", { name: "Take out RDL" }).press("Enter");
  await expect(list.getByRole("listitem")).toHaveCount(1);
  await list.getByRole("button", { name: /^Take out x/ }).click();
  await expect(page.getByText(/^Press a word of a line, and say under the line/)).toBeVisible();
  await page.keyboard.press("Control+z");
  await expect(list.getByRole("listitem")).toHaveCount(1);
});

test("the ruler reads as text: time, seconds and words of each line, and where they go over", async ({ sheet: page, library }) => {
  await openInSpeak(page, library, talkEpisode([["First", 2, "Sit back, knees out, and stand up again."]]));
  const first = part(page, "First");
  await expect(first.getByRole("button", { name: /^0:00, [\d.]+ seconds: change the words "Sit back, knees out, and stand up again\."$/ })).toBeVisible();
  const read = (await first.locator(".ruled-line").innerText()).replace(/\s+/g, " ");
  expect(read).toContain("over the clip's end from here:");
  await expect(first.locator(".ruled-line .fold")).toMatchAriaSnapshot(`- text: /Sit back, knees out, .*over the clip's end from here.*again/`);
});

test("an empty episode says what to write, a narrow window scrolls nothing sideways", async ({ sheet: page }) => {
  await goToSpeak(page);
  await expect(page.getByText(/^No words yet\./)).toBeVisible();
  await page.getByRole("navigation", { name: "Places" }).getByRole("button", { name: /^Write/ }).click();
  await openDemo(page);
  await page.setViewportSize({ width: 720, height: 700 });
  await goToSpeak(page);
  await page.waitForTimeout(300);
  expect(await page.locator(".app-place").evaluate((place) => place.scrollWidth - place.clientWidth)).toBeLessThanOrEqual(0);
});

for (const colorScheme of ["light", "dark"] as const) {
  test(`no accessibility fault in Speak while a line is changed, in ${colorScheme}`, async ({ sheet: page }) => {
    await page.emulateMedia({ colorScheme });
    await openDemo(page);
    await goToSpeak(page);
    await part(page, "Goblet squat").scrollIntoViewIfNeeded();
    await part(page, "Goblet squat").locator(".ruled-word").first().click();
    await page.waitForTimeout(300);
    const { violations } = await new AxeBuilder({ page }).include(".place").analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(" ")).slice(0, 3).join("; ")}`)).toEqual([]);
  });
}
