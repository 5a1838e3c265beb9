import { memoOn, type Block, type Episode } from "../../episode";
import { exerciseById, isSameStation, stationOf } from "../../exercises";
import type { BlockGymClock, ClockPart, GymClock, PlannedSet } from "../types";
import { ASSUMED } from "./assumptions";
import { readBlock } from "./planned-sets";

/** Seconds the camera moves of a block take beyond its rests; the camera itself is another engine's business, so they are handed in. */
export type MoveSeconds = (block: Block) => number;

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Seconds of a block whose time is planned as a whole: by its minutes, or as usual for a talk or a warm-up without sets. Null when its parts are counted. */
export function plannedSeconds(block: Block): number | null {
  if (block.minutes !== null) return Math.round(block.minutes * 60);
  if (readBlock(block).sets.length > 0 || block.kind === "exercise") return null;
  if (block.lines.length === 0) return 0;
  return block.kind === "warm-up" || block.kind === "cool-down" ? ASSUMED.warmUp : ASSUMED.talk;
}

/** A block's own time, without the way to it. */
function ownParts(block: Block, moveSeconds: number): ClockPart[] {
  const { sets } = readBlock(block);
  const planned = plannedSeconds(block);
  if (planned !== null) return [{ label: "planned", seconds: planned }];
  const setUp = (block.exercise === null ? undefined : exerciseById(block.exercise)?.setupSeconds) ?? ASSUMED.setUp;
  const work = (role: PlannedSet["role"]): number => sum(sets.filter((set) => set.role === role).map((set) => set.workSeconds - (set.changeSeconds ?? 0)));
  return [
    { label: "set-up", seconds: Math.round(setUp) },
    { label: "ramp-up sets", seconds: work("ramp-up") },
    { label: "sets", seconds: work("working") },
    { label: "rest", seconds: sum(sets.map((set) => set.restSeconds)) },
    { label: "change of side", seconds: sum(sets.map((set) => set.changeSeconds ?? 0)) },
    { label: "camera moves", seconds: Math.round(moveSeconds) },
  ];
}

/** One answer per block and way of moving the camera, with and without a change of station before it. */
const blockClocks = memoOn((moveSeconds: MoveSeconds) => memoOn((block: Block) => {
  const own = ownParts(block, moveSeconds(block));
  const clock = (way: number): BlockGymClock => {
    const parts = [...own, { label: "change of station", seconds: way } as const].filter((part) => part.seconds > 0);
    return { block: block.id, seconds: sum(parts.map((part) => part.seconds)), parts, unread: readBlock(block).unread };
  };
  return { same: clock(0), moved: clock(ASSUMED.changeOfStation) };
}));

/**
 * Minutes the session takes on the floor, in whole seconds that always add up.
 *
 * Planned minutes stand for the whole block but the change of station before it; otherwise set-up, sets, rests, changes of side, and
 * camera moves as far as they do not fit in the rest. The first station is walked to before the slot begins, and blocks
 * without a station leave the camera and the coach where they were.
 * @param moveSeconds - what camera moves take beyond the rests; keep the same function between calls, answers are remembered by it
 */
export function gymClock(episode: Episode, moveSeconds: MoveSeconds): GymClock {
  const clockOf = blockClocks(moveSeconds);
  let at = "";
  const blocks = episode.blocks.map((block) => {
    const station = stationOf(block);
    const moved = station !== "" && at !== "" && !isSameStation(station, at);
    if (station !== "") at = station;
    return moved ? clockOf(block).moved : clockOf(block).same;
  });
  return { seconds: sum(blocks.map((block) => block.seconds)), slotSeconds: episode.session.slotMinutes * 60, blocks };
}
