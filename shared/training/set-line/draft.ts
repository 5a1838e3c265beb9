import type { Scheme } from "../types";
import type { Reader } from "./reader";

type Writable<T> = { -readonly [K in keyof T]: T[K] };

const TWICE: Readonly<Partial<Record<keyof Scheme, string>>> = {
  sets: "The number of sets is stated twice: write one scheme a line",
  repsMin: "The reps are stated twice: write one scheme a line",
  reps: "The reps are stated twice: write one scheme a line",
  seconds: "The working time is stated twice",
  meters: "The distance is stated twice",
  load: "Two loads in one line: keep one",
  tempo: "The tempo is stated twice",
  restSeconds: "Two rests in one line: keep one",
  rpe: "The RPE is stated twice",
  rir: "The reps in reserve are stated twice",
  eachSide: "Each side is stated twice",
  dropSets: "The drop sets are stated twice",
  emomMinutes: "The minutes of the EMOM are stated twice",
};

/** What has been understood so far. Each thing may be stated once. */
export class Draft {
  readonly scheme: Writable<Scheme> = {};
  /** How AMRAP was stated: for every set ("open"), to failure, or on top of stated reps ("last"). */
  amrap: "open" | "failure" | "last" | null = null;
  /** "EMOM" was read but not yet its minutes. */
  emom = false;
  /** "per hand" was read before its load. */
  perHand = false;
  /** The working time was written in minutes or as a clock, so it may stand without a set count. */
  bout = false;

  get hasReps(): boolean {
    return this.scheme.repsMin !== undefined || this.scheme.reps !== undefined;
  }

  /** Reps, a time, a distance or AMRAP: something to do in a set. */
  get hasWork(): boolean {
    const { seconds, meters } = this.scheme;
    return this.hasReps || seconds !== undefined || meters !== undefined || (this.amrap !== null && this.amrap !== "last");
  }

  /** Nothing more is needed: what follows can only describe it. */
  get complete(): boolean {
    const { sets, reps, emomMinutes, seconds } = this.scheme;
    const counted = sets !== undefined || reps !== undefined || emomMinutes !== undefined;
    return this.hasWork && (counted || (this.amrap !== null && seconds !== undefined));
  }

  /** States one field; refuses a second statement, blaming the tokens from `from` on. */
  state<K extends keyof Scheme>(reader: Reader, from: number, field: K, value: NonNullable<Scheme[K]>): void {
    if (this.scheme[field] !== undefined) reader.refuse(TWICE[field] ?? `${field} is stated twice`, from);
    this.scheme[field] = value;
  }

  /** States the work of a set; a set has one kind of it. */
  work(reader: Reader, from: number, work: Pick<Scheme, "repsMin" | "repsMax" | "reps" | "seconds" | "meters">): void {
    if (this.hasReps || this.scheme.seconds !== undefined || this.scheme.meters !== undefined) {
      reader.refuse("The work is stated twice: write one scheme a line", from);
    }
    Object.assign(this.scheme, work);
  }
}
