import { isFunctionWord } from "./function-words";
import { numberWords, ordinalWords } from "./numbers";
import type { Saying } from "./schemes";
import { yearWords } from "./years";

const MONTHS: Readonly<Record<string, string>> = {
  Jan: "January", Feb: "February", Mar: "March", Apr: "April", May: "May", Jun: "June", Jul: "July", Aug: "August", Sep: "September", Sept: "September", Oct: "October", Nov: "November", Dec: "December",
};
const MONTH = `(${[...Object.values(MONTHS), ...Object.keys(MONTHS)].sort((a, b) => b.length - a.length).join("|")})\\b`;
const MONTH_NAMES = [...new Set(Object.values(MONTHS))];
const YEAR = String.raw`(?:,?\s((?:19|20)\d\d))?(?!\d|[.,:]\d|\s?(?:kg|lb|m|km|reps?|sets?|steps|%))`;
const monthName = (written: string): string => MONTHS[written] ?? written;

const WEEKDAYS: Readonly<Record<string, string>> = { Mo: "Monday", Tu: "Tuesday", We: "Wednesday", Th: "Thursday", Fr: "Friday", Sa: "Saturday", Su: "Sunday" };
const WEEKDAY = String.raw`\b(Mon|Tues?|Wed|Thu(?:rs?)?|Fri|Sat|Sun)\b`;
const weekday = (written: string): string => WEEKDAYS[written.slice(0, 2)] ?? written;
/** What stands between the days of a list: all that comes out as a comma, and the words that join. */
const LISTED = String.raw`(?:[^\p{L}\p{N}.!?]{0,4}[,&()[\]{}–—][^\p{L}\p{N}.!?]{0,4}|,?\s(?:and|or)\s)`;
/** A day of the month or a time of day: what a weekday stands before. */
const DAY_OR_TIME = String.raw`,?\s(?:at\s)?(?:\d{1,2}(?:st|nd|rd|th)?\s(?:of\s)?${MONTH}|${MONTH}\s\d|\d{1,2}[:.][0-5]\d\b|\d{1,2}\s?[ap]m\b)`;

/** False for the thirty-first of February. */
const isDay = (year: number, month: number, day: number): boolean => month >= 1 && month <= 12 && day >= 1 && day <= new Date(Date.UTC(year, month, 0)).getUTCDate();

const dated = (words: string, year: string | undefined): string => (year ? `${words}, ${yearWords(Number(year))}` : words);
const dayWords = (day: number, month: number, year: string): string => dated(`the ${ordinalWords(day)} of ${MONTH_NAMES[month - 1] ?? ""}`, year);

/** A date in figures; where either figure may be the month, the figures in turn, for only the writer knows. */
function figuresWords(first: number, second: number, year: string): string | null {
  const [dayFirst, monthFirst] = [isDay(Number(year), second, first), isDay(Number(year), first, second)];
  if (dayFirst && monthFirst && first !== second) return `${numberWords(first)} ${numberWords(second)} ${yearWords(Number(year))}`;
  if (dayFirst) return dayWords(first, second, year);
  return monthFirst ? dayWords(second, first, year) : null;
}

/** Days and years, where a month or a word before them says that they are. */
export const DATE_SAYINGS: readonly Saying[] = [
  // Sat 4 March, Sun 9:00; Mon-Fri, Mon, Wed and Fri: beside its like it is no verb
  { written: new RegExp(`${WEEKDAY}(?=${DAY_OR_TIME})`, "g"), said: (m) => weekday(m[1] ?? "") },
  { written: new RegExp(String.raw`${WEEKDAY}\s?[-–]\s?(?=(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun))`, "g"), said: (m) => `${weekday(m[1] ?? "")} to ` },
  { written: new RegExp(String.raw`${WEEKDAY}\s?\/\s?(?=(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun))`, "g"), said: (m) => `${weekday(m[1] ?? "")}, ` },
  { written: new RegExp(`${WEEKDAY}(?=${LISTED}(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun))`, "gu"), said: (m) => weekday(m[1] ?? "") },
  { written: new RegExp(`(?<=day(?:${LISTED}| to ))${WEEKDAY}`, "gu"), said: (m) => weekday(m[1] ?? "") },
  // 2027-03-04
  {
    written: /(?<![\w./-])((?:19|20)\d\d)-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])(?![\w/-])/g,
    said: (m) => (isDay(Number(m[1]), Number(m[2]), Number(m[3])) ? dayWords(Number(m[3]), Number(m[2]), m[1] ?? "") : m[0] ?? ""),
  },
  // 21.03.2027, 04/03/2027
  { written: /(?<![\w./-])(\d{1,2})([./-])(\d{1,2})\2((?:19|20)\d\d)(?![\w/-]|\.\d)/g, said: (m) => figuresWords(Number(m[1]), Number(m[3]), m[4] ?? "") ?? m[0] ?? "" },
  // 5 May 2026, the 5th of May
  { written: new RegExp(String.raw`\b(?:(the)\s)?([12]?\d|3[01])(?:st|nd|rd|th)?(?:\sof)?\s${MONTH}${YEAR}`, "gi"), said: (m) => {
    // "you may 5 times", "3 may": a month has a capital
    if (!/^\p{Lu}/u.test(m[3] ?? "")) return m[0] ?? "";
    return dated(`${m[1] ?? "the"} ${ordinalWords(Number(m[2]))} of ${monthName(m[3] ?? "")}`, m[4]);
  } },
  // May 5, 2026
  { written: new RegExp(String.raw`\b${MONTH}\s([12]?\d|3[01])(?:st|nd|rd|th)?\b${YEAR}`, "g"), said: (m) => dated(`${monthName(m[1] ?? "")} ${ordinalWords(Number(m[2]))}`, m[3]) },
  // in 2026, since 2019
  { written: /\b(in|since|until|year|of)\s((?:19|20)\d\d)(?=[.,;!?](?!\d)|$)/gi, said: (m) => `${m[1] ?? ""} ${yearWords(Number(m[2]))}` },
  // In 2019 I trained; "in 2000 m" and "in 2000 to 3000" are counts
  {
    written: /\b(in|since|until|year)\s((?:19|20)\d\d)(?=\s(?!of\b)([a-z']+)\b(?!\s\d))/gi,
    said: (m) => (isFunctionWord((m[3] ?? "").toLowerCase()) ? `${m[1] ?? ""} ${yearWords(Number(m[2]))}` : m[0] ?? ""),
  },
];
