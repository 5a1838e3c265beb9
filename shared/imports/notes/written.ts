import { parseSetLine, type Scheme } from "../../training";
import { compose } from "../schemes/compose";
import { corrected } from "../schemes/corrections";
import { tokensOf } from "../schemes/figures";
import { statementsIn } from "../schemes/statements";
import { textIn } from "../source/words";
import type { Word } from "../types";

/** Set lines in the words of a row: as they stand where the grammar reads them, else written as it does. */

export interface Written {
  readonly lines: readonly string[];
  /** The words they are made of, `to` not included. */
  readonly from: number;
  readonly to: number;
  /** Every word of them stands in the lines. */
  readonly isWhole: boolean;
  /** Single sets, each heavier than the one before. */
  readonly isRising: boolean;
  /** A choice that was made, told to the coach. */
  readonly remark: string | null;
}

/** More sets than this are a weight, and more reps in a rung as well: "60x5", "20/40/60". */
const [MOST_SETS, MOST_RUNG] = [20, 30];
/** A weight without its unit is at least so much; smaller figures are efforts. */
const LEAST_BARE = 12;
/** More words than this are prose, and no scheme is told in so many as the second. */
const [LONGEST, LONGEST_STRETCH] = [30, 18];

/** The scheme of a text that can be one. @param isBout - one length of time or way counts as well: "1 min" */
function schemeOf(text: string, isBout: boolean): Scheme | null {
  if (!/\d/.test(text)) return null;
  const read = parseSetLine(text);
  if (!read.ok) return null;
  const { scheme } = read;
  const isCounted = scheme.sets !== undefined || scheme.emomMinutes !== undefined || scheme.amrap === true;
  if (!(isCounted || isBout) || (scheme.sets ?? 1) > MOST_SETS || scheme.reps?.some((rung) => rung > MOST_RUNG) === true) return null;
  return scheme;
}

/** Does it read as one set line? */
export const isSetLine = (text: string): boolean => schemeOf(text, true) !== null;

/** Words of a text as they are looked for: letters and figures. */
const wordsOf = (text: string): string[] => text.toLowerCase().match(/[\p{L}\p{N}][\p{L}\p{N}'.,:-]*/gu)?.map((word) => word.replace(/[.,:]+$/, "")) ?? [];

/** Does every word of the text stand in the lines, as often? */
export function holdsAll(lines: readonly string[], text: string): boolean {
  const left = lines.flatMap(wordsOf);
  return wordsOf(text).every((word) => {
    const at = left.indexOf(word);
    if (at >= 0) left.splice(at, 1);
    return at >= 0;
  });
}

/** What coaches write and the grammar leaves open, what it means, and what is told about it. `UNIT` is the notes' own unit. */
const REWRITTEN: readonly (readonly [find: RegExp, means: string, remark: string | null])[] = [
  [/\b(\d+)\s*[x×]\s*(\d{2})\s*s?\s*\/\s*(\d{2})\s*s?(?![\d/])/gi, "$1 x $2 s on $3 s off", "Two figures like these are taken for seconds of work and of rest."],
  [/(?<![\d/])(\d{2})\s*s?\s*\/\s*(\d{2})\s*s?\s*[x×]\s*(\d+)\b/gi, "$3 x $1 s on $2 s off", "Two figures like these are taken for seconds of work and of rest."],
  [/\b(\d+)\s*[x×]\s*(\d+)\s*\/\s*\2(?![\d/])/gi, "$1 x $2 each side", null],
  [/\b(?:rest|r|recovery)\s*:?\s*(\d+)\s*[-–]\s*\d+/gi, "rest $1", "The shorter rest was taken."],
  [/\b(\d+)\s*[-–]\s*\d+(\s*(?:s|secs?|mins?)\s*(?:rest|recovery))\b/gi, "$1$2", "The shorter rest was taken."],
  [/(\d+(?:\.\d+)?)\s*[-–]\s*\d+(?:\.\d+)?\s*(kgs?|lbs?)\b/gi, "$1 $2", "The lower weight was taken."],
  [/\b(rpe|rir)\s*(\d+)\s*[-–]\s*(\d+)/gi, "$1 $2", "The first figure of the effort was taken."],
  [/\b(\d+)\s*[-–]\s*\d+\s*(sets?|rounds?)\b/gi, "$1 $2", "The lower number of sets was taken."],
  [/\b(\d+)\s*[-–]\s*\d+\s*[x×](?=\s*\d)/gi, "$1 x", "The lower number of sets was taken."],
  [/\b(\d+)\s*rds?\b/gi, "$1 rounds", null],
  [/@\s*2\s*[x×]\s*(\d+(?:\.\d+)?)(?![\d.]|\s*(?:kg|lb))/gi, "@ 2x$1 UNIT", "The unit of the weight is not written; UNIT was taken."],
  [/^(\d+(?:\.\d+)?)\s*(kg|lbs?)\s*[x×]\s*(\d+)$/gi, "1 x $3 @ $1 $2", null],
  [/\b(?:dbs?|kbs?|bb|dumb-?bells?|kettle-?bells?|barbell|bar)\b/gi, "", null],
];
/** "5x5 100", "3x10 2x16": a weight without sign and unit, at the end. Round figures of seconds may as well be a rest. */
const LAST_LOAD = /(\d+\s*[x×]\s*\d\S*)\s+((?:2[x×])?(\d{1,3}(?:\.\d+)?))$/i;
const MAY_BE_REST = new Set([30, 45, 60, 75, 90, 120, 150, 180, 240]);
const BARE_LOAD = /@\s*(\d+(?:\.\d+)?)(?![\d.:%/+-]|\s*(?:[x×]|kg|kilo|lb|pound|k\b|s\b|sec|min|m\b|rm\b|rpe|rir|bw))/gi;

const trimmed = (text: string): string => {
  const bare = text.replace(/^[\s,;:*_–—-]+|[\s,;:.*_–—-]+$/g, "");
  const isWrapped = /^[([].*[)\]]$/.test(bare) && !/[([]/.test(bare.slice(1));
  return isWrapped ? bare.slice(1, -1).trim() : bare;
};

/** Does every figure of the text stand in the lines, however they are written there? */
export function holdsFigures(lines: readonly string[], text: string): boolean {
  // "3 x 10 @ 20/22/24 kg" gives three lines, which say the three.
  const left = [String(lines.length), ...lines.flatMap((line): string[] => line.match(/\d+(?:\.\d+)?/g) ?? [])];
  return (text.match(/\d+(?:\.\d+)?/g) ?? []).every((figure) => left.includes(figure));
}

export interface Reading {
  readonly text: string;
  readonly remark: string | null;
}

/** A text as the grammar reads it; null when it reads none of it. */
function readable(text: string, unit: "kg" | "lb", isBout: boolean): Reading | null {
  if (schemeOf(text, isBout) !== null) return { text, remark: null };
  let now = text;
  const remarks = new Set<string>();
  for (const [find, means, remark] of REWRITTEN) {
    const next = now.replace(find, means.replace("UNIT", unit));
    if (next === now) continue;
    now = next.replace(/\s+/g, " ").trim();
    if (remark !== null) remarks.add(remark.replace("UNIT", unit));
    if (schemeOf(now, isBout) !== null) return { text: now, remark: [...remarks].join(" ") || null };
  }
  const stepped = now.replace(/(?<![\d.])\d{1,2}(?:,\s?\d{1,2}){2,}(?![\d,])/g, (reps) => reps.replace(/,\s?/g, "/"));
  if (stepped !== now && schemeOf(stepped, isBout) !== null) return { text: stepped, remark: null };
  const weighed = now
    .replace(BARE_LOAD, (whole, value: string) => (Number(value) >= LEAST_BARE ? `@ ${value} ${unit}` : whole))
    .replace(LAST_LOAD, (whole, work: string, load: string, value: string) => (Number(value) >= LEAST_BARE && (load !== value || !MAY_BE_REST.has(Number(value))) ? `${work} @ ${load} ${unit}` : whole));
  if (weighed === now || schemeOf(weighed, isBout) === null) return null;
  return { text: weighed, remark: [...remarks, `The unit of the weight is not written; ${unit} was taken.`].join(" ") };
}

/** A text that is said to be sets, as the grammar reads it; null where it does not. */
export const setLineIn = (text: string, unit: "kg" | "lb"): Reading | null => readable(trimmed(text), unit, true);

/** Any work; what is read behind it only adds to it. */
const SOME_WORK = "3 x 10, ";

/** What only adds to a set line, as the grammar reads it: a weight, a rest, a tempo, "each side". Null for anything else. */
export function additionIn(text: string, unit: "kg" | "lb"): Reading | null {
  if (!/\d|each|per|\bbw\b|bodyweight|band/i.test(text) || text.length > 60 || isSetLine(text)) return null;
  const read = readable(`${SOME_WORK}${text}`, unit, false);
  return read?.text.startsWith(SOME_WORK) === true ? { ...read, text: read.text.slice(SOME_WORK.length) } : null;
}

/** "3x10 @ 20/22/24 kg": a weight for each set, a line each. */
function byLoad(text: string, unit: "kg" | "lb"): string[] | null {
  if (!text.includes("/")) return null;
  const found = /^(.*?)(?:@|at)?\s*((?:\d+(?:\.\d+)?\s*\/\s*)+\d+(?:\.\d+)?)\s*(kgs?|lbs?)\b(.*)$/i.exec(text);
  const [, head = "", loads = "", own = unit, tail = ""] = found ?? [];
  const scheme = found ? schemeOf(`${head} ${tail}`, false) : null;
  const each = loads.split("/").map((load) => load.trim());
  const sets = /^\s*(\d+)\s*(?:[x×]|sets?(?: of)?)\s*/i.exec(head);
  if (scheme === null || sets === null || Number(sets[1]) !== each.length) return null;
  const lines = each.map((load) => `1 x ${head.slice(sets[0].length).trim()} @ ${load} ${own}${tail}`.replace(/\s+/g, " ").trim());
  return lines.every((line) => schemeOf(line, false) !== null) ? lines : null;
}

/** "5@20, 5@40, 3@60", "20x5 40x5 60x3", "40kg x 5": a set each, with a weight. Null where it is not all such sets. */
function singles(text: string, unit: "kg" | "lb"): string[] | null {
  const items = text.replace(/\s*(@|[x×](?=\s*\d)|\/)\s*/gi, "$1").replace(/(\d)\s+(kgs?|lbs?)\b/gi, "$1$2").split(/\s*[,;→>]\s*|\s+(?:then\s+|-\s+)?/).filter((item) => item !== "");
  const lines = items.map((item) => {
    const [, reps, load, own = unit] = /^(\d{1,2})@(\d+(?:\.\d+)?)(kg|lb)?s?$/i.exec(item) ?? [];
    if (reps !== undefined && load !== undefined && Number(load) >= LEAST_BARE) return `1 x ${reps} @ ${load} ${own}`;
    const [, weight, written, times] = /^(\d+(?:\.\d+)?)(kg|lb)?s?[x×](\d{1,2})$/i.exec(item) ?? [];
    if (weight === undefined || times === undefined || (written === undefined && Number(weight) < LEAST_BARE)) return null;
    return `1 x ${times} @ ${weight} ${written ?? unit}`;
  });
  const isAll = lines.length > 0 && lines.every((line) => line !== null && schemeOf(line, false) !== null);
  // "12x3" alone counts twelve sets; a row of such items, or a unit, tells weights.
  return isAll && (lines.length > 1 || /kg|lb|@/i.test(text) || Number.parseFloat(text) > MOST_SETS) ? lines.filter((line) => line !== null) : null;
}

/** "20/40/60 x5": the weights of light sets and their reps. */
function rising(text: string, unit: "kg" | "lb"): string[] | null {
  const [, loads, own = unit, reps] = /^((?:\d+(?:\.\d+)?\s*\/\s*)+\d+(?:\.\d+)?)\s*(kg|lb)?s?\s*[x×]\s*(\d{1,2})$/i.exec(text.trim()) ?? [];
  return loads === undefined || reps === undefined ? null : loads.split("/").map((load) => `1 x ${reps} @ ${load.trim()} ${own}`);
}

/** Several schemes with a comma, "then" or a sign between them, each of which is one. */
function several(text: string, unit: "kg" | "lb"): readonly string[] | null {
  const pieces = text.split(/\s*(?:,|;|\+|&|\||\/(?=\s))\s*|\s+then\s+|\s+\/\s*/i).map(trimmed).filter((piece) => piece !== "");
  if (pieces.length < 2) return null;
  const lines: string[] = [];
  for (const piece of pieces) {
    const read = readable(piece, unit, false);
    if (read === null) return null;
    lines.push(read.text);
  }
  return lines;
}

/** Light sets before the work: their lines, or null where their reps are missing. */
export function rampsIn(text: string, unit: "kg" | "lb"): readonly string[] | null {
  const bare = trimmed(text);
  return rising(bare, unit) ?? singles(bare, unit) ?? several(bare, unit) ?? (schemeOf(bare, false) === null ? null : [bare]);
}

const loadOf = (line: string): number => Number(/@ (\d+(?:\.\d+)?)/.exec(line)?.[1]);

function stretchAt(words: readonly Word[], from: number, to: number, unit: "kg" | "lb", isBout: boolean): Written | null {
  const text = trimmed(textIn(words, from, to));
  const one = readable(text, unit, isBout);
  const each = one === null ? (singles(text, unit) ?? rising(text, unit)) : null;
  const lines = one === null ? (each ?? byLoad(text, unit) ?? several(text, unit)) : [one.text];
  if (lines === null) return null;
  const isRising = each !== null && each.length > 1 && each.every((line, at) => at === 0 || loadOf(line) > loadOf(each[at - 1] ?? ""));
  return { lines, from, to, isWhole: holdsAll(lines, text), isRising, remark: one?.remark ?? null };
}

/** Words that the grammar stops at and that may be written otherwise, or part two schemes. */
const MAY_PASS = /^(?:dbs?|kbs?|bb|dumb-?bells?|kettle-?bells?|barbell|bar|rds?|then)$/i;

/** How far a stretch that begins here can reach: the grammar reads on from the left and never gets past a word of prose. */
function reachOf(words: readonly Word[], from: number, most: number): number {
  let to = Math.min(most, from + LONGEST_STRETCH);
  for (;;) {
    const read = parseSetLine(textIn(words, from, to));
    if (read.ok || read.at <= 0) return to;
    let place = 0;
    const stop = words.slice(from, to).findIndex(({ text }) => (place += text.length + 1) > read.at);
    const word = words[from + stop]?.plain ?? "";
    if (stop <= 0 || !/^[\p{L}'-]{3,}$/u.test(word) || MAY_PASS.test(word)) return to;
    to = from + stop;
  }
}

/**
 * The longest stretch of the words that is a set line, or several.
 * @param isBout - where it is all the words, one length of time or way counts as well
 */
export function writtenIn(words: readonly Word[], unit: "kg" | "lb", isBout = false): Written | null {
  const all = Math.min(words.length, LONGEST);
  const mayBegin = words.slice(0, all).map(({ text }) => /\d|^@$|^\(?(?:emom|amrap|max|sets?|tempo|rest|rir|rpe)\b/i.test(text));
  if (!words.slice(0, all).some(({ text }) => /\d/.test(text))) return null;
  const reach = words.slice(0, all).map((_, from) => (mayBegin[from] === true ? reachOf(words, from, all) : from));
  for (let length = Math.min(all, LONGEST_STRETCH); length > 0; length -= 1) {
    for (let from = 0; from + length <= all; from += 1) {
      const found = from + length <= (reach[from] ?? from) ? stretchAt(words, from, from + length, unit, isBout && length === words.length) : null;
      if (found !== null) return found;
    }
  }
  return null;
}

/** Sets that are told in words: "three sets of fifteen". */
export function toldIn(words: readonly Word[]): readonly string[] {
  const statements = statementsIn(corrected(tokensOf(words, 0, words.length, new Set(), new Set()))).map((statement) => ({ ...statement, sentence: 0 }));
  return compose(statements).sets.map(({ text }) => text);
}
