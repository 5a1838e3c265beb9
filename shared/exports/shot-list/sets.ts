import type { Block, Units } from "../../episode";
import { parseSetLine, plannedSets, printSetLine, readBack, type PlannedSet, type Scheme } from "../../training";
import { convertLoad } from "../loads";

/** A set line as printed, and its meaning in words; empty when it could not be read. */
export interface SchemeLine {
  readonly printed: string;
  readonly readBack: string;
  /** Whether it has sets to tick. */
  readonly read: boolean;
}

export interface BlockSets {
  /** Ramp-up sets, then working sets. */
  readonly planned: readonly PlannedSet[];
  /** The working set lines. */
  readonly lines: readonly SchemeLine[];
}

/** The scheme with its load in the other unit; as it is when it has none or is in that unit already. */
export function inUnits(scheme: Scheme, units: Units): Scheme {
  const { load } = scheme;
  if (!load || load.value === null) return scheme;
  const own = /(kg|lb)$/.exec(load.unit)?.[1];
  if (own === undefined || own === units) return scheme;
  const value = convertLoad(load.value, units);
  return { ...scheme, load: { ...load, value, unit: load.unit === "kg" || load.unit === "lb" ? units : `bodyweight+${units}` } };
}

/** The block with its set lines told in a unit; lines already in it keep the coach's own words. */
export function blockInUnits(block: Block, units: Units): Block {
  const sets = block.sets.map((line) => {
    const parse = parseSetLine(line.text);
    if (!parse.ok) return line;
    const told = inUnits(parse.scheme, units);
    return told === parse.scheme ? line : { ...line, text: printSetLine(told) };
  });
  return { ...block, sets };
}

/** What a block has planned, loads in the unit asked for. */
export function setsOf(block: Block, units: Units): BlockSets {
  const told = blockInUnits(block, units);
  const lines = told.sets.filter((line) => line.role === "working" && line.text.trim() !== "").map((line): SchemeLine => {
    const parse = parseSetLine(line.text);
    return { printed: line.text.trim(), readBack: parse.ok ? readBack(parse.scheme) : "", read: parse.ok };
  });
  return { planned: plannedSets(told), lines };
}
