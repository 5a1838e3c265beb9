import { episodeClocks } from "../../clocks";
import { blockName, episodeName, linesOf, seriesName, type Block, type Episode } from "../../episode";
import { DEFAULT_PACE, speak, type BlockScreenClock, type Pace, type ScreenClock } from "../../speech";
import {
  box, columns, heading, keepTogether, keyValues, label, paragraph, spacer, table,
  type Paper, type PaperNode, type Run, type TableRow,
} from "../paper";
import { MARKED_BREATH, SUGGESTED_BREATH, breathRuns, counted, minutesSeconds, saidDifferently, wholeSeconds } from "./words";

/** Points: the words to be read from arm's length, what stands beside them, and what is only glanced at. */
const SIZE = { say: 15.5, number: 24, small: 10.5 } as const;
/** A difference smaller than this is no difference a cut can see; seconds. */
const NEAR = 0.5;

/** "28 s too long: cut about 70 words", "12 s of picture left", "fits". */
export function verdict(clock: BlockScreenClock): string {
  if (clock.clipSeconds === null) return "no clip length set";
  if (clock.overSeconds > NEAR) return `${wholeSeconds(clock.overSeconds)} too long: cut about ${counted(clock.wordsToCut, "word")}`;
  const left = clock.clipSeconds - clock.spoken.seconds;
  return left > NEAR ? `${wholeSeconds(left)} of picture left` : "fits";
}

/** The least the cell of a table needs. */
const words = (text: string, more: Partial<Run> = {}): PaperNode[] => [paragraph([{ text, ...more }])];

function totals(episode: Episode, clock: ScreenClock, pace: Pace): PaperNode[] {
  const spoken = clock.blocks.reduce((sum, block) => sum + block.spoken.seconds, 0);
  const said = clock.blocks.reduce((sum, block) => sum + block.spoken.words, 0);
  const off = clock.seconds - clock.targetSeconds;
  const against = Math.abs(off) <= NEAR ? "right on target" : off > 0 ? `${minutesSeconds(off)} over` : `${minutesSeconds(-off)} under`;
  const rate = spoken > 0 ? String(Math.round((said / spoken) * 60)) : "none";
  const figure = (name: string, number: string, below: string): PaperNode[] => [
    label(name),
    paragraph(number, { size: SIZE.number, weight: "bold", after: 0 }),
    paragraph(below, { size: SIZE.small, grey: true }),
  ];
  const speaking = clock.blocks.filter((block) => block.spoken.words > 0).length;
  return [
    columns([
      { width: 1, children: figure("Words", minutesSeconds(spoken), `${counted(said, "word")} in ${counted(speaking, "block")}`) },
      { width: 1, children: figure("Finished video", minutesSeconds(clock.seconds), `${against}, target ${minutesSeconds(clock.targetSeconds)}`) },
      { width: 1, children: figure("Pace, words a minute", rate, `pauses included, ${Number(pace.syllablesPerSecond.toFixed(2))} syllables a second`) },
    ]),
    spacer(6),
    heading(2, "How to read it"),
    keyValues([
      { key: "Breath", value: [{ text: MARKED_BREATH, weight: "bold", size: SIZE.say }, { text: "  where you marked one;  " }, { text: SUGGESTED_BREATH, grey: true, size: SIZE.say }, { text: "  where a stretch is long and one would fit. A full stop is a breath too." }] },
      { key: "At", value: "running time of the finished video where the line begins, if the words begin with their picture" },
      { key: "Takes", value: "how long the line takes at your pace" },
      { key: "Said", value: [{ text: "in grey below a line: figures and short forms as they are spoken", grey: true }] },
    ], { keyWidth: 110, size: SIZE.small }),
    spacer(6),
    ...overview(episode, clock),
  ];
}

function overview(episode: Episode, clock: ScreenClock): PaperNode[] {
  if (episode.blocks.length === 0) return [box("outline", [paragraph("This episode has no blocks yet, so there is nothing to say.")])];
  const rows = episode.blocks.map((block, at): TableRow => {
    const mine = clock.blocks[at];
    const over = (mine?.overSeconds ?? 0) > NEAR;
    return {
      cells: [
        words(String(at + 1)),
        words(blockName(block)),
        words(mine && mine.spoken.words > 0 ? wholeSeconds(mine.spoken.seconds) : "no words"),
        words(mine ? (mine.clipSeconds === null ? "not set" : wholeSeconds(mine.clipSeconds)) : ""),
        words(mine && mine.spoken.words > 0 ? verdict(mine) : "", over ? { weight: "bold" } : {}),
      ],
    };
  });
  return [
    heading(2, "Words against clips"),
    table({
      summary: "For each block: seconds of words, seconds of clip, and whether they fit",
      columns: [{ width: 0.5, head: "" }, { width: 4, head: "block" }, { width: 1.5, head: "words", align: "right" }, { width: 1.5, head: "clip", align: "right" }, { width: 4, head: "fit", align: "right" }],
      rows, rowHead: 1, size: SIZE.small, padding: 2.5,
    }),
  ];
}

/** What the viewer sees meanwhile, and how the block's scheme is spoken; paragraphs, so that every reader keeps them with the words. */
function beside(block: Block): PaperNode[] {
  const shots = linesOf(block, "shot").map((line) => line.text.trim()).filter(Boolean);
  const sets = block.sets.filter((line) => line.role === "working" && line.text.trim() !== "");
  const named = (name: string, runs: readonly Run[]): PaperNode =>
    paragraph([{ text: `${name}: `, weight: "semibold" }, ...runs], { size: SIZE.small, keepWithNext: true, after: 2 });
  return [
    named("On screen", [{ text: shots.length > 0 ? shots.join(" | ") : "no shot planned", grey: true }]),
    ...sets.map((line) => {
      const said = saidDifferently(line.text).join(" ");
      return named("Set line", [{ text: line.text.trim() }, ...(said === "" ? [] : [{ text: ` said: ${said}`, grey: true }])]);
    }),
  ];
}

/** A say line with where it begins, its words and how long they take; one row, so that a page turn never falls inside it. */
function sayRow(text: string, at: number, seconds: number, pace: Pace): TableRow {
  const said = saidDifferently(text);
  return {
    cells: [
      [paragraph(minutesSeconds(at), { size: SIZE.say })],
      [
        paragraph(breathRuns(text, pace), { size: SIZE.say, after: said.length > 0 ? 3 : 0 }),
        ...(said.length > 0 ? [paragraph([{ text: "said: ", weight: "semibold" }, { text: said.join(" ") }], { size: SIZE.small, grey: true, after: 0 })] : []),
      ],
      [paragraph(wholeSeconds(seconds), { size: SIZE.say, weight: "bold", align: "right" })],
    ],
  };
}

function blockNodes(block: Block, number: number, clock: BlockScreenClock, starts: number, pace: Pace): PaperNode[] {
  const title = heading(2, `${number}. ${blockName(block)}`, { size: 19 });
  const lines = linesOf(block, "say").map((line) => line.text.trim()).filter(Boolean);
  if (lines.length === 0) {
    const picture = clock.seconds > 0 ? `No words: ${wholeSeconds(clock.seconds)} of picture.` : "No words, and no picture yet.";
    return [keepTogether([title, paragraph(picture, { weight: "semibold" }), ...beside(block)])];
  }
  const over = clock.overSeconds > NEAR;
  const clip = clock.clipSeconds === null ? "" : `Clip ${wholeSeconds(clock.clipSeconds)}, `;
  const summary: Run[] = [
    { text: `${clip}${clip === "" ? "Words" : "words"} ${wholeSeconds(clock.spoken.seconds)}: ` },
    { text: `${verdict(clock)}.`, weight: "bold", ...(over ? { size: 14 } : {}) },
  ];
  let at = starts;
  const rows = lines.map((text) => {
    const { seconds } = speak(text, pace);
    const row = sayRow(text, at, seconds, pace);
    at += seconds + pace.sentenceSeconds;
    return row;
  });
  const script = table({
    summary: `What is said in ${blockName(block)}`,
    columns: [{ width: 52, head: "at" }, { width: 412, head: "say" }, { width: 48, head: "takes", align: "right" }],
    rows, rowHead: null, padding: 6,
  });
  const lead = [title, paragraph(summary, { size: 12, keepWithNext: true, after: 3 }), ...beside(block)];
  // One line: all of it on one page. Several: the table may break between them.
  return rows.length === 1 ? [keepTogether([...lead, script])] : [...lead, script];
}

/**
 * The voiceover script of an episode: each say line large, with its breaths, its seconds and where it begins; totals, pace and
 * legend first. Notes, cues and cautions stay out.
 * @param pace - the speaker's own, or the default
 */
export function voiceoverPaper(episode: Episode, pace: Pace = DEFAULT_PACE): Paper {
  const clock = episodeClocks(episode, pace).screen;
  const series = seriesName(episode);
  const left = [series, episodeName(episode)].filter(Boolean).join(": ");
  let starts = 0;
  const blocks = episode.blocks.flatMap((block, index) => {
    const mine = clock.blocks[index];
    if (!mine) return [];
    const nodes = blockNodes(block, index + 1, mine, starts, pace);
    starts += mine.seconds;
    return [...nodes, spacer(10)];
  });
  const front: PaperNode[] = [
    heading(1, episodeName(episode)),
    paragraph(`Voiceover script${series === "" ? "" : `, ${series}`}`, { size: 13, grey: true, after: 10 }),
    ...totals(episode, clock, pace),
  ];
  return {
    title: `${episodeName(episode)}: voiceover`,
    author: episode.series.coach.trim(),
    subject: `Voiceover script${series === "" ? "" : ` of ${series}`}`,
    language: "en-GB",
    foot: "Read it aloud once before you record. Promise only what is on screen.",
    sections: [
      { startsPage: true, head: { left, right: "Voiceover" }, children: front },
      ...(blocks.length > 0 ? [{ startsPage: true, head: { left, right: "Voiceover" }, children: blocks }] : []),
    ],
  };
}
