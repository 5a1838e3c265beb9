import type { Exercise } from "../types";
import { cable } from "./cable";
import { carry } from "./carry";
import { overheadPress } from "./overhead-press";
import { row } from "./row";
import { squat } from "./squat";

/** Every exercise, family by family in the order of FAMILIES. */
export const EXERCISES: readonly Exercise[] = [
  ...squat,
  ...overheadPress,
  ...row,
  ...carry,
  ...cable,
];
