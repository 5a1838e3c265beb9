import type { CoverageSet, SetKind, Want } from "./types";

/** May a set of that kind film the want? */
export const allows = (want: Want, kind: SetKind): boolean => want.kind === "any" || want.kind === kind;

/** May this set film the want: by its kind, and by its name when the want names sets? */
export const allowsSet = (want: Want, set: CoverageSet): boolean => allows(want, set.kind) && (want.sets === undefined || want.sets.includes(set.id));
