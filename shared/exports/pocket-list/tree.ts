import { blockName, episodeName, seriesName, type Episode, type Units } from "../../episode";
import { floorOf, metres, standOf, stepsInWords, type BlockFloor, type Mark } from "../../filming";
import { shootPlan } from "../../shoot-plan";
import { drawing, heading, keepTogether, paragraph, rule, spacer, table, type Paper, type PaperNode, type Section } from "../paper";
import { clockTime, dateInWords, shorten } from "../shot-list/measures";
import { filmRows, type FilmRow } from "../shot-list/rows";
import { setsOf } from "../shot-list/sets";
import type { Station } from "../shot-list/station";
import { stationsOf } from "../shot-list/tree";

/** How the list is set: points, and characters of what may be shortened. */
export interface PocketSize {
  readonly title: number;
  readonly block: number;
  readonly number: number;
  readonly text: number;
  readonly padding: number;
  readonly gap: number;
  readonly see: number;
  /** Sets on which nothing new is filmed stand together on one line. */
  readonly together: boolean;
}

/** From roomy to tight. Smaller type than the last is not read at arm's length. */
export const POCKET_SIZES: readonly [PocketSize, ...PocketSize[]] = [
  { title: 17, block: 12.5, number: 12.5, text: 9.5, padding: 2, gap: 7, see: 64, together: false },
  { title: 15, block: 11.5, number: 11, text: 9, padding: 1.2, gap: 4, see: 48, together: true },
  { title: 13, block: 10.5, number: 10, text: 9, padding: 0.6, gap: 2, see: 40, together: true },
];

/** Characters of a block's name on a quarter sheet. */
const NAME_ROOM = 30;

/** A square to tick with a pen. */
const square = (size: number): PaperNode => drawing({ width: size + 1, height: size + 1, shapes: [{ shape: "rect", x: 1, y: 1.5, w: size - 1.5, h: size - 1.5, width: 1 }], alt: "box to tick" });

/** "A side, full: 2.0 m (2½ steps), lens 0.7 m (thigh)" */
function markLine(mark: Mark, floor: BlockFloor, size: PocketSize): PaperNode {
  const stand = standOf(floor, mark);
  const view = [mark.angle ?? "any angle", mark.size === mark.angle ? "" : mark.size ?? ""].filter(Boolean).join(", ");
  return paragraph([
    { text: `${mark.letter} `, weight: "bold", size: size.number }, { text: `${view}: ` },
    { text: metres(stand.distance), weight: "bold", size: size.number }, { text: ` ${stepsInWords(stand.steps)}, lens ` },
    { text: metres(stand.height), weight: "bold", size: size.number }, { text: ` ${stand.level}` },
  ], { size: size.text, after: 0.5 });
}

/** What a row shows in the words that fit: "A: the whole arm path. Then to B." */
function rowWords({ title, see, then, label }: FilmRow, size: PocketSize): PaperNode[] {
  const letters = title.replace(/^No set films /, "").replace(/Camera (\d): ([A-Z]+)[^+]*/g, "$1 at $2 ").replace(/^([A-Z]+),.*$/, "$1").trim();
  const next = then === null ? "" : ` Then ${then.replace(/^Then move (?:the camera )?/, "").replace(/:.*$/, "")}.`;
  const said = title === "" ? "spare take" : label === "Lost" ? (see[0] ?? "") : see.join(" ");
  return [paragraph([
    ...(letters === "" ? [] : [{ text: `${letters}  `, weight: "bold" as const }]), { text: shorten(said, size.see) }, ...(next === "" ? [] : [{ text: next, weight: "semibold" as const }]),
  ], { size: size.text, after: 0 })];
}

/** Rows of a block; those without a shot and without a move stand together where room is short. */
function rowsTable(rows: readonly FilmRow[], of: string, size: PocketSize): PaperNode {
  const isSpare = ({ title, then }: FilmRow): boolean => size.together && title === "" && then === null;
  const spare = rows.filter(isSpare);
  const bold = (text: string): PaperNode => paragraph(text, { size: size.text, weight: "semibold", after: 0 });
  return table({
    summary: `Sets of ${of}: tick, set, and what is filmed from which mark`,
    columns: [{ width: 13, head: "" }, { width: 36, head: "" }, { width: 199, head: "" }],
    rowHead: 1, size: size.text, padding: size.padding,
    rows: [
      ...rows.filter((row) => !isSpare(row)).map((row) => ({ cells: [[square(size.text)], [bold(row.label)], rowWords(row, size)] })),
      ...(spare.length === 0 ? [] : [{ cells: [[square(size.text)], [bold("Spare")], [paragraph(`${spare.map(({ label }) => label).join(", ")}: nothing new`, { size: size.text, after: 0 })]] }]),
    ],
  });
}

function blockNodes(episode: Episode, station: Station, units: Units, size: PocketSize): PaperNode[] {
  const { block, shoot, number, from } = station;
  const { time } = episode.session;
  const at = time === null ? `minute ${Math.round(from / 60)}` : clockTime(time, from);
  const rows = filmRows(shoot, setsOf(block, units).planned, units, episode.session.cameras);
  const floor = floorOf(episode, block);
  const taken = block.alternates.map(({ text }) => text.trim()).find(Boolean);
  const all: PaperNode[] = [
    heading(2, `${number}  ${shorten(blockName(block), NAME_ROOM)}${size.together ? `, ${at}` : ""}`, { size: size.block }),
    ...(size.together ? [] : [paragraph([at, station.shoot.station].filter(Boolean).join(", "), { size: size.text, grey: true, after: 0.5 })]),
    ...shoot.marks.map((mark) => markLine(mark, floor, size)),
    rows.length === 0
      ? paragraph(block.kind === "closing" ? "No shot planned: film your last words to camera all the same." : "No shot planned.", { size: size.text, weight: "semibold", after: 0 })
      : rowsTable(rows, blockName(block), size),
    ...(taken ? [paragraph([{ text: "Taken? ", weight: "semibold" }, { text: shorten(taken, size.see) }], { size: size.text, after: 0 })] : []),
  ];
  // A short block stays whole where there is room; else it goes on to the next panel after its marks.
  return !size.together && rows.length + shoot.marks.length <= 9 ? [keepTogether(all), spacer(size.gap)] : [...all, spacer(size.gap)];
}

/** The front: what, when, where. */
function front(episode: Episode, stations: readonly Station[], size: PocketSize): PaperNode[] {
  const { date, time, place, slotMinutes } = episode.session;
  const { moves, lost } = shootPlan(episode);
  const series = seriesName(episode);
  const line = (text: string, bold = false): PaperNode => paragraph(text, { size: size.text, after: 0.5, ...(bold ? { weight: "semibold" as const } : {}) });
  return [
    heading(1, shorten(episodeName(episode), 40), { size: size.title }),
    ...(series === "" ? [] : [paragraph(shorten(series, 50), { size: size.text, grey: true, after: 1 })]),
    line([time ?? "", date === null ? "" : dateInWords(date)].filter(Boolean).join(", ") || "Day not set", true),
    ...(place.trim() === "" ? [] : [line(shorten(place.trim(), 50))]),
    line(`${Math.round((stations.at(-1)?.to ?? 0) / 60)} of ${slotMinutes} min on the floor, ${moves} camera ${moves === 1 ? "move" : "moves"}${lost.length > 0 ? `, ${lost.length} ${lost.length === 1 ? "shot" : "shots"} lost` : ""}.`),
    line("Ask at the desk and the people next to you before you film."),
    rule("hair"), spacer(size.gap),
  ];
}

/** What is done last, behind everything. */
function leaving(stations: readonly Station[], size: PocketSize): PaperNode {
  const hasClosing = stations.some(({ block, shoot }) => block.kind === "closing" && shoot.wants.length > 0);
  const last = [
    hasClosing ? "Closing shot: in the box?" : "CLOSING SHOT: none is planned. Film one to camera.", "30 s of room tone, nobody speaking", "A still for the thumbnail", "Every set ticked, loads written down", "Tape off the floor, weights back",
  ];
  return keepTogether([
    rule("heavy"), spacer(2),
    heading(2, "Before you leave", { size: size.block }),
    table({
      summary: "What is done before you leave: tick, and what", columns: [{ width: 13, head: "" }, { width: 235, head: "" }], rowHead: 1, padding: size.padding,
      rows: last.map((text, at) => ({ cells: [[square(size.text)], [paragraph(text, { size: size.text, after: 0, ...(at === 0 ? { weight: "bold" as const } : {}) })]] })),
    }),
  ]);
}

/**
 * The shot list for a pocket: a sheet folded twice, with every mark's steps and height and a box for every set.
 * @param size - one of `POCKET_SIZES`
 */
export function pocketListPaper(episode: Episode, units: Units = episode.session.units, size: PocketSize = POCKET_SIZES[0]): Paper {
  const stations = stationsOf(episode);
  const section: Section = {
    startsPage: true, head: null,
    children: [...front(episode, stations, size), ...stations.flatMap((station) => blockNodes(episode, station, units, size)), leaving(stations, size)],
  };
  return {
    title: `${episodeName(episode)}: pocket list`, author: episode.series.coach.trim(), subject: "Pocket shot list, to be folded twice", language: "en-GB", folded: true,
    foot: "Sharp pain: stop the set.", sections: [section],
  };
}
