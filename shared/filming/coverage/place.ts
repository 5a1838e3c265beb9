import { afterFilming, bitOf, DONE, MUST_LEAVE, type MarkDemand, type Pattern } from "./demand";
import type { Schedule } from "./schedule";
import type { Target } from "./targets";
import type { CoverageSet, CoverageStand } from "./types";

/**
 * A schedule of patterns as cameras at named marks. Of marks with the same pattern left the first is taken; of two cameras that
 * could make a walk the first one makes it. A camera without a task stands at the first mark that is free, else at the first mark.
 */
export function standsOf(sets: readonly CoverageSet[], demands: readonly MarkDemand[], target: Target, schedule: Schedule, begunAt: readonly (string | null)[] | null): CoverageStand[] {
  const left = new Map<string, Pattern>(demands.map(({ mark }, i) => [mark, target[i] ?? DONE]));
  const cameras: (string | null)[] = [];
  const isFree = (mark: string): boolean => !cameras.includes(mark);
  const spare = (): string => (demands.find(({ mark }) => isFree(mark)) ?? demands[0])?.mark ?? "";
  const find = (pattern: Pattern): string =>
    (pattern === DONE ? undefined : demands.find(({ mark }) => left.get(mark) === pattern && isFree(mark))?.mark) ?? spare();
  // Tasks first, so that an idle camera cannot take the mark another one needs; order of cameras is by size of pattern.
  if (begunAt) cameras.push(...begunAt);
  else for (const pattern of [...schedule.start].sort((a, b) => b - a)) cameras.push(find(pattern));

  /** What is left under a camera; of two at one mark only the first has the task. */
  const under = (camera: number): Pattern => {
    const mark = cameras[camera] ?? null;
    if (mark === null) return MUST_LEAVE;
    return cameras.indexOf(mark) < camera ? DONE : (left.get(mark) ?? DONE);
  };

  const stands: CoverageStand[] = [];
  sets.forEach((set, i) => {
    const patterns = cameras.map((_, camera) => under(camera));
    const walkers = new Map<number, Pattern>();
    for (const { from, to } of schedule.walks[i] ?? []) {
      const camera = patterns.findIndex((pattern, c) => pattern === from && !walkers.has(c));
      if (camera >= 0) walkers.set(camera, to);
    }
    const before = [...cameras];
    for (const [camera, to] of walkers) {
      const goal = to === DONE ? undefined : demands.find(({ mark }) => left.get(mark) === to && !before.includes(mark) && isFree(mark))?.mark;
      cameras[camera] = goal ?? spare();
    }
    cameras.forEach((mark, camera) => {
      if (mark === null) return;
      stands.push({ set: set.id, camera: camera + 1, mark });
      left.set(mark, afterFilming(left.get(mark) ?? DONE, bitOf(set.kind)));
    });
  });
  return stands;
}
