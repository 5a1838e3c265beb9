import { blockName, type Edit, type NewId } from "../episode";
import { planCoverage, printShotLine, remedyFor, type CoverageBlock, type CoveragePlan, type CoverageProblem, type Remedy, type Shot } from "../filming";
import { parseSetLine, printSetLine, type Scheme } from "../training";
import { numberOf, wantName } from "./wants";
import type { ShootBlock, ShootPlan, ShootRemedy, ShootSet } from "./types";

/** A block with the coverage problem of it alone. */
interface RemedyCase extends Pick<ShootBlock, "block" | "sets" | "wants"> {
  readonly problem: CoverageProblem;
  readonly plan: CoveragePlan;
}

const onlySet = (shot: Shot, from: number | null, to: ShootSet): Shot => ({
  ...shot,
  on: to.role === "ramp-up" ? "ramp-up" : shot.on === "ramp-up" ? null : shot.on,
  sets: (shot.sets ?? []).length > 1 ? [...new Set((shot.sets ?? []).map((number) => (number === from ? to.number : number)))].sort((a, b) => a - b) : [to.number],
});

/** Shots that name a set too many are moved to the set the plan would film them on. */
function otherSet({ sets, wants, problem, plan }: RemedyCase, regains: readonly string[]): { readonly edits: Edit[]; readonly label: string } {
  const freed = problem.blocks.map((block): CoverageBlock => ({ ...block, wants: block.wants.map((want) => (plan.lost.includes(want.id) ? { ...want, sets: undefined } : want)) }));
  const { shots } = planCoverage({ ...problem, blocks: freed });
  const moved = wants.filter(({ id }) => regains.includes(id)).flatMap((want) => {
    const to = sets.find(({ id }) => id === shots.find((shot) => shot.want === want.id)?.set);
    // A line that names several sets can only be moved within the working sets or within the ramp-up sets.
    const isOne = (want.shot.sets ?? []).length <= 1 || (to?.role === "ramp-up") === (want.shot.on === "ramp-up");
    return to && (to.role === "working" || to.role === "ramp-up") && isOne ? [{ want, to }] : [];
  });
  return {
    edits: moved.map(({ want, to }) => ({ type: "set-line", line: want.line, fields: { text: printShotLine(onlySet(want.shot, numberOf(want), to)) } })),
    label: moved.map(({ want, to }) => `Films ${wantName(want)} on ${to.role === "ramp-up" ? `ramp-up set ${to.number}` : `set ${to.number}`}`).join("; "),
  };
}

/** Reps, time or distance of one set of that scheme, without a load: what to lift is the coach's to say. */
function oneLight({ repsMin, repsMax, reps, seconds, meters, eachSide, restSeconds }: Scheme): string {
  const [first] = reps ?? [];
  return printSetLine({
    sets: 1,
    ...(first !== undefined ? { repsMin: first, repsMax: first } : repsMin !== undefined ? { repsMin, repsMax: repsMax ?? repsMin } : {}),
    ...(seconds !== undefined ? { seconds } : {}), ...(meters !== undefined ? { meters } : {}),
    ...(eachSide ? { eachSide } : {}), ...(restSeconds !== undefined ? { restSeconds } : {}),
  });
}

function lightSet({ block, wants }: RemedyCase, regains: readonly string[], newId: NewId): { readonly edits: Edit[]; readonly label: string } {
  const isRamp = wants.some(({ id, shot }) => regains.includes(id) && shot.on !== "working");
  const role = isRamp ? "ramp-up" : "working";
  const like = [...block.sets.filter((set) => set.role !== role), ...block.sets.filter((set) => set.role === role)].map(({ text }) => parseSetLine(text)).findLast(({ ok }) => ok);
  if (!like?.ok) return { edits: [], label: "" };
  const text = oneLight(like.scheme);
  const lastOfRole = block.sets.findLastIndex((set) => set.role === "ramp-up");
  return {
    edits: [{ type: "insert-set", block: block.id, at: isRamp ? lastOfRole + 1 : null, set: { id: newId(), role, text } }],
    label: `Adds a ${isRamp ? "ramp-up" : "working"} set: ${text}, at a light load of your choice`,
  };
}

function demonstration({ wants }: RemedyCase, regains: readonly string[]): { readonly edits: Edit[]; readonly label: string } {
  const lines = wants.filter(({ id }) => regains.includes(id));
  return {
    edits: lines.map(({ line, shot }) => ({ type: "set-line", line, fields: { text: printShotLine({ ...shot, on: "demonstration", sets: null }) } })),
    label: `Films ${lines.map(wantName).join(", ")} as a demonstration`,
  };
}

function pressed(each: RemedyCase, { type, regains }: Remedy, newId: NewId): { readonly edits: Edit[]; readonly label: string } {
  if (type === "other-set") return otherSet(each, regains);
  if (type === "light-set") return lightSet(each, regains, newId);
  if (type === "demonstration") return demonstration(each, regains);
  return { edits: [], label: "" };
}

/**
 * What would film most of what a block loses at the least cost: tried by planning again, named for people, with the edits that do it.
 * A second camera is named only: it has to be owned first. @returns null when the block loses nothing
 */
export function remedyIn({ problem }: ShootPlan, { block, sets, wants, lost }: ShootBlock, newId: NewId): ShootRemedy | null {
  if (lost.length === 0) return null;
  const alone: CoverageProblem = { ...problem, blocks: problem.blocks.filter(({ id }) => id === block.id) };
  const each: RemedyCase = { block, sets, wants, problem: alone, plan: planCoverage(alone) };
  const wantOf = (id: string): string => {
    const want = wants.find((one) => one.id === id);
    return want ? wantName(want) : `"${id}"`;
  };
  const found = remedyFor(each.problem, each.plan, { want: wantOf, block: () => blockName(block) });
  return found && { sentence: found.sentence, ...(found.remedy ? pressed(each, found.remedy, newId) : { edits: [], label: "" }) };
}
