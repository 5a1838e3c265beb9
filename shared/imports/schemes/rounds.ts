import type { Equipment } from "../../exercises";
import type { Scheme } from "../../training";
import type { Part } from "../order/speech";
import { hasWork, type Ordered } from "./compose";

/** Rounds, and work and rest by the clock, that are said once for several exercises. */

const FIELDS = ["sets", "repsMin", "repsMax", "reps", "seconds", "meters", "amrap", "restSeconds", "load"] as const;

/** What a weight said of the whole circuit is held in. */
const WEIGHTS: ReadonlySet<Equipment> = new Set(["barbell", "trap bar", "dumbbell", "kettlebell", "sandbag", "medicine ball"]);

const kindAt = (parts: readonly Part[], sentence: number): Part | undefined => parts.find(({ from, to }) => sentence >= from && sentence < to);

function joined(statements: readonly Ordered[]): Partial<Scheme> {
  const said: Record<string, unknown> = {};
  for (const { says } of statements) for (const field of FIELDS) if (says[field] !== undefined && said[field] === undefined) said[field] = says[field];
  return said;
}

/** Does the part count its sets itself? */
const countsItself = (part: Part, statements: readonly Ordered[]): boolean =>
  statements.some(({ sentence, about, says }) => sentence >= part.from && sentence < part.to && about === "working" && (says.sets ?? 0) > 1);

/**
 * What is lent to each exercise. Said before the exercises it is for all of them; said among them, for its own and for the
 * neighbours on both sides that do not count their sets themselves.
 */
export function roundsFor(parts: readonly Part[], statements: readonly Ordered[]): (part: Part) => Partial<Scheme> {
  const exercises = parts.filter(({ kind }) => kind === "exercise");
  const first = exercises[0]?.from ?? 0;
  const lending = statements.filter(({ says, about, rank, sentence }) => {
    // "Forty on, twenty off" and "one sixteen-kilo bell", said before the first exercise, are said for all.
    const general = sentence < first && about === "working" && (says.load !== undefined || (["opening", "talk"].includes(kindAt(parts, sentence)?.kind ?? "") && says.seconds !== undefined && says.restSeconds !== undefined));
    return (about === "circuit" || general) && !(rank === "extra" && says.restSeconds === undefined && says.load === undefined);
  });
  const among = new Map<Part, Ordered[]>();
  const before: Ordered[] = [];
  for (const statement of lending) {
    const home = kindAt(parts, statement.sentence);
    if (home?.kind !== "exercise") before.push(statement);
    else among.set(home, [...(among.get(home) ?? []), statement]);
  }
  const lent = new Map<Part, Ordered[]>();
  for (const [home, said] of among) {
    const at = exercises.indexOf(home);
    const own = countsItself(home, statements);
    const takes = (place: number): boolean => exercises[place] !== undefined && !countsItself(exercises[place], statements) && !(place !== at && among.has(exercises[place]) && joined(among.get(exercises[place]) ?? []).sets !== undefined);
    let [first, last] = [own ? at + 1 : at, at];
    while (!own && takes(first - 1)) first -= 1;
    while (takes(last + 1)) last += 1;
    for (const part of exercises.slice(first, last + 1)) lent.set(part, [...(lent.get(part) ?? []), ...said.filter(({ says }) => part === home || !hasWork(says) || says.seconds !== undefined)]);
  }
  const loads = new Set(before.flatMap(({ says }) => says.load?.value ?? []));
  return (part) => {
    const { load, ...rest } = joined([...(lent.get(part) ?? []), ...before]);
    const isLoaded = load !== undefined && loads.size <= 1 && (part.exercise === null || part.exercise.equipment.some((each) => WEIGHTS.has(each)));
    return isLoaded ? { ...rest, load } : rest;
  };
}
