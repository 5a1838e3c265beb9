import type { Exercise } from "../types";
import { armIsolation } from "./arm-isolation";
import { backExtension } from "./back-extension";
import { bridgeThrust } from "./bridge-thrust";
import { cable } from "./cable";
import { carry } from "./carry";
import { cooldownStretch } from "./cooldown-stretch";
import { core } from "./core";
import { hinge } from "./hinge";
import { horizontalPress } from "./horizontal-press";
import { kettlebellSwing } from "./kettlebell-swing";
import { legMachine } from "./leg-machine";
import { lungeStep } from "./lunge-step";
import { mobilityWarmup } from "./mobility-warmup";
import { overheadPress } from "./overhead-press";
import { plyometric } from "./plyometric";
import { row } from "./row";
import { squat } from "./squat";
import { verticalPull } from "./vertical-pull";

/** Every exercise, family by family in the order of FAMILIES. */
export const EXERCISES: readonly Exercise[] = [
  ...squat,
  ...hinge,
  ...bridgeThrust,
  ...lungeStep,
  ...legMachine,
  ...horizontalPress,
  ...overheadPress,
  ...row,
  ...verticalPull,
  ...armIsolation,
  ...core,
  ...kettlebellSwing,
  ...plyometric,
  ...carry,
  ...backExtension,
  ...cable,
  ...mobilityWarmup,
  ...cooldownStretch,
];
