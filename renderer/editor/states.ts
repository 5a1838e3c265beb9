import { createState } from "lexical";
import { BLOCK_KINDS, LINE_KINDS, SET_ROLES, type Actual, type BlockFilming, type BlockKind, type Facts, type LineKind, type SetRole } from "../../shared/episode";

/**
 * What the nodes remember besides their text. Values come from a validated file or from this program,
 * so `parse` only has to survive nonsense, not report it.
 */
const oneOf = <T extends string>(values: readonly T[], otherwise: T) => (value: unknown): T => values.find((v) => v === value) ?? otherwise;
const textOr = (otherwise: string) => (value: unknown): string => (typeof value === "string" ? value : otherwise);
const textOrNull = (value: unknown): string | null => (typeof value === "string" ? value : null);
const numberOrNull = (value: unknown): number | null => (typeof value === "number" && Number.isFinite(value) ? value : null);

export const idState = createState("id", { parse: textOr("") });
export const blockKindState = createState("blockKind", { parse: oneOf<BlockKind>(BLOCK_KINDS, "exercise") });
export const exerciseState = createState("exercise", { parse: textOrNull });
export const stationState = createState("station", { parse: textOr("") });
export const minutesState = createState("minutes", { parse: numberOrNull });
export const clipSecondsState = createState("clipSeconds", { parse: numberOrNull });
export const actualsState = createState("actuals", { parse: (value: unknown): Actual[] => (Array.isArray(value) ? (value as Actual[]) : []) });
export const filmingState = createState("filming", { parse: (value: unknown): BlockFilming | null => (typeof value === "object" && value !== null ? (value as BlockFilming) : null) });
export const lineKindState = createState("lineKind", { parse: oneOf<LineKind>(LINE_KINDS, "cue") });
export const setRoleState = createState("setRole", { parse: oneOf<SetRole>(SET_ROLES, "working") });

/** Everything of the episode but its blocks; held by the root, so that undo covers it. */
export type EpisodeHead = Facts & { readonly title: string };
export const headState = createState("head", { parse: (value: unknown): EpisodeHead | null => (typeof value === "object" && value !== null ? (value as EpisodeHead) : null) });
