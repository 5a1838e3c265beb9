import { ownPace, syllablesOf, spokenForm } from "../speech";
import type { MeasuredPace, Span, Word } from "./types";

/** Silence longer than this is a rest, a set, or looking for the dumbbell, and no part of speaking. Seconds. */
const SILENCE = 0.9;
/** A caption spoken this many times slower or faster than most was left standing, or its times are a slip. */
const SLOW = 1.5;
const FAST = 1.8;
const COARSE = 2.2;
/** Captions with no more than this between them follow each other without a break. Seconds. */
const TOUCHING = 0.05;
/** Too few words give no pace. */
const FEWEST = 40;

interface Caption {
  readonly words: number;
  readonly syllables: number;
  readonly start: number;
  readonly end: number;
  /** Silence before it, seconds. */
  readonly gap: number;
}

/** Syllables of a word as said; figures are said in words. */
const syllables = (plain: string): number => (/\d/.test(plain) ? spokenForm(plain).split(" ").reduce((sum, word) => sum + syllablesOf(word), 0) : syllablesOf(plain));

function captionsOf(words: readonly Word[]): Caption[] {
  const captions: { words: number; syllables: number; start: number; end: number; gap: number }[] = [];
  for (const { plain, start, end, edge, pause } of words) {
    if (start === null || end === null) continue;
    if (edge === "cue" || captions.length === 0) captions.push({ words: 0, syllables: 0, start, end, gap: captions.length === 0 ? Infinity : pause });
    const open = captions.at(-1);
    if (!open) continue;
    open.words += plain === "" ? 0 : 1;
    open.syllables += plain === "" ? 0 : syllables(plain);
    open.end = Math.max(open.end, end);
  }
  return captions.filter((caption) => caption.words > 0 && caption.end > caption.start);
}

function middle(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}

/** Captions spoken at an odd rate are left out. Captions begin a little early and stay a little long where nothing presses them; there, no more than the usual time of their words counts. */
function measured(words: readonly Word[]): Omit<MeasuredPace, "own"> | null {
  const captions = captionsOf(words);
  if (captions.reduce((sum, caption) => sum + caption.words, 0) < FEWEST) return null;
  // Times in whole seconds scatter the rates of single captions; only the far ones are wrong then.
  const slow = captions.every(({ start }) => Number.isInteger(start)) ? COARSE : SLOW;
  const rate = ({ syllables: beats, start, end }: Caption): number => beats / (end - start);
  const isPressed = (at: number): boolean => (captions[at]?.gap ?? Infinity) <= TOUCHING && (captions[at + 1]?.gap ?? Infinity) <= TOUCHING;
  const pressed = captions.filter((caption, at) => caption.words >= 3 && isPressed(at));
  const trusted = pressed.length >= 8 ? pressed : captions;
  const median = middle(trusted.map(rate));
  const even = trusted.filter((caption) => rate(caption) < median * FAST && rate(caption) > median / slow);
  const usual = even.reduce((sum, caption) => sum + caption.syllables, 0) / Math.max(Number.EPSILON, even.reduce((sum, { start, end }) => sum + end - start, 0));
  let [seconds, count, beats] = [0, 0, 0];
  captions.forEach((caption, at) => {
    if (rate(caption) > usual * FAST || (rate(caption) < usual / slow && isPressed(at))) return;
    seconds += isPressed(at) || pressed.length < 8 ? caption.end - caption.start : Math.min(caption.end - caption.start, caption.syllables / usual);
    seconds += caption.gap <= SILENCE ? caption.gap : 0;
    count += caption.words;
    beats += caption.syllables;
  });
  if (seconds <= 0 || count === 0) return null;
  const first = captions.reduce((least, { start }) => Math.min(least, start), Infinity);
  const last = captions.reduce((most, { end }) => Math.max(most, end), 0);
  return { wordsPerMinute: (count / seconds) * 60, syllablesPerSecond: beats / seconds, speechSeconds: seconds, silentSeconds: Math.max(0, last - first - seconds) };
}

/** What is said without a silence that is left out, each a text of its sentences. */
function withoutSilences(words: readonly Word[], sentences: readonly Span[]): string[] {
  const texts: string[] = [];
  for (const { from, to } of sentences) {
    for (let at = from; at < to; at += 1) {
      const { text = "", plain = "", pause = 0 } = words[at] ?? {};
      if (texts.length === 0 || pause > SILENCE) texts.push("");
      if (plain !== "") texts[texts.length - 1] += ` ${text}`;
    }
    // Speech written down without signs has its pauses between sentences all the same.
    const last = texts.at(-1) ?? "";
    if (last !== "" && !/[.!?…]["'”’)]*$/.test(last)) texts[texts.length - 1] += ".";
  }
  return texts.filter((text) => text !== "");
}

/**
 * How fast the speaker was. Every silence longer than a pause between sentences is left out, as time and as a pause.
 * Null without times, or with too few words.
 */
export function measurePace(words: readonly Word[], sentences: readonly Span[]): MeasuredPace | null {
  const found = measured(words);
  const counted = words.filter(({ plain }) => plain !== "").length;
  return found && { ...found, own: ownPace(withoutSilences(words, sentences), (counted / found.wordsPerMinute) * 60) };
}
