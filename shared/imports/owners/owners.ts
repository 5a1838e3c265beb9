import { decode, scoreOf, type RowModel } from "../learning/row-model";
import { featuresFor, groupOf, memberFor, stepsFor } from "./features";
import { reckoned, type Reckoned, type Scene } from "./scene";

/** Of which exercises a figure holds: of the one in whose time it is said, of another, of several, of none. */
export const OWNER_LABELS = 2;
export const HOLDS = 1;

/** For each statement the numbers of the exercises it holds for. */
export function ownersIn(scene: Scene, model: RowModel): number[][] {
  const all = reckoned(scene);
  return scene.statements.map((_, at) => {
    const labels = decode(featuresFor(scene, all, at).map((names) => scoreOf(model, names)), stepsFor(scene, all.kinds[at] ?? ""), model);
    return inBreath(scene, all, at, labels.flatMap((label, place) => (label === HOLDS ? [place] : [])));
  });
}

/** Of exercises told in one breath: what is said of some of the round is said of all; what is nobody's is whose name came last. */
function inBreath(scene: Scene, all: Reckoned, at: number, owners: number[]): number[] {
  const group = groupOf(scene, all.homes[at] ?? -1);
  if (group.length < 2) return owners;
  if (scene.statements[at]?.about === "circuit") return owners.some((place) => group.includes(place)) ? [...new Set([...owners, ...group])].sort((a, b) => a - b) : owners;
  if (owners.length > 0) return owners;
  const member = memberFor(scene, all, at, group);
  return member === null ? owners : [member];
}
