import type { Block, Episode } from "../episode";
import { secondsOf, shotsOf } from "./shots";

/**
 * Typical phone recordings, megabits a second. Real files vary by 40 % either way.
 * @source H.264 at 1080p30 and 4K30: 130 and 375 MB a minute as published by a phone guide; the rest from memory
 */
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

/** What most phones come with. Common practice, no source. */
export const USUAL_FORMAT: RecordingFormat = "1080p30 HEVC";

/** Added to the card, since typical figures are no promise. */
export const CARD_MARGIN = 0.4;
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

/** The format a name stands for, whatever its case and spaces; null for one that is not known. */
export function formatNamed(name: string): RecordingFormat | null {
  const plain = (text: string): string => text.toLowerCase().replace(/[\s_-]+/g, "");
  return (Object.keys(RECORDING_FORMATS) as RecordingFormat[]).find((format) => plain(format) === plain(name)) ?? null;
}

/** The format an episode is filmed in: its own where it is known, else the usual one. */
export const formatOf = (episode: Episode): RecordingFormat => formatNamed(episode.session.filming?.format ?? "") ?? USUAL_FORMAT;

/** Card and battery for some minutes of recording. @param batteryMinutes - minutes of recording a full battery lasts */
export function recordingOf(minutes: number, format: RecordingFormat = USUAL_FORMAT, batteryMinutes = BATTERY_MINUTES): Recording {
  const megabytes = minutes * megabytesPerMinute(RECORDING_FORMATS[format]);
  return { minutes, megabytes, gigabytes: (megabytes * (1 + CARD_MARGIN)) / 1000, batteries: minutes / batteryMinutes };
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

/**
 * Card and battery for an episode, or for some of its blocks.
 * @param format - left out, the episode's own; the usual one for blocks
 */
export function recording(of: Episode | readonly Block[], format?: RecordingFormat): Recording {
  if (!("blocks" in of)) return recordingOf(recordedMinutes(of), format);
  return recordingOf(recordedMinutes(of.blocks), format ?? formatOf(of), of.session.filming?.batteryMinutes ?? BATTERY_MINUTES);
}
