import { textIn } from "../source/words";
import { headOf, type Head } from "./head";
import type { Row } from "./rows";
import { isSetLine } from "./written";

/** A heading that holds for the exercises below it: "3 rounds:", "40/20 x 4 rounds". */
export interface Circuit {
  readonly rounds: number;
  /** Seconds of work and of rest, where the clock rules. */
  readonly interval: { readonly work: number; readonly rest: number } | null;
  /** As many rounds as there is time for: one is written. */
  readonly isOpen: boolean;
}

const ROUNDS = /\b(\d{1,2})\s*(?:rounds?|rds?|times through|x through|circuits?)\b|\b(?:circuit|tri-?set|giant set|superset|finisher|tabata)\b[^\d]*\b[x×]?\s*(\d{1,2})\s*[x×]?\s*(?::|$)|^\s*(\d{1,2})\s*(?:x|sets)(?:\s+(?:of|through))?\s*:$/i;
/** "AMRAP 12 min:" over a list. */
const OPEN = /^(?:\d{1,2}\s*min(?:ute)?s?\s*)?amrap\b[^x×]*:$/i;
const INTERVAL = /\b(\d{2})\s*s?(?:ec)?s?\s*(?:on|work)?\s*[/,]\s*(\d{2})\s*s?(?:ec)?s?\s*(?:off|rest)?\b/i;
/** More words than this, and it is a sentence about rounds. */
const LONGEST = 12;

/** The circuit a row announces, or null. */
export function circuitOf({ words, text }: Row): Circuit | null {
  if (words.length > LONGEST) return null;
  if (OPEN.test(text)) return { rounds: 1, interval: null, isOpen: true };
  if (isSetLine(text)) return null;
  const rounds = ROUNDS.exec(text);
  const count = Number(rounds?.[1] ?? rounds?.[2] ?? rounds?.[3]);
  if (!(count >= 1 && count <= 20)) return null;
  const interval = INTERVAL.exec(text);
  return { rounds: count, interval: interval ? { work: Number(interval[1]), rest: Number(interval[2]) } : null, isOpen: false };
}

/** The set line of an exercise in a circuit; null where its row has no figure that makes one. @param said - "10 each side", "x15", "@ 16 kg", nothing */
export function lineInCircuit({ rounds, interval }: Circuit, said: string): string | null {
  const text = interval !== null && !/^[x×]?\d/i.test(said) ? `${rounds} x ${interval.work} s ${said}, rest ${interval.rest} s`.replace(/\s+(?=,|\s)/g, "") : `${rounds} ${/^[x×]/i.test(said) ? "" : "x "}${said}`;
  return isSetLine(text) ? text : null;
}

/** "10 goblet squats @ 16 kg" below "3 rounds:" as a head; the figure before the name counts. @param head - what the row is outside a circuit */
export function headInCircuit(circuit: Circuit, row: Row, head: Head | null, unit: "kg" | "lb"): Head | null {
  const from = row.words.findIndex(({ text }) => !/\d/.test(text) && !/^(?:x|×|s|secs?|mins?|m|reps?|of|each|per|side|leg|arm)$/i.test(text));
  if (from < 1 || (head !== null && head.sets !== null)) return null;
  const named = headOf({ ...row, words: row.words.slice(from) }, unit);
  const before = textIn(row.words, 0, from).replace(/\s*(?:x|×|of)$/i, "");
  const said = named === null ? "" : `${before} ${named.addition?.text ?? ""}`.trim();
  return named === null || named.sets !== null || lineInCircuit(circuit, said) === null ? null : { ...named, count: said, addition: null, isBare: false };
}
