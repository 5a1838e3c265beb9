import type { Equipment } from "../../exercises";
import type { Scheme } from "../../training";
import type { Mention } from "../names/find";
import { toldOneByOne } from "../assembly/told";
import type { RowModels } from "../learning/models";
import type { Listened } from "../listener/listen";
import type { Part } from "../order/speech";
import type { Word } from "../types";
import { ownersIn } from "../owners/owners";
import { homeOf, sceneOf, type Scene } from "../owners/scene";
import { isNamed, type Turned } from "../owners/turned";
import { agreed } from "./agree";
import { assemble } from "./assemble";
import { compose, hasWork, type Ordered, type SchemeRead } from "./compose";
import { UNIT_NOT_SAID } from "./extras";
import { doneAloud } from "./aloud";
import { withoutChanges } from "./by-how-much";
import { heldByAll } from "./for-all";
import { cameTo } from "./came-to";
import { isOfOne } from "./borrowed";
import { isCounted } from "./counted";
import { listedFirst } from "./listed";
import { isOneBell } from "./one-bell";
import { ofToday } from "./past";
import { pick, sameIn } from "./same";
import { saidOf } from "./said-of";
import { toldOnce } from "./retold";
import { isRemark } from "./statement";
import { unitOf } from "./unit";
import { asUsual, isSided } from "./usual";

/** A statement with the sentence it stands in. */
export type PlacedStatement = Ordered;

/** What an exercise takes over from those before it: from the one named, else from the last one. */
function takenOver(words: readonly Word[], turned: Turned, until: number, read: readonly (Scheme | null)[], exercises: readonly Turned[], mentions: readonly Mention[]): Partial<Scheme> {
  const out: Partial<Scheme> = {};
  for (const { fields, from, to } of sameIn(words, turned.turn, until)) {
    const leads = (word: number): boolean => words.slice(Math.max(from, word - 3), word).some(({ plain }) => /^(?:as|like|with)$/.test(plain));
    const mention = mentions.find((each) => each.from >= from && each.from < to && leads(each.from));
    const named = mention ? read.findLastIndex((scheme, at) => scheme !== null && isNamed(mention, exercises[at] as Turned)) : -1;
    const scheme = named >= 0 ? read[named] : read.findLast((each) => each !== null);
    if (scheme) Object.assign(out, pick(scheme, fields));
  }
  return out;
}

const inUnit = (statement: PlacedStatement, unit: "kg" | "lb"): PlacedStatement =>
  statement.remark === UNIT_NOT_SAID && statement.says.load ? { ...statement, says: { ...statement.says, load: { ...statement.says.load, unit } } } : statement;

/** Statements from elsewhere, the nearest to the exercise's own time first. */
function nearestFirst(statements: readonly PlacedStatement[], { turn }: Turned, until: number): PlacedStatement[] {
  const away = ({ from }: PlacedStatement): number => (from < turn ? turn - from : from >= until ? from - until : 0);
  return [...statements].sort((a, b) => away(a) - away(b));
}

/** Where several figures of a kind are lent, the first of each counts. */
function joined(statements: readonly PlacedStatement[]): Partial<Scheme> {
  const said: Record<string, unknown> = {};
  for (const { says } of statements) for (const [field, value] of Object.entries(says)) if (said[field] === undefined) said[field] = value;
  return said;
}

/** Is a figure an exercise's own: said in its time, or said elsewhere of it alone? */
export const isOwn = ({ exercises, statements }: Scene, owners: readonly (readonly number[])[], at: number, place: number): boolean =>
  owners[at]?.includes(place) === true && (owners[at]?.length === 1 || homeOf(exercises, statements[at]?.from ?? 0) === place);

/** A band's own exercise needs no word of it. */
const isInName = ({ says }: PlacedStatement, { exercise, title }: Part): boolean => says.load?.unit === "band" && (exercise?.equipment.includes("band") ?? /\bband/i.test(title));

/** What a weight said of the whole session is held in. */
const WEIGHTS: ReadonlySet<Equipment> = new Set(["barbell", "trap bar", "dumbbell", "kettlebell", "sandbag", "medicine ball"]);

/** The only weight of the session, said before its first exercise: "one sixteen-kilo bell" is for all that take one. */
function onlyLoad({ exercises, statements }: Scene): Scheme["load"] | null {
  const loads = statements.filter(({ says }) => typeof says.load?.value === "number");
  const [first] = loads;
  return first && homeOf(exercises, first.from) < 0 && loads.every(({ says }) => says.load?.value === first.says.load?.value) ? (first.says.load ?? null) : null;
}

/** The figures of an exercise that are its own, and what the others lend it. */
function figuresFor(scene: Scene, owners: readonly (readonly number[])[], listed: ReadonlyMap<number, number>, place: number, only: Scheme["load"] | null, until: number): { readonly own: readonly PlacedStatement[]; readonly lent: Partial<Scheme>; readonly isBorrowed: boolean } {
  const exercise = scene.exercises[place] as Turned;
  const { part } = exercise;
  // What the list said is lent: what is told when it is done counts.
  const isMine = (statement: PlacedStatement, at: number): boolean => (isOwn(scene, owners, at, place) && !listed.has(at)) || (isRemark(statement) && owners[at]?.length === 0 && homeOf(scene.exercises, statement.from) === place);
  const others = scene.statements.filter((_, at) => (listed.has(at) ? listed.get(at) === place : owners[at]?.includes(place) === true && !isOwn(scene, owners, at, place)));
  const isWeighted = part.exercise === null ? /kettlebell|dumbbell/i.test(part.title) : part.exercise.equipment.some((each) => WEIGHTS.has(each));
  const near = nearestFirst(others, exercise, until);
  const lent = { ...(only && isWeighted ? { load: only } : {}), ...joined(near) };
  const lentSets = near.find(({ says }) => says.sets !== undefined);
  const isBorrowed = lentSets !== undefined && isOfOne(scene, lentSets);
  const mine = scene.statements.filter(isMine).filter((statement) => !isInName(statement, part));
  // Where a plan is told in full, or the clock says when it is over, reps that were passed over stay so.
  const heard = mine.filter(({ isInferred, says }) => !isInferred || says.repsMin === undefined);
  const isPlanned = [lent, ...heard.map(({ says }) => says)].some(({ seconds }) => seconds !== undefined) || (heard.some(({ says }) => (says.sets ?? 1) > 1) && heard.some(({ says }) => hasWork(says)));
  const told = isPlanned ? heard : mine;
  const counted = told.filter((statement) => !isCounted(statement, told, scene.words, isWeighted));
  const own = [toldOnce, ofToday, cameTo, withoutChanges].reduce<readonly PlacedStatement[]>((left, without) => without(left, scene.words), counted);
  // Where everything is done by the clock, what is counted aloud is no number of reps.
  const byClock = lent.seconds !== undefined && !own.some(({ says }) => says.sets !== undefined);
  return { own: byClock ? own.filter(({ says }) => says.repsMin === undefined && says.amrap === undefined) : own, lent, isBorrowed };
}

/**
 * The set lines of each exercise part, from the figures that hold for it; "same again" takes over what the exercise before said.
 */
export function readSchemes(parts: readonly Part[], statements: readonly PlacedStatement[], phrases: readonly PlacedStatement[], mentions: readonly Mention[], words: readonly Word[], listened: Listened, models: Pick<RowModels, "assembly">): Map<Part, SchemeRead> {
  const unit = unitOf(statements, words);
  const scene = sceneOf(parts, statements.map((statement) => inUnit(statement, unit)), words);
  const owners = heldByAll(scene, ownersIn(scene, listened).map((own, at) => saidOf(scene, at, mentions) ?? own), mentions);
  const listed = new Map([...listedFirst(scene, mentions)].filter(([at, place]) => owners[at]?.join() !== String(place)));
  const only = onlyLoad(scene);
  const phrased = (part: Part): SchemeRead => compose(phrases.filter((statement) => statement.about !== "circuit" && statement.sentence >= part.from && statement.sentence < part.to && !isInName(statement, part)).map((statement) => inUnit(statement, unit)));
  const reads = new Map<Part, SchemeRead>();
  const schemes: (Scheme | null)[] = [];
  scene.exercises.forEach((exercise, place) => {
    const { part } = exercise;
    const until = scene.exercises[place + 1]?.turn ?? words.length;
    const { own, lent: all, isBorrowed } = figuresFor(scene, owners, listed, place, only, until);
    const { restSeconds, tempo, load, rpe, rir, ...work } = takenOver(words, exercise, until, schemes, scene.exercises, mentions);
    const fixed = Object.fromEntries(Object.entries({ restSeconds, tempo, load, rpe, rir }).filter(([, value]) => value !== undefined));
    // What nobody says in numbers is counted as it is done.
    const { sets, ...sided } = doneAloud(own, words, exercise.turn, until, isSided(part));
    // Who is seen to do two sets does not do the three that another exercise was told to have.
    const { sets: _, ...lentElse } = all;
    const lent: Partial<Scheme> = isBorrowed && sets !== undefined ? lentElse : all;
    const told = toldOneByOne(own, words, models.assembly);
    const figures = assemble(told.own, told.places, { ...sided, ...work, ...lent }, fixed, sets);
    // Single sets with weights of their own need no number.
    const isWeighed = figures.sets.filter(({ role, scheme }) => role === "working" && scheme.load !== undefined).length > 1;
    const isUncounted = lent.sets === undefined && work.sets === undefined && !isWeighed && !own.some(({ says, about }) => about !== "ramp-up" && says.sets !== undefined);
    const read = asUsual(part.pair !== null ? figures : agreed(figures, phrased(part), isUncounted), part, isOneBell(own, words));
    reads.set(part, read);
    schemes.push(read.sets.find(({ role }) => role === "working")?.scheme ?? null);
  });
  return reads;
}
