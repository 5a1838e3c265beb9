import type { Scheme } from "../../training";
import type { Mention } from "../names/find";
import type { Part } from "../order/speech";
import type { Word } from "../types";
import { agreed } from "./agree";
import { assemble } from "./assemble";
import { compose, hasWork, type MadeSet, type Ordered, type SchemeRead } from "./compose";
import { UNIT_NOT_SAID } from "./extras";
import { owned } from "./owners";
import { roundsFor } from "./rounds";
import { pairOf, shareOf } from "./shares";
import { sameAs } from "./same";
import type { Statement } from "./statement";

/** A statement with the sentence it stands in. */
export type PlacedStatement = Ordered;

/** So many words before the work "same again" may stand in its sentence. */
const SAME_REACH = 6;

const inUnit = (statement: PlacedStatement, unit: "kg" | "lb"): PlacedStatement =>
  statement.remark === UNIT_NOT_SAID && statement.says.load ? { ...statement, says: { ...statement.says, load: { ...statement.says.load, unit } } } : statement;

/** Weights that bars with plates of 45 pounds make, and hardly ever bars with plates of 20 kg. Common practice, no source. */
const IN_POUNDS = new Set([45, 65, 95, 115, 135, 155, 165, 175, 185, 205, 225, 245, 275, 315, 365, 405]);

/** The unit that is said more often, of whatever; pounds where none is said and the weights are those of pound plates. */
export function unitOf(statements: readonly Statement[], words: readonly Word[]): "kg" | "lb" {
  const said = (unit: RegExp): number => words.filter(({ plain }) => unit.test(plain)).length;
  const [pounds, kilos] = [said(/(?:^|\d)(?:pounds?|pounders?|lbs?)$/), said(/(?:^|\d)(?:kilos?|kgs?|kilograms?)$/)];
  if (pounds !== kilos) return pounds > kilos ? "lb" : "kg";
  const loads = statements.flatMap(({ says }) => says.load?.value ?? []);
  return loads.filter((value) => IN_POUNDS.has(value)).length > loads.length / 3 ? "lb" : "kg";
}

/** The words of a part up to its own work. */
function openingOf(part: Part, here: readonly PlacedStatement[], said: readonly string[], words: readonly Word[]): string {
  const work = here.find(({ says, about }) => about === "working" && hasWork(says));
  if (!work) return said.slice(part.from, part.to).join(" | ");
  const same = words.slice(Math.max(0, work.from - SAME_REACH), work.from).map(({ plain }) => plain).join(" ");
  return [...said.slice(part.from, work.sentence), same].join(" | ");
}

/**
 * The set lines of each exercise part. What a circuit says once counts for every exercise that does not say it itself, and
 * "same again" takes over what the exercise before said.
 * @param said - the sentences' plain words
 */
export function readSchemes(parts: readonly Part[], statements: readonly PlacedStatement[], phrases: readonly PlacedStatement[], said: readonly string[], mentions: readonly Mention[], words: readonly Word[]): Map<Part, SchemeRead> {
  const unit = unitOf(statements, words);
  const placed = owned(statements.map((statement) => inUnit(statement, unit)), parts, mentions, words);
  const lentTo = roundsFor(parts, placed);
  const reads = new Map<Part, SchemeRead>();
  let before: Scheme | null = null;
  for (const part of parts.filter(({ kind }) => kind === "exercise")) {
    const pair = pairOf(part, parts);
    const [first, last] = [pair[0]?.from ?? part.from, Math.max(...pair.map(({ to }) => to))];
    const within = placed.filter(({ sentence }) => sentence >= first && sentence < last);
    const here = pair.length > 1 ? shareOf(part, pair, within, mentions, words) : within;
    const circuit = lentTo(part);
    const isCircuit = circuit.sets !== undefined || circuit.seconds !== undefined;
    const own = here.filter((statement) => statement.about !== "circuit" || statement.says.sets === undefined || hasWork(statement.says));
    const same = sameAs(said.slice(part.from, part.to).join(" | "), openingOf(part, here, said, words), before);
    const takesAll = hasWork(same);
    const complete = own.some(({ rank, about }) => rank === "whole" && about !== "ramp-up");
    const lent: Partial<Scheme> = { ...(isCircuit ? circuit : {}), ...(takesAll ? same : {}) };
    const own2 = complete || !isCircuit ? own : own.filter(({ rank, says }) => rank !== "part" || circuit.seconds === undefined || says.sets !== undefined || says.seconds !== undefined);
    const { restSeconds, tempo, load, rpe, rir } = same;
    const fixed = Object.fromEntries(Object.entries({ restSeconds, tempo, load, rpe, rir }).filter(([, value]) => value !== undefined));
    const figures = assemble(own2, complete ? {} : lent, fixed, words);
    const whole = compose(phrases.filter(({ sentence, about }) => about !== "circuit" && sentence >= part.from && sentence < part.to).map((statement) => inUnit(statement, unit)), {}, {});
    const read = pair.length > 1 ? figures : agreed(figures, whole, !own2.some(({ says, about }) => about !== "ramp-up" && says.sets !== undefined) && lent.sets === undefined);
    reads.set(part, read);
    const working: MadeSet | undefined = read.sets.find(({ role }) => role === "working");
    if (working) before = working.scheme;
  }
  return reads;
}
