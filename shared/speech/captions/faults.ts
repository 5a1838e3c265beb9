import { CAPTION_LIMITS, charactersIn, type CaptionLimits } from "./limits";
import { sayTime } from "./times";
import type { Cue } from "./types";

export interface CaptionFault {
  /** Counted from 0. */
  readonly cue: number;
  readonly kind: "too many lines" | "line too long" | "too short" | "too long" | "too fast" | "too close" | "flickering" | "overlap";
  readonly sentence: string;
}

/** A millisecond either way is rounding, not a fault. */
const HAIR = 0.0015;
/** A tenth of a character a second is not read faster. */
const NEAR_SPEED = 0.1;

const number = (value: number): string => String(Math.round(value * 10) / 10);

/** Where captions break the limits, each in a sentence: found, expected, what to do. In the order of the cues. */
export function captionFaults(cues: readonly Cue[], limits: CaptionLimits = CAPTION_LIMITS): CaptionFault[] {
  const faults: CaptionFault[] = [];
  cues.forEach((cue, at) => {
    const add = (kind: CaptionFault["kind"], words: string): number => faults.push({ cue: at, kind, sentence: `Caption ${at + 1} at ${sayTime(cue.start)} ${words}` });
    const lines = cue.text.split("\n");
    const seconds = cue.end - cue.start;
    const speed = charactersIn(cue.text) / Math.max(seconds, 0.001);
    const longest = Math.max(...lines.map(charactersIn));
    if (lines.length > limits.lines) add("too many lines", `has ${lines.length} lines, at most ${limits.lines} leave the picture free: split it in two.`);
    if (longest > limits.lineCharacters) add("line too long", `has a line of ${longest} characters, at most ${limits.lineCharacters} fit: break it.`);
    if (seconds < limits.minSeconds - HAIR) add("too short", `is shown for ${number(seconds)} s, at least ${limits.minSeconds} s are needed to see it: join it with its neighbour.`);
    if (seconds > limits.maxSeconds + HAIR) add("too long", `is shown for ${number(seconds)} s, at most ${limits.maxSeconds} s before it is read twice: split it or let it go.`);
    if (speed > limits.charactersPerSecond + NEAR_SPEED) add("too fast", `asks for ${number(speed)} characters a second, at most ${limits.charactersPerSecond} can be read: use fewer words or more time.`);
    const next = cues[at + 1];
    const gap = next ? next.start - cue.end : Infinity;
    if (gap < -HAIR) add("overlap", `is still shown when the next begins at ${sayTime(next?.start ?? 0)}: end it sooner.`);
    else if (gap < limits.gapSeconds - HAIR) add("too close", `ends ${Math.max(0, Math.round(gap * 1000))} ms before the next, ${Math.round(limits.gapSeconds * 1000)} ms let the eye see the change: end it sooner.`);
    else if (gap > limits.gapSeconds + HAIR && gap < limits.flickerSeconds - HAIR) {
      add("flickering", `ends ${Math.round(gap * 1000)} ms before the next, a gap shorter than ${limits.flickerSeconds} s flickers: let it stay until ${Math.round(limits.gapSeconds * 1000)} ms before, or end it sooner.`);
    }
  });
  return faults;
}
