import type { Exercise } from "../../exercises";
import { additionIn, isSetLine, toldIn, writtenIn, type Reading, type Written } from "./written";
import { lineKind } from "../lines/kind";
import { namesIn, type Mention } from "../names/find";
import { textIn } from "../source/words";
import { nameWord, singular } from "../names/lexicon";
import type { Word } from "../types";
import { calm } from "./parts";
import type { Row } from "./rows";
import { spelledOut } from "./short-forms";

/** A row as the beginning of an exercise. Whether it is one depends on the rows around it. */
export interface Head {
  readonly title: string;
  readonly exercise: Exercise | null;
  /** The very name of a known exercise, one that is nearly it, or words that name none we know. */
  readonly name: "known" | "likely" | "unknown";
  /** The name as it is written, where the title is another. */
  readonly written: string;
  /** Sets in the row, and those that are told in words. */
  readonly sets: Written | null;
  readonly told: readonly string[];
  /** What only adds to sets: "16 kg", "tempo 3110". */
  readonly addition: Reading | null;
  /** How often or how long, without sets: "10 each side", "x20", "30 s". */
  readonly count: string;
  /** What is left behind the name, a line of the block. */
  readonly behind: string;
  /** Nothing stands behind the name, or only what is in brackets. */
  readonly isBare: boolean;
}

/** Words before a name that join it to the exercise above, or only say that here is one. */
const LEADS = /^(?:super-?sets?|supersetted|ss|s\/s|super|paired|pair|into|then|followed|finisher|finish|burnout|exercise|ex|movement|station|optional|bonus|plus)$/;
const LEADING = /^(?:super-?sets?|sets?|with|w|by|of|on|a|an|the|\d{1,2})?$/;

function leadOf(words: readonly Word[]): number {
  if (!LEADS.test(words[0]?.plain ?? "")) return 0;
  let at = 1;
  while (at < words.length - 1 && LEADING.test(words[at]?.plain ?? "") && !/[x×]/.test(words[at]?.text ?? "")) at += 1;
  return at;
}

/** Words that begin no name: they tell of sets ("top set", "back-off"), or what to do. */
const OF_SETS = new RegExp(String.raw`^(?:${[
  String.raw`then|and|plus|or|top|back ?-?off|working|work|main|heavy|light|last|first|second|third|final|drop|warm|ramp|build|sets?|scheme|prescription|target|goal|plan|reps?|amrap|emom|today`,
  String.raw`beginners?|advanced|intermediate|novices?|men|women|ladies|guys|easy|hard|medium|straight|cluster|pyramid|deload|option|level|strength|hypertrophy|same|repeat|total|rounds?|circuit|tabata`,
  String.raw`week|day|wk|last week|previous|prev|pb|pr|e?1rm|best|rest|tempo|rir|rpe|max`,
].join("|")})\b`);
/** The same of rows that no number marks as one of a list. */
const OF_SENTENCES = new RegExp(String.raw`^(?:${[
  String.raw`if|when|film|shoot|say|mention|remember|only|all|every|each|about|approx|aim|start|increase|reduce|do|don'?t|keep|try|use|go|add|swap|alternative|leave|take|until|hold|pause|slow|cue|note`,
  String.raw`i|we|you|they|he|she|my|our|your|the|is|at|of|with|for|to|in|on|no|not|this|that|it|up|down`,
].join("|")})\b`);

const cleaned = (text: string): string => text.replace(/^[\s*_"|]+|[\s:,;*_"(|–—-]+$/g, "");
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Is it short enough for a name, and neither a sentence nor something to do? */
function mayBeName(words: readonly Word[], isOrdered: boolean): boolean {
  const text = cleaned(textIn(words, 0, words.length));
  const plain = words.map((word) => word.plain).filter((each) => each !== "").join(" ");
  if (words.length === 0 || words.length > 6 || text.length > 60 || !/\p{L}{2}/u.test(text)) return false;
  return !/[.!?…:]\s|[!?;,]|:\/\//.test(text) && !OF_SETS.test(plain) && (isOrdered || !OF_SENTENCES.test(plain)) && lineKind(plain, "general", null, false) === "say" && lineKind(`keep your ${plain}`, "general", null, false) !== "cue";
}

/** What goes for "10", "x10", "30s each side" without sets. */
const countIn = (text: string): string => {
  const bare = text.replace(/^[\s:–—-]+/, "");
  return /^[x×]?\s*\d/i.test(bare) && isSetLine(`1 x ${bare.replace(/^[x×]\s*/i, "")}`) ? bare : "";
};

function behindOf(words: readonly Word[], unit: "kg" | "lb"): Pick<Head, "sets" | "told" | "addition" | "count" | "behind" | "isBare"> & { readonly between: readonly Word[] } {
  const text = textIn(words, 0, words.length).replace(/^[\s:–—,-]+/, "");
  const nothing = { sets: null, told: [], addition: null, count: "", behind: "", isBare: false, between: [] };
  if (text === "") return { ...nothing, isBare: true };
  const isAside = /^[([]/.test(text) && words.length <= 8;
  const sets = writtenIn(words, unit, true);
  if (sets !== null) {
    const after = textIn(words, sets.to, words.length).replace(/^[\s,;:.–—-]+/, "");
    return { ...nothing, sets, between: words.slice(0, sets.from), behind: after };
  }
  const addition = additionIn(text, unit);
  if (addition !== null) return { ...nothing, addition };
  const count = countIn(text);
  if (count !== "") return { ...nothing, count };
  const told = toldIn(words);
  return { ...nothing, told, behind: text, isBare: isAside };
}

function known(words: readonly Word[], mention: Mention, lead: number, unit: "kg" | "lb"): Head | null {
  const { between, ...behind } = behindOf(words.slice(mention.to), unit);
  const adjectives = words.slice(lead, mention.from);
  if (adjectives.length > 0 && (behind.sets === null || adjectives.length > 3 || !mayBeName(adjectives, true))) return null;
  const signed = /^[:–—(-]/.test(between[0]?.text ?? "") || /[:,;]$/.test(words[mention.to - 1]?.text ?? "");
  const isNamed = !signed && between.length > 0 && between.length <= 4 && !between.some(({ text }) => /\d/.test(text));
  const { title, exercise, words: nameWords } = mention.name;
  const name = calm(cleaned(textIn(words, mention.from, mention.to)));
  const spelled = spelledOut(words.slice(mention.from, mention.to));
  const isShort = spelled.some(({ plain }, at) => plain.replace("'", "") !== words[mention.from + at]?.plain.replace("'", ""));
  const isOwn = adjectives.length > 0 || isNamed;
  // A plural or another hyphen is the coach's own spelling; any other name stands below the catalogue's.
  const parts = name.toLowerCase().split(/[^a-z0-9]+/).filter((part) => part !== "");
  const isSpelling = !isShort && parts.join(" ") !== "" && parts.every((part, at) => nameWord(part) === nameWords[at] && singular(part) === nameWord(part)) && parts.length === nameWords.length;
  const own = isOwn ? calm(cleaned(textIn(words, lead, mention.to + between.length))) : isSpelling || (exercise === null && !isShort) ? name : title;
  const whole = cleaned(textIn(words, 0, mention.to + (isNamed ? between.length : 0)));
  const left = isNamed ? "" : textIn(between, 0, between.length).replace(/^[\s:–—,-]+|[\s:–—,-]+$/g, "");
  return {
    ...behind, title: name.toLowerCase() === title.toLowerCase() && !isOwn ? title : capital(own), exercise,
    name: mention.sure === 1 ? "known" : "likely",
    written: whole.toLowerCase() === own.toLowerCase() ? "" : whole,
    behind: [left, behind.behind].filter((text) => text !== "").join(" "),
  };
}

/** "3x10 goblet squat @ 20 kg": the sets first. */
function setsFirst(words: readonly Word[], mention: Mention, unit: "kg" | "lb"): Head | null {
  const before = writtenIn(words.slice(0, mention.from), unit);
  if (before === null || before.from > 0 || before.to < mention.from - 1 || before.lines.length > 1) return null;
  const after = textIn(words, mention.to, words.length).replace(/^[\s,:–—-]+/, "");
  const joined = after === "" ? null : writtenIn([...words.slice(0, before.to), ...words.slice(mention.to)], unit);
  const isJoined = joined !== null && joined.from === 0 && joined.to > before.to;
  const head = known(words.slice(mention.from, mention.to), { ...mention, from: 0, to: mention.to - mention.from }, 0, unit);
  const left = isJoined ? textIn([...words.slice(0, before.to), ...words.slice(mention.to)], joined.to, words.length) : after;
  return head && { ...head, sets: isJoined ? joined : before, behind: left, isBare: false };
}

/** What a row would begin if it began an exercise; null where nothing in it can be a name. */
export function headOf({ words, level }: Row, unit: "kg" | "lb"): Head | null {
  const mentions = namesIn(spelledOut(words), new Set());
  const lead = leadOf(words);
  const first = mentions.find(({ from }) => from >= lead);
  if (first) {
    const ahead = words.slice(lead, first.from);
    const skipped = ahead.every(({ plain }) => plain === "" || /^(?:the|exercise|\d)$/.test(plain)) ? first.from : lead;
    const head = known(words, first, skipped, unit) ?? setsFirst(words, first, unit);
    if (head) return head;
  }
  if (OF_SETS.test(words[0]?.plain ?? "") && lead === 0) return null;
  const sets = writtenIn(words, unit);
  const name = words.slice(lead, sets?.from ?? words.length);
  if (!mayBeName(name, level === "number")) return null;
  const title = capital(cleaned(textIn(name, 0, name.length)));
  const behind = sets === null ? "" : textIn(words, sets.to, words.length).replace(/^[\s,;:.–—-]+/, "");
  return { title, exercise: null, name: "unknown", written: lead > 0 ? cleaned(textIn(words, 0, sets?.from ?? words.length)) : "", sets, told: [], addition: null, count: "", behind, isBare: sets === null };
}
