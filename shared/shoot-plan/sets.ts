import { memoOn, type Block } from "../episode";
import { markKey, secondsOf, shotsOf, type SetKind } from "../filming";
import { plannedSeconds, plannedSets } from "../training";
import type { ShootSet } from "./types";

/** What the plan calls each role; a block without sets is only run through. */
export const KIND_OF_ROLE = { "ramp-up": "ramp", working: "working", demonstration: "demo", run: "demo" } as const satisfies Record<ShootSet["role"], SetKind>;

/** Distinct marks of shots, and the seconds they come to. */
function runsOf(block: Block, isOf: (on: string | null) => boolean, cameras: number): { readonly count: number; readonly seconds: number } {
  const shots = shotsOf(block).map(({ shot }) => shot).filter(({ on }) => isOf(on));
  const count = Math.ceil(new Set(shots.map(markKey)).size / cameras);
  const all = shots.reduce((sum, shot) => sum + secondsOf(shot), 0);
  return { count, seconds: count === 0 ? 0 : Math.ceil(all / (count * cameras)) };
}

const EMPTY = { work: "", load: "" };

/** A demonstration for every mark that wants one; nothing rests a person who has lifted nothing. */
function demonstrations(block: Block, cameras: number): Omit<ShootSet, "id">[] {
  const { count, seconds } = runsOf(block, (on) => on === "demonstration", cameras);
  return Array.from({ length: count }, (_, i) => ({ ...EMPTY, role: "demonstration", number: i + 1, name: count === 1 ? "Demonstration" : `Demonstration ${i + 1}`, workSeconds: seconds, restSeconds: 0 }));
}

/** A block without sets is run through as often as its marks ask for; the planned time that is not recorded lies between the runs. */
function runs(block: Block, cameras: number): Omit<ShootSet, "id">[] {
  const asked = runsOf(block, () => true, cameras);
  const count = Math.max(1, asked.count);
  const seconds = asked.count === 0 ? (plannedSeconds(block) ?? 0) : asked.seconds;
  const spare = Math.max(0, (plannedSeconds(block) ?? 0) - count * seconds);
  const rest = count > 1 ? Math.floor(spare / (count - 1)) : 0;
  return Array.from({ length: count }, (_, i) => ({ ...EMPTY, role: "run", number: i + 1, name: count === 1 ? "The whole block" : `Run ${i + 1}`, workSeconds: seconds, restSeconds: i < count - 1 ? rest : 0 }));
}

const withCameras = (cameras: number) => memoOn((block: Block): readonly ShootSet[] => {
  const planned = plannedSets(block).map(({ role, number, work, load, workSeconds, restSeconds }) => ({
    role, number, name: role === "working" ? `Set ${number}` : `Ramp-up ${number}`, work, load, workSeconds, restSeconds,
  }));
  const all = planned.length === 0 ? runs(block, cameras) : [...demonstrations(block, cameras), ...planned];
  return all.map((set, i) => ({ id: `${block.id}:${i + 1}`, ...set }));
});
const [one, two] = [withCameras(1), withCameras(2)];

/** What the cameras can run through in a block, in order; never empty. */
export const setsToShoot = (block: Block, cameras: 1 | 2): readonly ShootSet[] => (cameras === 2 ? two : one)(block);
