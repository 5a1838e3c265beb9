/**
 * Seconds of video as people write them: "0:48", "9:40", from one hour "1:02:05". Rounded to the second.
 */
export function clock(seconds: number): string {
  const whole = Math.max(0, Math.round(seconds));
  const s = String(whole % 60).padStart(2, "0");
  const minutes = Math.floor(whole / 60);
  if (minutes < 60) return `${minutes}:${s}`;
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}:${s}`;
}

/** Floor time in whole minutes, without the word: "13", "<1" for anything that is not nothing, "0". */
export function minutes(seconds: number): string {
  if (seconds <= 0) return "0";
  return seconds < 30 ? "<1" : String(Math.round(seconds / 60));
}

/**
 * Reads a length as people type it: "95", "1:35", "1:02:05", "95 s", "2 min".
 * @returns seconds, or null when it is no length
 */
export function readClock(text: string): number | null {
  const typed = text.trim().toLowerCase();
  const unit = /^(\d+(?:[.,]\d+)?)\s*(s|sec|seconds?|min|minutes?)?$/.exec(typed);
  if (unit) {
    const value = Number((unit[1] ?? "").replace(",", "."));
    return (unit[2] ?? "s").startsWith("m") ? Math.round(value * 60) : value;
  }
  if (!/^\d+(:[0-5]?\d){1,2}$/.test(typed)) return null;
  return typed.split(":").reduce((sum, part) => sum * 60 + Number(part), 0);
}

/** Seconds without a needless ".0": "5.9", "12". */
export function seconds(value: number): string {
  return value >= 10 ? String(Math.round(value)) : String(Math.round(value * 10) / 10);
}
