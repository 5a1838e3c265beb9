import { numberWords } from "./numbers";
import type { Saying } from "./schemes";

/** Minutes after the hour: 5 is "oh five", 0 is not said. */
const minutesWords = (minutes: number): string => (minutes === 0 ? "" : minutes < 10 ? `oh ${numberWords(minutes)}` : numberWords(minutes));

/** Colon times as they are read: 6:45 "six forty-five", 6:05 "six oh five", 12:00 "twelve o'clock", 0:30 "thirty seconds", 1:30 "one thirty". */
function colonTimeWords(first: number, second: number): string {
  if (first === 0) return second === 0 ? "zero" : `${numberWords(second)} ${second === 1 ? "second" : "seconds"}`;
  if (second > 0) return `${numberWords(first)} ${minutesWords(second)}`;
  return first <= 12 ? `${numberWords(first)} o'clock` : `${numberWords(first)} hundred`;
}

/** A length of time in units for later steps: 0:20 "20 s", 1:30 "1 min 30", 3:00 "3 min". */
const lengthOf = (minutes: number, seconds: number): string => (minutes === 0 && seconds > 0 ? `${seconds} s` : `${minutes} min${seconds > 0 ? ` ${seconds}` : ""}`);

/** "am" as it is said: A M. */
const halfOfDay = (letter: string): string => `${letter.toUpperCase()} M`;

/** Times of day and counts of minutes and seconds. A unit after the colon form says nothing new and is dropped. */
export const TIME_SAYINGS: readonly Saying[] = [
  // 7.30 pm
  { written: /\b(\d{1,2})\.([0-5]\d)(?=\s?[ap]m\b)/gi, said: (m) => `${m[1] ?? ""}:${m[2] ?? ""}` },
  // 5'10": a person's height, unless it is held or rested
  { written: /(?<!(?:rest|hold|plank|carry|every|for):?\s)(?<![\d.])([4-7])'(1[01]|\d)(?:"|'')/gi, said: (m) => `${numberWords(Number(m[1]))} foot ${numberWords(Number(m[2]))}` },
  { written: /(\d)[\s-]in\.?(?=\s(?:box|step|plate|block)\b)/gi, said: (m) => `${m[1] ?? ""} inch` },
  // 1h 30m, 2 h 5 min
  { written: /\b(\d{1,2})\s?(?:h|hrs?|hours?)\s?(\d{1,2})\s?m(?:ins?)?\b/gi, said: (m) => `${m[1] ?? ""} h ${m[2] ?? ""} min` },
  // rest 2m, 2m rest, 1m15, 1'30, rest 3:00, 2', 90"; a box of 20" is inches
  { written: /\b(rest:?\s)(\d+(?:\.\d+)?)\s?m\b/gi, said: (m) => `${m[1] ?? ""}${m[2] ?? ""} min` },
  { written: /\b(\d+(?:\.\d+)?)\s?m(?=\s(?:rest|break)\b)/gi, said: (m) => `${m[1] ?? ""} min` },
  { written: /\b(\d{1,2})\s?(?:m|'|min\s?)([0-5]\d)\s?(?:s\b|"|'')?(?![\w.])/gi, said: (m) => `${Number(m[1])} min ${Number(m[2])}` },
  { written: /\b((?:rest|hold|break|plank|carry|every):?\s(?:for\s)?)(\d{1,2}):([0-5]\d)\b(?!\s?[-–])(?:\s?min(?:s|utes)?\b)?/gi, said: (m) => (m[1] ?? "") + lengthOf(Number(m[2]), Number(m[3])) },
  // 1:30 plank, 0:20 plank
  { written: /\b(\d{1,2}):([0-5]\d)(?=\s(?:rests?|breaks?|holds?|planks?|hangs?|carry|carries|pauses?)\b)/gi, said: (m) => lengthOf(Number(m[1]), Number(m[2])) },
  { written: /(\d)'(?=[\s,;:.!?)/–-]|$)/g, said: (m) => `${m[1] ?? ""} min` },
  { written: /(\d)\s?(?:"|'')(?=\s(?:box|step|plate|block))/g, said: (m) => `${m[1] ?? ""} inch` },
  { written: /(\d)\s?(?:"|'')(?=[\s,;:.!?)/–-]|$)/g, said: (m) => `${m[1] ?? ""} s` },
  { written: /(\d:[0-5]\d)\s?[-–]\s?(?=\d{1,2}:[0-5]\d)/g, said: (m) => `${m[1] ?? ""} to ` },
  { written: /\b(\d{1,2}):([0-5]\d):([0-5]\d)\b/g, said: (m) => [numberWords(Number(m[1])), minutesWords(Number(m[2])) || "oh oh", minutesWords(Number(m[3])) || "oh oh"].join(" ") },
  { written: /\b(\d{1,3}):([0-5]\d)\s?(?:mins?|minutes)\b/gi, said: (m) => lengthOf(Number(m[1]), Number(m[2])) },
  { written: /\b(\d{1,2}):([0-5]\d)\s?([ap])m\b/gi, said: (m) => `${Number(m[2]) > 0 ? colonTimeWords(Number(m[1]), Number(m[2])) : numberWords(Number(m[1]))} ${halfOfDay(m[3] ?? "")}` },
  { written: /\b(\d{1,3}):([0-5]\d)\b/g, said: (m) => colonTimeWords(Number(m[1]), Number(m[2])) },
  { written: /\b(\d{1,2})\s?([ap])m\b/gi, said: (m) => `${numberWords(Number(m[1]))} ${halfOfDay(m[2] ?? "")}` },
  { written: /\b(\d{1,3}):(\d)\b/g, said: (m) => `${numberWords(Number(m[1]))} to ${numberWords(Number(m[2]))}` },
];
