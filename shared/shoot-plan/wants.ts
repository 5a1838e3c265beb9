import type { Block } from "../episode";
import { markKey, printShotLine, secondsOf, shotsOf, type Shot, type Want } from "../filming";
import { KIND_OF_ROLE } from "./sets";
import type { ShootSet, ShootWant } from "./types";

/** A want for the paper and the screen beside the same want for the plan. */
export interface BothWants {
  readonly shown: ShootWant;
  readonly planned: Want;
}

/** The kind of set the plan may take; a block that is only run through has one kind. */
function kindOf(shot: Shot, sets: readonly ShootSet[]): Want["kind"] {
  if (shot.on === null || sets.every(({ role }) => role === "run")) return "any";
  return KIND_OF_ROLE[shot.on];
}

/** Numbers count working sets, or ramp-up sets where the shot says so; runs and demonstrations have none. */
const isNumbered = (shot: Shot, sets: readonly ShootSet[]): boolean => shot.sets !== null && shot.on !== "demonstration" && sets.some(({ role }) => role !== "run");

const setsNumbered = (shot: Shot, number: number, sets: readonly ShootSet[]): string[] =>
  sets.filter((set) => set.number === number && set.role === (shot.on === "ramp-up" ? "ramp-up" : "working")).map(({ id }) => id);

/** Everything a block's shot lines ask for, in order; a line that names several sets asks once for each. */
export function wantsToShoot(block: Block, sets: readonly ShootSet[]): readonly BothWants[] {
  return shotsOf(block).flatMap(({ line, shot }): BothWants[] => {
    const base = { line: line.id, mark: markKey(shot), need: shot.need, seconds: secondsOf(shot), shot };
    const plan = { mark: base.mark, need: shot.need, weight: 1, kind: kindOf(shot, sets) };
    if (!isNumbered(shot, sets)) return [{ shown: { id: line.id, ...base }, planned: { id: line.id, ...plan } }];
    const numbers = shot.sets ?? [];
    return numbers.map((number) => {
      const id = numbers.length === 1 ? line.id : `${line.id}:${number}`;
      return { shown: { id, ...base }, planned: { id, ...plan, kind: "any", sets: setsNumbered(shot, number, sets) } };
    });
  });
}

/** The number of the set a want is for, when its shot names it. */
export const numberOf = ({ id, line, shot }: ShootWant): number | null => (id === line ? (shot.sets?.[0] ?? null) : Number(id.slice(line.length + 1)));

/** What a want is called in a sentence: what is to be seen, else the facts of its shot. */
export const wantName = ({ shot }: ShootWant): string => `"${shot.subject || printShotLine(shot)}"`;
