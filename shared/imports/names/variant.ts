import { nameById, nameWord, NAMES, type Name } from "./lexicon";
import type { Span, Word } from "../types";

/** Which kind of an exercise is meant, by what is said around its name: "romanian deadlifts with dumbbells", "squats to the chair". */

/** What it is done with or on, as names have it. Places to sit or lean are a box, or make a push-up an incline one. */
const WITH: Readonly<Record<string, string>> = { dumbbell: "dumbbell", kettlebell: "kettlebell", bell: "kettlebell", barbell: "barbell", cable: "cable", pulley: "cable", band: "band", sandbag: "sandbag", landmine: "landmine", sled: "sled" };
const SEAT = /^(?:chair|sofa|couch|stool|box|bench|bed|seat)$/;
const RAISED = /^(?:counter|countertop|worktop|chair|sofa|couch|table|bench|box|step|desk|windowsill|railing)$/;
/** Where hands are put for nothing else. */
const TOP = /^(?:counter|countertop|worktop|windowsill|railing|wall)$/;
const IRON = /^(?:barbell|bar|rack|kilo|kilos|kg|pound|pounds|lb|lbs|belt|plate|plates)$/;

/** So many words after and before a name its equipment may be said. */
const [AFTER, BEFORE] = [14, 6];
/** A block's words that may tell of a barbell. */
const BLOCK = 80;
/** "If you've no bar use dumbbells" is said of others. */
const OTHERWISE = /^(?:if|or|instead|without|swap|could|can|no|not|than)$/;

/** What a bare word is with some equipment, and without any: "the row" with a dumb-bell. Common practice, no source. */
const SAID_ALONE: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  row: { dumbbell: "single-arm-dumbbell-row", kettlebell: "single-arm-dumbbell-row", cable: "cable-row", band: "band-row", landmine: "landmine-row", barbell: "bent-over-row", "": "bent-over-row" },
  kickback: { cable: "cable-kickback" },
  calf: { "": "calf-raise" },
  chin: { "": "chin-up" },
  hang: { "": "dead-hang" },
  raise: { "": "lateral-raise" },
  bench: { dumbbell: "dumbbell-bench-press", "": "bench-press" },
  squat: { kettlebell: "goblet-squat" },
  deadlift: { kettlebell: "kettlebell-deadlift", "": "deadlift" },
  swing: { "": "kettlebell-swing" },
  bridge: { "": "glute-bridge" },
  fly: { cable: "cable-fly" },
  sandbag: { "": "sandbag-carry" },
  pulldown: { band: "band-pulldown", "": "lat-pulldown" },
  curl: { barbell: "barbell-curl", "": "biceps-curl" },
  crunch: { cable: "cable-crunch", "": "crunch" },
};

const bySet = new Map<string, Name>();
const setOf = (words: Iterable<string>): string => [...new Set(words)].sort().join(" ");
for (const name of [...NAMES].reverse()) bySet.set(setOf(name.words), name);

const named = (words: Iterable<string>): Name | null => bySet.get(setOf(words)) ?? null;

/** The words around a name that say what is used, nearest first; those of an alternative are left out. */
function equipment(words: readonly Word[], { from, to }: Span): string[] {
  const found: { word: string; away: number }[] = [];
  const look = (at: number, away: number): void => {
    const plain = nameWord(words[at]?.plain ?? "");
    const told = WITH[plain];
    if (told === undefined) return;
    const before = words.slice(Math.max(0, at - 5), at).map(({ plain: other }) => other);
    if (!before.some((other) => OTHERWISE.test(other))) found.push({ word: told, away });
  };
  for (let away = 0; away < AFTER; away += 1) look(to + away, away);
  for (let away = 1; away <= BEFORE; away += 1) look(from - away, away + 2);
  return [...new Set(found.sort((a, b) => a.away - b.away).map(({ word }) => word))];
}

const BAR = /^(?:barbell|bar|bars|rack|plates?|kilo bar)$/;
const BELLS = /^(?:dumbbells?|dumb)$/;
/** Is all the talk of dumb-bells, and none of a bar? */
const isWithout = (words: readonly Word[]): boolean => !words.some(({ plain }) => BAR.test(plain)) && words.some(({ plain }) => BELLS.test(plain));

const plainAfter = (words: readonly Word[], to: number, count: number): string[] => words.slice(to, to + count).map(({ plain }) => nameWord(plain));

const isSeated = (words: readonly Word[], { from, to }: Span): boolean => words.slice(Math.max(0, from - 4), to + AFTER).some(({ plain }) => /^(?:seated|sitting|sit)$/.test(plain));

/** Words of names that say what an exercise is done with, on or how; others are what it is. */
const MODIFIERS = new Set("seated machine incline lying cable band dumbbell kettlebell weighted inverted suspension landmine overhead box reverse walking single-arm".split(" "));
/** The same said otherwise. */
const ALIKE: Readonly<Record<string, string>> = { ...WITH, sitting: "seated", sit: "seated", strap: "suspension", tower: "cable", plate: "weighted" };

/** So many words before the turn's name, and after it, are looked at. */
const [LOOK_BACK, LOOK_ON] = [16, 16];
/** Before a bare word the whole turn to it counts: "fetch your band, loop it round the handle, and row". */
const LOOK_FAR = 40;

/** How far from a name the words are that stand around it, each once; those of an alternative are left out. */
function around(words: readonly Word[], { from, to }: Span, floor: number, until: number, bare: boolean): Map<string, number> {
  const found = new Map<string, number>();
  const note = (at: number, away: number): void => {
    const plain = nameWord(words[at]?.plain ?? "");
    const word = ALIKE[plain] ?? plain;
    const before = words.slice(Math.max(0, at - 5), at).map(({ plain: other }) => other);
    if (word !== "" && !before.some((other) => OTHERWISE.test(other)) && away < (found.get(word) ?? Infinity)) found.set(word, away);
  };
  for (let at = Math.max(floor, from - (bare ? LOOK_FAR : LOOK_BACK)); at < from; at += 1) note(at, from - at + 2);
  for (let at = to; at < Math.min(until, to + LOOK_ON); at += 1) note(at, at - to);
  return found;
}

/** The fuller name that the words around explain: "press" with "machine" and "shoulder" near it. @param bare - one word that many names end with */
function fuller(core: readonly string[], near: ReadonlyMap<string, number>, bare: boolean): Name | null {
  const head = core.at(-1);
  const options = NAMES.flatMap((name) => {
    if (name.exercise === null || name.words.at(-1) !== head || !core.every((word) => name.words.includes(word))) return [];
    const more = name.words.filter((word) => !core.includes(word));
    const known = more.length > 0 && more.every((word) => near.has(word)) && (bare ? more.some((word) => MODIFIERS.has(word)) : more.every((word) => MODIFIERS.has(word)));
    return known ? [{ name, count: more.length, away: Math.max(...more.map((word) => near.get(word) ?? 0)) }] : [];
  });
  return options.sort((a, b) => b.count - a.count || a.away - b.away)[0]?.name ?? null;
}

/**
 * The name that is meant by a name and the words around it; the same name where they say no more.
 * @param floor - where the speaker turns to it
 * @param until - where the next exercise begins
 */
export function variantOf(name: Name, span: Span, words: readonly Word[], floor: number, until: number): Name {
  const after = plainAfter(words, span.to, 7);
  const core = name.words.filter((word) => word !== "barbell");
  const leads = (place: RegExp): boolean => after.some((word, at) => place.test(word) && after.slice(0, at).some((other) => /^(?:to|on|onto|from|off|at|against|into)$/.test(other)));
  if (core.includes("squat") && core.length === 1 && leads(SEAT) && after.includes("to")) return nameById("squat-to-box") ?? name;
  const isRaised = leads(RAISED) || words.slice(floor, span.from).some(({ plain }) => TOP.test(plain));
  if (name.exercise?.id === "push-up" && isRaised) return nameById("incline-push-up") ?? name;
  const near = words.slice(Math.max(floor, span.from - BEFORE), Math.min(until, span.to + BEFORE)).map(({ plain }) => plain).join(" ");
  if (name.exercise?.id === "biceps-curl" && /\b(?:straight|ez|easy|curl) bar\b/.test(near)) return nameById("barbell-curl") ?? name;
  const isBare = core.length === 1 && name.exercise === null;
  const full = fuller(core, around(words, span, floor, until, isBare), isBare);
  if (full !== null && full.exercise !== name.exercise) return full;
  // "We're rowing" at a cable, or with a band, is no rowing machine.
  const rowed = name.exercise?.id === "easy-row" && core.join() === "rowing" ? equipment(words, span).find((each) => SAID_ALONE.row?.[each] !== undefined) : undefined;
  if (rowed !== undefined) return nameById(SAID_ALONE.row?.[rowed] ?? "") ?? name;
  const bare = core.length === 1 ? SAID_ALONE[core[0] ?? ""] : undefined;
  if (bare !== undefined && name.exercise === null) {
    const used = equipment(words, span).find((each) => bare[each] !== undefined) ?? "";
    const id = bare[used];
    if (id === "calf-raise" && isSeated(words, span)) return nameById("seated-calf-raise") ?? name;
    if (id !== undefined) return nameById(id) ?? name;
  }
  if (name.exercise?.id === "calf-raise" && isSeated(words, span)) return nameById("seated-calf-raise") ?? name;
  const inFull = (name.exercise?.name ?? "").toLowerCase().split(/[^a-z0-9]+/).filter((word) => word !== "" && word !== "barbell").map(nameWord);
  for (const used of equipment(words, span)) {
    if (core.includes(used)) return name;
    const other = named([...core, used]) ?? (inFull.length > 0 ? named([...inFull, used]) : null);
    if (other !== null && other.exercise !== name.exercise) return other;
  }
  // Where dumb-bells are spoken of and no bar is, the barbell's exercise is done with them.
  if (name.exercise?.equipment.includes("barbell") && !core.includes("barbell") && isWithout(words)) {
    const other = named([...core, "dumbbell"]);
    if (other !== null) return other;
  }
  if (name.exercise?.id === "back-squat" && core.join(" ") === "squat") {
    const block = words.slice(span.to, Math.min(until, span.to + BLOCK));
    if (!block.some(({ plain }) => IRON.test(plain))) return nameById("bodyweight-squat") ?? name;
  }
  return name;
}
