/** A time as found: its seconds, and whether it is written as the format asks. */
export interface TimeRead {
  readonly seconds: number;
  readonly strict: boolean;
}

const LENIENT = /^(?:(\d{1,4}):)?(\d{1,4}):(\d{1,2})(?:[.,:](\d{1,6}))?$/;
/** WebVTT: hours of two or more digits may be left out, a full stop before three digits. @source W3C WebVTT, "WebVTT timestamp" */
const WEBVTT = /^(?:\d{2,}:)?[0-5]\d:[0-5]\d\.\d{3}$/;
/** SubRip: always hours, a comma before three digits. From memory: the format has no published standard. */
const SUBRIP = /^\d{2,}:[0-5]\d:[0-5]\d,\d{3}$/;

/**
 * A clock time: "01:02:03.450", "2:03,5", "2:03". Hours and fractions may be missing, comma and full stop both part the fraction.
 * @returns null when it is no time
 */
export function readTime(text: string): TimeRead | null {
  const match = LENIENT.exec(text);
  if (!match) return null;
  const [, hours = "0", minutes = "0", seconds = "0", fraction = ""] = match;
  const whole = Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds);
  // Read as one decimal, so that no sum of parts is a hair off.
  return { seconds: Number(`${whole}.${fraction || "0"}`), strict: WEBVTT.test(text) || SUBRIP.test(text) };
}

/** hh:mm:ss and thousandths after `mark`; rounded to the millisecond. */
export function writeTime(seconds: number, mark: "." | ","): string {
  const millis = Math.max(0, Math.round(seconds * 1000));
  const two = (n: number): string => String(n).padStart(2, "0");
  const whole = Math.floor(millis / 1000);
  return `${two(Math.floor(whole / 3600))}:${two(Math.floor(whole / 60) % 60)}:${two(whole % 60)}${mark}${String(millis % 1000).padStart(3, "0")}`;
}

/** "1:02:03.4", for sentences. */
export function sayTime(seconds: number): string {
  const tenths = Math.max(0, Math.round(seconds * 10));
  const whole = Math.floor(tenths / 10);
  const hours = Math.floor(whole / 3600);
  const minutes = Math.floor(whole / 60) % 60;
  const rest = `${String(whole % 60).padStart(2, "0")}.${tenths % 10}`;
  return hours > 0 ? `${hours}:${String(minutes).padStart(2, "0")}:${rest}` : `${minutes}:${rest}`;
}
