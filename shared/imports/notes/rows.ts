import { textIn } from "../source/words";
import type { Word } from "../types";

/** One row of the notes, its bullet and number taken off. */
export interface Row {
  readonly words: readonly Word[];
  readonly text: string;
  /** Bullets and numbers, as they stood. */
  readonly marks: readonly string[];
  /** How it is marked: a number or a letter orders, a bullet only lists. */
  readonly level: "number" | "bullet" | "none";
  /** "A1" of a pair, in capitals. */
  readonly group: string | null;
  /** After an empty line. */
  readonly apart: boolean;
}

const BULLET = /^(?:[-–—*•·#>+|○◦●▪■□▸►‣➤➜→~✓✔☐☑_=]+|(?:\p{Extended_Pictographic}|[\u{1f3fb}-\u{1f3ff}]|\ufe0f|\u200d)+|\[x?\]?|\])$/u;
const NUMBER = /^(?:#?\d{1,2}[.):]|\d{1,2}-|\(\d{1,2}\)|\d\ufe0f?\u20e3|[a-z][.)])$/iu;
const GROUP = /^\(?([a-f])([1-9])[.):/]*$/i;
/** A mark without a blank behind it: "-chest tall", "1.Goblet squat", "A1)Row"; "-5 kg" is none. */
const GLUED = /^(?:[-–—*•·>+○◦●▪■▸►‣➤➜→~✓✔☐☑]+(?=\p{L})|(?:\p{Extended_Pictographic}|\ufe0f|\u200d)+(?=[\p{L}\d])|(?:\d{1,2}[.)]|[a-f][1-9][.):])(?=\p{L})|w\/(?=\p{L}{2}))/iu;

const part = (word: Word, text: string, edge: Word["edge"]): Word => ({ ...word, text, edge, plain: text.toLowerCase().replace(/[’‘]/g, "'").replace(/^[^\p{L}\p{N}%½¼¾]+|[^\p{L}\p{N}%½¼¾]+$/gu, "") });

/** Dots that lead from a name to its figures: "Squats...3x10". */
const LEADERS = /(?<=\p{L})(?:\.{2,}|…)(?=\d)|(?<=\d\p{L}{0,3})(?:\.{2,}|…)(?=[\p{L}\d])/u;

/** Words with their glued marks apart. */
function unglued(words: readonly Word[]): Word[] {
  const apart = words.flatMap((word) => (LEADERS.test(word.text) ? word.text.split(LEADERS).map((text, at) => part(word, text, at === 0 ? word.edge : "none")) : [word]));
  return apart.flatMap((word, at) => {
    const isFirst = at === 0 || word.edge === "line" || word.edge === "paragraph";
    const mark = GLUED.exec(word.text)?.[0];
    if (mark === undefined || !(isFirst || mark === "w/")) return [word];
    return [part(word, mark, word.edge), part(word, word.text.slice(mark.length), "none")];
  });
}

const WEEK = /^(?:w|wk|week)(\d{1,2})[:.)]?$/i;
const isWeek = (words: readonly Word[], at: number): boolean => WEEK.test(words[at]?.text ?? "") || (/^(?:wk|week)$/i.test(words[at]?.text ?? "") && /^\d{1,2}$/.test(words[at + 1]?.plain ?? ""));
const isGroup = (words: readonly Word[], at: number): boolean => GROUP.test(words[at]?.text ?? "");

const isScheme = ({ text }: Word): boolean => /\d[x×@]|[x×]\d|^[x×]$/i.test(text);
/** Words that go on about the sets before them. */
const OF_SETS = /^(?:tempo|rest|rir|rpe|each|per|then|last|first|top|back-?off|drop|amrap|emom|plus|and|or|bw|with|at|up|down|warm|ramp|build|work|sets?|in|for|to)$/;
const JOINS = /^(?:[+&/|]|super-?set|supersetted|ss|s\/s)$/i;

/** Where one row holds several: "A1 ... / A2 ...", "wk1 3x8 wk2 3x10", "rows 3x10 + face pulls 3x15". */
function cutsIn(words: readonly Word[]): number[] {
  for (const begins of [isGroup, isWeek]) {
    const places = words.flatMap((_, at) => (begins(words, at) ? [at] : []));
    if (places.length > 1 && words.some(isScheme)) return places.filter((at) => at > 0);
  }
  const schemes = words.flatMap((word, at) => (isScheme(word) ? [at] : []));
  return schemes.slice(1).flatMap((scheme, place) => {
    const before = schemes[place] ?? 0;
    const join = words.findIndex(({ text }, at) => at > before && at < scheme - 1 && JOINS.test(text));
    if (join > 0) return /^\p{L}/u.test(words[join + 1]?.text ?? "") ? [join] : [];
    // "Goblet squat 3x10, push-ups 3x12": a sign, and words that can be a name.
    const sign = words.findLastIndex(({ text }, at) => at >= before && at < scheme - 1 && /[,;]$/.test(text));
    return sign >= 0 && scheme - sign <= 6 && /^\p{L}{2}/u.test(words[sign + 1]?.text ?? "") && !OF_SETS.test(words[sign + 1]?.plain ?? "") ? [sign + 1] : [];
  });
}

function rowOf(words: readonly Word[], apart: boolean): Row {
  let start = 0;
  let group: string | null = null;
  let level: Row["level"] = "none";
  const marks: string[] = [];
  for (; start < words.length; start += 1) {
    const text = words[start]?.text ?? "";
    const pair: RegExpExecArray | null = group === null ? GROUP.exec(text) : null;
    if (pair && start < words.length - 1) group = `${pair[1]?.toUpperCase()}${pair[2]}`;
    else if (BULLET.test(text)) level = level === "none" ? "bullet" : level;
    else if (NUMBER.test(text) && start < words.length - 1) level = "number";
    else break;
    marks.push(text);
  }
  let end = words.length;
  // What stands between two that share a row joins nothing now.
  while (end > start && /^[|/;,+&]$/.test(words[end - 1]?.text ?? "")) end -= 1;
  marks.push(...words.slice(end).map(({ text }) => text));
  return { words: words.slice(start, end), text: textIn(words, start, end), marks, level: group === null ? level : "number", group, apart };
}

/** The rows of the notes. Where nearly every row stands apart, empty lines say nothing. */
export function rowsOf(source: readonly Word[]): Row[] {
  const words = unglued(source);
  const rows: Row[] = [];
  let from = 0;
  for (let at = 1; at <= words.length; at += 1) {
    if (at < words.length && words[at]?.edge !== "line" && words[at]?.edge !== "paragraph") continue;
    const line = words.slice(from, at);
    const cuts = [0, ...cutsIn(line), line.length];
    cuts.slice(1).forEach((to, place) => rows.push(rowOf(line.slice(cuts[place], to), place === 0 && (from === 0 || words[from]?.edge === "paragraph"))));
    from = at;
  }
  const apart = rows.filter((row) => row.apart).length;
  return rows.length >= 5 && apart >= rows.length * 0.8 ? rows.map((row) => ({ ...row, apart: false })) : rows;
}

/** The unit of the notes: most of their weights have it. */
export const unitIn = (words: readonly Word[]): "kg" | "lb" => {
  const count = (unit: RegExp): number => words.filter(({ text }) => unit.test(text)).length;
  return count(/(?:^|\d)(?:lbs?|pounds?)\b|\d#/i) > count(/(?:^|\d)(?:kgs?|kilos?)\b/i) ? "lb" : "kg";
};

/** The number of a week a row begins with, and the words behind it; null where it begins with none. */
export function weekOf({ words }: Row): { readonly week: number; readonly behind: readonly Word[] } | null {
  if (!isWeek(words, 0)) return null;
  const glued = WEEK.exec(words[0]?.text ?? "");
  return { week: Number(glued?.[1] ?? words[1]?.plain), behind: words.slice(glued ? 1 : 2) };
}
