import type { Page } from "@playwright/test";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { countingIds, emptyBlock, emptyEpisode, newLine, writeEpisode, type Episode } from "../../shared/episode";
import { expect } from "./app";

/** An episode of talk: each block its name, its clip's seconds and its say lines. */
export function talkEpisode(blocks: readonly (readonly [name: string, clipSeconds: number | null, ...lines: string[]])[]): Episode {
  const newId = countingIds("say");
  return emptyEpisode(newId, {
    title: "Talk",
    blocks: blocks.map(([title, clipSeconds, ...lines]) => emptyBlock(newId, "talk", { title, clipSeconds, lines: lines.map((text) => newLine(newId, "say", text)) })),
  });
}

/** Puts an episode into the library, opens it and goes to Speak. */
export async function openInSpeak(page: Page, library: string, episode: Episode): Promise<void> {
  writeFileSync(join(library, "talk.episode.json"), writeEpisode(episode));
  await page.locator(".episode-button").click();
  await page.getByRole("dialog").getByRole("button", { name: /Talk/ }).first().click();
  await expect(page.getByLabel("Title of the episode")).toHaveValue("Talk");
  await goToSpeak(page);
}

export async function goToSpeak(page: Page): Promise<void> {
  await page.getByRole("navigation", { name: "Places" }).getByRole("button", { name: /^Speak/ }).click();
  await expect(page.getByRole("heading", { name: "Speak", level: 1 })).toBeVisible();
}
