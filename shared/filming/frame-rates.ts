import type { FrameRate } from "../episode";

/** A frame rate as a fraction, with the whole rate timecode counts in. */
export interface RateParts {
  readonly numerator: number;
  readonly denominator: number;
  /** Frames a timecode second counts. */
  readonly nominal: number;
  /** Frame numbers skipped at the start of a minute; 0 when none are. */
  readonly dropped: number;
}

/** NTSC-family rates are 1000/1001 of the whole rate; drop-frame is defined for 29.97 and 59.94. @source SMPTE ST 12-1 */
export const RATE_PARTS: Readonly<Record<FrameRate, RateParts>> = {
  "23.976": { numerator: 24_000, denominator: 1001, nominal: 24, dropped: 0 },
  "24": { numerator: 24, denominator: 1, nominal: 24, dropped: 0 },
  "25": { numerator: 25, denominator: 1, nominal: 25, dropped: 0 },
  "29.97": { numerator: 30_000, denominator: 1001, nominal: 30, dropped: 0 },
  "29.97 drop": { numerator: 30_000, denominator: 1001, nominal: 30, dropped: 2 },
  "30": { numerator: 30, denominator: 1, nominal: 30, dropped: 0 },
  "50": { numerator: 50, denominator: 1, nominal: 50, dropped: 0 },
  "59.94": { numerator: 60_000, denominator: 1001, nominal: 60, dropped: 0 },
  "59.94 drop": { numerator: 60_000, denominator: 1001, nominal: 60, dropped: 4 },
  "60": { numerator: 60, denominator: 1, nominal: 60, dropped: 0 },
};

/** Frames a day of timecode holds before it begins again at zero. */
export function framesPerDay(rate: FrameRate): number {
  const { nominal, dropped } = RATE_PARTS[rate];
  return 86_400 * nominal - dropped * (1440 - 144);
}
