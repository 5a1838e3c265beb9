import { beginsOf } from "../heard";
import { heardIn, labelsOf as rolesIn } from "../roles/training";
import { ROLES, rowOf, withContext } from "../roles/tagger";
import { LABELS, rowOf as startsRow, startsIn } from "../starts/starts";
import { labelsOf as startsLabels, readFirst } from "../starts/training";
import type { Models, Trained } from "./models";
import { packed } from "./row-model";
import { train, type Example } from "./train";

/** Into so many parts the transcripts are dealt: each is read by models that have not seen it, as new speech will be. */
const FOLDS = 5;

/** The transcripts of one file: several are parted by a line of equals signs. */
export const transcriptsIn = (file: string): string[] => file.split(/^===\n/m);

/** A short sum over all transcripts, to tell whether weights belong to them (FNV-1a, 32 bits). */
export function digestOf(files: readonly string[]): string {
  let sum = 0x811c9dc5;
  for (const file of files) for (const char of file) sum = Math.imul(sum ^ (char.codePointAt(0) ?? 0), 0x01000193) >>> 0;
  return `${files.length}-${sum.toString(16)}`;
}

/**
 * The models, trained on marked transcripts. The later ones learn from what the earlier ones make of transcripts they were not
 * trained on. The same files in the same order give the same models.
 */
export function modelsFrom(files: readonly string[]): Models {
  const folds = Array.from({ length: FOLDS }, (_, fold) => fold);
  const others = <T>(list: readonly T[], fold: number): T[] => list.filter((_, at) => at % FOLDS !== fold);
  const firsts = files.map((file): Example => {
    const heard = heardIn(file);
    return { ...rowOf(heard), labels: rolesIn(file, heard) };
  });
  const firstOf = folds.map((fold) => train(others(firsts, fold), ROLES.length));
  const first = train(firsts, ROLES.length);
  const read = files.map((file, at) => readFirst(file, firstOf[at % FOLDS] ?? first));
  const startExamples = read.map(({ reading: { speech }, turns }): Example => ({ ...startsRow(speech), labels: startsLabels(speech, turns) }));
  const startsOf = folds.map((fold) => train(others(startExamples, fold), LABELS));
  const starts = train(startExamples, LABELS);
  const seconds = read.map(({ reading: { heard, row, roles, speech } }, at): Example => ({ ...withContext(row, heard, roles, beginsOf(startsIn(speech, startsOf[at % FOLDS] ?? starts))), labels: firsts[at]?.labels ?? [] }));
  return { first, starts, roles: train(seconds, ROLES.length) };
}

export function trainedOn(files: readonly string[]): Trained {
  const { first, starts, roles } = modelsFrom(files);
  return { digest: digestOf(files), first: packed(first), starts: packed(starts), roles: packed(roles) };
}
