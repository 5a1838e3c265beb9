import type { Block, Edit } from "../episode";
import type { CoveragePlan, CoverageProblem, CoverageShot, CoverageStand, Mark, Shot } from "../filming";

/** Something the camera can run through: a set, a demonstration without load, or, in a block without sets, one run of it. */
export interface ShootSet {
  /** Block and place in it: "row:3". */
  readonly id: string;
  readonly role: "ramp-up" | "working" | "demonstration" | "run";
  /** From 1, within its role. */
  readonly number: number;
  /** "Ramp-up 1", "Set 2", "Demonstration", "Run 2" */
  readonly name: string;
  /** "8 to 10 reps", "22 kg each hand"; empty where nothing is lifted. */
  readonly work: string;
  readonly load: string;
  readonly workSeconds: number;
  /** Seconds after it in which cameras can be moved at no cost. */
  readonly restSeconds: number;
}

/** One thing to film. A shot line that names several sets asks for it once on each. */
export interface ShootWant {
  /** The shot line's id; with the set's number behind a colon when the line names several. */
  readonly id: string;
  readonly line: string;
  /** `markKey` of the shot. */
  readonly mark: string;
  readonly need: "must" | "nice";
  /** Least seconds on screen. */
  readonly seconds: number;
  readonly shot: Shot;
}

/** One camera is carried to another mark before a set. */
export interface ShootMove {
  readonly camera: number;
  /** The set it has to be there for. */
  readonly before: string;
  /** Null when the mark it comes from is not one of the block. */
  readonly from: string | null;
  readonly to: string;
  readonly seconds: number;
  /** Whether all moves of that rest fit in it. */
  readonly fits: boolean;
}

/** What is not going to be filmed, and why. */
export interface ShootLoss {
  readonly want: string;
  /** "Set 2 is filmed from the side." */
  readonly why: string;
}

/** What would film most of what is lost, at the least cost. */
export interface ShootRemedy {
  /** What is regained and what it costs, for people. */
  readonly sentence: string;
  /** What pressing it does; empty when nothing can be done at a press. */
  readonly label: string;
  readonly edits: readonly Edit[];
}

export interface ShootBlock {
  readonly block: Block;
  readonly station: string;
  readonly sets: readonly ShootSet[];
  readonly wants: readonly ShootWant[];
  readonly marks: readonly Mark[];
  readonly stands: readonly CoverageStand[];
  readonly shots: readonly CoverageShot[];
  readonly lost: readonly ShootLoss[];
  readonly moves: readonly ShootMove[];
  /** Cameras that stay where the block before left them. */
  readonly kept: readonly { readonly camera: number; readonly mark: string }[];
  /** Floor seconds the moves take beyond the rests. */
  readonly extraSeconds: number;
  /** Seconds all cameras together record. */
  readonly recordedSeconds: number;
}

/** Which mark films which set, for the whole session. */
export interface ShootPlan {
  readonly problem: CoverageProblem;
  readonly plan: CoveragePlan;
  /** In the running order, one for each block. */
  readonly blocks: readonly ShootBlock[];
  readonly moves: number;
  readonly extraSeconds: number;
  readonly recordedMinutes: number;
  /** Ids of wants that are not going to be filmed. */
  readonly lost: readonly string[];
}
