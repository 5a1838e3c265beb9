import { linesOf, memoOn, type Block, type Episode, type Line, type LineKind, type SetLine } from "../episode";
import { exerciseInBlock, type Exercise } from "../exercises";
import { parseSetLine, type Scheme, type SetLineParse } from "../training";

/** The catalogue's exercise behind a block: by id, else by a title that is its name; null for any other block. */
export const exerciseOf = memoOn((block: Block): Exercise | null => (block.kind === "exercise" ? exerciseInBlock(block) : null));

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
/** Exercises that need a warm-up before them and a cool-down after: not those that are one themselves. */
export const trainingBlocks = (episode: Episode): Block[] =>
  exerciseBlocks(episode).filter((block) => !["mobility-warmup", "cooldown-stretch"].includes(exerciseOf(block)?.family ?? ""));
export const firstOfKind = (episode: Episode, kind: Block["kind"]): Block | null => episode.blocks.find((block) => block.kind === kind) ?? null;

/** Lines of one kind that say something. */
export const wordsOf = (block: Block, kind: LineKind): Line[] => linesOf(block, kind).filter((line) => line.text.trim() !== "");

/** Words of a text, as people count them; a breath mark is none. */
export const countWords = (text: string): number => text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;

/** Is the set taken to the very end, or within one repetition of it? */
export function isNearFailure(scheme: Scheme): boolean {
  return scheme.amrap === true || (scheme.rpe !== undefined && scheme.rpe >= 9) || (scheme.rir !== undefined && scheme.rir <= 1);
}

/** Repetitions left at the end of a set, as its RIR or RPE says; 0 for as many as possible, null when nothing is said. An RPE below 6 says only "easy". */
export function repsLeft({ amrap, rir, rpe }: Scheme): number | null {
  if (amrap) return 0;
  if (rir !== undefined) return rir;
  return rpe === undefined || rpe < 6 ? null : 10 - rpe;
}

/** How hard a set is said to be: "as many repetitions as possible", "RPE 9", "1 in reserve". */
export function effortSaid({ amrap, rir, rpe }: Scheme): string {
  if (amrap) return "as many repetitions as possible";
  return rir === undefined ? `RPE ${rpe}` : `${rir} in reserve`;
}

/** A text short enough to stand in a sentence. */
export const shortened = (text: string, most = 60): string => (text.length > most ? `${text.slice(0, most - 3).trimEnd()}...` : text);

/** "ankles, knees and hips" */
export function listed(items: readonly string[]): string {
  if (items.length < 2) return items.join("");
  return `${items.slice(0, -1).join(", ")} and ${items.at(-1)}`;
}

/** Up to three names, and how many more. */
export const fewNames = (names: readonly string[]): string => (names.length > 4 ? listed([...names.slice(0, 3), `${names.length - 3} more`]) : listed(names));

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
