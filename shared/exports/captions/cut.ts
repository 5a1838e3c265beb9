import type { CaptionLimits } from "../../speech";
import type { Atom } from "./atoms";

/** An atom with the moment its sound begins and ends; seconds. */
export interface TimedAtom extends Atom {
  readonly from: number;
  readonly to: number;
}

/** The words of one caption, in lines, and when they are said. */
export interface Piece {
  readonly lines: readonly string[];
  readonly from: number;
  readonly to: number;
}

/** What captions cost beside their breaks. Common practice, no source: chosen by reading the results. */
const EACH = 6;
const TOO_SHORT = 30;
/** Words that outlast the longest caption by so little that nothing closes the gap before the next. */
const FLICKER = 30;
const PER_FAST_CHARACTER = 5;
/** The end of a sentence and the beginning of another in one caption. */
const MIXED = 8;
/** A line break is half as bad as a caption's end, and lines of unlike length a little. */
const LINE_SHARE = 0.6;
const UNEVEN = 5;

interface Lines {
  readonly cost: number;
  /** Where the second line begins; null for one line. */
  readonly second: number | null;
}

/** Characters from one atom to another, spaces included. Kept as sums so that each look is one subtraction. */
const lengthOf = (sums: readonly number[], from: number, to: number): number => (sums[to] ?? 0) - (sums[from] ?? 0) + (to - from - 1);

/** The cheapest way to set atoms in at most `limits.lines` (one or two) lines, or null when they do not fit. */
function setLines(atoms: readonly Atom[], sums: readonly number[], from: number, to: number, limits: CaptionLimits): Lines | null {
  if (lengthOf(sums, from, to) <= limits.lineCharacters) return { cost: 0, second: null };
  if (limits.lines < 2) return null;
  let best: Lines | null = null;
  for (let second = from + 1; second < to; second += 1) {
    const [above, below] = [lengthOf(sums, from, second), lengthOf(sums, second, to)];
    if (above > limits.lineCharacters || below > limits.lineCharacters) continue;
    const cost = LINE_SHARE * (atoms[second - 1]?.breakCost ?? 0) + (UNEVEN * Math.abs(above - below)) / limits.lineCharacters;
    if (best === null || cost < best.cost) best = { cost, second };
  }
  return best;
}

/** Seconds a caption can be shown: until the next words begin, and no longer than allowed. */
function shownFor(atoms: readonly TimedAtom[], from: number, to: number, until: number, limits: CaptionLimits): number {
  const start = atoms[from]?.from ?? 0;
  return Math.min(limits.maxSeconds, (atoms[to]?.from ?? until) - limits.gapSeconds - start);
}

/** Whether a caption must end before the next begins, but so little before that the gap flickers, and its words leave no room to end it sooner. */
function flickers(atoms: readonly TimedAtom[], from: number, to: number, until: number, limits: CaptionLimits): boolean {
  const next = atoms[to]?.from ?? until;
  const gap = next - ((atoms[from]?.from ?? 0) + limits.maxSeconds);
  return gap > limits.gapSeconds && gap < limits.flickerSeconds && (atoms[to - 1]?.to ?? 0) > next - limits.flickerSeconds;
}

/**
 * Cuts timed words into captions: every one fits its lines and its longest time, breaks fall at phrases, and together they cost least.
 * A single atom said for longer than that stands alone.
 * @param until - when the words after these begin, or the picture ends; seconds
 */
export function cutCaptions(atoms: readonly TimedAtom[], until: number, limits: CaptionLimits): Piece[] {
  const sums = [0];
  for (const { characters } of atoms) sums.push((sums.at(-1) ?? 0) + characters);
  // best[i]: the cheapest captions of atoms 0..i-1, and where the last of them begins.
  const best: { readonly cost: number; readonly from: number; readonly second: number | null }[] = [{ cost: 0, from: 0, second: null }];
  for (let to = 1; to <= atoms.length; to += 1) {
    let choice = { cost: Infinity, from: to - 1, second: null as number | null };
    let endsInside = 0;
    for (let from = to - 1; from >= 0; from -= 1) {
      const alone = from === to - 1;
      const set = setLines(atoms, sums, from, to, limits);
      const said = (atoms[to - 1]?.to ?? 0) - (atoms[from]?.from ?? 0);
      if (!alone && (set === null || said > limits.maxSeconds)) break;
      if (!alone && atoms[from]?.ends) endsInside += 1;
      const shown = shownFor(atoms, from, to, until, limits);
      const tooFast = Math.max(0, lengthOf(sums, from, to) - limits.charactersPerSecond * shown);
      const cost =
        (best[from]?.cost ?? Infinity) + EACH + (atoms[to - 1]?.breakCost ?? 0) + (set?.cost ?? 0) +
        (shown < limits.minSeconds ? TOO_SHORT : 0) + (flickers(atoms, from, to, until, limits) ? FLICKER : 0) + PER_FAST_CHARACTER * tooFast + (endsInside > 0 && !atoms[to - 1]?.ends ? MIXED : 0);
      if (cost < choice.cost) choice = { cost, from, second: set?.second ?? null };
    }
    best.push(choice);
  }
  const pieces: Piece[] = [];
  for (let to = atoms.length; to > 0; to = best[to]?.from ?? 0) {
    const { from = 0, second = null } = best[to] ?? {};
    const words = (start: number, end: number): string => atoms.slice(start, end).map(({ text }) => text).join(" ");
    pieces.push({ lines: second === null ? [words(from, to)] : [words(from, second), words(second, to)], from: atoms[from]?.from ?? 0, to: atoms[to - 1]?.to ?? 0 });
  }
  return pieces.reverse();
}
