import { NUMBER_VALUES } from "../../speech";

/** How words and amounts are written in the names of features, so that what is alike has one name. */

/** A number is a number, whichever it is. */
export const worded = (plain: string): string => (plain === "" ? "" : /\d/.test(plain) || NUMBER_VALUES.has(plain) ? "#" : plain);

/** What a statement is about, before the name of what it says. */
export const aboutWord = (about: string): string => (about === "circuit" ? "all " : about === "ramp-up" ? "ramp " : "");

/** The fields said in some statements, each once. */
export const fieldsIn = (statements: readonly { readonly says: object; readonly about: string }[]): string[] => [...new Set(statements.flatMap(({ says, about }) => Object.keys(says).map((field) => `${aboutWord(about)}${field}`)))];

/** The first edge an amount does not pass; "more" beyond the last. @param edges - rising */
export function bucket(value: number, edges: readonly number[]): string {
  const at = edges.findIndex((edge) => value <= edge);
  return at < 0 ? "more" : String(edges[at]);
}
