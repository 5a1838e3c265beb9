import type { Exercise } from "../types";
import { bridgeThrust } from "./bridge-thrust";
import { cable } from "./cable";
import { carry } from "./carry";
import { hinge } from "./hinge";
import { lungeStep } from "./lunge-step";
import { overheadPress } from "./overhead-press";
import { row } from "./row";
import { squat } from "./squat";

/** Every exercise, family by family in the order of FAMILIES. */
export const EXERCISES: readonly Exercise[] = [
  ...squat,
  ...hinge,
  ...bridgeThrust,
  ...lungeStep,
  ...overheadPress,
  ...row,
  ...carry,
  ...cable,
];
