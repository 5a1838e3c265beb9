import { dirname } from "node:path";
import { episodeClocks } from "../../shared/clocks";
import { blockName } from "../../shared/episode";
import { ownPaceIn } from "../workspace/speaker";
import { readArgument } from "./read-argument";
import type { ExitCode, Terminal } from "./terminal";
import { clockTime, count, table } from "./words";

/** Both clocks, per block and in all, at the pace of the folder the episode lies in. With `--json`, seconds: the figures of the core, unrounded. */
export async function time(terminal: Terminal, path: string, options: { readonly json?: boolean }): Promise<ExitCode> {
  const episode = await readArgument(path);
  const { pace, sentence, isUsual } = await ownPaceIn(dirname(path));
  const { gym, screen } = episodeClocks(episode, pace);
  const gymOf = new Map(gym.blocks.map((block) => [block.block, block]));
  const screenOf = new Map(screen.blocks.map((block) => [block.block, block]));

  if (options.json) {
    const blocks = episode.blocks.map((block, i) => {
      const floor = gymOf.get(block.id);
      const film = screenOf.get(block.id);
      return {
        number: i + 1, block: block.id, kind: block.kind, title: blockName(block),
        gymSeconds: floor?.seconds ?? 0, gymParts: floor?.parts ?? [], unreadSetLines: floor?.unread ?? [],
        screenSeconds: film?.seconds ?? 0, screenFrom: film?.from ?? "nothing", spokenSeconds: film?.spoken.seconds ?? 0,
        clipSeconds: block.clipSeconds, overSeconds: film?.overSeconds ?? 0, wordsToCut: film?.wordsToCut ?? 0,
      };
    });
    const totals = { gymSeconds: gym.seconds, slotSeconds: gym.slotSeconds, screenSeconds: screen.seconds, targetSeconds: screen.targetSeconds };
    await terminal.out(`${JSON.stringify({ ...totals, blocks }, null, 2)}\n`);
    if (!isUsual) terminal.err(`${sentence}\n`);
    return 0;
  }

  const rows = episode.blocks.map((block, i) => [`${i + 1}. ${blockName(block)}`, clockTime(gymOf.get(block.id)?.seconds ?? 0), clockTime(screenOf.get(block.id)?.seconds ?? 0)]);
  await terminal.out(table([["", "gym", "screen"], ...rows, ["In all", clockTime(gym.seconds), clockTime(screen.seconds)]]));
  await terminal.out(`\nGym clock: ${clockTime(gym.seconds)} of the ${clockTime(gym.slotSeconds)} booked${beyond(gym.seconds, gym.slotSeconds)}.\n`);
  await terminal.out(`Screen clock: ${clockTime(screen.seconds)} of ${clockTime(screen.targetSeconds)} aimed for${beyond(screen.seconds, screen.targetSeconds)}.\n`);
  for (const block of episode.blocks) {
    const film = screenOf.get(block.id);
    if (film && film.overSeconds > 0) {
      await terminal.out(`${blockName(block)}: the words run ${clockTime(film.overSeconds)} past the clip; cut about ${count(film.wordsToCut, "word")}.\n`);
    }
    for (const line of gymOf.get(block.id)?.unread ?? []) await terminal.out(`${blockName(block)}: the set line ${line} could not be read and counts nothing.\n`);
  }
  await terminal.out(`${sentence}\n`);
  return 0;
}

const beyond = (seconds: number, limit: number): string => (Math.round(seconds) > Math.round(limit) ? `, ${clockTime(seconds - limit)} too long` : "");
