import { episodeName, seriesName, type Episode } from "../../episode";
import { paceOf, type MeasuredSeconds, type Pace } from "../../speech";
import { GUTTER, box, heading, paragraph, spacer, table, type Paper, type PaperNode, type Run, type TableColumn } from "../paper";
import { keyWords, shortened } from "./key-words";
import { scriptOf, type ScriptBlock } from "./script";
import { fitOf, minutesSeconds, wholeSeconds } from "./words";

/** How a card is set: in points, and in characters of what may be left out. From roomy to tight. */
export interface CardSize {
  readonly name: number;
  readonly keys: number;
  readonly seconds: number;
  readonly padding: number;
  /** Characters of the key words and of a block's name. */
  readonly keyRoom: number;
  readonly nameRoom: number;
  /** Key words below the name, or beside it on the same line. */
  readonly below: boolean;
  readonly columns: 1 | 2;
}

export const CARD_SIZES: readonly CardSize[] = [
  { name: 26, keys: 19, seconds: 34, padding: 13, keyRoom: 220, nameRoom: 90, below: true, columns: 1 },
  { name: 20, keys: 15, seconds: 26, padding: 9, keyRoom: 150, nameRoom: 90, below: true, columns: 1 },
  { name: 17, keys: 13, seconds: 22, padding: 6, keyRoom: 100, nameRoom: 60, below: true, columns: 1 },
  { name: 16, keys: 12, seconds: 20, padding: 4.5, keyRoom: 100, nameRoom: 56, below: true, columns: 1 },
  { name: 14, keys: 11, seconds: 17, padding: 4, keyRoom: 60, nameRoom: 50, below: true, columns: 1 },
  { name: 13, keys: 11.5, seconds: 16, padding: 4.5, keyRoom: 46, nameRoom: 30, below: false, columns: 1 },
  { name: 11.5, keys: 10, seconds: 13, padding: 3.5, keyRoom: 46, nameRoom: 30, below: false, columns: 1 },
  { name: 10.5, keys: 9, seconds: 11.5, padding: 2.5, keyRoom: 30, nameRoom: 26, below: true, columns: 2 },
  { name: 9, keys: 8.5, seconds: 10, padding: 4, keyRoom: 15, nameRoom: 22, below: false, columns: 2 },
  { name: 9, keys: 8.5, seconds: 10, padding: 2, keyRoom: 15, nameRoom: 22, below: false, columns: 2 },
];

/** Blocks of one card; more stand on the next, for nobody finds a place in smaller type. */
const MOST = 64;

/** Fewer characters hold no key word worth reading. */
const LEAST_KEYS = 5;

/** Where no part of what is said can stand alone: all of it hangs on one "not", or there is nothing to remember in it. */
const UNFOUND = "read it from the script";

/** Lets words of two sizes stand on one line: letters hang about their own size below the top of theirs. */
const level = (size: CardSize): PaperNode => spacer(Math.max(0.5, size.seconds - size.name));

const takes = ({ clock, rows }: ScriptBlock): string => (rows.length > 0 ? wholeSeconds(clock.spoken.seconds) : "–");

function cells(script: ScriptBlock, size: CardSize): PaperNode[][] {
  const { block, number, name, starts, clock, rows } = script;
  const speaks = rows.length > 0;
  const { over } = fitOf(clock);
  const late = over === "" ? "" : `${over} too long`;
  // On one line with the name, a warning takes the room of the key words.
  const room = size.below ? size.keyRoom : size.keyRoom - late.length;
  const found = speaks && room >= LEAST_KEYS ? keyWords(block, room) : "";
  const keys = !speaks ? "no words" : found === "" && room >= UNFOUND.length ? UNFOUND : found;
  const title: Run[] = [{ text: shortened(name, size.nameRoom), weight: "bold", size: size.name }];
  const warning: Run[] = late !== "" ? [{ text: `  ${late}`, weight: "semibold", size: size.keys }] : [];
  const soft = speaks && keys !== UNFOUND ? {} : { grey: true };
  const named: PaperNode[] = size.below
    ? [paragraph([...title, ...warning], { style: "Block name", size: size.name, weight: "bold", after: 1 }), paragraph(keys, { style: "Key words", size: size.keys, after: 0, ...soft })]
    : [paragraph([...title, ...warning, { text: `  ${keys}`, ...soft }], { style: "Key words", size: size.keys, after: 0 })];
  return [
    [level(size), paragraph(String(number), { style: "Block number", size: size.name, after: 0 })],
    [level(size), ...named],
    [paragraph(takes(script), { style: "Seconds", size: size.seconds, weight: "bold", after: 0 })],
    ...(hasStart(size) ? [[level(size), paragraph(minutesSeconds(starts), { style: "Running time", size: size.name, after: 0 })]] : []),
  ];
}

/** The tightest card has no room for when a block begins. */
const hasStart = (size: CardSize): boolean => size.below || size.columns === 1;
/** Width of a page's text, and the gap between two columns of blocks; points. Other paper stretches them. */
const ROOM = { page: 511, middle: 8 } as const;

/** Widest a time or a number of seconds can stand, in sizes of its type, in ours and in what a word processor puts in its place: figures are all of one width. */
const ems = (text: string): number => Array.from(text).reduce((sum, sign) => sum + (/\d/.test(sign) ? 0.7 : sign === "s" ? 0.62 : 0.4), 0);
const widest = (texts: readonly string[]): number => Math.max(0, ...texts.map(ems));

/** Columns as wide as the longest of their figures, for one that wraps costs every block a line. */
function cardColumns(blocks: readonly ScriptBlock[], size: CardSize): TableColumn[] {
  const number = size.name * 1.4 + 7;
  const seconds = Math.max(36, size.seconds * widest(["10 s", ...blocks.map(takes)]) + 4);
  const start = hasStart(size) ? size.name * Math.max(2.7, widest(blocks.map(({ starts }) => minutesSeconds(starts)))) + 4 : 0;
  const gutters = GUTTER * (start > 0 ? 3 : 2);
  const whole = size.columns === 1 ? ROOM.page : (ROOM.page - ROOM.middle - 2 * GUTTER) / 2;
  return [
    { width: number, head: "" }, { width: whole - gutters - number - seconds - start, head: "block and key words" }, { width: seconds, head: "takes", align: "right" },
    ...(start > 0 ? [{ width: start, head: "at", align: "right" as const }] : []),
  ];
}

/** Two columns of blocks are one wide table: tables inside a table are torn apart by some programs. */
function cardTable(blocks: readonly ScriptBlock[], size: CardSize): PaperNode {
  const summary = `For each block: its name and key words, seconds of words${hasStart(size) ? ", and when it begins" : ""}`;
  const one = cardColumns(blocks, size);
  if (size.columns === 1) return table({ summary, columns: one, rows: blocks.map((block) => ({ cells: cells(block, size) })), rowHead: 1, padding: size.padding });
  const half = Math.ceil(blocks.length / 2);
  return table({
    summary, columns: [...one, { width: ROOM.middle, head: "" }, ...one], rowHead: 1, padding: size.padding,
    rows: blocks.slice(0, half).map((block, at) => {
      const right = blocks[half + at];
      return { cells: [...cells(block, size), [], ...(right ? cells(right, size) : [])] };
    }),
  });
}

/**
 * A card to speak from without a script: a name per block, its key words and its seconds, on one page where one can hold them.
 * @param size - one of `CARD_SIZES`
 * @param spare - points to leave free at the end, for a format whose lines may break elsewhere
 * @param measured - lines that were read and timed
 */
export function cueCardPaper(episode: Episode, size: CardSize, pace: Pace = paceOf(episode), spare = 0, measured?: MeasuredSeconds): Paper {
  const script = scriptOf(episode, pace, measured);
  const series = seriesName(episode);
  const name = episodeName(episode);
  const spoken = script.reduce((sum, { clock }) => sum + clock.spoken.seconds, 0);
  const video = script.reduce((sum, { clock }) => sum + clock.seconds, 0);
  const parts = Array.from({ length: Math.ceil(script.length / MOST) }, (_, at) => script.slice(at * MOST, (at + 1) * MOST));
  const head: PaperNode[] = [
    heading(1, shortened(name, 70), { size: size.columns === 1 ? 24 : 16 }),
    paragraph(`${series === "" ? "" : `${shortened(series, 60)}. `}Words ${minutesSeconds(spoken)}, video ${minutesSeconds(video)} of ${minutesSeconds(episode.video.targetSeconds)}.`, { size: size.columns === 1 ? 12 : 9.5, grey: true, after: 6 }),
  ];
  const children = script.length === 0 ? [box("outline", [paragraph("This episode has no blocks yet, so there is nothing to say.")])] : null;
  return {
    title: `${name}: cue card`,
    author: episode.series.coach.trim(),
    subject: `Cue card${series === "" ? "" : ` of ${series}`}`,
    language: "en-GB",
    foot: "Key words, not a script: say the safety lines in full.",
    sections: children ? [{ startsPage: true, head: null, children: [...head, ...children] }] : parts.map((blocks, at) => ({
      startsPage: true, head: null, children: [...(at === 0 ? head : []), cardTable(blocks, size), ...(spare > 0 ? [spacer(spare), paragraph("\u00a0", { size: 4, after: 0 })] : [])],
    })),
  };
}
