import { linesOf, memoOn, type Block, type Episode, type Line, type LineKind, type SetLine } from "../episode";
import { exerciseById, findExercise, type Exercise } from "../exercises";
import { parseSetLine, type Scheme, type SetLineParse } from "../training";

/** The catalogue's exercise behind a block: by id, else by a title that is its name; null for any other block. */
export const exerciseOf = memoOn((block: Block): Exercise | null => {
  if (block.kind !== "exercise") return null;
  return (block.exercise === null ? null : exerciseById(block.exercise)) ?? findExercise(block.title);
});

export interface ReadSetLine {
  readonly set: SetLine;
  readonly parse: SetLineParse;
}

/** The block's set lines, read once; empty ones are left out. */
export const setLinesOf = memoOn((block: Block): readonly ReadSetLine[] =>
  block.sets.filter((set) => set.text.trim() !== "").map((set) => ({ set, parse: parseSetLine(set.text) })));

export interface WorkingSet {
  readonly set: SetLine;
  readonly scheme: Scheme;
}

/** The working set lines that could be read. */
export function workingSets(block: Block): WorkingSet[] {
  return setLinesOf(block).flatMap(({ set, parse }) => (set.role === "working" && parse.ok ? [{ set, scheme: parse.scheme }] : []));
}

export const exerciseBlocks = (episode: Episode): Block[] => episode.blocks.filter((block) => block.kind === "exercise");
export const firstOfKind = (episode: Episode, kind: Block["kind"]): Block | null => episode.blocks.find((block) => block.kind === kind) ?? null;

/** Lines of one kind that say something. */
export const wordsOf = (block: Block, kind: LineKind): Line[] => linesOf(block, kind).filter((line) => line.text.trim() !== "");

/** Words of a text, as people count them; a breath mark is none. */
export const countWords = (text: string): number => text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;

/** Is the set taken to the very end, or within one repetition of it? */
export function isNearFailure(scheme: Scheme): boolean {
  return scheme.amrap === true || (scheme.rpe !== undefined && scheme.rpe >= 9) || (scheme.rir !== undefined && scheme.rir <= 1);
}

/** "ankles, knees and hips" */
export function listed(items: readonly string[]): string {
  if (items.length < 2) return items.join("");
  return `${items.slice(0, -1).join(", ")} and ${items.at(-1)}`;
}

/** A joint as a warm-up names it: "shoulders", "upper back". */
export const jointName = (joint: string): string => (/(?:back|neck)$/.test(joint) ? joint : `${joint}s`);

/** "1 min 20 s", "45 s". Whole seconds. */
export function duration(seconds: number): string {
  const whole = Math.round(seconds);
  const minutes = Math.floor(whole / 60);
  const rest = whole % 60;
  return [minutes > 0 ? `${minutes} min` : "", rest > 0 || minutes === 0 ? `${rest} s` : ""].filter(Boolean).join(" ");
}

/** Common practice of the trade, and nothing else to point at. */
export const PRACTICE = { title: "Common practice, no source" } as const;
