import { blockName, countingIds, episodeName, linesOf, seriesName, type Block, type Episode } from "../../episode";
import { floorMark, floorOf, metres, standOf, stepsInWords, tiltInWords, type BlockFloor, type Mark } from "../../filming";
import { remedyIn, type ShootBlock, type ShootPlan } from "../../shoot-plan";
import {
  box, columns, heading, keepTogether, paragraph, SIZES, spacer, table, tickRow,
  type PaperNode, type Section,
} from "../paper";
import { stationOf } from "../../training";
import { floorPlan } from "./floor-plan";
import { holdInWords, shorten } from "./measures";
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
  readonly shoot: ShootBlock;
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

function marksTable(marks: readonly Mark[], floor: BlockFloor): PaperNode {
  const big = (text: string): PaperNode => paragraph(text, { size: SIZE.number, weight: "bold", after: 0 });
  const small = (text: string): PaperNode => paragraph(text, { size: SIZE.around, after: 0 });
  return table({
    summary: "Camera marks: letter, where from and what the frame shows, how far away, how high",
    columns: [{ width: 37, head: "mark" }, { width: 89, head: "from, the frame" }, { width: 62, head: "stand" }, { width: 70, head: "lens height" }],
    rowHead: 0, padding: 4,
    rows: marks.flatMap((mark) => {
      const placed = floorMark(floor, mark);
      const stand = standOf(floor, mark);
      return [{
        cells: [
          [big(mark.letter)],
          [small([mark.angle ?? "any angle", mark.size === mark.angle ? "" : mark.size ?? ""].filter(Boolean).join(", ")), ...(placed ? [paragraph(placed.shows, { size: SIZES.small, grey: true, after: 0 })] : [])],
          [big(metres(stand.distance)), small(stepsInWords(stand.steps))],
          [big(metres(stand.height)), small(stand.tilt === 0 ? stand.level : `${stand.level}, tilt ${tiltInWords(stand.tilt)}`)],
        ],
      }];
    }),
  });
}

/** Most sentences about what is in the way that a page gives room to; the screen shows them all. */
const MOST_PROBLEMS = 4;

/** The floor plan beside the marks; marks alone when none has a place on the floor. */
function whereToStand(episode: Episode, { block, shoot }: Station, rows: number): PaperNode[] {
  const { marks, kept } = shoot;
  if (marks.length === 0) return [];
  const floor = floorOf(episode, block);
  const many = marks.length > BESIDE;
  const plan = floorPlan(floor, many ? "across" : rows > FEW_ROWS ? "low" : "beside");
  const said = (text: string): PaperNode => paragraph(text, { size: SIZE.around, weight: "semibold", after: 2 });
  const stays = kept.map(({ camera, mark }) => said(`${episode.session.cameras > 1 ? `Camera ${camera}` : "The camera"} stays at ${marks.find(({ key }) => key === mark)?.letter ?? mark} from the station before: check its distance.`));
  const words = [
    marksTable(marks, floor),
    paragraph(holdInWords(episode, block, marks), { size: SIZE.around }),
    ...(floor.line.along === "walks" ? [said("Stand the tripod beside the lane, never in it.")] : []),
    ...stays, ...floor.problems.slice(0, MOST_PROBLEMS).map(said),
  ];
  if (plan && many) return [plan, spacer(4), ...words];
  return plan ? [columns([{ width: plan.width, children: [plan] }, { width: 511 - 18 - plan.width, children: words }])] : words;
}

const SPOKEN_KINDS: readonly Block["kind"][] = ["opening", "talk", "closing"];

/** Words that are spoken into the camera on the floor: in openings, talks and closings, and where a shot says so. */
function toCamera({ block, shoot }: Station): PaperNode[] {
  // Strokes between words are breaths for the voiceover; a person who looks into a camera takes their own.
  const says = linesOf(block, "say").map(({ text }) => text.replace(/\s+\/+\s+/g, " ").trim()).filter(Boolean);
  const isSpoken = SPOKEN_KINDS.includes(block.kind) || shoot.wants.some(({ shot }) => /\bto camera\b/i.test(shot.subject));
  if (!isSpoken || says.length === 0) return [];
  return [keepTogether([heading(3, "Say to camera"), ...says.map((text) => paragraph(text, { size: SIZE.text + 1.5, after: 3 }))]), spacer(4)];
}

/** What is going to be missing from this station, and what would mend it. */
function remedyWords(plan: ShootPlan, { shoot }: Station): PaperNode[] {
  const remedy = remedyIn(plan, shoot, countingIds("r"));
  return remedy ? [paragraph([{ text: "To mend it: ", weight: "semibold" }, { text: remedy.sentence }], { size: SIZE.around })] : [];
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

/** One station: where the camera stands, what is filmed set by set, and what to do when it is taken. @param atEnd - what stands below, on the last one */
export function stationSection(episode: Episode, plan: ShootPlan, station: Station, units: Episode["session"]["units"], atEnd: readonly PaperNode[] = []): Section {
  const { block, shoot, number } = station;
  const sets = setsOf(block, units);
  const rows = filmRows(shoot, sets.planned, units, episode.session.cameras);
  const name = blockName(block);
  return {
    startsPage: true,
    head: { left: runningTitle(episode), right: whenInWords(station) },
    children: [
      heading(1, name, { size: name.length > 40 ? 22 : SIZE.title }),
      ...schemes(sets),
      spacer(6),
      ...whereToStand(episode, station, rows.length),
      ...(shoot.marks.length === 0 ? [box("outline", [paragraph(`No shot planned for this block: ${insteadOf(block, rows)}`, { size: SIZE.sets, weight: "semibold", after: 0 })])] : []),
      spacer(6),
      ...toCamera(station),
      ...endedTogether((rows.length > 0 ? rows : [unplanned(block)]).map((row, at) => rowNode(row, `block${number}-row${at + 1}`, `${number}. ${name}`)), [...remedyWords(plan, station), ...planB(block)]),
      ...atEnd,
    ],
  };
}
