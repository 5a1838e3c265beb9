import type { Scheme } from "../../training";
import type { Mention } from "../names/find";
import type { Part } from "../order/speech";
import type { Word } from "../types";
import { compose, hasWork, type MadeSet, type Ordered, type SchemeRead } from "./compose";
import { UNIT_NOT_SAID } from "./extras";
import { roundsFor } from "./rounds";
import { pairOf, shareOf } from "./shares";
import { sameAs } from "./same";
import type { Statement } from "./statement";

/** A statement with the sentence it stands in. */
export type PlacedStatement = Ordered;

const OF_ALL = /\bof (?:everything|each exercise|all of them)\b/;

/** So many words before the work "same again" may stand in its sentence. */
const SAME_REACH = 6;

/** Said within one exercise, "through it twice" is about that one; these are about all. */
const ABOUT_ALL = /\b(?:(?:go|going|goes|run) (?:a?round |through )?(?:them|these|those)|both|altogether|rounds?|circuit|whole|everything|again|exercises?|moves?|stations?|total|lot)\b/;

/** A number of sets beside the work it counts is that exercise's own: "thirty seconds each leg, and we go through it twice". */
const isOwn = (statement: PlacedStatement, statements: readonly PlacedStatement[]): boolean =>
  statement.rank === "part" && statement.says.sets !== undefined && statement.says.seconds === undefined
  && statements.some((other) => other !== statement && other.sentence === statement.sentence && other.rank === "part" && other.about !== "circuit" && hasWork(other.says));

const inUnit = (statement: PlacedStatement, unit: "kg" | "lb"): PlacedStatement =>
  statement.remark === UNIT_NOT_SAID && statement.says.load ? { ...statement, says: { ...statement.says, load: { ...statement.says.load, unit } } } : statement;

/** Pounds when more loads are said in them. */
export function unitOf(statements: readonly Statement[]): "kg" | "lb" {
  const units = statements.flatMap(({ says, remark }) => (says.load && remark !== UNIT_NOT_SAID ? [says.load.unit] : []));
  return units.filter((unit) => unit.endsWith("lb")).length > units.filter((unit) => unit.endsWith("kg")).length ? "lb" : "kg";
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
export function readSchemes(parts: readonly Part[], statements: readonly PlacedStatement[], said: readonly string[], mentions: readonly Mention[], words: readonly Word[]): Map<Part, SchemeRead> {
  const unit = unitOf(statements);
  const inExercise = new Set(parts.filter(({ kind }) => kind === "exercise").flatMap(({ from, to }) => Array.from({ length: to - from }, (_, at) => from + at)));
  const placed = statements.map((statement) => inUnit(statement, unit)).map((statement): PlacedStatement => {
    const local = inExercise.has(statement.sentence) && statement.about === "circuit" && !OF_ALL.test(said[statement.sentence] ?? "") && (isOwn(statement, statements) || !ABOUT_ALL.test(said[statement.sentence] ?? ""));
    return local ? { ...statement, about: "working" } : statement;
  });
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
    const read = compose(own2, complete ? {} : lent, fixed);
    reads.set(part, read);
    const working: MadeSet | undefined = read.sets.find(({ role }) => role === "working");
    if (working) before = working.scheme;
  }
  return reads;
}
