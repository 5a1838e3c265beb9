import { lstat, readdir, realpath } from "node:fs/promises";
import { join } from "node:path";
import { nodeDisk, writeAtomic, type Disk } from "./atomic-write";
import { isInside } from "./library-paths";
import { makeFolder } from "./make-folder";
import { episodeFrom, readBytes } from "./read-file";
import { errorCode, problem, type Problem } from "./sentences";
import { stampOf } from "./stamp";
import type { Episode } from "../../shared/episode";

export const HISTORY_FOLDER = ".history";
/** States kept of one file. */
export const MAX_STATES = 50;
/** The newest states are always kept: they undo the mistake of this minute. */
const ALWAYS_KEPT = 12;

const STATE = /^(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)(\d{3})Z-([0-9a-f]{12})$/;

export interface OlderState {
  readonly state: string;
  readonly savedAt: string;
  readonly blocks: number;
}

/** A state's name: when it had been saved, and the start of its stamp. The same state always has the same name. */
export function stateName(savedAt: Date, stamp: string): string {
  return `${savedAt.toISOString().replace(/[-:.]/g, "")}-${stamp.slice(0, 12)}`;
}

/** When the state of this name had been saved, ISO; null when it is no state's name. */
export function stateTime(state: string): string | null {
  const parts = STATE.exec(state);
  if (!parts) return null;
  const [, year, month, day, hours, minutes, seconds, ms] = parts;
  return `${year}-${month}-${day}T${hours}:${minutes}:${seconds}.${ms}Z`;
}

/**
 * Which states to let go so that at most `max` remain: among those that are not the newest, the one whose
 * neighbours are closest in time, again and again. Minutes of typing thin out; last month's one state stays.
 * @param states - names, oldest first
 */
export function statesToDrop(states: readonly string[], max: number = MAX_STATES): string[] {
  const kept = [...states];
  const dropped: string[] = [];
  const time = (state: string | undefined): number => Date.parse(stateTime(state ?? "") ?? "");
  while (kept.length > max) {
    let least = 0;
    let smallest = Number.POSITIVE_INFINITY;
    for (let i = 1; i < kept.length - Math.min(ALWAYS_KEPT, max); i++) {
      const gap = time(kept[i + 1]) - time(kept[i - 1]);
      if (gap < smallest) [least, smallest] = [i, gap];
    }
    dropped.push(...kept.splice(least, 1));
  }
  return dropped;
}

const folderOf = (library: string, file: string): string => join(library, HISTORY_FOLDER, file);

/** Names of the states kept, oldest first. A history folder that leads out of the library counts as none. */
async function statesOf(library: string, file: string): Promise<string[]> {
  try {
    const folder = folderOf(library, file);
    if (!isInside(await realpath(library), await realpath(folder))) return [];
    const names = await readdir(folder);
    return names.filter((name) => name.endsWith(".json")).map((name) => name.slice(0, -5)).filter((name) => STATE.test(name)).sort();
  } catch (error) {
    if (errorCode(error) === "ENOENT") return [];
    throw error;
  }
}

/** The time itself, or the first millisecond after it that no state has: two saves within one must stay in order. */
export function freeTime(states: readonly string[], savedAt: Date): Date {
  const taken = new Set(states.map(stateTime));
  let at = savedAt;
  while (taken.has(at.toISOString())) at = new Date(at.getTime() + 1);
  return at;
}

/**
 * Keeps the bytes a save is about to replace. A state that is already there is not kept twice.
 * @throws the system's error; the caller's file is untouched
 */
export async function keepState(library: string, file: string, bytes: Uint8Array, savedAt: Date, disk: Disk = nodeDisk): Promise<void> {
  const states = await statesOf(library, file);
  const stamp = stampOf(bytes);
  if (states.some((state) => state.endsWith(stamp.slice(0, 12)))) return;
  const folder = folderOf(library, file);
  const base = join(library, HISTORY_FOLDER);
  await makeFolder(base, disk);
  if ((await lstat(base)).isSymbolicLink() || !isInside(await realpath(library), await realpath(base))) return;
  await makeFolder(folder, disk);
  if ((await lstat(folder)).isSymbolicLink()) return;
  const state = stateName(freeTime(states, savedAt), stamp);
  await writeAtomic(join(folder, `${state}.json`), bytes, disk);
  for (const old of statesToDrop([...states, state].sort())) await disk.rm(join(folder, `${old}.json`), { force: true });
}

/** How many blocks a state holds; 0 when it is no readable episode. */
function blocksIn(bytes: Buffer): number {
  try {
    const json: unknown = JSON.parse(bytes.toString("utf8"));
    return typeof json === "object" && json !== null && "blocks" in json && Array.isArray(json.blocks) ? json.blocks.length : 0;
  } catch {
    return 0;
  }
}

/** Older states of a file, newest first. */
export async function listStates(library: string, file: string): Promise<OlderState[]> {
  const found: OlderState[] = [];
  for (const state of (await statesOf(library, file)).reverse()) {
    const read = await readBytes(join(folderOf(library, file), `${state}.json`), state);
    const savedAt = stateTime(state);
    if (read.ok && savedAt !== null) found.push({ state, savedAt, blocks: blocksIn(read.bytes) });
  }
  return found;
}

/** The episode of an older state. */
export async function readState(library: string, file: string, state: string): Promise<{ ok: true; episode: Episode } | Problem> {
  if (!(await statesOf(library, file)).includes(state)) return problem("missing", `No older state "${state.slice(0, 64)}" of "${file}" is kept.`);
  const read = await readBytes(join(folderOf(library, file), `${state}.json`), `${file}, older state`);
  if (!read.ok) return read;
  const older = episodeFrom(read.bytes, `${file}, older state`);
  return older.ok ? { ok: true, episode: older.episode } : older;
}
