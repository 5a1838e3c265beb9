import { DEFAULT_PACE } from "./pace";
import { sentencesOf, stretchesOf } from "./sentences";
import { speak } from "./speak";
import type { Pace, Segment } from "./types";

/** Longest stretch without a pause, in seconds. Common practice, no source. */
const MAX_BREATH_SECONDS = 6;

const CONJUNCTIONS = /^(?:and|but|or|nor|so|then|because|while|until|when|where|if|as|before|after|since|although|unless|which|who|that)$/i;
const PREPOSITIONS = /^(?:with|without|from|to|into|in|on|at|for|over|under|between|through|towards?|across|behind|along|by)$/i;

/** What it costs the ear to breathe at a place; a breath in the middle of a phrase is the last resort. */
const COST = { comma: 0, conjunction: 1, preposition: 4, word: 12 } as const;
/** Cost of leaving a piece of a second or less hanging by itself. */
const SHORT_COST = 3;

interface Chunk {
  readonly text: string;
  readonly seconds: number;
  /** Cost of breathing after it, and the pause it has there anyway. */
  readonly cost: number;
  readonly pause: number;
}

/** The smallest pieces a stretch may be cut into. Figures stay with what they belong to, so that pieces add up. */
function chunksOf(stretch: string, pace: Pace): Chunk[] {
  const words = stretch.split(/\s+/).filter(Boolean);
  const chunks: Chunk[] = [];
  let start = 0;
  words.forEach((word, index) => {
    const next = words[index + 1];
    const pause = /[,;:]$/.test(word) ? pace.commaSeconds : 0;
    const plain = /^[\p{L}'’-]+[,;:]?$/u;
    const apart = next === undefined || (plain.test(word) && /^[\p{L}'’"“(]/u.test(next)) || /\p{L}[,;:]$/u.test(word);
    if (!apart) return;
    const cost = pause > 0 ? COST.comma : next === undefined ? 0 : CONJUNCTIONS.test(next) ? COST.conjunction : PREPOSITIONS.test(next) ? COST.preposition : COST.word;
    const text = words.slice(start, index + 1).join(" ");
    chunks.push({ text, seconds: speak(text, pace).seconds, cost, pause });
    start = index + 1;
  });
  return chunks;
}

/** A millionth of a millisecond is arithmetic, not breath. */
const HAIR = 1e-9;

/** "10 kg", "30 seconds": never parted. */
const isFigureWithUnit = (word: string, next: string): boolean => /\d$/.test(word) && /^\p{L}/u.test(next);

/** How well a run of figures parts between two words: after a comma, before the next figure, else anywhere but between a figure and its unit. */
const partsWell = (word: string, next: string): number =>
  /[,;:]$/.test(word) ? 3 : /\p{L}$/u.test(word) && /^\d/.test(next) ? 2 : isFigureWithUnit(word, next) ? 0 : 1;

/** Words that go together by rights, cut all the same where they last longer than a breath. */
function cutChunk(text: string, pace: Pace, maxSeconds: number): string[] {
  const words = text.split(/\s+/).filter(Boolean);
  const fits = (from: number, to: number): boolean =>
    to - from === 1 || (to - from === 2 && isFigureWithUnit(words[from] ?? "", words[from + 1] ?? "")) || speak(words.slice(from, to).join(" "), pace).seconds <= maxSeconds + HAIR;
  const pieces: string[] = [];
  for (let from = 0; from < words.length; ) {
    let reach = from + 1;
    while (reach < words.length && fits(from, reach + 1)) reach += 1;
    let end = reach;
    if (reach < words.length) {
      const merit = (to: number): number => partsWell(words[to - 1] ?? "", words[to] ?? "");
      for (let to = reach - 1; to > from; to -= 1) if (merit(to) > merit(end)) end = to;
    }
    pieces.push(words.slice(from, end).join(" "));
    from = end;
  }
  return pieces;
}

/** Cuts a stretch so that no piece is longer than `maxSeconds`, at the least cost. */
function cutStretch(stretch: string, pace: Pace, maxSeconds: number): string[] {
  const chunks = chunksOf(stretch, pace);
  // best[i]: cheapest way to say chunks 0..i-1, and where its last piece begins
  const best: { cost: number; from: number }[] = [{ cost: 0, from: 0 }];
  for (let end = 1; end <= chunks.length; end += 1) {
    let choice = { cost: Infinity, from: end - 1 };
    let seconds = 0;
    for (let from = end - 1; from >= 0; from -= 1) {
      const chunk = chunks[from] as Chunk;
      seconds += chunk.seconds + (from < end - 1 ? chunk.pause : 0);
      if (seconds > maxSeconds && from < end - 1) break;
      const breath = end < chunks.length ? 1 + (chunks[end - 1] as Chunk).cost : 0;
      const cost = (best[from]?.cost ?? Infinity) + breath + (seconds <= 1 ? SHORT_COST : 0);
      if (cost < choice.cost) choice = { cost, from };
    }
    best.push(choice);
  }
  const pieces: string[] = [];
  for (let end = chunks.length; end > 0; end = best[end]?.from ?? 0) {
    pieces.unshift(chunks.slice(best[end]?.from ?? 0, end).map(({ text }) => text).join(" "));
  }
  // Figures sound otherwise together than apart, so each piece is heard again.
  return pieces.flatMap((piece) => (speak(piece, pace).seconds > maxSeconds + HAIR ? cutChunk(piece, pace, maxSeconds) : [piece]));
}

/**
 * The text cut into what is said in one breath.
 *
 * Marked breaths ( / ) and sentence ends always end a segment. A stretch longer than `maxSeconds` gets suggested breaths: at commas,
 * before conjunctions, else before prepositions, else between words, and within a run of figures where there is no other way. Only one word or one figure with its unit can be longer still.
 * @param maxSeconds - longest stretch without a pause; seconds
 * @returns segments in order, without the breath marks; `seconds` is the speech alone, `breathAfter` null only after the last
 */
export function breaths(text: string, pace: Pace = DEFAULT_PACE, maxSeconds: number = MAX_BREATH_SECONDS): Segment[] {
  const segments: { text: string; seconds: number; breathAfter: Segment["breathAfter"] }[] = [];
  for (const marked of stretchesOf(text)) {
    for (const sentence of sentencesOf(marked)) {
      const whole = speak(sentence, pace).seconds;
      const pieces = whole > maxSeconds ? cutStretch(sentence, pace, maxSeconds) : [sentence];
      for (const piece of pieces) segments.push({ text: piece, seconds: pieces.length === 1 ? whole : speak(piece, pace).seconds, breathAfter: "suggested" });
      const last = segments.at(-1);
      if (last) last.breathAfter = "sentence";
    }
    const last = segments.at(-1);
    if (last) last.breathAfter = "marked";
  }
  const last = segments.at(-1);
  if (last) last.breathAfter = null;
  return segments;
}
