import { ANGLE_NAMES, SIZE_NAMES, shotsOf, type Mark, type Shot } from "../../shared/filming";
import type { Block } from "../../shared/episode";
import { plannedSets, type PlannedSet } from "../../shared/training";

/** One row of a block's coverage: a set that is really done, or what is filmed apart from the sets. */
export interface CoverageRow {
  /** "Ramp-up 1", "Set 2", "Any set", "Demonstration" */
  readonly name: string;
  /** "8 to 10 reps, 22 kg each hand" */
  readonly work: string;
  /** One entry a mark, in the order of the marks: what is filmed from there on this row. */
  readonly shots: readonly (readonly Shot[])[];
  /** Seconds the camera has to move in the rest before this row, when it moves. */
  readonly moveBefore: number | null;
}

const setName = (set: PlannedSet): string => `${set.role === "working" ? "Set" : "Ramp-up"} ${set.number}`;

/** Does a shot ask for this set? Shots without a set number are told apart below. */
const isOn = (shot: Shot, set: PlannedSet): boolean => {
  if (shot.on === "demonstration" || shot.sets === null) return false;
  return shot.sets.includes(set.number) && (shot.on === "ramp-up") === (set.role === "ramp-up");
};

/**
 * Which mark films which set, set by set, then the shots that name no set.
 * @param moves - seconds by the number of the working set after which the camera moves
 */
export function coverageRows(block: Block, marks: readonly Mark[], moves: ReadonlyMap<number, number>): CoverageRow[] {
  const sets = plannedSets(block);
  const row = (name: string, work: string, moveBefore: number | null, wants: (shot: Shot) => boolean): CoverageRow => ({
    name, work, moveBefore, shots: marks.map((mark) => mark.shots.map(({ shot }) => shot).filter(wants)),
  });
  const rows = sets.map((set) => {
    const move = set.role === "working" ? (moves.get(set.number - 1) ?? null) : null;
    return row(setName(set), [set.work, set.load].filter(Boolean).join(", "), move, (shot) => isOn(shot, set));
  });
  const placed = (shot: Shot): boolean => sets.some((set) => isOn(shot, set));
  const apart = [
    row("Demonstration", "", null, (shot) => shot.on === "demonstration"),
    row(sets.length === 0 ? "Whole block" : "Any set", "", null, (shot) => shot.on !== "demonstration" && shot.sets === null),
    row("No such set", "", null, (shot) => shot.on !== "demonstration" && shot.sets !== null && !placed(shot)),
  ];
  return [...rows, ...apart.filter(({ shots }) => shots.some((list) => list.length > 0))];
}

/** "side, full" */
export function markWords(mark: Pick<Mark, "angle" | "size">): string {
  const words = [mark.angle === null ? "any angle" : ANGLE_NAMES[mark.angle], mark.size === null || mark.size === mark.angle ? "" : SIZE_NAMES[mark.size]];
  return words.filter(Boolean).join(", ").toLowerCase();
}

/** A block that would leave nothing to show. */
export function isUnfilmed(block: Block): boolean {
  return shotsOf(block).length === 0;
}
