import { blockName, episodeName, seriesName, type Block, type Episode } from "../../episode";
import { exerciseById } from "../../exercises";
import { marksOf, setupOf, type Mark } from "../../filming";
import {
  box, columns, heading, keepTogether, paragraph, spacer, table, tickRow,
  type PaperNode, type Section,
} from "../paper";
import { stationOf } from "../../training";
import { floorPlan } from "./floor-plan";
import { holdInWords, metres, shorten, stepsInWords, tiltInWords } from "./measures";
import { filmRows, type FilmRow } from "./rows";
import { setsOf, type BlockSets } from "./sets";

/** Points, for arm's length: title, set line and what to do; the numbers of a mark are twice the words around them. */
export const SIZE = { title: 30, sets: 14.5, text: 11.5, number: 20, around: 10 } as const;

/** Marks that fit beside the floor plan; more stand below it, where their table may break. */
const BESIDE = 4;
/** Rows that leave room for the tall floor plan; with more, a low one keeps the station on one page. */
const FEW_ROWS = 5;

/** A block with its place in the session. */
export interface Station {
  readonly block: Block;
  /** From 1, of `of`. */
  readonly number: number;
  readonly of: number;
  /** Seconds since the session's start. */
  readonly from: number;
  readonly to: number;
}

/** Longest title and name in a running head, characters: more would push it into several lines. */
const MAX_HEAD = { title: 64, name: 28 } as const;

/** "Strong for the Trail, episode 7: Rows, presses, carries" */
export const runningTitle = (episode: Episode): string => shorten([seriesName(episode), episodeName(episode)].filter(Boolean).join(": "), MAX_HEAD.title);

const minute = (seconds: number): number => Math.round(seconds / 60);

/** "Goblet squat, station 2 of 6, floor minutes 9 to 22": a station may go on to a second sheet, which has no other name. */
export const whenInWords = ({ block, number, of, from, to }: Station): string =>
  `${shorten(blockName(block), MAX_HEAD.name)}, station ${number} of ${of}, floor minutes ${minute(from)} to ${minute(to)}`;

function marksTable(marks: readonly Mark[]): PaperNode {
  const big = (text: string): PaperNode => paragraph(text, { size: SIZE.number, weight: "bold", after: 0 });
  const small = (text: string): PaperNode => paragraph(text, { size: SIZE.around, after: 0 });
  return table({
    summary: "Camera marks: letter, where from, how far away, how high",
    columns: [{ width: 36, head: "mark" }, { width: 76, head: "from" }, { width: 70, head: "stand" }, { width: 74, head: "lens height" }],
    rowHead: 0, padding: 4,
    rows: marks.map((mark) => ({
      cells: [
        [big(mark.letter)],
        [small([mark.angle ?? "any angle", mark.size === mark.angle ? "" : mark.size ?? ""].filter(Boolean).join(", "))],
        [big(metres(mark.stand.distance)), small(stepsInWords(mark.stand.steps))],
        [big(metres(mark.stand.height)), small(mark.stand.tilt === 0 ? mark.stand.level : `${mark.stand.level}, tilt ${tiltInWords(mark.stand)}`)],
      ],
    })),
  });
}

/** The floor plan beside the marks; marks alone when none has a place on the floor. */
function whereToStand(episode: Episode, block: Block, marks: readonly Mark[], rows: number): PaperNode[] {
  if (marks.length === 0) return [];
  const position = block.exercise === null ? null : exerciseById(block.exercise)?.position ?? null;
  const many = marks.length > BESIDE;
  const plan = floorPlan({
    marks: marks.map(({ letter, angle, size, stand }) => ({ letter, angle: size === "insert" ? "insert" : angle ?? "side", distance: stand.distance })),
    station: stationOf(block),
    position,
  }, many ? "across" : rows > FEW_ROWS ? "low" : "beside");
  const words = [
    marksTable(marks),
    paragraph(holdInWords(episode, block, marks), { size: SIZE.around }),
    ...(position === "walking" ? [paragraph("Stand the tripod beside the lane, never in it.", { size: SIZE.around, weight: "semibold" })] : []),
  ];
  if (plan && many) return [plan, spacer(4), ...words];
  return plan ? [columns([{ width: plan.width, children: [plan] }, { width: 511 - 18 - plan.width, children: words }])] : words;
}

function rowNode(row: FilmRow, name: string, of: string): PaperNode {
  return tickRow({
    label: row.label,
    under: row.under,
    title: row.title,
    text: [
      ...row.see.map((words) => paragraph(words, { size: SIZE.text, after: 1, grey: row.title === "" })),
      ...(row.then === null ? [] : [paragraph(row.then, { size: SIZE.text, weight: "semibold", after: 0 })]),
    ],
    log: row.log,
    field: { name, tip: `${of}: ${row.label.charAt(0).toLowerCase()}${row.label.slice(1)} filmed` },
  });
}

/** What to do when somebody else is on it. */
function planB(block: Block): PaperNode[] {
  const station = stationOf(block);
  const key = `If the ${station === "" ? "station" : station} is taken`;
  const alternates = block.alternates.map(({ text }) => text.trim()).filter(Boolean);
  if (alternates.length === 0 && block.kind !== "exercise") return [];
  const value = alternates.length === 0
    ? "no other way is planned. Wait, ask to work in between, or go on to the next station and come back."
    : alternates.map((text, at) => (at === 0 ? text : `else ${text.charAt(0).toLowerCase()}${text.slice(1)}`)).join("; ");
  return [spacer(6), keepTogether([box("outline", [paragraph([{ text: `${key}: `, weight: "bold" }, { text: value }], { size: 12.5, after: 0 })])])];
}

/** Set lines as planned, each with its meaning in words. */
function schemes({ lines }: BlockSets): PaperNode[] {
  return lines.flatMap(({ printed, readBack, read }) => [
    paragraph(printed, { size: SIZE.sets, weight: "semibold", after: 0, keepWithNext: true }),
    ...(read ? [] : [paragraph("Not read as a set line: it has no rows to tick below.", { size: SIZE.around, after: 4, keepWithNext: true })]),
    ...(readBack === "" || readBack === printed ? [] : [paragraph(readBack, { size: SIZE.around, grey: true, after: 4, keepWithNext: true })]),
  ]);
}

/** What to do on the floor about a block nobody planned shots for. */
function insteadOf(block: Block, rows: readonly FilmRow[]): string {
  if (block.kind === "closing") return "film your last words to camera all the same. It cannot be filmed later.";
  return rows.length > 0 ? "tick the sets off, and film one if there is time." : "decide on the spot what the viewer should see of it.";
}

/** A row to tick for such a block, so that the page is not passed over. */
const unplanned = (block: Block): FilmRow => ({
  label: "Shot", under: "", title: block.kind === "closing" ? "To camera" : "Your choice",
  see: [block.kind === "closing" ? "Where you end the session, as long as your last words take." : "What you decided on, or nothing."], then: null, log: [],
});

/** What stands below the rows never goes to the next page alone: the last two rows go with it. */
const endedTogether = (rows: readonly PaperNode[], below: readonly PaperNode[]): PaperNode[] =>
  below.length === 0 ? [...rows] : [...rows.slice(0, -2), keepTogether([...rows.slice(-2), ...below])];

/** One station: where the camera stands, what is filmed set by set, and what to do when it is taken. */
export function stationSection(episode: Episode, station: Station, units: Episode["session"]["units"]): Section {
  const { block, number } = station;
  const sets = setsOf(block, units);
  const marks = marksOf(block, setupOf(episode, block));
  const rows = filmRows(block, sets.planned, marks, units, episode.session.cameras);
  const name = blockName(block);
  return {
    startsPage: true,
    head: { left: runningTitle(episode), right: whenInWords(station) },
    children: [
      heading(1, name, { size: name.length > 40 ? 22 : SIZE.title }),
      ...schemes(sets),
      spacer(6),
      ...whereToStand(episode, block, marks, rows.length),
      ...(marks.length === 0 ? [box("outline", [paragraph(`No shot planned for this block: ${insteadOf(block, rows)}`, { size: SIZE.sets, weight: "semibold", after: 0 })])] : []),
      spacer(6),
      ...endedTogether((rows.length > 0 ? rows : [unplanned(block)]).map((row, at) => rowNode(row, `block${number}-row${at + 1}`, `${number}. ${name}`)), planB(block)),
    ],
  };
}
