import { blockFilming, blockName, findBlock, type Actual, type Block, type Edit, type Episode, type Filmed, type Units } from "../episode";
import { kgToLb, lbToKg, plannedSets } from "../training";
import type { SessionReport } from "./schema";

/** One line for people: which block, what. */
export interface ReportLine {
  readonly block: string;
  readonly words: string;
}

/** What taking a report over will do. */
export interface ReportSummary {
  readonly logged: readonly ReportLine[];
  readonly inTheBox: readonly ReportLine[];
  readonly lost: readonly ReportLine[];
  /** Stations that were taken, and what was filmed beside the shot lines; told, never an edit. */
  readonly told: readonly ReportLine[];
  /** What the episode has no place for any more, in sentences. */
  readonly noPlace: readonly string[];
}

export interface TakenOver {
  /** Nothing when the episode already knows it all. */
  readonly edits: readonly Edit[];
  readonly summary: ReportSummary;
}

const MAX_FILMED = 400;

/** A load as it is written down, in the other unit to the half. */
function loadIn(load: number | null, from: Units, to: Units): number | null {
  if (load === null || from === to) return load;
  return Math.round((to === "lb" ? kgToLb(load) : lbToKg(load)) * 2) / 2;
}

/** "22 kg, 8 reps, 2 in reserve"; empty when nothing was typed. */
export const liftedInWords = ({ load, reps, rir }: Omit<Actual, "set">, units: Units): string =>
  [load === null ? "" : `${load} ${units}`, reps === null ? "" : `${reps} ${reps === 1 ? "rep" : "reps"}`, rir === null ? "" : `${rir} in reserve`].filter(Boolean).join(", ");

/** Old entries, those with the same key replaced in place, new ones after them. */
function merged<T>(old: readonly T[], fresh: readonly T[], keyOf: (item: T) => string): T[] {
  const byKey = new Map(fresh.map((item) => [keyOf(item), item]));
  const kept = old.map((item) => byKey.get(keyOf(item)) ?? item);
  const known = new Set(old.map(keyOf));
  return [...kept, ...[...byKey.values()].filter((item) => !known.has(keyOf(item)))];
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** One block's actuals and shots with the report's in them. */
function fieldsOf(block: Block, actuals: readonly Actual[], shots: readonly Filmed[]): Partial<Pick<Block, "actuals" | "filming">> {
  const allActuals = merged(block.actuals, actuals, ({ set }) => String(set)).map(({ set, load, reps, rir }) => ({ set, load, reps, rir })).sort((a, b) => a.set - b.set);
  const before = blockFilming(block);
  // A report that speaks of a shot knows all that became of it on the day.
  const spoken = new Set(shots.map(({ shot }) => shot));
  const filmed = [...before.filmed.filter(({ shot }) => !spoken.has(shot)), ...shots].slice(-MAX_FILMED);
  const order = (list: readonly Filmed[]): string[] => list.map((item) => JSON.stringify(item)).sort();
  return {
    ...(actuals.length === 0 || same(allActuals, block.actuals) ? {} : { actuals: allActuals }),
    ...(same(order(filmed), order(before.filmed)) ? {} : { filming: { ...before, filmed } }),
  };
}

const EXTRA_WORDS = { opening: "an opening that no line asks for", closing: "the closing, which no line asks for", "room-tone": "room tone" } as const;
const BLOCK_WORDS = { later: "was done later, for its station was taken", dropped: "was left out or ended early", alternate: "was done another way, and its numbers are of that" } as const;

/**
 * The report as edits of this episode: what was lifted goes to `actuals` by the number of the working set, answered shots to `filming.filmed`.
 *
 * Nothing is ever removed but an older answer for the same shot or set; a block that was dropped on the day stays. What has lost its place
 * (a block, line or set that is gone since) is listed. Taking the same report over again gives no edits.
 */
export function takeOver(report: SessionReport, episode: Episode): TakenOver {
  const { units } = episode.session;
  const logged: ReportLine[] = [];
  const inTheBox: ReportLine[] = [];
  const lost: ReportLine[] = [];
  const told: ReportLine[] = [];
  const noPlace: string[] = [];
  const actuals = new Map<string, Actual[]>();
  const filmed = new Map<string, Filmed[]>();
  const add = <T>(to: Map<string, T[]>, key: string, item: T): void => void to.set(key, [...(to.get(key) ?? []), item]);
  const missing = new Set<string>();

  /** The block, or null once it was said that it is gone. */
  const blockOf = (id: string): Block | null => {
    const block = findBlock(episode, id);
    if (block === null && !missing.has(id)) {
      missing.add(id);
      const sets = report.sets.filter((set) => set.block === id && set.lifted !== null).length;
      const shots = report.shots.filter((shot) => shot.block === id).length;
      noPlace.push(`A block that was done is not in the episode any more: ${sets} logged ${sets === 1 ? "set" : "sets"} and ${shots} ${shots === 1 ? "shot" : "shots"} of it are left out.`);
    }
    return block;
  };

  for (const { block: id, role, number, lifted } of report.sets) {
    if (lifted === null || role !== "working") continue;
    const block = blockOf(id);
    if (block === null) continue;
    const actual: Actual = { set: number, load: loadIn(lifted.load, report.units, units), reps: lifted.reps, rir: lifted.rir };
    if (!plannedSets(block).some((set) => set.role === "working" && set.number === number)) {
      noPlace.push(`${blockName(block)} has no set ${number} any more; left out: ${liftedInWords(actual, units)}.`);
      continue;
    }
    const before = block.actuals.find(({ set }) => set === number);
    const was = before && !same([before.load, before.reps, before.rir], [actual.load, actual.reps, actual.rir]) ? ` instead of ${liftedInWords(before, units) || "no numbers"}` : "";
    logged.push({ block: blockName(block), words: `set ${number}: ${liftedInWords(actual, units) || "no numbers"}${was}` });
    add(actuals, id, actual);
  }
  for (const { block: id, shot, set, got } of report.shots) {
    const block = blockOf(id);
    if (block === null) continue;
    const line = block.lines.find((each) => each.id === shot && each.kind === "shot");
    if (!line) {
      noPlace.push(`${blockName(block)}: a shot that was ${got ? "filmed" : "lost"} is not in the episode any more.`);
      continue;
    }
    const wasIn = !got && block.filming?.filmed.some((each) => each.shot === shot && each.got);
    (got ? inTheBox : lost).push({ block: blockName(block), words: wasIn ? `${line.text} (was in the box before)` : line.text });
    add(filmed, id, { shot, set, got });
  }
  for (const { block: id, what, words } of report.blocks) {
    const block = blockOf(id);
    if (block !== null) told.push({ block: blockName(block), words: `${BLOCK_WORDS[what]}${words === "" ? "" : `: ${words}`}` });
  }
  for (const { what, got } of report.extras) told.push({ block: "", words: `${got ? "In the box" : "Not filmed"}: ${EXTRA_WORDS[what]}` });

  const edits = episode.blocks.flatMap((block): Edit[] => {
    const fields = fieldsOf(block, actuals.get(block.id) ?? [], filmed.get(block.id) ?? []);
    return Object.keys(fields).length === 0 ? [] : [{ type: "set-block", block: block.id, fields }];
  });
  return { edits, summary: { logged, inTheBox, lost, told, noPlace } };
}

/** The edits alone. */
export const editsOf = (report: SessionReport, episode: Episode): readonly Edit[] => takeOver(report, episode).edits;
