import { episodeClocks } from "../../clocks";
import { episodeName, seriesName, type Episode } from "../../episode";
import { paceOf, type MeasuredSeconds, type Pace, type ScreenClock } from "../../speech";
import {
  box, columns, heading, keepTogether, keyValues, label, paragraph, spacer, table,
  type Paper, type PaperNode, type Run, type TableRow, type Text,
} from "../paper";
import { scriptOf, type ScriptBlock, type ScriptRow } from "./script";
import { shortened } from "./key-words";
import { MARKED_BREATH, NEAR, SUGGESTED_BREATH, beginning, breathRuns, counted, fitOf, minutesSeconds, runsOver, wholeSeconds } from "./words";

/** Points: the words to be read from arm's length, totals, what stands beside the words, and what is only glanced at. */
const SIZE = { say: 17, number: 24, small: 10.5, beside: 9.5 } as const;
/** Columns of the script: the left margin for time, words of about forty letters a line, the right margin for the picture and a pencil. */
const WIDTH = { time: 62, words: 336, beside: 114 } as const;
/** Characters of a time the left margin holds, and what it needs more for one with hours. */
const LONGEST_TIME = 5;
const HOURS = 14;
/** Lets the first line of the small type in the margins stand level with the large words. */
const LEVEL = 7.5;

/** The least the cell of a table needs. */
const words = (text: string, more: Partial<Run> = {}): PaperNode[] => [paragraph([{ text, ...more }], { style: "Overview" })];

function totals(clock: ScreenClock, pace: Pace): PaperNode {
  const spoken = clock.blocks.reduce((sum, block) => sum + block.spoken.seconds, 0);
  const said = clock.blocks.reduce((sum, block) => sum + block.spoken.words, 0);
  const off = clock.seconds - clock.targetSeconds;
  const against = Math.abs(off) <= NEAR ? "right on target" : off > 0 ? `${minutesSeconds(off)} over` : `${minutesSeconds(-off)} under`;
  const figure = (name: string, number: string, below: string): PaperNode[] => [
    label(name),
    paragraph(number, { size: SIZE.number, weight: "bold", after: 0 }),
    paragraph(below, { size: SIZE.small, grey: true }),
  ];
  const speaking = clock.blocks.filter((block) => block.spoken.words > 0).length;
  const video = { width: 1, children: figure("Finished video", minutesSeconds(clock.seconds), `${against}, target ${minutesSeconds(clock.targetSeconds)}`) };
  if (said === 0) return columns([{ width: 1, children: figure("Words", "none", "nothing is said in this episode") }, video, { width: 1, children: [] }]);
  return columns([
    { width: 1, children: figure("Words", minutesSeconds(spoken), `${counted(said, "word")} in ${counted(speaking, "block")}`) },
    video,
    { width: 1, children: figure("Pace, words a minute", String(Math.round((said / spoken) * 60)), `pauses included, ${Number(pace.syllablesPerSecond.toFixed(2))} syllables a second`) },
  ]);
}

/** How to read the rows there are; what stands in none of them is not explained. */
function legend(script: readonly ScriptBlock[]): PaperNode[] {
  const rows = script.flatMap((block) => block.rows);
  if (rows.length === 0) return [];
  const isLate = rows.some((row) => beginning(row).startsWith("+"));
  const isOver = rows.some((row) => runsOver(row) !== "");
  const runs = rows.flatMap((row) => breathRuns(row.segments));
  const leans = runs.some((run) => run.weight === "bold" && run.text.trim() !== MARKED_BREATH);
  const pairs: { key: string; value: Text }[] = [
    { key: "Breath", value: [{ text: MARKED_BREATH, weight: "bold" }, { text: " where you marked one, counted in the seconds; " }, { text: SUGGESTED_BREATH, weight: "bold" }, { text: " where a stretch is long and one would fit, not counted. A full stop is a breath too." }] },
    ...(leans ? [{ key: "Bold", value: "words you lean on: typed between stars, as in *slowly*" }] : []),
    {
      key: "Left",
      value: `running time of the finished video when the sentence begins, and the seconds it takes at your pace${rows.some((row) => row.isMeasured) ? "; measured: as long as in your take of these words" : ""}; the pauses between sentences are in the block’s seconds only`,
    },
    ...(isLate ? [{ key: "+3\u00a0s", value: "begins 3\u00a0s after its clip has ended, so it has no place in the video yet" }] : []),
    ...(isOver ? [{ key: "Over", value: "runs 3\u00a0s over: begins on its clip and ends 3\u00a0s after it" }] : []),
    ...(rows.some(({ shots }) => shots.length > 0) ? [{ key: "Right", value: "what is on screen from there on, if the shots follow each other in their order" }] : []),
    ...(rows.some((row) => row.pronounced.length > 0) ? [{ key: "Say", value: "below a sentence: figures, short forms and names as they are spoken" }] : []),
  ];
  return [heading(2, "How to read it"), keyValues(pairs, { keyWidth: 62, size: SIZE.small })];
}

/** Characters of a name in the overview: two lines of its column, or one where the blocks are many. In its block it stands in full. */
const nameRoom = (blocks: number): number => (blocks > 20 ? 36 : 70);

function overview(blocks: readonly ScriptBlock[]): PaperNode[] {
  if (blocks.length === 0) return [box("outline", [paragraph("This episode has no blocks yet, so there is nothing to say.")])];
  const rows = blocks.map(({ number, name, clock, starts }): TableRow => {
    const speaks = clock.spoken.words > 0;
    const fit = fitOf(clock);
    return {
      cells: [
        words(String(number)),
        words(shortened(name, nameRoom(blocks.length))),
        words(minutesSeconds(starts)),
        words(speaks ? fit.words : "no words"),
        words(fit.clip ?? "not set"),
        words(speaks ? fit.verdict.replace(/(?<=: ).*/, (cut) => cut.replace(/ /g, "\u00a0")) : "", fit.over === "" ? {} : { weight: "bold" }),
      ],
    };
  });
  return [
    heading(2, "Words against clips"),
    table({
      summary: "For each block: when it begins, seconds of words, seconds of clip, and whether they fit",
      columns: [{ width: 18, head: "" }, { width: 204, head: "block" }, { width: 42, head: "at", align: "right" }, { width: 50, head: "words", align: "right" }, { width: 44, head: "clip", align: "right" }, { width: 140, head: "fit", align: "right" }],
      rows, rowHead: 1, size: SIZE.small, padding: 2.5,
    }),
  ];
}

const named = (name: string, text: string): PaperNode =>
  paragraph([{ text: `${name}  `, weight: "semibold" }, { text, grey: true }], { size: SIZE.small, keepWithNext: true, after: 2, style: "Block notes" });

const onScreen = (shots: readonly string[]): PaperNode[] =>
  shots.length === 0 ? [] : [spacer(LEVEL), ...shots.map((shot, at) => paragraph(shot, { style: "Shot", size: SIZE.beside, grey: true, after: at < shots.length - 1 ? 4 : 0 }))];

/** A sentence with its time, its words and what is seen; one row, so that a page turn never falls inside it. */
function sayRow(row: ScriptRow): TableRow {
  const said = row.pronounced.map(({ written, said: spoken }) => `${written}: ${spoken}`).join("; ");
  return {
    goesOn: !row.endsLine,
    cells: [
      [
        paragraph(beginning(row), { style: "Running time", size: SIZE.say, weight: "semibold", after: 0 }),
        paragraph(wholeSeconds(row.seconds), { style: "Seconds", size: SIZE.small, grey: true, after: 0 }),
        ...(runsOver(row) === "" ? [] : [paragraph(runsOver(row), { style: "Runs over", size: SIZE.beside, weight: "semibold", after: 0 })]),
        ...(row.isMeasured ? [paragraph("measured", { style: "Measured", size: SIZE.beside, grey: true, after: 0 })] : []),
      ],
      [
        paragraph(breathRuns(row.segments), { style: "Spoken words", size: SIZE.say, after: said === "" ? 0 : 2 }),
        ...(said === "" ? [] : [paragraph([{ text: "say  ", weight: "semibold" }, { text: said }], { style: "Read-out", size: SIZE.small, grey: true, after: 0 })]),
      ],
      onScreen(row.shots),
    ],
  };
}

function blockNodes(script: ScriptBlock): PaperNode {
  const { block, name, number, clock, rows, restShots } = script;
  const title = heading(2, `${number}. ${name}`, { size: 19 });
  const sets = block.sets.filter((line) => line.role === "working" && line.text.trim() !== "").map((line) => line.text.trim());
  const beside = sets.length > 0 ? [named("Sets", sets.join("; "))] : [];
  if (rows.length === 0) {
    const picture = clock.seconds > 0 ? `No words: ${wholeSeconds(clock.seconds)} of picture.` : "No words, and no picture yet.";
    return keepTogether([title, paragraph([{ text: picture, weight: "semibold" }], { style: "Block fit", size: 12, after: 3 }), ...beside, ...(restShots.length > 0 ? [named("On screen", restShots.join("\u00a0| "))] : [])]);
  }
  const fit = fitOf(clock);
  const wider = rows.some((row) => beginning(row).length > LONGEST_TIME) ? HOURS : 0;
  const summary: Run[] = [
    { text: fit.clip === null ? `Words ${fit.words}: ` : `Clip ${fit.clip}, words ${fit.words}: ` },
    { text: `${fit.verdict}.`, weight: "bold", ...(fit.over === "" ? {} : { size: 14 }) },
  ];
  return keepTogether([
    title, paragraph(summary, { style: "Block fit", size: 12, keepWithNext: true, after: 3 }), ...beside,
    table({
      summary: `What is said in ${name}`,
      columns: [{ width: WIDTH.time + wider, head: "at" }, { width: WIDTH.words - wider, head: "say" }, { width: WIDTH.beside, head: rows.some(({ shots }) => shots.length > 0) ? "on screen" : "" }],
      rows: rows.map(sayRow), rowHead: null, padding: 4.5,
    }),
    ...(restShots.length > 0 ? [named("Then on screen", restShots.join("\u00a0| "))] : []),
  ]);
}

/**
 * The voiceover script of an episode: each sentence large, with its breaths, its seconds and where it begins; totals, pace and
 * legend first. A block stays on one page where one holds it. Notes, cues and cautions stay out.
 * @param pace - the speaker's own, or what the series knows of it
 * @param measured - lines that were read and timed
 */
export function voiceoverPaper(episode: Episode, pace: Pace = paceOf(episode), measured?: MeasuredSeconds): Paper {
  const clock = episodeClocks(episode, pace, measured).screen;
  const script = scriptOf(episode, pace, measured);
  const series = seriesName(episode);
  const head = { left: [series, episodeName(episode)].filter(Boolean).join(": "), right: "Voiceover" };
  const front: PaperNode[] = [
    heading(1, episodeName(episode)),
    paragraph(`Voiceover script${series === "" ? "" : `, ${series}`}`, { size: 13, grey: true, after: 10 }),
    totals(clock, pace), spacer(6), ...legend(script), spacer(6), ...overview(script),
  ];
  const blocks = script.flatMap((block) => [blockNodes(block), spacer(12)]);
  return {
    title: `${episodeName(episode)}: voiceover`,
    author: episode.series.coach.trim(),
    subject: `Voiceover script${series === "" ? "" : ` of ${series}`}`,
    language: "en-GB",
    foot: "Read it aloud once before you record. Promise only what is on screen.",
    sections: [{ startsPage: true, head, children: front }, ...(blocks.length > 0 ? [{ startsPage: true, head, children: blocks }] : [])],
  };
}
