/** What a set is: light before the work, the work itself, or shown without load. */
export const SET_KINDS = ["ramp", "working", "demo"] as const;
export type SetKind = (typeof SET_KINDS)[number];

export interface CoverageSet {
  readonly id: string;
  readonly kind: SetKind;
  readonly seconds: number;
  /** Rest after the set, in which cameras can be moved; seconds. */
  readonly restSeconds: number;
}

/** One thing to be filmed from a mark. */
export interface Want {
  readonly id: string;
  readonly mark: string;
  readonly need: "must" | "nice";
  /** How much a nice want is worth against the others; of no meaning for a must. */
  readonly weight: number;
  readonly kind: "any" | SetKind;
  /** The only sets that may film it, by id; left out means all of its kind. */
  readonly sets?: readonly string[] | undefined;
}

export interface CoverageBlock {
  readonly id: string;
  readonly station: string;
  /** Walking to the station and setting it up; seconds. The first set-up of the cameras falls into it and is free. */
  readonly changeSeconds: number;
  readonly sets: readonly CoverageSet[];
  readonly wants: readonly Want[];
  /** A block that has already begun: where each camera stands (null: it has to leave its mark), and the rest that is running. Then the first move counts too. */
  readonly begun?: { readonly marks: readonly (string | null)[]; readonly restSeconds: number } | undefined;
}

export interface CoverageProblem {
  readonly cameras: 1 | 2;
  /** Carrying one camera to another mark, framing and locking the exposure; seconds. */
  readonly moveSeconds: number;
  readonly blocks: readonly CoverageBlock[];
}

/** Where a camera stands during a set; cameras count from 1. */
export interface CoverageStand {
  readonly set: string;
  readonly camera: number;
  readonly mark: string;
}

/** A want and the first set that films it. */
export interface CoverageShot {
  readonly want: string;
  readonly set: string;
  readonly camera: number;
}

export interface CoveragePlan {
  /** In the order of the sets, then of the cameras. */
  readonly stands: readonly CoverageStand[];
  readonly shots: readonly CoverageShot[];
  /** Wants that no set films, in their order. */
  readonly lost: readonly string[];
  readonly moves: number;
  /** What the moves take beyond the rests. */
  readonly extraSeconds: number;
}
