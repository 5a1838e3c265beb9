import { NUMBER, decimalWords, numberWords } from "./numbers";

/** A currency's whole coins and the hundredth of them, one and many. */
const COINS: Readonly<Record<string, readonly [one: string, many: string, small: string, smalls: string]>> = {
  $: ["dollar", "dollars", "cent", "cents"], "€": ["euro", "euros", "cent", "cents"], "£": ["pound", "pounds", "penny", "pence"],
};

/** The coin of a country of several that have one: "US$40". */
const ofCountry = (country: string, words: string): string => (country === "" ? words : words.replace(/(?=dollar|euro|pound|cent)/, `${country} `));

const AMOUNT = new RegExp(String.raw`(\b[A-Z]{1,2})?([$€£])\s?(${NUMBER})(k\b)?(?: to (${NUMBER})(k\b)?)?(?![\d])`, "g");
/** "5k" is five thousand. */
const inFull = (figures: string, thousands: string | undefined): string => (thousands === undefined ? figures : String(Math.round(Number(figures.replace(/,/g, "")) * 1000)));

/** From one amount to another; the coin is said once where neither has small coins. */
const sayAmounts = (sign: string, from: string, to: string): string =>
  [from, to].some((figures) => /\.\d\d$/.test(figures)) ? `${moneyWords(sign, from)} to ${moneyWords(sign, to)}` : `${decimalWords(from)} to ${moneyWords(sign, to)}`;

/** Amounts of money in words. */
export function sayMoney(text: string): string {
  return text.replace(AMOUNT, (_, country: string | undefined, sign: string, from: string, k: string | undefined, to: string | undefined, toK: string | undefined) => {
    const words = to === undefined ? moneyWords(sign, inFull(from, k)) : sayAmounts(sign, inFull(from, k ?? toK), inFull(to, toK));
    return ofCountry(country ?? "", words);
  });
}

/** An amount as it is said: "£1.50" is "one pound fifty", "$0.05" is "five cents". @param figures - as written, with thousands commas or without */
export function moneyWords(sign: string, figures: string): string {
  const [one = "", many = "", small = "", smalls = ""] = COINS[sign] ?? [];
  const [, whole = "", hundredths] = /^([\d,]*)\.(\d\d)$/.exec(figures) ?? [];
  if (hundredths === undefined) return `${decimalWords(figures)} ${figures === "1" ? one : many}`;
  const rest = Number(hundredths);
  if (Number(whole) === 0) return `${numberWords(rest)} ${rest === 1 ? small : smalls}`;
  return `${decimalWords(whole)} ${whole === "1" ? one : many}${rest > 0 ? ` ${numberWords(rest)}` : ""}`;
}
