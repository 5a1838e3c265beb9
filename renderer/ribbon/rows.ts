import { blockName, type Episode } from "../../shared/episode";
import type { EpisodeClocks } from "../../shared/clocks";
import { clock, minutes } from "../words/clock";
import type { Share } from "./geometry";

/** One block as the ribbon shows it. */
export interface RibbonRow extends Share {
  readonly id: string;
  readonly name: string;
  /** "3. Chest-supported row, 13 min on the floor, 1:35 on screen" */
  readonly sentence: string;
}

/** The running order with its times. Blocks the clocks do not know yet count nothing. */
export function ribbonRows(episode: Pick<Episode, "blocks">, clocks: EpisodeClocks): RibbonRow[] {
  const floor = new Map(clocks.gym.blocks.map((block) => [block.block, block.seconds]));
  const screen = new Map(clocks.screen.blocks.map((block) => [block.block, block.seconds]));
  return episode.blocks.map((block, i) => {
    const row = { floor: floor.get(block.id) ?? 0, screen: screen.get(block.id) ?? 0, id: block.id, name: blockName(block) };
    return { ...row, sentence: `${i + 1}. ${row.name}, ${minutes(row.floor)} min on the floor, ${clock(row.screen)} on screen` };
  });
}

/** Whether two running orders look the same on the ribbon. */
export function sameRows(a: readonly RibbonRow[], b: readonly RibbonRow[]): boolean {
  return a.length === b.length && a.every((row, i) => {
    const other = b[i];
    return other !== undefined && row.id === other.id && row.sentence === other.sentence && row.floor === other.floor && row.screen === other.screen;
  });
}

/** What an axis says at its head: how much of how much, and by how much it is passed. */
export interface AxisHead {
  readonly label: string;
  readonly figure: string;
  /** Null while it fits. */
  readonly over: string | null;
}

/** The heads of both axes. */
export function axisHeads(clocks: EpisodeClocks): { floor: AxisHead; screen: AxisHead } {
  const { gym, screen } = clocks;
  const overFloor = gym.seconds - gym.slotSeconds;
  const overScreen = Math.round(screen.seconds - screen.targetSeconds);
  return {
    floor: {
      label: "On the floor",
      figure: `${minutes(gym.seconds)} of ${minutes(gym.slotSeconds)} min`,
      over: overFloor <= 0 ? null : overFloor < 30 ? "less than 1 min over" : `${minutes(overFloor)} min over`,
    },
    screen: {
      label: "On screen",
      figure: `${clock(screen.seconds)} of ${clock(screen.targetSeconds)}`,
      over: overScreen <= 0 ? null : `${clock(overScreen)} over`,
    },
  };
}
