import { readClock } from "../words/clock";

/** What a typed text means, or one sentence about why it means nothing. */
export type Reading<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: string };

const good = <T>(value: T): Reading<T> => ({ ok: true, value });
const bad = (problem: string): Reading<never> => ({ ok: false, problem });

/** A name of at most `max` characters; spaces at the ends do not count. */
export function readName(max: number): (text: string) => Reading<string> {
  return (text) => (text.trim().length <= max ? good(text.trim()) : bad(`At most ${max} characters; these are ${text.trim().length}.`));
}

/** A whole number within bounds, ends included. */
export function readWhole(min: number, max: number, what: string): (text: string) => Reading<number> {
  return (text) => {
    const value = Number(text.trim());
    return text.trim() !== "" && Number.isInteger(value) && value >= min && value <= max ? good(value) : bad(`Write ${what} as a whole number from ${min} to ${max}.`);
  };
}

/** A number within bounds; a comma may stand for the decimal point. */
export function readNumber(min: number, max: number, what: string): (text: string) => Reading<number> {
  return (text) => {
    const value = Number(text.trim().replace(",", "."));
    return text.trim() !== "" && value >= min && value <= max ? good(value) : bad(`Write ${what} as a number from ${min} to ${max}.`);
  };
}

/** A length as m:ss or in seconds, within bounds in seconds. */
export function readLength(min: number, max: number, example: string): (text: string) => Reading<number> {
  return (text) => {
    const value = readClock(text);
    if (value === null) return bad(`Write a length such as ${example}.`);
    return value >= min && value <= max ? good(value) : bad(value < min ? `At least ${min} seconds.` : `At most ${Math.floor(max / 3600)} hours.`);
  };
}

/** A day as the file writes it, such as 2027-03-04; a day that does not exist is refused. */
export function readDay(text: string): Reading<string> {
  const day = text.trim();
  const time = Date.parse(`${day}T00:00:00Z`);
  const real = /^\d{4}-\d{2}-\d{2}$/.test(day) && !Number.isNaN(time) && new Date(time).toISOString().startsWith(day);
  return real ? good(day) : bad("Write a day such as 2027-03-04.");
}

/** A time of day on the 24-hour clock; "6:45" becomes "06:45". */
export function readTime(text: string): Reading<string> {
  const [, hour = "", minute = ""] = /^(\d{1,2})[:.](\d{2})$/.exec(text.trim()) ?? [];
  return hour !== "" && Number(hour) < 24 && Number(minute) < 60 ? good(`${hour.padStart(2, "0")}:${minute}`) : bad("Write a time such as 06:45.");
}

/** The name of a time zone this computer knows, such as Europe/Dublin. */
export function readZone(text: string): Reading<string> {
  const zone = text.trim();
  const shape = /^[A-Za-z0-9_+-]+(\/[A-Za-z0-9_+-]+)*$/.test(zone) && zone.length <= 64;
  if (!shape) return bad("Write a time zone such as Europe/Dublin.");
  try {
    new Intl.DateTimeFormat("en", { timeZone: zone });
    return good(zone);
  } catch {
    return bad(`"${zone}" is no time zone; write one such as Europe/Dublin.`);
  }
}

/** Nothing at all counts as null; anything else is read by `read`. */
export function orNothing<T>(read: (text: string) => Reading<T>): (text: string) => Reading<T | null> {
  return (text) => (text.trim() === "" ? good(null) : read(text));
}
