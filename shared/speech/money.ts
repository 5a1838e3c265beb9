import { decimalWords, numberWords } from "./numbers";

/** A currency's whole coins and the hundredth of them, one and many. */
const COINS: Readonly<Record<string, readonly [one: string, many: string, small: string, smalls: string]>> = {
  $: ["dollar", "dollars", "cent", "cents"], "€": ["euro", "euros", "cent", "cents"], "£": ["pound", "pounds", "penny", "pence"],
};

/** An amount as it is said: "£1.50" is "one pound fifty", "$0.05" is "five cents". @param figures - as written, with thousands commas or without */
export function moneyWords(sign: string, figures: string): string {
  const [one = "", many = "", small = "", smalls = ""] = COINS[sign] ?? [];
  const [, whole = "", hundredths] = /^([\d,]*)\.(\d\d)$/.exec(figures) ?? [];
  if (hundredths === undefined) return `${decimalWords(figures)} ${figures === "1" ? one : many}`;
  const rest = Number(hundredths);
  if (Number(whole) === 0) return `${numberWords(rest)} ${rest === 1 ? small : smalls}`;
  return `${decimalWords(whole)} ${whole === "1" ? one : many}${rest > 0 ? ` ${numberWords(rest)}` : ""}`;
}
