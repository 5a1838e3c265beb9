import type { Angle, Equipment, Exercise, Family } from "./types";

type Angles = [Angle, ...Angle[]];
type Flags = "rampUp" | "power" | "spineLoaded" | "needsSpotter";

/** An entry as its family file writes it: flags and substitutes are left out when there is nothing to say. */
type Entry = Omit<Exercise, "family" | "substitutes" | Flags> & Partial<Pick<Exercise, "substitutes" | Flags>>;

/** What to do, and the angles from which a viewer sees it done. */
export const cue = (text: string, ...seenFrom: Angles) => ({ text, seenFrom });

/** A fault named, what to do instead, and the angles from which the fault shows. */
export const fault = (text: string, instead: string, ...seenFrom: Angles) => ({ text, instead, seenFrom });

/** What to do when a piece of equipment is taken: the id of an exercise that works without it. */
export const swap = (without: Equipment, exercise: string) => ({ exercise, without });

/** The exercises of one family, in the order a coach would list them. */
export const familyOf = (family: Family, entries: readonly Entry[]): readonly Exercise[] =>
  entries.map((entry) => ({ rampUp: false, power: false, spineLoaded: false, needsSpotter: false, substitutes: [], ...entry, family }));
