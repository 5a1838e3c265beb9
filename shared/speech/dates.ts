import { numberWords, ordinalWords } from "./numbers";
import type { Saying } from "./schemes";

const MONTHS: Readonly<Record<string, string>> = {
  Jan: "January", Feb: "February", Mar: "March", Apr: "April", May: "May", Jun: "June", Jul: "July", Aug: "August", Sep: "September", Sept: "September", Oct: "October", Nov: "November", Dec: "December",
};
const MONTH = `(${[...Object.values(MONTHS), ...Object.keys(MONTHS)].sort((a, b) => b.length - a.length).join("|")})\\b\\.?`;
const MONTH_NAMES = [...new Set(Object.values(MONTHS))];
const YEAR = String.raw`(?:,?\s((?:19|20)\d\d))?(?!\d|[.,:]\d|\s?(?:kg|lb|m|km|reps?|sets?|steps|%))`;
const monthName = (written: string): string => MONTHS[written] ?? written;

/** 2026 is "twenty twenty-six", 2005 "two thousand five", 1900 "nineteen hundred". */
function yearWords(year: number): string {
  const [century, rest] = [Math.floor(year / 100), year % 100];
  if (century === 20 && rest < 10) return numberWords(year);
  if (rest === 0) return `${numberWords(century)} hundred`;
  return `${numberWords(century)} ${rest < 10 ? `oh ${numberWords(rest)}` : numberWords(rest)}`;
}

/** False for the thirty-first of February. */
const isDay = (year: number, month: number, day: number): boolean => day >= 1 && day <= new Date(Date.UTC(year, month, 0)).getUTCDate();

const dated = (words: string, year: string | undefined): string => (year ? `${words}, ${yearWords(Number(year))}` : words);

/** Days and years, where a month or a word before them says that they are. */
export const DATE_SAYINGS: readonly Saying[] = [
  // 2027-03-04
  {
    written: /(?<![\w./-])((?:19|20)\d\d)-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])(?![\w/-])/g,
    said: (m) => (isDay(Number(m[1]), Number(m[2]), Number(m[3])) ? dated(`the ${ordinalWords(Number(m[3]))} of ${MONTH_NAMES[Number(m[2]) - 1] ?? ""}`, m[1]) : m[0] ?? ""),
  },
  // 5 May 2026, 5th of May
  { written: new RegExp(String.raw`\b([12]?\d|3[01])(?:st|nd|rd|th)?(?:\sof)?\s${MONTH}${YEAR}`, "g"), said: (m) => dated(`the ${ordinalWords(Number(m[1]))} of ${monthName(m[2] ?? "")}`, m[3]) },
  // May 5, 2026
  { written: new RegExp(String.raw`\b${MONTH}\s([12]?\d|3[01])(?:st|nd|rd|th)?\b${YEAR}`, "g"), said: (m) => dated(`${monthName(m[1] ?? "")} ${ordinalWords(Number(m[2]))}`, m[3]) },
  // in 2026, since 2019
  { written: /\b(in|since|until|year|of)\s((?:19|20)\d\d)(?=[.,;!?](?!\d)|$)/gi, said: (m) => `${m[1] ?? ""} ${yearWords(Number(m[2]))}` },
];
