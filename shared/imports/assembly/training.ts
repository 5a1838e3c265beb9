import type { Example } from "../learning/train";
import type { TrueExercise } from "../learning/truth";
import type { Scene } from "../owners/scene";
import { truthFor } from "../owners/training";
import { isTrueOf } from "../owners/truth";
import type { Ordered } from "../schemes/compose";
import { isOwn } from "../schemes/read-schemes";
import type { Word } from "../types";
import { ASIDE, BEGINS, FOR_ALL, GOES_ON } from "./assembly";
import { featuresOf, stepsOf } from "./features";

/** The figures of one exercise and where each belongs, told from the set lines of the head. */
export function assemblyExample(own: readonly Ordered[], { sets }: TrueExercise, words: readonly Word[]): Example {
  let open = -1;
  const begun = new Set<number>();
  const labels = own.map((statement) => {
    const isRamp = statement.about === "ramp-up";
    const lines = sets.flatMap(({ role }, at) => ((role === "ramp-up") === isRamp ? [at] : []));
    const right = lines.filter((at) => isTrueOf(statement, [(sets[at] as TrueExercise["sets"][number]).scheme]));
    const total = lines.reduce((sum, at) => sum + (sets[at]?.scheme.sets ?? 0), 0);
    if (lines.length > 1 && (right.length === lines.length || (right.length === 0 && statement.says.sets === total))) return FOR_ALL;
    const line = right.includes(open) ? open : (right.find((at) => at > open) ?? right[0]);
    if (line === undefined || line < open) return ASIDE;
    open = line;
    if (begun.has(line)) return GOES_ON;
    begun.add(line);
    return BEGINS;
  });
  return { features: featuresOf(own, words), steps: stepsOf(own), labels };
}

/** A row for each exercise of a transcript: its own figures. */
export function assemblyExamples(scene: Scene, owners: readonly (readonly number[])[], truth: readonly TrueExercise[]): Example[] {
  return truthFor(scene.exercises, truth).flatMap((row, place) => {
    const own = scene.statements.filter((_, at) => isOwn(scene, owners, at, place));
    return row === null || own.length === 0 ? [] : [assemblyExample(own, row, scene.words)];
  });
}
