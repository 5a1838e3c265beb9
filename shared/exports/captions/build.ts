import { episodeClocks } from "../../clocks";
import { blockName, type Block, type Episode } from "../../episode";
import { framesToSeconds } from "../../filming";
import { CAPTION_LIMITS, UPRIGHT_LIMITS, captionFaults, paceOf, speak, spokenLines, spokenSeconds, type CaptionLimits, type Cue, type Pace } from "../../speech";
import { takeNotes } from "../take-notes";
import { atomsOf, type Atom } from "./atoms";
import { cutCaptions, type Piece, type TimedAtom } from "./cut";
import { showCaptions } from "./show";

/** How a say line was really spoken, as measured. Seconds. */
export interface MeasuredLine {
  readonly seconds: number;
  /** From the start of its block; without it the line follows the one before. */
  readonly from?: number;
}

export interface CaptionOptions {
  /** The speaker's own pace, or what the series knows of it. */
  readonly pace?: Pace;
  readonly limits?: CaptionLimits;
  /** Measured times by line id, from takes; lines without one are timed at the pace. */
  readonly measured?: ReadonlyMap<string, MeasuredLine>;
}

export interface EpisodeCaptions {
  readonly cues: readonly Cue[];
  /** How many lines were timed by takes, where words had to be hurried or limits could not be kept; in sentences. */
  readonly notes: readonly string[];
}

/** The limits for an episode's picture: short lines when it is upright, and the gap of two of its own frames. */
export function captionLimitsOf(episode: Pick<Episode, "video">): CaptionLimits {
  return { ...(episode.video.aspect === "9:16" ? UPRIGHT_LIMITS : CAPTION_LIMITS), gapSeconds: framesToSeconds(2, episode.video.frameRate) };
}

/** Atoms one after the other from a moment on, their time stretched by a factor. */
function timed(atoms: readonly Atom[], from: number, factor: number): TimedAtom[] {
  let at = from;
  return atoms.map((atom) => {
    const placed = { ...atom, from: at, to: at + atom.seconds * factor };
    at = placed.to + atom.pause * factor;
    return placed;
  });
}

interface Placed {
  readonly atoms: readonly TimedAtom[];
  /** Seconds the words would take beyond their clip. */
  readonly over: number;
}

/**
 * A block's words on its picture: after a lead when there is room for one, faster than the pace when the clip is shorter than the words.
 * @param starts - of the block, and `length` its picture; seconds
 */
function placeBlock(block: Block, starts: number, length: number, pace: Pace, limits: CaptionLimits, measured: CaptionOptions["measured"]): Placed {
  const lines = spokenLines(block, length, pace, measured);
  const said = spokenSeconds(lines);
  const factor = said > length && said > 0 ? length / said : 1;
  const atoms = lines.flatMap(({ line, from, seconds }): TimedAtom[] => {
    const real = measured?.get(line.id)?.from;
    const counted = speak(line.text, pace).seconds;
    const stretch = counted > 0 ? seconds / counted : 1;
    return timed(atomsOf(line.text, pace, limits.lineCharacters), starts + (real ?? from * factor), real === undefined ? stretch * factor : stretch);
  });
  return { atoms: [...atoms].sort((a, b) => a.from - b.from), over: Math.max(0, said - length) };
}

/** Limits that could not be kept, once for each kind; the files are written all the same. */
function faultNotes(cues: readonly Cue[], limits: CaptionLimits): string[] {
  const faults = captionFaults(cues, limits);
  return [...new Set(faults.map(({ kind }) => kind))].map((kind) => {
    const these = faults.filter((fault) => fault.kind === kind);
    return these.length === 1 ? (these[0]?.sentence ?? "") : `${these[0]?.sentence ?? ""} ${these.length - 1} more ${these.length === 2 ? "is" : "are"} ${kind} as well.`;
  });
}

/**
 * The captions of an episode from its script and its picture: words by their takes, else at the speaker's pace, on each block's clip, spelled for the
 * reader, broken at phrases, within the limits. When a clip's length changes, ask again: what follows moves with it.
 *
 * No caption reaches over a block's first words; where words do not fit their clip, they are hurried and a note says so. Words on a clip
 * of 0 seconds take the seconds they need, as without a clip and as on every other paper, and a note says that too.
 */
export function captionsOf(episode: Episode, options: CaptionOptions = {}): EpisodeCaptions {
  const pace = paceOf(episode, options.pace);
  const limits = options.limits ?? captionLimitsOf(episode);
  const { blocks } = episodeClocks(episode, pace, options.measured).screen;
  const notes = takeNotes(episode, pace, options.measured);
  let starts = 0;
  const placed = episode.blocks.map((block, at): Placed => {
    const { seconds: length = 0, from } = blocks[at] ?? {};
    if (block.clipSeconds === 0 && from === "words") notes.push(`${blockName(block)}: a clip of 0 s holds no words, so it counts as not set, and the block takes the ${Math.round(length)} s of its words. Set the clip's length.`);
    const mine = placeBlock(block, starts, length, pace, limits, options.measured);
    starts += length;
    if (Math.round(mine.over) > 0) notes.push(`${blockName(block)}: the words take ${Math.round(mine.over)} s longer than the clip; its captions are hurried to fit.`);
    return mine;
  });
  // From the last block to the first: each must know when the words after it begin.
  const pieces: Piece[][] = [];
  const end = starts;
  let until = end;
  for (const { atoms } of [...placed].reverse()) {
    pieces.unshift(cutCaptions(atoms, until, limits));
    until = atoms[0]?.from ?? until;
  }
  const cues = showCaptions(pieces.flat(), end, limits);
  return { cues, notes: [...notes, ...faultNotes(cues, limits)] };
}
