import type { Scheme, Tempo } from "../../training";
import { takesAllBack, takesBack } from "../schemes/corrections";
import type { Token } from "../schemes/figures";
import type { Statement } from "../schemes/statement";
import { UNIT_NOT_SAID } from "../schemes/extras";
import { withPassedOver } from "./passed-over";
import { figureOf, isFigure, NAME } from "./stream";
import type { Role, Tagged } from "./tagger";

/** Tagged figures as statements about schemes: one figure, one statement. */

const IN_WORDS: Readonly<Record<string, number>> = { once: 1, single: 1, singles: 1, double: 2, doubles: 2, triple: 3, triples: 3 };
const MINUTES = /^min/;
const TIME = /^(?:sec|min)/;
const WEIGHT = /^(?:kilo|kg|pound|lb)/;
/** So many tokens after a figure its unit may stand: "two to three minutes". */
const UNIT_REACH = 3;
/** So many tokens from "in each hand" its weight may stand. */
const HAND_REACH = 9;
/** "Two minutes thirty". */
const SECOND_FIGURE = 3;

const unitAfter = (tokens: readonly Token[], place: number, is: RegExp): string | null => {
  for (let at = place + 1; at <= place + UNIT_REACH; at += 1) {
    const token = tokens[at];
    if (token === undefined || token.stop) return null;
    if (is.test(token.text)) return token.text;
    if (!/^(?:to|or|and|full|whole|good|and)$/.test(token.text) && !isFigure(token)) return null;
  }
  return null;
};

interface Made {
  readonly says: Partial<Scheme>;
  readonly rank: Statement["rank"];
  readonly remark: string | null;
}

const part = (says: Partial<Scheme>): Made => ({ says, rank: "part", remark: null });
const extra = (says: Partial<Scheme>, remark: string | null = null): Made => ({ says, rank: "extra", remark });

/** "Rest two": a rest or a hold of so few is in minutes where no unit says otherwise. */
const FEW = 5;

/** "One to two minutes": of two figures the lower one counts. */
function lowerOf(tokens: readonly Token[], place: number): number {
  const [before, own] = [tokens[place - 2], figureOf(tokens[place] as Token)];
  return before && isFigure(before) && tokens[place - 1]?.text === "to" ? Math.min(own, figureOf(before)) : own;
}

const secondsAt = (tokens: readonly Token[], place: number, value = figureOf(tokens[place] as Token)): number => {
  const unit = unitAfter(tokens, place, TIME);
  return Math.round(value * (unit === null ? (value <= FEW ? 60 : 1) : MINUTES.test(unit) ? 60 : 1));
};

const isCount = (value: number, most: number): boolean => Number.isInteger(value) && value >= 1 && value <= most;

function loadAt(tokens: readonly Token[], place: number): Made | null {
  const token = tokens[place] as Token;
  const value = figureOf(token);
  if (!(value > 0)) return null;
  if (tokens[place + 1]?.text === "percent") return extra({ load: { value, unit: "%1RM" } });
  const unit = unitAfter(tokens, place, WEIGHT);
  const plus = tokens.slice(Math.max(0, place - 4), place).some(({ text }) => text === "bodyweight") && tokens.slice(Math.max(0, place - 3), place).some(({ text }) => /^(?:plus|and|with)$/.test(text));
  const isOne = / (?:1|one) of /.test(` ${tokens.slice(Math.max(0, place - 4), place).map(({ text }) => text).join(" ")} `);
  // "Both sixteens", "both 16 in the rack".
  const isBoth = tokens[place - 1]?.text === "both" && !token.stop;
  const isPair = isBoth || (!isOne && token.value === null) || (!isOne && tokens.slice(place + 1, place + 3).some(({ text, stop }) => !stop && /^(?:dumbbells|kettlebells|bells)$/.test(text)));
  const name = unit !== null && /^[pl]/.test(unit) ? "lb" : "kg";
  return extra({ load: { value, unit: plus ? `bodyweight+${name}` : name, ...(isPair ? { perHand: true as const } : {}) } }, unit === null ? UNIT_NOT_SAID : null);
}

function effortAt(tokens: readonly Token[], place: number): Made | null {
  const value = figureOf(tokens[place] as Token);
  const near = tokens.slice(Math.max(0, place - 5), place + 6).map(({ text }) => text);
  const isScale = near.includes("rpe") || value >= 5 || (near.includes("out") && near.includes("10"));
  if (isScale) return value >= 1 && value <= 10 ? extra({ rpe: value }) : null;
  return isCount(value + 1, 11) ? extra({ rir: value }) : null;
}

function madeOf(tokens: readonly Token[], { place, role }: Tagged): Made | null {
  const token = tokens[place] as Token;
  const value = IN_WORDS[token.text] ?? figureOf(token);
  // An angle is neither weight nor work.
  if (/^degrees?$/.test(tokens[place + 1]?.text ?? "")) return null;
  switch (role) {
    case "sets": case "ramp-sets": return isCount(value, 20) ? part({ sets: value }) : null;
    // "Eight kilos only": a weight, whatever was heard.
    case "reps": case "ramp-reps": return WEIGHT.test(tokens[place + 1]?.text ?? "") && tokens[place + 1]?.stop !== true ? loadAt(tokens, place) : isCount(value, 500) ? part({ repsMin: value, repsMax: value }) : null;
    case "seconds": {
      const seconds = secondsAt(tokens, place);
      return seconds > 0 && seconds <= 3600 ? part({ seconds }) : null;
    }
    case "meters": return value > 0 ? part({ meters: value }) : null;
    case "load": case "ramp-load": return isFigure(token) ? loadAt(tokens, place) : null;
    case "rest": {
      const seconds = secondsAt(tokens, place, lowerOf(tokens, place));
      return seconds >= 0 && seconds <= 1200 ? extra({ restSeconds: seconds }) : null;
    }
    case "effort": return isFigure(token) ? effortAt(tokens, place) : null;
    case "side": return extra({ eachSide: true });
    case "bodyweight": return extra({ load: { value: null, unit: "bodyweight" } });
    case "amrap": return part({ amrap: true });
    default: return null;
  }
}

const aboutOf = (role: Role): Statement["about"] => (role.startsWith("ramp-") ? "ramp-up" : "working");

/** A tempo of so many figures is told in full. */
const FULL = 3;
/** Figures of one tempo stand no further apart than this. */
const TEMPO_REACH = 18;
/** What is done while a figure of a tempo is counted, in its order: lowering, the bottom, lifting, the top. */
const PHASES: readonly RegExp[] = [/^(?:down|lower|lowering|lowered|eccentric|negative|descend|out)$/, /^(?:bottom|pause|paused|hold|stop|stretch|low|wait|chest|floor)$/, /^(?:up|lift|lifting|press|pull|concentric|drive|stand|rise)$/, /^(?:top|squeeze|squeezed|peak)$/];

/** The phase a figure counts, by the words right after it, else right before it. */
function phaseOf(tokens: readonly Token[], place: number, next: number): number | null {
  const after = tokens.slice(place + 1, Math.min(next, place + 7)).map(({ text }) => text);
  if (after.some((word) => PHASES[3]?.test(word))) return 3;
  const found = after.map((word) => PHASES.findIndex((phase) => phase.test(word))).find((phase) => phase >= 0);
  if (found !== undefined) return found;
  const before = tokens.slice(Math.max(0, place - 4), place).map(({ text }) => PHASES.findIndex((phase) => phase.test(text)));
  return before.findLast((phase) => phase >= 0) ?? null;
}

/** Figures of one tempo as a tempo: one after the other as they are written, else by what is done meanwhile. */
function tempoOf(tokens: readonly Token[], places: readonly number[]): Tempo | null {
  const values = places.map((place) => (isFigure(tokens[place] as Token) ? figureOf(tokens[place] as Token) : 0));
  if (values.some((value) => !Number.isInteger(value) || value > 20)) return null;
  const isRow = places.every((place, at) => at === 0 || place - (places[at - 1] ?? 0) <= 2);
  const phases = places.map((place, at) => phaseOf(tokens, place, places[at + 1] ?? Infinity));
  const inTurn = phases.every((phase, at) => phase !== null && (at === 0 || phase > (phases[at - 1] ?? -1)));
  const isTold = !isRow && values.length > 2 && new Set(phases).size === phases.length && phases.every((phase) => phase !== null);
  if (!isTold && (values.length === 4 || (values.length === 3 && (isRow || !inTurn)))) return [values[0] ?? 0, values[1] ?? 0, values[2] ?? 0, values[3] ?? 0];
  const tempo: (number | null)[] = [null, null, null, null];
  phases.forEach((phase, at) => {
    const free = phase !== null && tempo[phase] === null ? phase : tempo.findIndex((value, index) => value === null && index >= at);
    if (free >= 0) tempo[free] = values[at] ?? 0;
  });
  const [down = null, low = null, up = null, top = null] = tempo;
  if (down === null) return null;
  // Down and up is a whole tempo; down alone leaves the rest open.
  return up === null && values.length < 3 ? [down, low, null, null] : [down, low ?? 0, up ?? 1, top ?? 0];
}

/** The tempos among tagged tokens, each a statement. */
function temposIn(tokens: readonly Token[], tags: readonly Tagged[]): (Statement & { place: number; role: Role })[] {
  const groups: number[][] = [];
  for (const { place } of tags.filter(({ role }) => role === "tempo")) {
    const open = groups.at(-1);
    if (open && place - (open.at(-1) ?? 0) <= TEMPO_REACH && open.length < 4) open.push(place);
    else groups.push([place]);
  }
  return groups.flatMap((places) => {
    const tempo = tempoOf(tokens, places);
    const [first, last] = [places[0] ?? 0, places.at(-1) ?? 0];
    return tempo === null ? [] : [{ ...extra({ tempo }), rank: places.length >= FULL ? "whole" : "extra", about: "working", either: false, from: tokens[first]?.at ?? 0, to: tokens[last]?.at ?? 0, place: first, role: "tempo" }];
  });
}

/** "Two minutes thirty", "eight to ten": the second figure belongs to the first. */
function joined(statements: readonly (Statement & { readonly place: number; readonly role: Role })[], tokens: readonly Token[]): (Statement & { readonly place: number })[] {
  const out: (Statement & { place: number; role: Role })[] = [];
  for (const statement of statements) {
    const last = out.at(-1);
    const beside = last !== undefined && last.role === statement.role && statement.place - last.place <= SECOND_FIGURE;
    const time = (says: Partial<Scheme>): "restSeconds" | "seconds" | null => (says.restSeconds !== undefined ? "restSeconds" : says.seconds !== undefined ? "seconds" : null);
    const field = time(statement.says);
    if (beside && field !== null && last.says[field] !== undefined) {
      const [first, second] = [last.says[field] ?? 0, statement.says[field] ?? 0];
      const minutes = MINUTES.test(tokens[last.place + 1]?.text ?? "");
      // "Two minutes thirty" is a sum, "two to three minutes" a range whose shorter end is taken: so long is rested at least.
      const seconds = minutes && second < 60 ? first + second : Math.min(first, second);
      out[out.length - 1] = { ...last, says: { [field]: seconds }, to: statement.to };
    } else out.push(statement);
  }
  return out;
}

/** So few tokens are between a figure and the one that takes its place: "eight, no sorry, ten". */
const CORRECTED = 6;

/** "I did four sets of, no, I didn't": broken off; another number of sets follows within so many tokens. */
const [BROKEN_OFF, ANEW] = [/^(?:no|wait|sorry|actually|hang|hold|well|uh|um|hmm)$/, 40];
const isBrokenOff = (tokens: readonly Token[], place: number): boolean =>
  /^(?:sets?|rounds?)$/.test(tokens[place + 1]?.text ?? "") && tokens[place + 2]?.text === "of" && BROKEN_OFF.test(tokens[place + 3]?.text ?? "");

/** So few tokens are between a phrase taken back and the one in its place: "two sets of 15, no sorry, two sets of 20". */
const ALL = 12;

function isTakenBack<S extends { readonly place: number; readonly role: Role }>({ place, role }: S, later: readonly S[], tokens: readonly Token[]): boolean {
  const anew = later.find((other) => other.role === role);
  if (!anew || anew.place - place > ALL) return false;
  return tokens.slice(place + 1, anew.place).every(({ text }) => text !== NAME) && takesAllBack(tokens, place + 1, anew.place);
}

/** Without the figures that were corrected straight away. */
const uncorrected = <S extends { readonly place: number; readonly role: Role }>(statements: readonly S[], tokens: readonly Token[]): S[] =>
  statements.filter(({ place, role }, at) => {
    if (role === "sets" && isBrokenOff(tokens, place) && statements.slice(at + 1).some((later) => later.role === role && later.place - place <= ANEW)) return false;
    if (isTakenBack({ place, role }, statements.slice(at + 1), tokens)) return false;
    const next = statements[at + 1];
    if (next?.role !== role || next.place - place > CORRECTED) return true;
    return tokens.slice(place + 1, next.place).some(({ text }) => text === NAME) || !takesBack(tokens, place + 1, next.place);
  });

type Told = Statement & { readonly place: number; readonly role: Role };

/**
 * What tagged tokens say about schemes, in order.
 */
export function saidBy(tokens: readonly Token[], heard: readonly Tagged[]): Statement[] {
  const tags = withPassedOver(tokens, heard);
  const surely = new Set(heard);
  const made: Told[] = [];
  for (const tag of tags) {
    const token = tokens[tag.place] as Token;
    const last = made.at(-1);
    if (tag.role === "reps-high") {
      const high = figureOf(token);
      if (last?.says.repsMin !== undefined && high > last.says.repsMin) made[made.length - 1] = { ...last, says: { repsMin: last.says.repsMin, repsMax: high }, to: token.at };
      continue;
    }
    const one = madeOf(tokens, tag);
    if (one) made.push({ ...one, about: aboutOf(tag.role), either: false, from: token.at, to: token.at, place: tag.place, role: tag.role, ...(surely.has(tag) || IN_WORDS[token.text] !== undefined ? {} : { isInferred: true }) });
  }
  const all = joined(uncorrected([...made, ...temposIn(tokens, tags)].sort((a, b) => a.place - b.place), tokens), tokens);
  for (const { place } of tags.filter(({ role }) => role === "hand")) {
    const loads = all.flatMap((statement, at) => (typeof statement.says.load?.value === "number" ? [{ at, away: place - statement.place }] : []));
    const nearest = loads.filter(({ away }) => Math.abs(away) <= HAND_REACH).sort((a, b) => Math.abs(a.away) - Math.abs(b.away) || b.away - a.away)[0];
    const statement = nearest && all[nearest.at];
    if (nearest && statement?.says.load) all[nearest.at] = { ...statement, says: { load: { ...statement.says.load, perHand: true } } };
  }
  return all.map(({ place: _, ...statement }): Statement => statement);
}
