import { blockName, type Block, type BlockKind, type Episode, type Units } from "../../episode";
import { parseSetLine, setCount, type Scheme } from "../../training";
import { SIZES, field, fieldRow, paragraph, table, type PaperNode, type TableRow } from "../paper";
import type { Spacing } from "./spacing";
import { doseInWords, loadInWords, mannerInWords, timeInWords } from "./words";

/** What a viewer does; the rest is talk for the camera. */
const DONE: readonly BlockKind[] = ["warm-up", "exercise", "cool-down"];
/** More boxes than this say nothing a viewer writes down. */
const MAX_REP_FIELDS = 12;

export interface PlanItem {
  readonly block: Block;
  /** 1, 2, 3 as printed. */
  readonly number: number;
  readonly name: string;
  /** Floor minutes, when the coach planned them. */
  readonly minutes: number | null;
  readonly rampUp: readonly Dose[];
  readonly working: readonly Dose[];
}

/** One set line: what it means, or the coach's own words when it could not be read. */
export interface Dose {
  readonly text: string;
  readonly scheme: Scheme | null;
}

/** The blocks a viewer does, in order, with their set lines read. */
export function planOf(episode: Episode): PlanItem[] {
  return episode.blocks.filter((block) => DONE.includes(block.kind)).map((block, i) => {
    const dosesOf = (role: "ramp-up" | "working") => block.sets.filter((line) => line.role === role && line.text.trim() !== "").map((line): Dose => {
      const parse = parseSetLine(line.text);
      return { text: line.text.trim(), scheme: parse.ok ? parse.scheme : null };
    });
    return { block, number: i + 1, name: blockName(block), minutes: block.minutes, rampUp: dosesOf("ramp-up"), working: dosesOf("working") };
  });
}

/** Sets the viewer fills in. */
function countSets(doses: readonly Dose[]): number {
  return doses.reduce((sum, { scheme }) => sum + (scheme ? setCount(scheme) : 1), 0);
}

const small = (text: string): PaperNode => paragraph(text, { size: SIZES.small + 0.5, grey: true, after: 1 });

function doseCell(item: PlanItem, units: Units, { text: size }: Spacing): PaperNode[] {
  const of = ({ text, scheme }: Dose): PaperNode[] => {
    if (!scheme) return [paragraph(text, { size, after: 1 })];
    const load = loadInWords(scheme.load, units);
    const manner = mannerInWords(scheme);
    return [
      paragraph(doseInWords(scheme), { size, after: 1 }),
      ...(manner ? [small(manner)] : []),
      ...(load ? [small(`in the video: ${load}`)] : []),
    ];
  };
  const light = item.rampUp.map(({ text, scheme }) => {
    if (!scheme) return small(`ramp-up: ${text}`);
    const load = loadInWords(scheme.load, units);
    return small(`ramp-up: ${doseInWords(scheme)}${load ? `, ${load}` : ""}`);
  });
  return [...item.working.flatMap(of), ...light];
}

/** What one set counts. */
function counted({ scheme }: Dose): string {
  if (scheme?.meters !== undefined) return "metres";
  return scheme?.seconds !== undefined && !scheme.amrap ? "seconds" : "reps";
}

function row(item: PlanItem, units: Units, spacing: Spacing): TableRow {
  const { block, number, name, minutes, working } = item;
  const planned = block.kind !== "exercise" && minutes ? `, ${minutes} ${minutes === 1 ? "minute" : "minutes"}` : "";
  const group = working.find((dose) => dose.scheme?.group)?.scheme?.group;
  const rests = [...new Set(working.flatMap(({ scheme }) => (scheme?.restSeconds === undefined ? [] : [timeInWords(scheme.restSeconds)])))];
  const count = countSets(working);
  const what = working.flatMap((dose) => Array.from({ length: countSets([dose]) }, () => `${counted(dose)}${dose.scheme?.eachSide ? " each side" : ""}`));
  const of = (what: string) => `${number}. ${name}: ${what}`;
  const fill = block.kind === "exercise" && count > 0;
  const reps = count > MAX_REP_FIELDS
    ? [field({ type: "text", name: `reps-${number}`, tip: of(`${[...new Set(what)].join(" or ")} you did, all sets`), width: null, height: 20 })]
    : [fieldRow(Array.from({ length: count }, (_, i) => field({ type: "text", name: `reps-${number}-${i + 1}`, tip: of(`${what[i] ?? "reps"} you did in set ${i + 1}`), width: 29.5, height: 20 })))];
  return {
    cells: [
      [paragraph(String(number), { after: 0 })],
      [paragraph([{ text: name, weight: "semibold" }, { text: planned }], { after: 0 }), ...(group ? [small(`in turn with the others of ${group.replace(/\d+$/, "")}`)] : [])],
      doseCell(item, units, spacing),
      rests.map((rest) => paragraph(rest, { after: 0 })),
      fill ? [field({ type: "text", name: `load-${number}`, tip: of(`${units} you used`), width: 42, height: 20 })] : [],
      fill ? reps : [],
    ],
  };
}

/** The plan with room for the viewer's own numbers. */
export function planTable(items: readonly PlanItem[], units: Units, spacing: Spacing): PaperNode {
  return table({
    summary: "The plan: exercises in order, sets and reps, rest, and fields for your own weights, reps, metres or seconds",
    rowHead: 1,
    valign: "middle",
    size: spacing.text,
    padding: spacing.row,
    columns: [
      { width: 20, head: "No." }, { width: 116, head: "Exercise" }, { width: 138, head: "Sets and reps" },
      { width: 36, head: "Rest" }, { width: 42, head: `Your ${units}` }, { width: 141, head: "What you did, set by set" },
    ],
    rows: items.map((item) => row(item, units, spacing)),
  });
}

/** Set lines printed as written because they could not be read, for the coach. */
export function unreadNotes(items: readonly PlanItem[]): string[] {
  return items.flatMap((item) => [...item.rampUp, ...item.working].filter((dose) => !dose.scheme).map((dose) => `The set line "${dose.text}" of ${item.name} could not be read and is printed as written.`));
}
