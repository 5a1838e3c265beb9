import type { SetRole } from "../../episode";
import { parseSetLine, type Scheme } from "../../training";

/** What the head of a transcript says of an exercise. */
export interface TrueExercise {
  /** Catalogue id, or a title in quotes. */
  readonly name: string;
  readonly sets: readonly { readonly role: SetRole; readonly scheme: Scheme }[];
}

const OTHER_ROWS = new Set(["rate", "opening", "warm-up", "cool-down", "closing"]);

/** The rows above a transcript's words, each a name and what is said of it. */
export function headOf(file: string): (readonly [name: string, text: string])[] {
  const [head = ""] = file.split(/\n---\n/);
  return head.split("\n").flatMap((row) => {
    const [, name, text] = /^([^:]+): (.*)$/.exec(row) ?? [];
    return name === undefined || text === undefined ? [] : [[name, text] as const];
  });
}

/** The exercises of a transcript's head in their order; set lines that are none are left out. */
export function truthOf(file: string): TrueExercise[] {
  return headOf(file).flatMap(([name, text]) => {
    if (OTHER_ROWS.has(name)) return [];
    const sets = text === "-" ? [] : text.split(/\s*;\s*/).flatMap((line) => {
      const isRamp = line.startsWith("ramp ");
      const read = parseSetLine(isRamp ? line.slice(5) : line);
      return read.ok ? [{ role: isRamp ? ("ramp-up" as const) : ("working" as const), scheme: read.scheme }] : [];
    });
    return [{ name, sets }];
  });
}
