import type { Scheme } from "../../training";
import { UNIT_NOT_SAID } from "./extras";
import type { Heard, Statement } from "./statement";

/**
 * Sets told one by one, each with its own weight: "the first warm-up set is the bar for eight, then sixty kilos and I do five".
 * Told as warm-up sets they are ramp-up sets; else two and more of them in a row are the working sets.
 */

type Kind = "load" | "bar" | "reps" | "ramp" | "counts" | "work" | "sets" | "name";

interface Atom {
  readonly kind: Kind;
  readonly value: number;
  readonly unit: "kg" | "lb" | null;
  readonly start: number;
  readonly end: number;
}

const UNIT = String.raw`kilos?|kgs?|kilograms?|pounds?|lbs?`;
/** A number with one of these after it is neither a weight nor reps. */
const OTHER = String.raw`(?! (?:seconds?(?! set)|secs?|minutes?|mins?|percent|degrees?|metres|times|sets?|rounds?|to(?! (?:warm|feel|get|start|learn|wake|see|find|prime))|or|weeks?|days?|months?|years?|weeks|of|more|per|each|out|years|exercises?|by|x|in|warm|working|lighter|hard|different|big|other)\b)`;
const UP_TO = String.raw`(?:up to|go to|goes to|going to|move to|to|at|with|got|have|on|then|it's|next one's|next is)`;

const ATOMS = new RegExp([
  String.raw` (?<sets>(?:[2-9]|1\d)(?: (?!warm|ramp|build|feeder|light|easy|more)\w+){0,2}?(?: sets?| rounds?| by \d| x \d| \d+s|(?: times)? through| singles| doubles| triples))(?= |s )`,
  String.raw` (?<counts>that counts|proper set|that's a work(?:ing)? set|the work set)(?= )`,
  String.raw` (?<ramp>(?:warm|ramp|build|work)(?:ed|ing|s)? up|warm ups|feeder sets?|(?:lighter|light|easier|prep) sets?|to feel (?:it|the)|get (?:a|the) feel)(?= )`,
  String.raw` (?<work>(?:working|work|main|real|heavy) (?:sets?|weights?|part)|ready|top sets?|for real|then the real|now it's|now for|that's the end of)(?= )`,
  String.raw` (?<bar>empty bar|bar alone|(?<!on the )bar(?= (?:for|first|and nothing))|with (?:the|an) bar)(?= )`,
  String.raw` (?<load>\d*\.?\d+) (?<unit>${UNIT})(?= )`,
  String.raw` (?<reps>\d+) (?:reps?|repetitions|singles?|good ones)(?= )`,
  // "five at sixty", "twelve with sixty kilos"
  String.raw` (?!(?:1|2) (?:with|on) )(?<first>[12]?\d|30)(?= (?:at|with|on) (?:the |a |just the )?(?:\d{2,3}|bar|empty))`,
  // "sixty for five", "eighty and ten reps", "do five", "just the single"
  String.raw` (?:for|do|doing|did|hit|get|set of) (?:a |an |another )?(?:set of )?(?<last>\d{1,2})${OTHER}(?! (?:${UNIT}))(?= )`,
  String.raw` (?<bare>\d*\.?\d+)(?= (?:for|on (?:it|here|there|the bar)) )`,
  String.raw` ${UP_TO} (?<heavy>\d{2,3}(?:\.\d+)?)${OTHER}(?! (?:${UNIT}|reps?|repetitions))(?= )`,
].join("|"), "g");

const KINDS: readonly (readonly [string, Kind])[] = [["sets", "sets"], ["counts", "counts"], ["ramp", "ramp"], ["bar", "bar"], ["work", "work"], ["load", "load"], ["reps", "reps"], ["first", "reps"], ["last", "reps"], ["bare", "load"], ["heavy", "load"]];

/** A weight said without its unit is no lighter than this; more reps than this are not done by weight. */
const LEAST_LOAD = 15;
const MOST_REPS = 30;

function atomsIn({ text }: Heard, names: readonly number[]): Atom[] {
  const atoms: Atom[] = names.map((place) => ({ kind: "name", value: 0, unit: null, start: place, end: place }));
  ATOMS.lastIndex = 0;
  for (let match = ATOMS.exec(text); match !== null; match = ATOMS.exec(text)) {
    const groups = match.groups ?? {};
    const [group, kind] = KINDS.find(([name]) => groups[name] !== undefined) ?? ["", "work"];
    const value = Number(groups[group]);
    const unit = groups["unit"] === undefined ? null : /^[pl]/.test(groups["unit"]) ? "lb" : "kg";
    const [start, end] = [match.index, match.index + match[0].length];
    ATOMS.lastIndex = Math.max(start + 1, end);
    if ((group === "bare" || group === "heavy") && value < LEAST_LOAD) continue;
    if (kind === "reps" && (value > MOST_REPS || value < 1)) continue;
    atoms.push({ kind, value, unit, start, end });
  }
  return atoms.sort((a, b) => a.start - b.start);
}

interface Step {
  load: Atom | null;
  reps: Atom | null;
  isRamp: boolean;
  /** It was called a set, so it may stand without its weight. */
  isSet: boolean;
}

/** Steps further apart than this are not of one stair. Characters. */
const APART = 260;
/** So near after a step its name still belongs to it: "ten at thirty kilos, just to warm up". */
const NEAR = 60;
/** "Five at sixty". */
const BESIDE = 8;

/** Between a step and sets that are not its own. */
const PARTS = / (?:then|before|after|main|now|\|) /;

const OTHER_DAY = / (?:last (?:week|time|month|year)|yesterday|ago|used to) /;

const lastOf = ({ load, reps }: Step): number => Math.max(load?.end ?? 0, reps?.end ?? 0);
const firstOf = ({ load, reps }: Step): number => Math.min(load?.start ?? Infinity, reps?.start ?? Infinity);
const isWhole = ({ load, reps, isRamp, isSet }: Step): boolean => reps !== null && (load !== null || (isRamp && isSet));
const isSame = (a: Step, b: Step): boolean => a.load?.value === b.load?.value && a.reps?.value === b.reps?.value;

/** Stairs of steps, each ended by another exercise, by sets that are counted, or by a long way without a step. */
function stairsIn(heard: Heard, names: readonly number[]): { readonly steps: readonly Step[]; readonly counted: boolean }[] {
  const stairs: { steps: Step[]; counted: boolean }[] = [];
  let steps: Step[] = [];
  let ramp = false;
  let named = false;
  let open: Step = { load: null, reps: null, isRamp: false, isSet: false };
  let at = 0;
  let again: Atom | null = null;
  const flush = (): void => {
    const done = open;
    if (isWhole(done) && !steps.some((step) => isSame(step, done))) steps.push(done);
    open = { load: null, reps: null, isRamp: ramp, isSet: named };
  };
  const end = (counted: boolean): void => {
    flush();
    if (steps.length > 0) stairs.push({ steps, counted });
    steps = [];
    ramp = false;
    named = false;
    open = { load: null, reps: null, isRamp: false, isSet: false };
  };
  for (const atom of atomsIn(heard, names)) {
    const { kind, value, start } = atom;
    if (start - at > APART && kind !== "ramp") end(false);
    if (kind === "name") end(false);
    else if (kind === "sets") {
      // "Now up to seventy-five, three sets of five": what stands before the sets is theirs.
      if (!isWhole(open) || (start - lastOf(open) < NEAR / 3 && !PARTS.test(heard.text.slice(lastOf(open), start + 1)))) open = { load: null, reps: null, isRamp: false, isSet: false };
      end(true);
    } else if (kind === "ramp") {
      const isSet = /^(?: sets?| ones?| rounds?| reps)/.test(heard.text.slice(atom.end, atom.end + 8)) || / (?:sets?|ones?) /.test(heard.text.slice(start, atom.end + 1));
      if (isWhole(open) && !open.isRamp && start - lastOf(open) < NEAR) open.isRamp = true;
      ramp = true;
      named ||= isSet;
      if (isWhole(open)) flush();
      open.isRamp = true;
      open.isSet ||= isSet;
    } else if (kind === "bar") {
      // What the bar weighs may follow.
      if (isWhole(open)) flush();
      ramp = true;
      open.isRamp = true;
      open.load ??= atom;
    } else if (kind === "counts") {
      open.isRamp = false;
      ramp = false;
    } else if (kind === "work") {
      flush();
      ramp = false;
      named = false;
      open.isRamp = false;
      open.isSet = false;
    } else {
      const before = kind === "load" ? open.load : open.reps;
      if (kind === "reps" && before?.value === value && isWhole(open)) {
        // The same reps again: said once more, or the next step's, as its weight will tell.
        again = atom;
        at = atom.end;
        continue;
      }
      if (before !== null && before.value !== value && before.kind !== "bar" && open.load !== null && open.reps !== null) {
        flush();
        if (kind === "load" && again !== null && start - again.end < BESIDE) open.reps = again;
      }
      again = null;
      if (before?.kind === "bar" && open.reps !== null && PARTS.test(heard.text.slice(open.reps.end, atom.end))) flush();
      if (kind === "load") open.load = before?.value === value && atom.unit === null ? { ...before, end: atom.end } : atom;
      else open.reps = atom;
    }
    at = atom.end;
  }
  end(false);
  return stairs;
}

export interface Steps {
  readonly statements: readonly Statement[];
  /** The stretches of text that are used up. */
  readonly taken: readonly (readonly [number, number])[];
}

/**
 * The sets that are told one by one.
 * @param names - places in the text where an exercise is named
 * @param unit - of weights said without one
 */
export function stepsIn(heard: Heard, names: readonly number[], isElsewhere: (from: number, to: number) => boolean): Steps {
  const statements: Statement[] = [];
  const taken: [number, number][] = [];
  for (const { steps, counted } of stairsIn(heard, names)) {
    const works = steps.filter(({ isRamp }) => !isRamp);
    const told = works.length >= 2 && !counted;
    // Sixty, eighty, a hundred, and then the sets that are counted: the way up, whatever it is called.
    const climbs = counted && works.length >= 2 && works.every(({ load }, at) => load !== null && load.value > (works[at - 1]?.load?.value ?? 0));
    if (climbs) for (const step of works) step.isRamp = true;
    for (const step of steps) {
      const [start, end] = [firstOf(step), lastOf(step)];
      // "I did a build-up set before you came in" counts as one.
      if (!(step.isRamp || told) || (step.isRamp ? OTHER_DAY.test(heard.text.slice(Math.max(0, start - 50), end)) : isElsewhere(start, end))) continue;
      const [first, last] = [heard.tokenAt(start + 1), heard.tokenAt(end - 1)];
      if (!first || !last || step.reps === null) continue;
      const load: Partial<Scheme> = step.load === null || step.load.kind === "bar" ? {} : { load: { value: step.load.value, unit: step.load.unit ?? "kg" } };
      statements.push({ says: { sets: 1, repsMin: step.reps.value, repsMax: step.reps.value, ...load }, rank: "whole", about: step.isRamp ? "ramp-up" : "step", either: false, remark: step.load?.kind === "load" && step.load.unit === null ? UNIT_NOT_SAID : null, from: first.at, to: last.at });
      taken.push([start, end]);
    }
  }
  return { statements, taken };
}
