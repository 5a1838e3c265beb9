/**
 * The grammar reader: what is said plainly, found by templates and by what governs the words they match.
 *
 * It can say which pattern it saw. It does not read pictures; that is the likeness reader's part.
 */
import { isAbandoned, isDismissed, isPermitted, isSilenced, landing, type Reading } from "./context";
import { LABEL_READERS } from "./labels";
import { compile, find, type Span, type Template } from "./template";
import { normalise, tokenise } from "../tokens";
import { hitsOf } from "./vocabulary";
import type { CueInput, CueLabel, CueLabelName, Pattern } from "../types";

interface Compiled {
  /** Place in the order of the label list. */
  readonly order: number;
  readonly label: CueLabelName;
  readonly ruling: string;
  readonly pattern: Pattern;
  readonly find: Template;
  readonly with: Template | null;
  readonly without: Template | null;
  readonly habit: boolean;
}

const compiled: readonly Compiled[] = LABEL_READERS.flatMap(({ label, ruling, patterns, habits = [] }, order) =>
  [...patterns.map((pattern) => ({ pattern, habit: false })), ...habits.map((pattern) => ({ pattern, habit: true }))].map(({ pattern, habit }) => ({
    order, label, ruling, pattern, habit,
    find: compile(pattern.find),
    with: pattern.with ? compile(pattern.with) : null,
    without: pattern.without ? compile(pattern.without) : null,
  })),
);

/** Patterns by the word they cannot do without, so that a text only meets those it has a word for. */
const byAnchor = new Map<number, Compiled[]>();
for (const each of compiled) byAnchor.set(each.find.anchor, [...(byAnchor.get(each.find.anchor) ?? []), each]);

const LOAD_NAMED = compile("<load>");
const NO_LOAD = compile("no_load|no_weight|no_weights|unloaded|without_weight|empty_hands|nothing_in_your_hands|bodyweight|no_bar|broomstick|dowel");
/** Families whose exercises carry an outside load unless the text says otherwise. */
const LOADED_FAMILIES = new Set(["squat", "hinge", "leg-machine", "horizontal-press", "overhead-press", "row", "vertical-pull", "arm-isolation", "kettlebell-swing", "carry", "cable", "lunge-step", "bridge-thrust"]);

/** The last text read: a line is read once for each group of people it addresses, one after the other. */
let last: { readonly text: string; readonly reading: Reading } | null = null;

/** Words, lemmas and where each turn of the templates shows; shared by both readers. */
export function analyse(line: string): Reading {
  const text = normalise(line);
  if (last?.text === text) return last.reading;
  const tokens = tokenise(text);
  last = { text, reading: { tokens, hits: hitsOf(tokens), phrases: new Map() } };
  return last.reading;
}

const shows = (template: Template, text: Reading, landed = 0): boolean => find(template, text).some(({ from }) => from >= landed);

function isLoaded(input: CueInput, text: Reading): boolean {
  const exercise = (input.exercise ?? "").toLowerCase();
  if (shows(NO_LOAD, text) || exercise.includes("bodyweight")) return false;
  return LOADED_FAMILIES.has(input.family) || shows(LOAD_NAMED, text) || LOADED_NAMES.some((name) => exercise.includes(name));
}
const LOADED_NAMES = ["bar", "bell", "plate", "weight", "load", "sled", "sandbag", "machine", "cable"];

function applies({ pattern, with: needs, without }: Compiled, input: CueInput, text: Reading, landed: number): boolean {
  if (pattern.only && !pattern.only.includes(input.family)) return false;
  if (pattern.not?.includes(input.family)) return false;
  if (pattern.audience && !pattern.audience.includes(input.audience)) return false;
  return (!needs || shows(needs, text, landed)) && !(without && shows(without, text, landed));
}

function counts({ habit, pattern: { as = "fault" } }: Compiled, text: Reading, place: Span): boolean {
  if (habit) return isDismissed(text, place) || isAbandoned(text, place);
  return as === "state" ? isPermitted(text, place) : !isSilenced(text, place, as);
}

/** Where one pattern shows in the text and is meant; "turned down" where it shows and is not; null where it does not show. */
function evidence(each: Compiled, text: Reading, landed: number): { start: number; end: number } | "turned down" | null {
  const places = find(each.find, text);
  for (const place of places) {
    if (place.from < landed || !counts(each, text, place)) continue;
    const first = text.tokens[place.from];
    const last = text.tokens[place.to - 1];
    if (first && last) return { start: first.start, end: last.end };
  }
  return places.length > 0 ? "turned down" : null;
}

/**
 * A label gives way to another that the same words carry: no second label for a mere consequence of the first.
 * The one on the left yields to those on the right.
 */
const YIELDS: Partial<Record<CueLabelName, readonly CueLabelName[]>> = {
  "spine-under-load": ["overextension", "neck-position"],
  "knee-tracking": ["joint-lockout", "ballistic-or-bounce"],
  "ballistic-or-bounce": ["joint-lockout"],
  "joint-lockout": ["failure-unsafe"],
  "load-jump": ["claim-guarantee", "no-spotter"],
  "no-spotter": ["ballistic-or-bounce"],
  overextension: ["breath-hold", "neck-position"],
  shame: ["claim-spot-reduction", "failure-unsafe"],
  "population-risk": ["claim-medical"],
};

const overlap = (a: CueLabel, b: CueLabel): boolean => a.start < b.end && b.start < a.end;
const withoutConsequences = (found: readonly CueLabel[]): CueLabel[] =>
  found.filter((each) => !found.some((other) => YIELDS[each.label]?.includes(other.label) && overlap(each, other)));

/** Labels that a hazard adds for people it is a particular hazard to (guide: population-risk). */
function forPeople(found: readonly CueLabel[], input: CueInput): CueLabel[] {
  const added = found.find(({ label }) =>
    (label === "breath-hold" && (input.audience === "pregnant" || input.audience === "older")) ||
    (label === "load-jump" && input.audience === "teen") ||
    (label === "diet-extreme" && input.audience === "teen"));
  return added && !found.some(({ label }) => label === "population-risk") ? [{ ...added, label: "population-risk" }] : [];
}

/** What the grammar reader makes of a text. */
export interface Grammatical {
  readonly found: readonly CueLabel[];
  /** Labels whose faults are named only to be forbidden, warned of or quoted, or are harmless without a load, or whose safe habits are kept. */
  readonly turnedDown: readonly CueLabelName[];
}

/**
 * What a text asks, praises or claims in plain words that it should not, in the order of the label list; each label at most once.
 *
 * Prohibitions, corrections, stop rules and rejected quotes are silent; when unsure, it is silent.
 */
export function readGrammar(text: Reading, input: CueInput): Grammatical {
  const landed = landing(text);
  const loaded = isLoaded(input, text);
  const found: (CueLabel | undefined)[] = [];
  const turnedDown = new Set<CueLabelName>();
  for (const element of text.hits.keys()) {
    for (const each of byAnchor.get(element) ?? []) {
      if (found[each.order] || !each.find.required.every((part) => text.hits.has(part)) || !applies(each, input, text, landed)) continue;
      // A curve that carries nothing is no fault: named, but harmless here.
      const seen = evidence(each, text, landed);
      const where = seen && each.pattern.loaded && !loaded ? "turned down" : seen;
      if (where === "turned down") turnedDown.add(each.label);
      else if (where) found[each.order] = { label: each.label, ...where, by: "grammar", ruling: each.ruling };
    }
  }
  const labels = withoutConsequences(found.filter((label) => label !== undefined));
  return { found: [...labels, ...forPeople(labels, input)], turnedDown: [...turnedDown].filter((label) => !found.some((each) => each?.label === label)) };
}
