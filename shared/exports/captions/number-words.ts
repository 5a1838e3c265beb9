import { NUMBER_VALUES } from "../../speech";

/** Any word a number is made of. */
export const NUMBER_WORD = [...NUMBER_VALUES.keys()].sort((a, b) => b.length - a.length).join("|");

/** 0 to 19, or null. */
export function digitOf(word: string): number | null {
  const value = NUMBER_VALUES.get(word);
  return value !== undefined && value < 20 ? value : null;
}

/**
 * The number that words say: "forty-two point five", "a hundred and twenty", "two and a half".
 * @returns null when they say no one number, as "six forty-five" and "three two one" do not
 */
export function numberOf(text: string): number | null {
  const [whole = "", fraction] = text.toLowerCase().trim().split(/\s+point\s+/);
  const half = /\s+and a half$/.test(whole);
  const words = whole.replace(/\s+and a half$/, "").split(/[\s-]+/).filter((word) => word !== "and");
  let total = 0;
  let below = 0;
  // The greatest part that may still follow: after "twenty" only ones, after "twenty one" nothing.
  let room = 1000;
  for (const [at, word] of words.entries()) {
    const small = digitOf(word);
    const ten = small === null ? NUMBER_VALUES.get(word) : undefined;
    if (word === "a" && at === 0) continue;
    if (word === "thousand" && total === 0) [total, below, room] = [(below || 1) * 1000, 0, 1000];
    else if (word === "hundred" && below < 10 && room !== 100) [below, room] = [(below || 1) * 100, 100];
    else if (ten !== undefined && room >= 100) [below, room] = [below + ten, 10];
    else if (small !== null && (small < 10 ? room >= 10 && (small > 0 || words.length === 1) : room >= 100)) [below, room] = [below + small, 1];
    else return null;
  }
  if (fraction === undefined) return total + below + (half ? 0.5 : 0);
  const digits = fraction.split(/[\s-]+/).map(digitOf);
  return digits.every((digit) => digit !== null && digit < 10) ? Number(`${total + below}.${digits.join("")}`) : null;
}
