import type { Block, Episode } from "../episode";
import { secondsOf, shotsOf } from "./shots";

/** Typical phone recordings, megabits a second. Real files vary by 40 % either way. Partly from memory. */
export const RECORDING_FORMATS = {
  "1080p30 HEVC": 8,
  "1080p60 HEVC": 12,
  "4K30 HEVC": 24,
  "4K60 HEVC": 56,
  "1080p30 H.264": 17,
  "1080p60 H.264": 23,
  "4K30 H.264": 50,
} as const;
export type RecordingFormat = keyof typeof RECORDING_FORMATS;

/** Added to the card, since typical figures are no promise. */
const CARD_MARGIN = 0.4;
/** Minutes of recording a full phone battery lasts. Common practice, no source. */
const BATTERY_MINUTES = 90;
/** A camera that films a set runs through all of it, and a little before and after; seconds. Common practice, no source. */
const SET_RUN_SECONDS = 40;
const RUN_HANDLE_SECONDS = 4;

/** What some recording takes of the card and the battery. */
export interface Recording {
  readonly minutes: number;
  /** Decimal megabytes, as typical figures give them. */
  readonly megabytes: number;
  /** Free space to bring, margin included; decimal gigabytes. */
  readonly gigabytes: number;
  /** Full batteries it takes; 0.5 is half of one. */
  readonly batteries: number;
}

/** Decimal megabytes a minute of a bitrate takes: Mbit/s x 60 / 8. */
export const megabytesPerMinute = (megabits: number): number => megabits * 7.5;

/** Card and battery for some minutes of recording. */
export function recordingOf(minutes: number, format: RecordingFormat = "1080p30 HEVC"): Recording {
  const megabytes = minutes * megabytesPerMinute(RECORDING_FORMATS[format]);
  return { minutes, megabytes, gigabytes: (megabytes * (1 + CARD_MARGIN)) / 1000, batteries: minutes / BATTERY_MINUTES };
}

/**
 * Minutes the camera runs: every shot once for each set it names, a whole set or the shot's own length, whichever is longer.
 */
export function recordedMinutes(blocks: readonly Block[]): number {
  const seconds = blocks.flatMap((block) => shotsOf(block)).reduce((sum, { shot }) => {
    const runs = Math.max(1, shot.sets?.length ?? 1);
    const onSet = shot.sets !== null || shot.on === "working" || shot.on === "ramp-up";
    return sum + runs * (Math.max(secondsOf(shot), onSet ? SET_RUN_SECONDS : 0) + RUN_HANDLE_SECONDS);
  }, 0);
  return seconds / 60;
}

/** Card and battery for an episode, or for some of its blocks. */
export function recording(of: Episode | readonly Block[], format: RecordingFormat = "1080p30 HEVC"): Recording {
  return recordingOf(recordedMinutes("blocks" in of ? of.blocks : of), format);
}
