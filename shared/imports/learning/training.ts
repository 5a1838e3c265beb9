import { ASSEMBLY_LABELS } from "../assembly/assembly";
import { assemblyExamples } from "../assembly/training";
import { withRoles } from "../heard";
import { markedScene, ownersMarked } from "../owners/training";
import { forSeveralIn, labelsOf } from "../roles/training";
import { ROLES, rolesOf, withContext } from "../roles/tagger";
import { zoneExamples } from "../zones/training";
import { ZONES } from "../zones/zones";
import { blurred } from "./blurred";
import type { RowModels, Trained } from "./models";
import { lessonOf } from "./read";
import { packed, type RowModel } from "./row-model";
import { train, type Example } from "./train";
import { truthOf } from "./truth";

/** Into so many parts the transcripts are dealt: each is read by models that have not seen it, as new speech will be. */
const FOLDS = 3;

/** A short sum over all transcripts, to tell whether weights belong to them (FNV-1a, 32 bits). */
export function digestOf(files: readonly string[]): string {
  let sum = 0x811c9dc5;
  for (const file of files) for (const char of file) sum = Math.imul(sum ^ (char.codePointAt(0) ?? 0), 0x01000193) >>> 0;
  return `${files.length}-${sum.toString(16)}`;
}

/** Models of one kind: one that learned from every transcript, and for each transcript one that has not seen it. */
interface Stage {
  readonly whole: RowModel;
  readonly unseen: (transcript: number) => RowModel;
}

/** @param examples - the rows of each transcript */
function stage(examples: readonly (readonly Example[])[], labels: number): Stage {
  const whole = train(examples.flat(), labels);
  const parts = Array.from({ length: FOLDS }, (_, fold) => train(examples.filter((__, at) => at % FOLDS !== fold).flat(), labels));
  return { whole, unseen: (transcript) => parts[transcript % FOLDS] ?? whole };
}

/**
 * The models of rows, trained on marked transcripts. The later ones learn from what the earlier ones make of transcripts they
 * were not trained on, and from turns that are a little wrong, as the listener's will be. The same files in the same order give
 * the same models.
 */
export function modelsFrom(files: readonly string[]): RowModels {
  const lessons = files.map(lessonOf);
  const labels = lessons.map(labelsOf);
  const first = stage(lessons.map(({ ready: { row } }, at) => [{ ...row, labels: labels[at] ?? [] }]), ROLES.length);
  const begun = lessons.map((lesson, at) => blurred(lesson, at));
  const rows = lessons.map(({ ready: { row, heard } }, at) => withContext(row, heard, rolesOf(row, first.unseen(at)), (begun[at] ?? []).map(({ turn }) => turn)));
  const roles = stage(rows.map((row, at) => [{ ...row, labels: labels[at] ?? [] }]), ROLES.length);
  const known = lessons.map(({ ready }, at) => withRoles(ready, rolesOf(rows[at] ?? ready.row, roles.unseen(at))));
  const zones = train(lessons.flatMap((lesson, at) => zoneExamples(lesson, { ...(known[at] as (typeof known)[number]), begun: begun[at] ?? [] })), ZONES.length);
  const assembly = train(lessons.flatMap((lesson, at) => {
    const { file, turns } = lesson;
    const truth = truthOf(file);
    const scene = markedScene(turns, truth, known[at] as (typeof known)[number]);
    return scene ? assemblyExamples(scene, ownersMarked(scene, truth, forSeveralIn(lesson), lesson.ready.candidates), truth) : [];
  }), ASSEMBLY_LABELS);
  return { first: first.whole, roles: roles.whole, zones, assembly };
}

export function trainedOn(files: readonly string[]): Trained {
  const models = modelsFrom(files);
  return { digest: digestOf(files), models: Object.fromEntries(Object.entries(models).map(([name, model]) => [name, packed(model)])) as Trained["models"] };
}
