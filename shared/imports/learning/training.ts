import { ASSEMBLY_LABELS } from "../assembly/assembly";
import { assemblyExamples } from "../assembly/training";
import { beginsOf, speechAgain } from "../heard";
import { runningOrder } from "../order/order";
import { OWNER_LABELS, ownersIn } from "../owners/owners";
import { sceneOf } from "../owners/scene";
import { ownerExamples } from "../owners/training";
import { heardIn, labelsOf as rolesIn } from "../roles/training";
import { ROLES, rolesOf, rowOf, withContext } from "../roles/tagger";
import { LABELS, rowAgain, rowOf as startsRow, startsIn } from "../starts/starts";
import { labelsOf as startsLabels, readFirst } from "../starts/training";
import { turnExamples } from "../turns/training";
import { TURN_LABELS, turnsIn } from "../turns/turns";
import { zoneExamples } from "../zones/training";
import { ZONES, zonesIn } from "../zones/zones";
import type { Models, Trained } from "./models";
import { packed, type RowModel } from "./row-model";
import { train, type Example } from "./train";
import { truthOf } from "./truth";

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
 * The models, trained on marked transcripts. The later ones learn from what the earlier ones make of transcripts they were not
 * trained on. The same files in the same order give the same models.
 */
export function modelsFrom(files: readonly string[]): Models {
  const truths = files.map(rolesOfFile);
  const first = stage(truths.map(({ heard, labels }) => [{ ...rowOf(heard), labels }]), ROLES.length);
  const read = files.map((file, at) => readFirst(file, first.unseen(at)));
  const begins = read.map(({ reading: { speech }, turns }) => startsLabels(speech, turns));
  const starts = stage(read.map(({ reading: { speech } }, at) => [{ ...startsRow(speech), labels: begins[at] ?? [] }]), LABELS);
  const begun = read.map(({ reading: { speech } }, at) => startsIn(speech, starts.unseen(at)));
  const rows = read.map(({ reading: { row, heard, roles } }, at) => withContext(row, heard, roles, beginsOf(begun[at] ?? new Set())));
  const roles = stage(rows.map((row, at) => [{ ...row, labels: truths[at]?.labels ?? [] }]), ROLES.length);
  const again = read.map(({ reading: { speech, heard } }, at) => {
    const row = rows[at] ?? rowOf(heard);
    const known = speechAgain(speech, heard, row, rolesOf(row, roles.unseen(at)));
    return { known, row: rowAgain(known, begun[at] ?? new Set()) };
  });
  const startsAgain = stage(again.map(({ row }, at) => [{ ...row, labels: begins[at] ?? [] }]), LABELS);
  const turns = stage(again.map(({ known }, at) => turnExamples(known, read[at]?.turns ?? [])), TURN_LABELS);
  const turned = again.map(({ known, row }, at) => {
    const chosen = startsIn(known, startsAgain.unseen(at), row);
    return { ...known, starts: chosen, turns: turnsIn(known, chosen, turns.unseen(at)) };
  });
  const zones = stage(turned.map((speech, at) => zoneExamples(files[at] ?? "", read[at]?.turns ?? [], speech)), ZONES.length);
  const scenes = turned.map((speech, at) => sceneOf(runningOrder({ ...speech, zones: zonesIn(speech, zones.unseen(at)) }), speech.statements, read[at]?.mentions ?? [], speech.words));
  const told = files.map(truthOf);
  const owners = train(scenes.flatMap((scene, at) => ownerExamples(scene, told[at] ?? [])), OWNER_LABELS);
  const assembly = train(scenes.flatMap((scene, at) => assemblyExamples(scene, ownersIn(scene, owners), told[at] ?? [])), ASSEMBLY_LABELS);
  return { first: first.whole, starts: starts.whole, startsAgain: startsAgain.whole, turns: turns.whole, zones: zones.whole, roles: roles.whole, owners, assembly };
}

function rolesOfFile(file: string): { readonly heard: ReturnType<typeof heardIn>; readonly labels: number[] } {
  const heard = heardIn(file);
  return { heard, labels: rolesIn(file, heard) };
}

export function trainedOn(files: readonly string[]): Trained {
  const models = modelsFrom(files);
  return { digest: digestOf(files), models: Object.fromEntries(Object.entries(models).map(([name, model]) => [name, packed(model)])) as Trained["models"] };
}
