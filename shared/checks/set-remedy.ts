import type { SetLine } from "../episode";
import { parseSetLine, printSetLine, type Scheme } from "../training";
import type { Remedy } from "./types";

/** A remedy that writes a set line anew, for the numbers that changed; none when it would not be read back as meant. */
export function writes(set: SetLine, scheme: Scheme): Remedy[] {
  const text = printSetLine(scheme);
  const read = parseSetLine(text);
  return read.ok && text !== set.text ? [{ label: `Writes "${text}"`, edits: [{ type: "set-set", set: set.id, fields: { text } }] }] : [];
}
