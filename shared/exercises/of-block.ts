import type { Block } from "../episode";
import { exerciseById, findExercise } from "./lookup";
import type { Exercise } from "./types";

/** The exercise a block does: the one it points at, else, for an exercise, the one its title names; null for none. */
export function exerciseInBlock(block: Pick<Block, "kind" | "exercise" | "title">): Exercise | null {
  return (block.exercise === null ? null : exerciseById(block.exercise)) ?? (block.kind === "exercise" ? findExercise(block.title) : null);
}

/** Whether two names mean one station; no name is none. */
export function isSameStation(a: string, b: string): boolean {
  const plain = (name: string): string => name.trim().toLowerCase();
  return plain(a) !== "" && plain(a) === plain(b);
}

/** The station a block is at: its own word, or the exercise's. Empty when neither is known. */
export function stationOf(block: Pick<Block, "station" | "exercise">): string {
  return block.station.trim() || (block.exercise === null ? "" : (exerciseById(block.exercise)?.station ?? ""));
}
