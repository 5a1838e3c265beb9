import type { SetRole } from "../episode";

/** What a load is measured in; "bodyweight+kg" is weight added to the body, or taken off when negative. */
export type LoadUnit = "kg" | "lb" | "%1RM" | "bodyweight" | "bodyweight+kg" | "bodyweight+lb" | "band";

/** Lowering, pause at the bottom, lifting, pause at the top. Seconds; null is not stated; "X" (lifting only) is as fast as control allows. */
export type Tempo = readonly [number | null, number | null, number | "X" | null, number | null];

/**
 * What a set line says. Only what the text states is present; the field names are the answer of `repwright sets`.
 */
export interface Scheme {
  readonly sets?: number;
  readonly repsMin?: number;
  readonly repsMax?: number;
  /** A ladder: reps of each set in turn. */
  readonly reps?: readonly number[];
  /** Working time or distance of each set. */
  readonly seconds?: number;
  readonly meters?: number;
  /** `value` is null where the unit says it all: bodyweight, band. */
  readonly load?: { readonly value: number | null; readonly unit: LoadUnit; readonly perHand?: true };
  readonly tempo?: Tempo;
  readonly restSeconds?: number;
  /** Effort of 1 to 10, and reps in reserve. */
  readonly rpe?: number;
  readonly rir?: number;
  /** As many as possible: in the last set where reps are stated, otherwise in every set. */
  readonly amrap?: true;
  readonly dropSets?: number;
  readonly eachSide?: true;
  /** Label of a superset: "A1". */
  readonly group?: string;
  readonly emomMinutes?: number;
}

/** A set line that was read, or why it was not. */
export type SetLineParse =
  | { readonly ok: true; readonly scheme: Scheme }
  /** `error` is a sentence; `at` and `length` mark the characters to blame in the text. */
  | { readonly ok: false; readonly error: string; readonly at: number; readonly length: number };

/** One named share of a block's floor time. Seconds. */
export interface ClockPart {
  readonly label: "planned" | "set-up" | "ramp-up sets" | "sets" | "rest" | "change of side" | "camera moves" | "change of station";
  readonly seconds: number;
}

/** One block's floor time. Seconds. */
export interface BlockGymClock {
  readonly block: string;
  /** Always the sum of the parts. */
  readonly seconds: number;
  readonly parts: readonly ClockPart[];
  /** Set lines that could not be read and so count nothing. */
  readonly unread: readonly string[];
}

/** A session's floor time against its booked slot. Seconds. */
export interface GymClock {
  /** Always the sum of the blocks. */
  readonly seconds: number;
  readonly slotSeconds: number;
  readonly blocks: readonly BlockGymClock[];
}

/** One set as it is really done, in order: ramp-up sets first. */
export interface PlannedSet {
  /** 1-based within its role. */
  readonly number: number;
  readonly role: SetRole;
  /** Id of the set line it comes from. */
  readonly line: string;
  readonly workSeconds: number;
  /** The part of `workSeconds` that is the change of side. */
  readonly changeSeconds?: number;
  /** Rest after it; 0 after the block's last set. */
  readonly restSeconds: number;
  /** "8 to 10 reps", "40 m", "45 s". */
  readonly work: string;
  /** "22 kg each hand", "bodyweight", "" when none is stated. */
  readonly load: string;
}
