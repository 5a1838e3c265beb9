import { memoOn, type Block, type SetLine, type SetRole } from "../../episode";
import { setCount, repsOfSet } from "../set-line/count";
import { parseSetLine } from "../set-line/parse";
import { printLoad } from "../set-line/print";
import type { PlannedSet, Scheme } from "../types";
import { ASSUMED } from "./assumptions";
import { setSeconds } from "./work-seconds";

/** What a set asks for, in the words of the shot list: "8 to 10 reps", "40 m each side", "45 s". */
function workOf(scheme: Scheme, n: number): string {
  const side = scheme.eachSide ? " each side" : "";
  const range = repsOfSet(scheme, n);
  const open = scheme.amrap === true && (range === null || n === setCount(scheme));
  if (range) {
    const reps = range.min === range.max ? `${range.min} ${range.min === 1 ? "rep" : "reps"}` : `${range.min} to ${range.max} reps`;
    return `${reps}${open ? " or more" : ""}${side}`;
  }
  const amount = scheme.meters !== undefined ? `${scheme.meters} m` : scheme.seconds !== undefined ? `${scheme.seconds} s` : "";
  return `${open ? `as many as possible${amount === "" ? "" : ` in ${amount}`}` : amount}${side}`;
}

function loadOf({ load }: Scheme): string {
  if (!load) return "";
  if (load.unit === "bodyweight") return "bodyweight";
  return printLoad(load).replace(/^BW/, "bodyweight");
}

/** One line's sets with the rest its text or its role gives. */
function setsOfLine(line: SetLine, scheme: Scheme): PlannedSet[] {
  return Array.from({ length: setCount(scheme) }, (_, at) => {
    const { work, change } = setSeconds(scheme, at + 1);
    return {
      number: 0, role: line.role, line: line.id, workSeconds: work, changeSeconds: change,
      restSeconds: scheme.emomMinutes === undefined ? (scheme.restSeconds ?? ASSUMED.rest[line.role]) : 60 - work,
      work: workOf(scheme, at + 1), load: loadOf(scheme),
    };
  });
}

interface ReadBlock {
  readonly sets: readonly PlannedSet[];
  /** Set lines that could not be read. */
  readonly unread: readonly string[];
}

/** Reads a block's set lines; remembered for as long as the block is unchanged. */
export const readBlock = memoOn((block: Block): ReadBlock => {
  const unread: string[] = [];
  const sets = (["ramp-up", "working"] satisfies SetRole[]).flatMap((role) => {
    const ofRole = block.sets.filter((line) => line.role === role).flatMap((line) => {
      const parsed = parseSetLine(line.text);
      if (parsed.ok) return setsOfLine(line, parsed.scheme);
      if (line.text.trim() !== "") unread.push(line.text);
      return [];
    });
    return ofRole.map((set, at) => ({ ...set, number: at + 1 }));
  });
  const last = sets.length - 1;
  return { sets: sets.map((set, at) => (at === last ? { ...set, restSeconds: 0 } : set)), unread };
});

/**
 * A block's sets as they are really done, ramp-up sets first; lines that cannot be read give none.
 *
 * Times are whole seconds: reps (the middle of a range, rounded up) times the tempo, 3 s a rep without one; each side twice with
 * the change between, which `changeSeconds` names apart; carries at 1.2 m/s; twelve reps for an open AMRAP set.
 */
export function plannedSets(block: Block): readonly PlannedSet[] {
  return readBlock(block).sets;
}
