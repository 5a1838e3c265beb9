import AxeBuilder from "@axe-core/playwright";
import { caretIn, expect, openDemo, sheetLines, test } from "./app";

const PLACES = ["Write", "Train", "Shoot", "Speak", "Publish"] as const;

for (const colorScheme of ["light", "dark"] as const) {
  test(`no place has a serious accessibility fault in ${colorScheme}`, async ({ sheet: page }) => {
    await page.emulateMedia({ colorScheme });
    await openDemo(page);
    for (const place of PLACES) {
      await page.getByRole("navigation", { name: "Places" }).getByRole("button", { name: new RegExp(`^${place}`) }).click();
      await page.waitForTimeout(400);
      const { violations } = await new AxeBuilder({ page }).analyze();
      const serious = violations.filter((violation) => violation.impact === "serious" || violation.impact === "critical");
      expect(serious.map((violation) => `${place}: ${violation.id} ${violation.nodes.map((node) => node.target.join(" ")).slice(0, 3).join("; ")}`)).toEqual([]);
    }
  });
}

test("the running order is walked and reordered from the keyboard", async ({ sheet: page }) => {
  await openDemo(page);
  const titles = async (): Promise<string[]> => (await sheetLines(page)).filter((line) => line.startsWith("#")).slice(0, 4);
  const order = page.getByRole("complementary", { name: "Running order" });
  await order.getByRole("button", { name: /Chest-supported row/ }).first().focus();
  await page.keyboard.press("Alt+ArrowDown");
  await expect.poll(titles).toEqual(["# Opening", "# Warm-up", "# Half-kneeling landmine press", "# Chest-supported row"]);
  await page.keyboard.press("Alt+ArrowUp");
  await expect.poll(titles).toEqual(["# Opening", "# Warm-up", "# Chest-supported row", "# Half-kneeling landmine press"]);
});

test("a finding jumps to its words, its remedy mends it, and undo brings it back", async ({ sheet: page }) => {
  await openDemo(page);
  const findings = page.getByRole("complementary", { name: "Findings" });
  const closing = findings.getByText("Closing: no shot planned.").first();
  await expect(closing).toBeVisible();
  await findings.getByRole("button", { name: /^Adds a shot/ }).first().click();
  await expect.poll(() => sheetLines(page).then((lines) => lines.at(-1))).toMatch(/^shot: /);
  await expect(closing).toBeHidden();
  await page.locator(".surface").focus();
  await page.keyboard.press("Control+z");
  await expect(closing).toBeVisible();
});

test("a finding set aside keeps its reason in the file's words and can be brought back", async ({ sheet: page }) => {
  await openDemo(page);
  const findings = page.getByRole("complementary", { name: "Findings" });
  const remedy = page.getByRole("button", { name: /^Adds a shot/ });
  const item = findings.locator("li").filter({ has: remedy });
  await item.getByRole("button", { name: "Set aside" }).click();
  await item.getByRole("textbox").fill("Filmed last week already.");
  await item.getByRole("textbox").press("Tab");
  await item.getByRole("button", { name: "Set aside" }).last().click();
  await expect(remedy).toBeHidden();
  await findings.locator("summary", { hasText: "Set aside" }).click();
  await expect(findings.getByText("Filmed last week already.")).toBeVisible();
  await findings.getByRole("button", { name: "Bring back" }).click();
  await expect(remedy).toBeVisible();
});

test("Speak: a longer clip takes the overrun away, in the sheet's undo as well", async ({ sheet: page }) => {
  await openDemo(page);
  await page.getByRole("navigation", { name: "Places" }).getByRole("button", { name: /^Speak/ }).click();
  const place = page.locator(".place");
  await expect(place.getByText(/cut about \d+ words/i).first()).toBeVisible();
  const clip = place.getByRole("region", { name: /Goblet squat/ }).getByRole("textbox", { name: "Clip" });
  await clip.fill("1:20");
  await clip.press("Enter");
  await expect(place.getByText(/cut about \d+ words/i)).toHaveCount(0);
  await page.keyboard.press("Control+z");
  await expect(place.getByText(/cut about \d+ words/i).first()).toBeVisible();
});

test("Train, Shoot and Publish show what they are for", async ({ sheet: page }) => {
  await openDemo(page);
  const nav = page.getByRole("navigation", { name: "Places" });
  const main = page.locator(".place");
  await nav.getByRole("button", { name: /^Train/ }).click();
  await expect(main.getByText(/of 75 min/).first()).toBeVisible();
  await expect(main.getByText(/Chest-supported row/).first()).toBeVisible();
  await nav.getByRole("button", { name: /^Shoot/ }).click();
  await expect(main.getByText(/\d(\.\d)? m/).first()).toBeVisible();
  await expect(main.locator("canvas").first()).toBeVisible({ timeout: 30_000 });
  await nav.getByRole("button", { name: /^Publish/ }).click();
  await expect(main.getByText("0:00").first()).toBeVisible();
  await expect(main.getByText(/Fernhill Oats/).first()).toBeVisible();
  await expect(main.locator("canvas").first()).toBeVisible({ timeout: 30_000 });
});

test("text typed in the sheet shows on the clock of the running order", async ({ sheet: page }) => {
  await openDemo(page);
  const order = page.getByRole("complementary", { name: "Running order" });
  await expect(order.getByText(/of 75 min/).first()).toBeVisible();
  const before = await order.innerText();
  await caretIn(page, "2 x 12 each side @ 10 kg");
  await page.keyboard.press("Home");
  await page.waitForTimeout(80);
  await page.keyboard.press("Delete");
  await page.keyboard.type("6");
  await expect.poll(() => order.innerText()).not.toBe(before);
});

test("a check is left out of the series and taken up again", async ({ sheet: page }) => {
  await openDemo(page);
  const findings = page.getByRole("complementary", { name: "Findings" });
  const item = findings.locator("li").filter({ hasText: "RIR" });
  await item.getByRole("button", { name: "Set aside" }).click();
  await item.getByRole("button", { name: "Leave this check out of the series" }).click();
  await expect(item).toHaveCount(0);
  await findings.locator("summary", { hasText: "Left out of the series" }).click();
  await findings.getByRole("button", { name: "Check it again" }).click();
  await expect(item).toHaveCount(1);
});

test("the next episode of a series knows its number and what was lifted last time", async ({ sheet: page }) => {
  await openDemo(page);
  await page.getByRole("button", { name: /Strong for the Trail, episode 7/ }).click();
  await page.getByRole("button", { name: "Next of Strong for the Trail" }).click();
  await expect(page.getByRole("button", { name: /Strong for the Trail, episode 8/ })).toBeVisible();
  await page.locator(".surface .text").first().click();
  await page.waitForTimeout(80);
  await page.keyboard.type("Goblet squat");
  await page.keyboard.press("Enter");
  await page.keyboard.type("3 x 10 @ 30 kg");
  await page.keyboard.press("Enter");
  await expect(page.getByRole("complementary", { name: "Findings" }).getByText(/30 kg today, 20 kg last time/)).toBeVisible();
});
