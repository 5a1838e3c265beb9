import { compareWorth, NOTHING, plus, type Worth } from "./demand";
import { wholeWeights } from "./exact";
import { planCoverage } from "./solve";
import type { CoverageBlock, CoveragePlan, CoverageProblem, CoverageSet, SetKind } from "./types";

/** A set that nothing in the block is like. Common practice, no source. */
const USUAL: Readonly<Record<SetKind, Pick<CoverageSet, "seconds" | "restSeconds">>> = {
  ramp: { seconds: 30, restSeconds: 60 },
  working: { seconds: 40, restSeconds: 90 },
  demo: { seconds: 20, restSeconds: 0 },
};

export interface Remedy {
  readonly type: "other-set" | "light-set" | "demonstration" | "second-camera";
  /** The block it is for; null for a second camera, which is there for all. */
  readonly block: string | null;
  /** Wants that are lost now and would be filmed, in their order. */
  readonly regains: readonly string[];
  /** What the session takes longer: the set, its rest, and the moves beyond the rests; negative when moves get cheaper. */
  readonly seconds: number;
  readonly sentence: string;
}

/** How the sentences call things; ids in quotes unless told otherwise. */
export interface CoverageNames {
  readonly want: (id: string) => string;
  readonly block: (id: string) => string;
}

const QUOTED: CoverageNames = { want: (id) => `"${id}"`, block: (id) => `"${id}"` };

interface Trial extends Omit<Remedy, "sentence"> {
  readonly words: string;
  readonly worth: Worth;
}

/** The block with one more set, after the last of its kind; without any, in front, or at the end when it is a working one. */
function withSet(block: CoverageBlock, kind: SetKind, newId: string): { readonly block: CoverageBlock; readonly set: CoverageSet } {
  const last = block.sets.findLastIndex((each) => each.kind === kind);
  const at = last >= 0 ? last + 1 : kind === "working" ? block.sets.length : 0;
  const like = block.sets[last] ?? USUAL[kind];
  const set: CoverageSet = { id: newId, kind, seconds: like.seconds, restSeconds: like.restSeconds };
  return { set, block: { ...block, sets: [...block.sets.slice(0, at), set, ...block.sets.slice(at)] } };
}

function freeId(problem: CoverageProblem): string {
  const taken = new Set(problem.blocks.flatMap(({ sets }) => sets.map(({ id }) => id)));
  let id = "one more set";
  while (taken.has(id)) id += "+";
  return id;
}

/** A working set asked for can be done light and filmed like one; nobody is told to work harder for the camera. */
const SET_WORDS: Readonly<Record<SetKind, string>> = { ramp: "one more light set", working: "one more set at a light load, filmed as a working set", demo: "a demonstration" };

function trials(problem: CoverageProblem, plan: CoveragePlan, names: CoverageNames): Trial[] {
  const lost = new Set(plan.lost);
  const wants = problem.blocks.flatMap((block) => block.wants);
  const weights = wholeWeights(wants.map(({ weight }) => weight));
  const compared = (changed: CoverageProblem): Pick<Trial, "regains" | "worth" | "seconds"> => {
    const again = planCoverage(changed);
    const stillLost = new Set(again.lost);
    const worth = wants.reduce((sum, want, i) => {
      const sign = Number(lost.has(want.id)) - Number(stillLost.has(want.id));
      return plus(sum, want.need === "must" ? { musts: sign, weight: 0n } : { musts: 0, weight: BigInt(sign) * (weights[i] ?? 0n) });
    }, NOTHING);
    return { regains: plan.lost.filter((id) => !stillLost.has(id)), worth, seconds: again.extraSeconds - plan.extraSeconds };
  };

  const newId = freeId(problem);
  const found: Trial[] = [];
  for (const block of problem.blocks) {
    const missing = block.wants.filter(({ id }) => lost.has(id));
    if (missing.some(({ sets }) => sets !== undefined)) {
      const freed = { ...block, wants: block.wants.map((want) => (lost.has(want.id) ? { ...want, sets: undefined } : want)) };
      found.push({ ...compared({ ...problem, blocks: problem.blocks.map((each) => (each === block ? freed : each)) }), type: "other-set", block: block.id, words: `another set of ${names.block(block.id)}` });
    }
    // A want of any kind is content with a light set or a demonstration, whichever is cheaper.
    const kinds = [...new Set(missing.flatMap(({ kind }): SetKind[] => (kind === "any" ? ["ramp", "demo"] : [kind])))];
    for (const kind of kinds) {
      const more = withSet(block, kind, newId);
      const result = compared({ ...problem, blocks: problem.blocks.map((each) => (each === block ? more.block : each)) });
      found.push({ ...result, seconds: result.seconds + more.set.seconds + more.set.restSeconds, type: kind === "demo" ? "demonstration" : "light-set", block: block.id, words: `${SET_WORDS[kind]} in ${names.block(block.id)}` });
    }
  }
  if (problem.cameras === 1) {
    const blocks = problem.blocks.map((block) => (block.begun ? { ...block, begun: { ...block.begun, marks: [...block.begun.marks, null] } } : block));
    found.push({ ...compared({ ...problem, cameras: 2, blocks }), type: "second-camera", block: null, words: "a second camera" });
  }
  return found.filter(({ worth }) => compareWorth(worth, NOTHING) > 0);
}

const listed = (ids: readonly string[], nameOf: (id: string) => string): string => {
  const shown = ids.slice(0, 3).map(nameOf);
  const rest = ids.length - shown.length;
  const all = rest > 0 ? [...shown, `${rest} more`] : shown;
  return all.length < 2 ? all.join("") : `${all.slice(0, -1).join(", ")} and ${all.at(-1) ?? ""}`;
};

function price(seconds: number): string {
  const whole = Math.round(Math.abs(seconds));
  if (whole === 0) return "and takes no longer";
  const clock = `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
  return seconds > 0 ? `and takes ${clock} longer` : `and saves ${clock}`;
}

/**
 * The cheapest remedy for what a plan loses, each one tried by planning again: another set than the one that was named, one more light
 * set of the kind that is missing, a demonstration, a second camera.
 *
 * The one that regains most comes first (musts, then weight); among equals the one that takes least time; a second camera, which
 * one has to own, only when no single set does as well.
 * @returns null when nothing is lost; `remedy` is null when none of them helps alone, and `sentence` says so
 */
export function remedyFor(problem: CoverageProblem, plan: CoveragePlan, names: CoverageNames = QUOTED): { readonly remedy: Remedy | null; readonly sentence: string } | null {
  if (plan.lost.length === 0) return null;
  const isCamera = ({ type }: Trial): number => Number(type === "second-camera");
  const [best] = trials(problem, plan, names).sort((a, b) => compareWorth(b.worth, a.worth) || isCamera(a) - isCamera(b) || a.seconds - b.seconds);
  if (!best) return { remedy: null, sentence: `${listed(plan.lost, names.want)} would stay unfilmed with one more set, with a demonstration${problem.cameras === 1 ? " and with a second camera" : ""}.` };
  const left = plan.lost.length - best.regains.length;
  const words = best.words.charAt(0).toUpperCase() + best.words.slice(1);
  const sentence = `${words} films ${listed(best.regains, names.want)} ${price(best.seconds)}${left > 0 ? `; ${left} of ${plan.lost.length} stay lost` : ""}.`;
  const { type, block, regains, seconds } = best;
  return { remedy: { type, block, regains, seconds, sentence }, sentence };
}
