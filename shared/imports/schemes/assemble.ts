import { ASIDE, BEGINS, FOR_ALL } from "../assembly/assembly";
import type { Scheme } from "../../training";
import { hasWork, made, pickWork, settled, WORK_FIELDS, type MadeSet, type Ordered, type SchemeRead } from "./compose";
import { isRemark } from "./statement";

/** Set lines from single figures, each with its place: it begins a line, goes on with it, holds for all, or is an aside. */

/** One line in the making, and the statements it is made of. */
interface Line {
  readonly role: MadeSet["role"];
  says: Partial<Scheme>;
  /** Numbers of reps, where they fall or rise from set to set. */
  ladder: number[];
  readonly base: Ordered[];
}

/** A scheme without what one set consists of. */
const withoutWork = (says: Partial<Scheme>): Partial<Scheme> => Object.fromEntries(Object.entries(says).filter(([field]) => !(WORK_FIELDS as readonly string[]).includes(field)));

/** Adds what a figure says to a line; what it says already stays, but for "in each hand" and for reps that change from set to set. */
function add(line: Line, statement: Ordered): void {
  const { says } = statement;
  line.base.push(statement);
  if (says.repsMin !== undefined && line.says.repsMin !== undefined && says.repsMin === says.repsMax && line.says.repsMin === line.says.repsMax) {
    // "Eight, seven, six, that's the three sets, so eight on the first": what is complete is told again.
    const isComplete = line.ladder.length > 1 && line.says.sets === line.ladder.length;
    if (says.repsMin !== line.ladder.at(-1) && !isComplete) line.ladder.push(says.repsMin);
    return;
  }
  if (says.load?.perHand && line.says.load && line.says.load.value === says.load.value) line.says = { ...line.says, load: { ...line.says.load, perHand: true } };
  if (says.repsMin !== undefined && says.repsMin === says.repsMax) line.ladder.push(says.repsMin);
  // "Ten, well, eight to ten": the range says more.
  const isRange = says.repsMin !== undefined && says.repsMin !== says.repsMax && line.says.repsMin === line.says.repsMax && (line.says.repsMin === says.repsMin || line.says.repsMin === says.repsMax);
  line.says = isRange ? { ...line.says, ...says } : { ...says, ...line.says };
}

function lineOf(role: Line["role"], statements: readonly Ordered[]): Line {
  const line: Line = { role, says: {}, ladder: [], base: [] };
  for (const statement of statements) add(line, statement);
  return line;
}

/** Where other reps and now another weight make a line of their own: "five at a hundred, then three sets of eight at eighty". */
function tornAt({ says, base }: Line, statement: Ordered): number {
  const [old, next] = [says.load?.value, statement.says.load?.value];
  if (typeof old !== "number" || typeof next !== "number" || old === next) return -1;
  const first = base.find((each) => each.says.repsMin !== undefined)?.says.repsMin;
  const other = base.findLastIndex((each) => each.says.repsMin !== undefined && each.says.repsMin !== first);
  return other > 0 && base[other - 1]?.says.sets !== undefined ? other - 1 : other;
}

/** "Twelve at sixty, ten at seventy": reps that led to the next weight go with it. */
function ledTo({ says, base }: Line, statement: Ordered): number {
  const last = base.at(-1)?.says;
  return statement.says.load !== undefined && says.load !== undefined && last?.repsMin !== undefined && last.repsMin !== says.repsMin ? base.length - 1 : -1;
}

interface Placed {
  readonly lines: readonly Line[];
  /** What holds for every line. */
  readonly all: Partial<Scheme>;
}

/** Figures as lines, by their places. */
function linesOf(statements: readonly Ordered[], places: readonly number[]): Placed {
  const lines: Line[] = [];
  let all: Partial<Scheme> = {};
  statements.forEach((statement, at) => {
    const place = places[at] ?? ASIDE;
    if (place === ASIDE) return;
    const role: Line["role"] = statement.about === "ramp-up" ? "ramp-up" : "working";
    if (place === FOR_ALL && role === "working") {
      all = { ...statement.says, ...all };
      return;
    }
    const open = lines.findLast((line) => line.role === role);
    const torn = open ? (place === BEGINS ? ledTo(open, statement) : tornAt(open, statement)) : -1;
    // A rest alone begins no line.
    const isRest = open !== undefined && statement.says.restSeconds !== undefined && open.says.restSeconds === undefined;
    if (open && torn >= 0) {
      const moved = [...open.base.slice(torn), statement];
      lines[lines.lastIndexOf(open)] = lineOf(role, open.base.slice(0, torn));
      lines.push(lineOf(role, moved));
    } else if (open && (place !== BEGINS || isRest)) add(open, statement);
    else lines.push(lineOf(role, [statement]));
  });
  return { lines, all };
}

/** Work by the clock or by the metre has no tempo, and "no rest" is none to be told. */
function plausible({ tempo, restSeconds, ...scheme }: Scheme): Scheme {
  const isCounted = scheme.seconds === undefined && scheme.meters === undefined;
  return { ...scheme, ...(tempo !== undefined && isCounted ? { tempo } : {}), ...(restSeconds === undefined || restSeconds === 0 ? {} : { restSeconds }) };
}

/** The working lines; one lighter set that leads from the ramp up to the sets that count is one more of the ramp. */
function raised(lines: readonly Line[]): Line[] {
  const working = lines.filter(({ role }) => role === "working");
  const main = working.findIndex(({ says }) => (says.sets ?? 1) > 1);
  const weight = working[main]?.says.load;
  if (main < 1 || typeof weight?.value !== "number" || !lines.some(({ role }) => role === "ramp-up")) return working;
  return working.map((line, at) => {
    const own = line.says.load?.value;
    return at < main && line.says.sets === undefined && line.says.rpe === undefined && typeof own === "number" && own < (weight.value ?? 0) ? { ...line, role: "ramp-up" as const } : line;
  });
}

/** Who holds a weight in each hand in one set of an exercise holds one in each hand in all of them. */
function inBothHands(lines: readonly Line[]): void {
  if (!lines.some(({ says }) => says.load?.perHand)) return;
  for (const line of lines) if (typeof line.says.load?.value === "number" && !line.says.load.unit.startsWith("bodyweight")) line.says = { ...line.says, load: { ...line.says.load, perHand: true } };
}

/** Is a line of several sets the one before it told again? */
function isToldAgain(before: MadeSet | undefined, line: MadeSet): boolean {
  return before?.role === line.role && before.text === line.text && (line.scheme.sets ?? 1) > 1;
}

/** "Thirties for twelve, thirty-fives for ten, forties for eight, so three sets": a number of sets behind single ones that is how many there are is of them all, not of the last. */
function countedUp(working: readonly Line[]): number | undefined {
  const last = working.at(-1);
  const counted = last?.base.findLastIndex(({ says }) => says.sets !== undefined) ?? -1;
  const sets = last?.base[counted]?.says.sets;
  // What is told behind the number is no work.
  if (!last || sets !== working.length || sets < 3 || counted === 0 || last.base.slice(counted + 1).some(({ says }) => hasWork(says)) || working.some(({ says }) => says.sets !== undefined && says !== last.says)) return undefined;
  const { sets: _, ...says } = last.says;
  last.says = says;
  return sets;
}

/** "Sets of ten": so many words on the reps are told. */
const OF_REPS = 3;

/** "Four sets, forty for twelve, fifty for ten, ...": a number of sets before as many single ones is how many there are, where it is not said right before the reps of the first. */
function countedBefore(working: readonly Line[]): number | undefined {
  const [first, ...rest] = working;
  const counted = first?.base.findIndex(({ says }) => says.sets !== undefined) ?? -1;
  const [count, next] = [first?.base[counted], first?.base[counted + 1]];
  const sets = count?.says.sets;
  const isOfReps = next?.says.repsMin !== undefined && count !== undefined && next.from - count.to <= OF_REPS;
  if (!first || sets === undefined || sets !== working.length || sets < 3 || isOfReps || rest.some(({ says }) => says.sets !== undefined || says.load === undefined)) return undefined;
  const { sets: _, ...says } = first.says;
  first.says = says;
  return sets;
}
/** Sets that are told one by one are one each; where there are more than were told, the first was done more often: "three sets, twelve, and the last one twenty". */
const inTurn = (total: number | undefined, at: number, told: number): number | undefined => (total === undefined ? undefined : at === 0 ? Math.max(1, total - told + 1) : 1);

const uncounted = "No number of sets was heard; one was written.";
const workless = "A number of sets was heard, but not what one set is.";
const unfit = "The figures do not make a set line together.";
const second = "A second scheme for the same exercise; the first one was taken.";

/**
 * The set lines of one exercise from the single figures said of it.
 * @param places - of the statements
 * @param lent - what the whole circuit, or "same again", lends where the exercise does not say it itself
 * @param fixed - what is said of it by reference: "same rest as before"
 * @param aloud - sets that were counted while they were done
 */
export function assemble(statements: readonly Ordered[], places: readonly number[], lent: Partial<Scheme>, fixed: Partial<Scheme>, aloud?: number): SchemeRead {
  const sets: MadeSet[] = [];
  const remarks: { statement: Ordered; why: string; isOpen: boolean }[] = [];
  const put = ({ role, base }: Line, scheme: Scheme, remark: string | null): void => {
    const line = made(role, settled(scheme));
    const first = base[0];
    if (line) {
      if (!isToldAgain(sets.at(-1), line)) sets.push(line);
      for (const statement of base) if (statement.remark !== null && !isRemark(statement)) remarks.push({ statement, why: statement.remark, isOpen: false });
      if (remark !== null && first) remarks.push({ statement: first, why: remark, isOpen: false });
    } else for (const statement of base) remarks.push({ statement, why: unfit, isOpen: true });
  };
  statements.forEach((statement, at) => {
    if (isRemark(statement)) remarks.push({ statement, why: statement.remark ?? unfit, isOpen: true });
    else if (places[at] === ASIDE && hasWork(statement.says)) remarks.push({ statement, why: second, isOpen: true });
  });
  const { lines, all } = linesOf(statements, places);
  inBothHands(lines);
  const placed = raised(lines);
  for (const line of [...lines.filter(({ role }) => role === "ramp-up"), ...placed.filter(({ role }) => role === "ramp-up")]) if (hasWork(line.says)) put(line, { sets: 1, ...line.says }, null);
  const working = placed.filter(({ role }) => role === "working");
  if (working.length === 0 && (hasWork(lent) || hasWork(all)) && (lent.sets ?? all.sets ?? lent.reps) !== undefined) working.push({ role: "working", says: {}, ladder: [], base: [] });
  const lentWork = pickWork(lent);
  const { sets: lentSets, ...lentMore } = withoutWork(lent);
  const total = all.sets ?? countedUp(working) ?? countedBefore(working);
  const { sets: _, ...allMore } = all;
  // A rest told with one set is taken after those before it as well; that of several sets is theirs alone.
  for (let at = working.length - 2; at >= 0; at -= 1) {
    const [line, next] = [working[at] as Line, working[at + 1] as Line];
    if (line.says.restSeconds === undefined && next.says.restSeconds !== undefined && (next.says.sets ?? 1) === 1) line.says = { ...line.says, restSeconds: next.says.restSeconds };
  }
  // The weight stays on the bar until another is told.
  for (let at = 1; at < working.length; at += 1) {
    const [before, line] = [working[at - 1] as Line, working[at] as Line];
    if (line.says.load === undefined && before.says.load !== undefined && hasWork(line.says)) line.says = { ...line.says, load: before.says.load };
  }
  const single = working.length > 1 && working.every(({ says }) => says.sets === undefined);
  // Three and more with weights of their own are told in full, whatever number of sets another exercise lends.
  const isWeighed = working.length > 2 && new Set(working.map(({ says }) => says.load?.value)).size > 1;
  let last: Partial<Scheme> = hasWork(all) ? pickWork(all) : lentWork;
  for (const [at, line] of working.entries()) {
    // A line that tells only its weight has the work of the one before.
    const work = hasWork(line.says) ? pickWork(line.says) : last;
    last = work;
    const { sets: own, ...more } = line.says;
    if (!hasWork(work)) {
      for (const statement of line.base) remarks.push({ statement, why: own === undefined ? (statement.remark ?? unfit) : workless, isOpen: true });
      continue;
    }
    const scheme = plausible({ ...lentMore, ...fixed, ...(hasWork(line.says) ? withoutWork(allMore) : allMore), ...more, ...work });
    const isLadder = line.ladder.length > 1 && (own ?? total ?? line.ladder.length) === line.ladder.length;
    if (isLadder) {
      const { repsMin: _, repsMax: __, ...rest } = scheme;
      put(line, { ...rest, reps: line.ladder }, null);
      continue;
    }
    const count = own ?? (working.length === 1 ? (total ?? lentSets ?? aloud) : single ? inTurn(total ?? (isWeighed ? undefined : lentSets), at, working.length) : 1);
    put(line, scheme.reps !== undefined ? scheme : { ...scheme, sets: count ?? 1 }, count === undefined && scheme.reps === undefined ? uncounted : null);
  }
  return { sets, remarks };
}
