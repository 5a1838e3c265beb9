import { isDismissed, isPermitted, isSilenced, landing, type Surroundings } from "./context";
import { LABEL_READERS } from "./labels";
import { compile, normalise } from "./template";
import type { CueInput, CueLabel, CueLabelName, Pattern } from "./types";

interface Compiled {
  readonly label: CueLabelName;
  readonly pattern: Pattern;
  readonly find: RegExp;
  readonly with: RegExp | null;
  readonly without: RegExp | null;
  readonly habit: boolean;
}

const compiled: readonly Compiled[] = LABEL_READERS.flatMap(({ label, patterns, habits = [] }) =>
  [...patterns.map((pattern) => ({ pattern, habit: false })), ...habits.map((pattern) => ({ pattern, habit: true }))].map(({ pattern, habit }) => ({
    label, pattern, habit,
    find: compile(pattern.find),
    with: pattern.with ? compile(pattern.with) : null,
    without: pattern.without ? compile(pattern.without) : null,
  })),
);

const LOAD_NAMED = compile("<load>");
const NO_LOAD = compile("no_load|no_weight|no_weights|unloaded|without_weight|empty_hands|empty-handed|nothing_in_your_hands|bodyweight|no_bar|broomstick");
/** Families whose exercises carry an outside load unless the text says otherwise. */
const LOADED_FAMILIES = new Set(["squat", "hinge", "leg-machine", "horizontal-press", "overhead-press", "row", "vertical-pull", "arm-isolation", "kettlebell-swing", "carry", "cable", "lunge-step", "bridge-thrust"]);

const has = (expression: RegExp, text: string): boolean => {
  expression.lastIndex = 0;
  return expression.test(text);
};

function isLoaded(input: CueInput, text: string): boolean {
  if (has(NO_LOAD, text) || /bodyweight/.test(input.exercise ?? "")) return false;
  return LOADED_FAMILIES.has(input.family) || has(LOAD_NAMED, text) || has(LOAD_NAMED, (input.exercise ?? "").toLowerCase());
}

function applies({ pattern, with: needs, without }: Compiled, input: CueInput, text: string, loaded: boolean): boolean {
  if (pattern.only && !pattern.only.includes(input.family)) return false;
  if (pattern.not?.includes(input.family)) return false;
  if (pattern.audience && !pattern.audience.includes(input.audience)) return false;
  if (pattern.loaded && !loaded) return false;
  return (!needs || has(needs, text)) && !(without && has(without, text));
}

function counts({ habit, pattern: { as = "fault" } }: Compiled, place: Surroundings): boolean {
  if (habit) return isDismissed(place);
  return as === "state" ? isPermitted(place) : !isSilenced(place, as);
}

/** Where one pattern shows in the text and is meant, or null. */
function evidence(each: Compiled, text: string): { start: number; end: number } | null {
  for (const match of text.matchAll(each.find)) {
    const place = { text, start: match.index, end: match.index + match[0].trimEnd().length };
    if (counts(each, place)) return { start: place.start, end: place.end };
  }
  return null;
}

/** Labels that a hazard adds for people it is a particular hazard to (guide: population-risk). */
function forPeople(found: readonly CueLabel[], input: CueInput): CueLabel[] {
  const added = found.find(({ label }) =>
    (label === "breath-hold" && (input.audience === "pregnant" || input.audience === "older")) ||
    (label === "load-jump" && input.audience === "teen") ||
    (label === "diet-extreme" && input.audience === "teen"));
  return added && !found.some(({ label }) => label === "population-risk") ? [{ ...added, label: "population-risk" }] : [];
}

/**
 * What a piece of coaching text asks, praises or claims that it should not, in the order of the label list; each label at most once.
 *
 * An empty answer means acceptable. Prohibitions, corrections, stop rules and rejected quotes are silent; when unsure, it is silent.
 */
export function readCue(input: CueInput): CueLabel[] {
  const text = landing(normalise(input.text));
  const loaded = isLoaded(input, text);
  const found: CueLabel[] = [];
  for (const each of compiled) {
    if (found.some(({ label }) => label === each.label) || !applies(each, input, text, loaded)) continue;
    const where = evidence(each, text);
    if (where) found.push({ label: each.label, ...where, example: each.pattern.example });
  }
  return [...found, ...forPeople(found, input)];
}
