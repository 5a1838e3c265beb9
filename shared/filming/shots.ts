import { linesOf, memoOn, type Block, type Line } from "../episode";
import { parseShotLine } from "./shot-line";
import type { Shot } from "./types";

/** Seconds a shot is on screen when its line does not say. Common practice, no source. */
const USUAL_SHOT_SECONDS = 8;

/** A shot line and what it says. */
export interface LineShot {
  readonly line: Line;
  readonly shot: Shot;
}

/** The block's shot lines, read, in order. */
export const shotsOf = memoOn((block: Block): readonly LineShot[] =>
  linesOf(block, "shot").map((line) => ({ line, shot: parseShotLine(line.text) })));

/** Seconds a shot is wanted on screen. */
export const secondsOf = (shot: Shot): number => shot.seconds ?? USUAL_SHOT_SECONDS;

/** Seconds of finished video the block's shots add up to. */
export function shotSeconds(block: Block): number {
  return shotsOf(block).reduce((sum, { shot }) => sum + secondsOf(shot), 0);
}
