import { NUMBER_VALUES } from "../../speech";

/** How words and amounts are written in the names of features, so that what is alike has one name. */

/** A number is a number, whichever it is. */
export const worded = (plain: string): string => (plain === "" ? "" : /\d/.test(plain) || NUMBER_VALUES.has(plain) ? "#" : plain);

/** The first edge an amount does not pass, by its number; as many as there are beyond the last. @param edges - rising */
export function edgeOf(amount: number, edges: readonly number[]): number {
  const at = edges.findIndex((edge) => amount <= edge);
  return at < 0 ? edges.length : at;
}

/** The same as a word; "more" beyond the last. */
export const bucket = (value: number, edges: readonly number[]): string => String(edges[edgeOf(value, edges)] ?? "more");
