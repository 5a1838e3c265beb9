import { linesOf, memoOn, type Block } from "../../shared/episode";
import { shotSeconds } from "../../shared/filming";
import { breaths, saidWords, screenClock, speak, spokenLines, spokenSeconds, type BlockScreenClock, type Pace, type Segment } from "../../shared/speech";

/** A word and when it is spoken; seconds. */
export interface PlacedWord {
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

/** A pause inside a line: after which of its words, when and how long. Seconds. */
export interface PlacedBreath {
  readonly afterWord: number;
  readonly from: number;
  readonly to: number;
  readonly why: "marked" | "sentence" | "suggested";
}

/** What is said in one breath, from the first word to the last; seconds. */
export interface PlacedStretch {
  readonly firstWord: number;
  readonly endWord: number;
  readonly from: number;
  readonly to: number;
}

/** A say line with its words set where they are spoken, counted from its own first word; seconds. */
export interface PlacedLine {
  readonly line: string;
  readonly text: string;
  readonly seconds: number;
  readonly words: readonly PlacedWord[];
  readonly breaths: readonly PlacedBreath[];
  readonly stretches: readonly PlacedStretch[];
}

/** The words of a text as written, breath marks left out. */
export const wordsOf = (text: string): string[] => text.split(/\s+/).filter((word) => word !== "" && word !== "/");

/** Silence between a segment and the next that has a sound; marks by themselves are not heard and ask for none. */
function pauseAfter(segment: Segment, isMoreToCome: boolean, pace: Pace): number {
  if (segment.breathAfter === null || segment.seconds <= 0 || !isMoreToCome) return 0;
  if (segment.breathAfter === "sentence") return pace.sentenceSeconds;
  const closing = /[.!?…]['"’”)]*$/.test(segment.text) ? pace.sentenceSeconds : /[,;:]['"’”)]*$/.test(segment.text) ? pace.commaSeconds : 0;
  return segment.breathAfter === "marked" ? Math.max(pace.breathSeconds, closing) : closing;
}

/** How long each written word takes and is silent after; figures are said in more words than one, so those are spoken by themselves. */
function wordLengths(text: string, words: readonly string[], pace: Pace): { seconds: number; pause: number }[] {
  const said = saidWords(text, pace);
  if (said.length === words.length) return said.map(({ seconds, pauseSeconds }) => ({ seconds, pause: pauseSeconds }));
  return words.map((word) => ({ seconds: speak(word, pace).seconds, pause: /[,;:]['"’”)]*$/.test(word) ? pace.commaSeconds : 0 }));
}

/** The words of one stretch, which share `seconds` by what each takes; a comma holds its pause. */
function placeWords(stretch: string, from: number, seconds: number, pace: Pace): PlacedWord[] {
  const words = wordsOf(stretch);
  const lengths = wordLengths(stretch, words, pace);
  const total = lengths.reduce((sum, { seconds: own, pause }, i) => sum + own + (i < lengths.length - 1 ? pause : 0), 0);
  const scale = total > 0 ? seconds / total : 0;
  let at = from;
  return words.map((text, i) => {
    const length = lengths[i] ?? { seconds: 0, pause: 0 };
    const word = { text, from: at, to: at + length.seconds * scale };
    at += (length.seconds + length.pause) * scale;
    return word;
  });
}

function placeLine(line: string, text: string, pace: Pace): PlacedLine {
  const { seconds } = speak(text, pace);
  const segments = breaths(text, pace).filter((segment) => wordsOf(segment.text).length > 0);
  const lastSound = segments.findLastIndex((segment) => segment.seconds > 0);
  const silences = segments.map((segment, i) => pauseAfter(segment, i < lastSound, pace));
  const silence = silences.reduce((sum, pause) => sum + pause, 0);
  const said = segments.reduce((sum, segment) => sum + segment.seconds, 0);
  // Pieces said alone need not add up to the whole to the last syllable; the line's own seconds count.
  const stretch = said > 0 && seconds > silence ? (seconds - silence) / said : 1;
  const words: PlacedWord[] = [];
  const pauses: PlacedBreath[] = [];
  const stretches: PlacedStretch[] = [];
  let at = 0;
  for (const [i, segment] of segments.entries()) {
    const firstWord = words.length;
    const to = at + segment.seconds * stretch;
    words.push(...placeWords(segment.text, at, segment.seconds * stretch, pace));
    stretches.push({ firstWord, endWord: words.length, from: at, to });
    at = to + (silences[i] ?? 0);
    if (segment.breathAfter !== null && i < segments.length - 1) pauses.push({ afterWord: words.length - 1, from: to, to: at, why: segment.breathAfter });
  }
  return { line, text, seconds, words, breaths: pauses, stretches };
}

/** One block's seconds and where they come from. */
export function blockScreen(block: Block, pace: Pace): BlockScreenClock {
  const [screen] = screenClock({ blocks: [block], video: { targetSeconds: 0 } }, shotSeconds, pace).blocks;
  if (!screen) throw new Error(`blockScreen: no answer for ${block.id}`);
  return screen;
}

/** Kept per pace and line object, so typing in one line places only that line again. */
const lineAt = memoOn((pace: Pace) => memoOn((line: Block["lines"][number]): PlacedLine => placeLine(line.id, line.text, pace)));

/** The say lines of a block, each placed by itself. */
export function placedLines(block: Block, pace: Pace): PlacedLine[] {
  return linesOf(block, "say").map(lineAt(pace));
}

/** A line with the moment its first word is spoken, from the start of the clip; seconds. */
export interface TimedLine {
  readonly placed: PlacedLine;
  readonly from: number;
}

/** A block's words on its clip. Seconds from the clip's start. */
export interface BlockTimeline {
  readonly lines: readonly TimedLine[];
  /** The first and the last sound; both 0 when nothing is said. */
  readonly speechFrom: number;
  readonly speechTo: number;
  /** The clip, or what the words need while no clip is set. */
  readonly length: number;
  /** Words that are not spoken to their end when the clip ends. */
  readonly hanging: number;
}

/** Shorter than this nothing hangs over: a tenth of a second is not heard. Seconds. */
const HAIR = 0.1;

/**
 * Sets the words of a block on its clip: after the picture's lead when there is room for it, sooner when the clip is short.
 * @param length - of the clip, or of what stands in for it; seconds
 */
export function blockTimeline(block: Block, pace: Pace, length: number): BlockTimeline {
  const spoken = spokenLines(block, length, pace);
  const starts = new Map(spoken.map(({ line, from }) => [line.id, from]));
  const speechFrom = spoken[0]?.from ?? 0;
  let at = speechFrom;
  const lines = placedLines(block, pace).map((placed): TimedLine => {
    // A line without a sound stands where the next one begins.
    const own = starts.get(placed.line);
    if (own === undefined) return { placed, from: at };
    at = own + (placed.seconds + pace.sentenceSeconds);
    return { placed, from: own };
  });
  const hanging = lines.reduce((sum, { placed: line, from }) => sum + line.words.filter(({ to }) => from + to > length + HAIR).length, 0);
  return { lines, speechFrom, speechTo: speechFrom + spokenSeconds(spoken), length, hanging };
}
