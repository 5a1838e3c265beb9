import { blockAt, type PromptScript } from "./script";

/** Where the prompter is. The words go at the reader's pace, the clip at the clock's, so they are counted apart. */
export interface Moment {
  /** Place among the blocks of the script. */
  readonly block: number;
  /** Where the words are: planned seconds from the script's start; rests on the block's last word while the clip goes on. */
  readonly at: number;
  /** Real seconds since the block began. */
  readonly clip: number;
}

export interface Advance {
  readonly moment: Moment;
  /** Why it came to a stop: at the beginning of a block that waits, or at the end of the script. */
  readonly stopsAt: "block" | "end" | null;
}

/** Shorter than this is rounding, not time. Seconds. */
const HAIR = 1e-9;

/** The beginning of a block; the last one's for a number past the end. */
export function beginningOf(script: PromptScript, block: number): Moment {
  const index = Math.max(0, Math.min(block, script.blocks.length - 1));
  return { block: index, at: script.blocks[index]?.from ?? 0, clip: 0 };
}

/**
 * The moment a jump leads to: the clip is as far as it would be had the block been read up to there at this pace.
 * @param at - planned seconds from the script's start
 * @param rate - 1 is the measured pace
 */
export function momentAt(script: PromptScript, at: number, rate: number): Moment {
  const here = blockAt(script, at);
  if (!here) return beginningOf(script, 0);
  return { block: script.blocks.indexOf(here), at: Math.min(at, here.speechTo), clip: Math.max(0, at - here.from) / rate };
}

/** Real seconds the clip still has; less than 0 when the words go on behind its end. */
export function clipLeft(script: PromptScript, { block, clip }: Moment): number {
  return (script.blocks[block]?.clip ?? 0) - clip;
}

/** Real seconds until the block is left: when its clip is over and its words are said. */
function untilLeft(script: PromptScript, moment: Moment, rate: number): number {
  const block = script.blocks[moment.block];
  return block ? Math.max(0, clipLeft(script, moment), (block.speechTo - moment.at) / rate) : 0;
}

/** Whether the last block is over. */
export function isAtEnd(script: PromptScript, moment: Moment): boolean {
  return moment.block >= script.blocks.length - 1 && untilLeft(script, moment, 1) <= HAIR;
}

/**
 * Lets real time pass. The words move `rate` times as fast as planned, the clip second by second.
 * @param seconds - real ones
 * @param waits - stops at the beginning of each block
 */
export function advance(script: PromptScript, moment: Moment, seconds: number, { rate, waits }: { readonly rate: number; readonly waits: boolean }): Advance {
  const left = untilLeft(script, moment, rate);
  const isLast = moment.block >= script.blocks.length - 1;
  if (seconds < left - HAIR || isLast) {
    const passed = Math.min(seconds, left);
    const at = Math.min(moment.at + passed * rate, script.blocks[moment.block]?.speechTo ?? 0);
    const next = { ...moment, at, clip: moment.clip + passed };
    return { moment: next, stopsAt: isLast && seconds >= left - HAIR ? "end" : null };
  }
  const next = beginningOf(script, moment.block + 1);
  return waits ? { moment: next, stopsAt: "block" } : advance(script, next, Math.max(0, seconds - left), { rate, waits });
}
