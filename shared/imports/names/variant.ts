import { nameWord, NAMES, type Name } from "./lexicon";
import type { Span, Word } from "../types";

/** Which kind of an exercise is meant, by what is said around its name: "romanian deadlifts with dumbbells", "squats to the chair". */

/** What it is done with or on, as names have it. Places to sit or lean are a box, or make a push-up an incline one. */
const WITH: Readonly<Record<string, string>> = { dumbbell: "dumbbell", kettlebell: "kettlebell", bell: "kettlebell", barbell: "barbell", cable: "cable", pulley: "cable", band: "band", sandbag: "sandbag", landmine: "landmine", sled: "sled" };
const SEAT = /^(?:chair|sofa|couch|stool|box|bench|bed|seat)$/;
const RAISED = /^(?:counter|countertop|worktop|chair|sofa|couch|table|bench|box|step|desk|windowsill|railing)$/;
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
const byId = (id: string): Name | null => NAMES.find(({ exercise }) => exercise?.id === id) ?? null;

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

const plainAfter = (words: readonly Word[], to: number, count: number): string[] => words.slice(to, to + count).map(({ plain }) => nameWord(plain));

/**
 * The name that is meant by a name and the words around it; the same name where they say no more.
 * @param until - where the next exercise begins
 */
export function variantOf(name: Name, span: Span, words: readonly Word[], until: number): Name {
  const after = plainAfter(words, span.to, 7);
  const core = name.words.filter((word) => word !== "barbell");
  const leads = (place: RegExp): boolean => after.some((word, at) => place.test(word) && after.slice(0, at).some((other) => /^(?:to|on|onto|from|off|at|against|into)$/.test(other)));
  if (core.includes("squat") && core.length === 1 && leads(SEAT) && after.includes("to")) return byId("squat-to-box") ?? name;
  if (name.exercise?.id === "push-up" && leads(RAISED)) return byId("incline-push-up") ?? name;
  const bare = core.length === 1 ? SAID_ALONE[core[0] ?? ""] : undefined;
  if (bare !== undefined && name.exercise === null) {
    const used = equipment(words, span).find((each) => bare[each] !== undefined) ?? "";
    const id = bare[used];
    if (id !== undefined) return byId(id) ?? name;
  }
  for (const used of equipment(words, span)) {
    if (core.includes(used)) return name;
    const other = named([...core, used]);
    if (other !== null && other.exercise !== name.exercise) return other;
  }
  if (name.exercise?.id === "back-squat" && core.join(" ") === "squat") {
    const block = words.slice(span.to, Math.min(until, span.to + BLOCK));
    if (!block.some(({ plain }) => IRON.test(plain))) return byId("bodyweight-squat") ?? name;
  }
  return name;
}
