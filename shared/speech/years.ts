import { numberWords } from "./numbers";

/** 2026 is "twenty twenty-six", 2005 "two thousand five", 1900 "nineteen hundred". */
export function yearWords(year: number): string {
  const [century, rest] = [Math.floor(year / 100), year % 100];
  if (century === 20 && rest < 10) return numberWords(year);
  if (rest === 0) return `${numberWords(century)} hundred`;
  return `${numberWords(century)} ${rest < 10 ? `oh ${numberWords(rest)}` : numberWords(rest)}`;
}
