import type { Moment } from "./moment";
import { stretchAt, type PromptScript } from "./script";

/** A step back soon after a beginning means the one before; later it means this one's beginning. Seconds. */
const GRACE = 0.6;

/** Where a step leads: planned seconds from the script's start. */
export interface Step {
  readonly to: number;
  /** It goes on into another block than the one that runs. */
  readonly entersBlock: boolean;
}

const within = (to: number): Step => ({ to, entersBlock: false });

/** Where a step of one stretch leads, from the one that is read or comes up. */
export function stepByStretch(script: PromptScript, { block, at }: Moment, step: 1 | -1): Step {
  const stretch = stretchAt(script, at);
  const here = script.blocks[block];
  if (!stretch || !here) return within(at);
  if (step === -1) return within(at > stretch.from + GRACE ? stretch.from : (script.stretches[stretch.index - 1]?.from ?? 0));
  // In the quiet behind a block's last word the next block's first stretch comes up already.
  const next = stretch.from >= here.to ? stretch : script.stretches[stretch.index + 1];
  if (!next) return within(at);
  return { to: next.from, entersBlock: next.from >= here.to };
}

/** Where a step of one block leads; seconds. */
export function stepByBlock(script: PromptScript, { block, at }: Moment, step: 1 | -1): number {
  const here = script.blocks[block];
  if (!here) return at;
  if (step === -1 && at > here.from + GRACE) return here.from;
  return script.blocks[block + step]?.from ?? (step === 1 ? at : 0);
}
