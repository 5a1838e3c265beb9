import { applyEdits, blockName, blockNumber, findBlock, type Block, type Edit, type Episode, type Facts, type SetLine } from "../../shared/episode";

/** One row that comes, goes or changes. `now` is null for what is added, `then` for what is taken away. */
export interface RowChange {
  /** As in the margin of the sheet: cue, sets, if taken. */
  readonly word: string;
  readonly now: string | null;
  readonly then: string | null;
}

export interface Change {
  /** "3. Goblet squat", "New block, 2. Warm-up". */
  readonly where: string;
  readonly rows: readonly RowChange[];
}

const setWord = (role: SetLine["role"]): string => (role === "working" ? "sets" : role);
const numbered = (episode: Episode, block: Block): string => `${blockNumber(episode, block.id)}. ${blockName(block)}`;

type Row = { readonly id: string; readonly word: string; readonly text: string };
const rowsOf = (block: Block): Row[] => [
  ...block.sets.map(({ id, role, text }) => ({ id, word: setWord(role), text })),
  ...block.lines.map(({ id, kind, text }) => ({ id, word: kind, text })),
  ...block.alternates.map(({ id, text }) => ({ id, word: "if taken", text })),
];

/** "place 3, behind Warm-up". */
function placeOf(episode: Episode, block: Block): string {
  const at = episode.blocks.findIndex(({ id }) => id === block.id);
  const before = episode.blocks[at - 1];
  return before ? `${at + 1}, behind ${blockName(before)}` : "1, at the top";
}

const minutes = (value: number | null): string => (value === null ? "as computed" : `${value} min`);
const seconds = (value: number | null): string => (value === null ? "not decided" : `${value} s`);

/** What is said of a block besides its rows, in words; empty where there is nothing to say. */
const factsOf = (block: Block): Readonly<Record<string, string>> => ({
  name: block.title, kind: block.kind, exercise: block.exercise ?? "", station: block.station,
  "floor time": minutes(block.minutes), clip: seconds(block.clipSeconds), lifted: block.actuals.map(({ set, load, reps }) => `${set}: ${load ?? "?"} x ${reps ?? "?"}`).join(", "),
});

const rowChange = (word: string, now: string, then: string): RowChange => ({ word, now: now === "" ? null : now, then: then === "" ? null : then });

/** How one block differs from itself before. */
function blockChanges(before: Block, after: Block): RowChange[] {
  const [was, is] = [factsOf(before), factsOf(after)];
  const facts = Object.entries(is).filter(([word, value]) => was[word] !== value).map(([word, value]) => rowChange(word, was[word] ?? "", value));
  const old = new Map(rowsOf(before).map((row) => [row.id, row]));
  const changed = rowsOf(after).flatMap(({ id, word, text }): RowChange[] => {
    const row = old.get(id);
    old.delete(id);
    if (!row) return [{ word, now: null, then: text }];
    if (row.word !== word) return [{ word, now: `${row.word}: ${row.text}`, then: `${word}: ${text}` }];
    return row.text === text ? [] : [{ word, now: row.text, then: text }];
  });
  return [...facts, ...changed, ...[...old.values()].map(({ word, text }) => ({ word, now: text, then: null }))];
}

const inWords = (name: string): string => name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

/** A value of the facts as a person would say it. */
function said(value: unknown): string {
  if (value === null || value === undefined || value === "") return "not set";
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (Array.isArray(value)) return value.length === 1 ? "1 entry" : `${value.length} entries`;
  return typeof value === "object" ? "set" : String(value);
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> => typeof value === "object" && value !== null && !Array.isArray(value);
const isWords = (value: unknown): value is readonly string[] => Array.isArray(value) && value.every((each) => typeof each === "string");

/** How one fact differs: of a list of words what comes and goes, of a group each field, of anything else now and then. */
function factChanges(word: string, was: unknown, is: unknown): RowChange[] {
  if (JSON.stringify(was) === JSON.stringify(is)) return [];
  if (isWords(was) && isWords(is)) {
    return [...was.filter((each) => !is.includes(each)).map((now) => ({ word, now, then: null })), ...is.filter((each) => !was.includes(each)).map((then) => ({ word, now: null, then }))];
  }
  if (isRecord(was) && isRecord(is)) return Object.keys(is).flatMap((name) => factChanges(inWords(name), was[name], is[name]));
  return [{ word, now: said(was), then: said(is) }];
}

/** How the facts of an episode differ, a group of them at a time. */
function episodeChanges(before: Episode, after: Episode): Change[] {
  const names = (Object.keys(after) as (keyof Episode)[]).filter((name): name is keyof Facts => name !== "blocks" && name !== "title");
  const title = before.title === after.title ? [] : [{ where: "Title", rows: [rowChange("title", before.title, after.title)] }];
  return [...title, ...names.map((name) => ({ where: `${name.charAt(0).toUpperCase()}${inWords(name.slice(1))}`, rows: factChanges(inWords(name), before[name], after[name]) }))].filter(({ rows }) => rows.length > 0);
}

/**
 * What a remedy would do to this episode, row by row: the words now and then, what it adds and what it takes away.
 * Found by comparing, so it says what happens, not what the remedy claims; empty when nothing would.
 */
export function remedyPreview(episode: Episode, edits: readonly Edit[]): Change[] {
  const after = applyEdits(episode, edits);
  const moved = new Set(edits.flatMap((edit) => (edit.type === "move-block" ? [edit.block] : [])));
  const gone = episode.blocks.filter(({ id }) => !findBlock(after, id)).map((block) => ({ where: numbered(episode, block), rows: [{ word: "block", now: `${blockName(block)}, with all its lines`, then: null }] }));
  const here = after.blocks.flatMap((block): Change[] => {
    const before = findBlock(episode, block.id);
    if (!before) return [{ where: `New block, ${numbered(after, block)}`, rows: rowsOf(block).filter(({ text }) => text !== "").map(({ word, text }) => ({ word, now: null, then: text })) }];
    const [from, to] = [placeOf(episode, before), placeOf(after, block)];
    const place = moved.has(block.id) && from !== to ? [{ word: "place", now: from, then: to }] : [];
    const rows = [...place, ...(before === block ? [] : blockChanges(before, block))];
    return rows.length > 0 ? [{ where: numbered(episode, before), rows }] : [];
  });
  return [...gone, ...here, ...episodeChanges(episode, after)];
}

/** The part of two texts that differs, in whole words: where it begins in both, and where it ends in each. */
export function changedPart(now: string, then: string): { start: number; nowEnd: number; thenEnd: number } {
  const [a, b] = [now.split(/(\s+)/), then.split(/(\s+)/)];
  const most = Math.min(a.length, b.length);
  let first = 0;
  while (first < most && a[first] === b[first]) first++;
  let last = 0;
  while (last < most - first && a[a.length - 1 - last] === b[b.length - 1 - last]) last++;
  const size = (parts: readonly string[]): number => parts.join("").length;
  return { start: size(a.slice(0, first)), nowEnd: size(a.slice(0, a.length - last)), thenEnd: size(b.slice(0, b.length - last)) };
}
