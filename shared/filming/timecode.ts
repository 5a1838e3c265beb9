import type { FrameRate } from "../episode";
import { framesPerDay, RATE_PARTS } from "./frame-rates";

const two = (value: number): string => String(value).padStart(2, "0");

/**
 * A frame count as timecode HH:MM:SS:FF; drop-frame writes a semicolon before the frames. Wraps after a day.
 * @param frame - frames from zero, whole, not negative
 * @throws {RangeError} when the frame is not a whole number from 0
 * @source SMPTE ST 12-1: drop-frame skips frame numbers at the start of every minute but each tenth
 */
export function framesToTimecode(frame: number, rate: FrameRate): string {
  if (!Number.isSafeInteger(frame) || frame < 0) throw new RangeError(`A frame is a whole number from 0; ${frame} is not.`);
  const { nominal, dropped } = RATE_PARTS[rate];
  const inDay = frame % framesPerDay(rate);
  const perMinute = nominal * 60 - dropped;
  const perTen = perMinute * 10 + dropped;
  const inTen = inDay % perTen;
  const skips = 9 * Math.floor(inDay / perTen) + (inTen < nominal * 60 ? 0 : 1 + Math.floor((inTen - nominal * 60) / perMinute));
  const count = inDay + dropped * skips;
  const seconds = Math.floor(count / nominal);
  return `${two(Math.floor(seconds / 3600))}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}${dropped > 0 ? ";" : ":"}${two(count % nominal)}`;
}

/**
 * Timecode back to a frame count.
 * @param text - HH:MM:SS:FF, or HH:MM:SS;FF for drop-frame rates; 24:00:00 and later do not exist
 * @throws {RangeError} with a sentence when the text is no timecode, or one that the rate does not have
 */
export function timecodeToFrames(text: string, rate: FrameRate): number {
  const { nominal, dropped } = RATE_PARTS[rate];
  const parts = /^(\d{2}):(\d{2}):(\d{2})([:;])(\d{2})$/.exec(text.trim());
  if (!parts) throw new RangeError(`"${text}" is not a timecode: expected HH:MM:SS${dropped > 0 ? ";" : ":"}FF.`);
  const [hours, minutes, seconds, frames] = [Number(parts[1]), Number(parts[2]), Number(parts[3]), Number(parts[5])] as const;
  const mark = dropped > 0 ? ";" : ":";
  if (parts[4] !== mark) throw new RangeError(`"${text}": ${rate} is written with "${mark}" before the frames.`);
  if (hours > 23) throw new RangeError(`"${text}": a day has hours 00 to 23.`);
  if (minutes > 59 || seconds > 59) throw new RangeError(`"${text}": minutes and seconds run from 00 to 59.`);
  if (frames >= nominal) throw new RangeError(`"${text}": at ${rate} frames run from 00 to ${nominal - 1}.`);
  if (seconds === 0 && frames < dropped && minutes % 10 !== 0) {
    throw new RangeError(`"${text}" does not exist: drop-frame skips frames 00 to ${two(dropped - 1)} here.`);
  }
  const total = hours * 60 + minutes;
  return (total * 60 + seconds) * nominal + frames - dropped * (total - Math.floor(total / 10));
}

/** Real seconds to the nearest frame. @param seconds - not negative */
export function secondsToFrames(seconds: number, rate: FrameRate): number {
  const { numerator, denominator } = RATE_PARTS[rate];
  return Math.round((seconds * numerator) / denominator);
}

/** Frames to real seconds. */
export function framesToSeconds(frames: number, rate: FrameRate): number {
  const { numerator, denominator } = RATE_PARTS[rate];
  return (frames * denominator) / numerator;
}
