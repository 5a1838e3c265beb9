import type { Scheme } from "../../training";
import type { Word } from "../types";
import { hasWork, made, type MadeSet, type Ordered, type SchemeRead } from "./compose";

/** Set lines from single figures: each says one thing, and what is said twice with another figure begins a line of its own. */

/** One line in the making, and the statements it is made of. */
interface Line {
  says: Partial<Scheme>;
  readonly base: Ordered[];
}

const CORE = ["sets", "repsMin", "seconds", "meters", "amrap", "load"] as const;
type Core = (typeof CORE)[number];
const WORK: readonly Core[] = ["repsMin", "seconds", "meters", "amrap"];

const coreOf = (says: Partial<Scheme>): Core | null => CORE.find((field) => says[field] !== undefined) ?? null;
const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** "Twenty-four kilos, so twenty-four in each hand": the second says more of the same. */
const isMore = (old: Partial<Scheme>, next: Partial<Scheme>): boolean => old.load !== undefined && next.load !== undefined && old.load.value === next.load.value;

/** So many words from a figure its work may follow. */
const LEADS_WITHIN = 7;
const between = (words: readonly Word[], from: number, to: number): string => ` ${words.slice(from, to).map(({ plain }) => plain).join(" ")} `;

/** "Then fifty for five", "three back-off sets of eight": a weight, or a count, that leads to the next line's work. */
function leadsOn(statement: Ordered, next: Ordered | undefined, open: Line, words: readonly Word[]): boolean {
  const { says: { sets, load }, from, to } = statement;
  const work = next === undefined ? null : coreOf(next.says);
  if (next === undefined || work === null || !WORK.includes(work) || !hasWork(open.says) || same(open.says[work], next.says[work]) || next.from - to > LEADS_WITHIN) return false;
  const last = open.base.at(-1)?.to ?? from;
  if (sets !== undefined) return open.says.sets === undefined && open.says.load !== undefined && / of /.test(between(words, to + 1, next.from));
  return load !== undefined && open.says.load === undefined && / (?:for|do|did|get|hit) /.test(between(words, to + 1, next.from)) && !/ (?:at|with|on|using|of) /.test(between(words, last + 1, from));
}

/** Groups figures into lines: a figure that contradicts the open line begins another. */
function linesOf(statements: readonly Ordered[], words: readonly Word[]): Line[] {
  const lines: Line[] = [];
  let open: Line = { says: {}, base: [] };
  const close = (): void => {
    if (open.base.length > 0) lines.push(open);
    open = { says: {}, base: [] };
  };
  const core = statements.filter(({ says }) => coreOf(says) !== null);
  core.forEach((statement, at) => {
    const { says } = statement;
    const field = coreOf(says) as Core;
    if (leadsOn(statement, core[at + 1], open, words)) close();
    const other = WORK.includes(field) ? WORK.find((work) => work !== field && open.says[work] !== undefined) : undefined;
    if (open.says[field] !== undefined && same(open.says[field], says[field]) && (field !== "repsMin" || open.says.repsMax === says.repsMax)) return;
    if (isMore(open.says, says)) {
      const perHand = open.says.load?.perHand ?? says.load?.perHand;
      open.says = { ...open.says, load: { ...(open.says.load as NonNullable<Scheme["load"]>), ...(perHand ? { perHand: true as const } : {}) } };
      return;
    }
    if (field === "repsMin" && open.says.repsMin !== undefined && open.says.repsMax !== open.says.repsMin && (says.repsMin === open.says.repsMin || says.repsMax === open.says.repsMax)) return;
    if (open.says[field] !== undefined || other !== undefined) close();
    open.says = { ...open.says, ...says };
    open.base.push(statement);
  });
  close();
  return lines;
}

/** Lines made whole by what the others say: "fifteen at 270, then 320 for twelve", "sets of five: sixty, seventy, eighty". */
function completed(lines: readonly Line[]): Line[] {
  const out: Line[] = [];
  for (const line of lines) {
    const last = out.at(-1);
    if (hasWork(line.says) || last === undefined) out.push(line);
    else if (line.says.load !== undefined && line.says.sets === undefined && last.says.sets === undefined && hasWork(last.says)) {
      const { repsMin, repsMax, seconds, meters, amrap } = last.says;
      out.push({ says: { ...Object.fromEntries(Object.entries({ repsMin, repsMax, seconds, meters, amrap }).filter(([, value]) => value !== undefined)), ...line.says }, base: line.base });
    } else if (line.says.sets !== undefined && last.says.sets === undefined) out[out.length - 1] = { says: { ...last.says, sets: line.says.sets }, base: [...last.base, ...line.base] };
  }
  return out;
}

/** "Three sets: ten, eight and six" is a ladder. */
function ladderOf(lines: readonly Line[]): Line | null {
  const sets = lines.find(({ says }) => says.sets !== undefined)?.says.sets;
  const reps = lines.map(({ says }) => (says.repsMin === says.repsMax ? says.repsMin : undefined));
  const loads = lines.flatMap(({ says }) => says.load ?? []);
  if (lines.length < 2 || loads.length > 1 || reps.some((count) => count === undefined) || (sets !== undefined && sets !== lines.length) || (sets === undefined && lines.length < 3)) return null;
  if (lines.filter(({ says }) => says.sets !== undefined).length > 1) return null;
  return { says: { reps: reps as number[], ...(loads[0] ? { load: loads[0] } : {}) }, base: lines.flatMap(({ base }) => base) };
}

function settled(scheme: Scheme): Scheme {
  if (scheme.rpe === undefined || scheme.rir === undefined || made("working", scheme) !== null) return scheme;
  return Object.fromEntries(Object.entries(scheme).filter(([field]) => field !== "rpe"));
}

/** A second scheme is more work when it follows closely; far away it is of the next exercise, or a slip of memory. In words. */
const FURTHER = 40;
const isFar = ({ base }: Line, last: Line | undefined): boolean => (base[0]?.from ?? 0) - (last?.base.at(-1)?.to ?? 0) > FURTHER && (base[0]?.says.load === undefined || last?.says.load === undefined);

const EXTRAS = ["restSeconds", "tempo", "rpe", "rir", "eachSide", "dropSets"] as const;

/** What is said before the work was more likely said of the exercise before. */
const BEFORE = 2;

/** What goes with every line: of each kind the figure said nearest to the work. @param work - the word the work is said at */
function extrasOf(statements: readonly Ordered[], work: number): Partial<Scheme> {
  const says: Record<string, unknown> = {};
  const away = ({ from }: Ordered): number => (from < work ? (work - from) * BEFORE : from - work);
  for (const statement of [...statements].sort((a, b) => away(a) - away(b))) for (const field of EXTRAS) if (statement.says[field] !== undefined && says[field] === undefined) says[field] = statement.says[field];
  return says;
}

const uncounted = "No number of sets was heard; one was written.";
const workless = "A number of sets was heard, but not what one set is.";
const unfit = "The figures do not make a set line together.";

/**
 * The set lines of one exercise from the single figures said of it.
 * @param lent - what the whole circuit, or "same again", lends where the exercise does not say it itself
 * @param fixed - what is said of it by reference: "same rest as before"
 */
export function assemble(statements: readonly Ordered[], lent: Partial<Scheme>, fixed: Partial<Scheme>, words: readonly Word[]): SchemeRead {
  const sets: MadeSet[] = [];
  const remarks: { statement: Ordered; why: string; isOpen: boolean }[] = [];
  const add = (role: MadeSet["role"], { base }: Line, scheme: Scheme, remark: string | null): void => {
    const line = made(role, settled(scheme));
    const first = base[0];
    if (line) {
      sets.push(line);
      for (const statement of base) if (statement.remark !== null) remarks.push({ statement, why: statement.remark, isOpen: false });
      if (remark !== null && first) remarks.push({ statement: first, why: remark, isOpen: false });
    } else for (const statement of base) remarks.push({ statement, why: unfit, isOpen: true });
  };
  for (const statement of statements) if (Object.keys(statement.says).length === 0) remarks.push({ statement, why: statement.remark ?? unfit, isOpen: true });
  const ramps = statements.filter(({ about }) => about === "ramp-up");
  for (const line of completed(linesOf(ramps, words))) if (hasWork(line.says)) add("ramp-up", line, { sets: 1, ...line.says }, null);
  const own = statements.filter(({ about }) => about !== "ramp-up");
  const whole = linesOf(own, words);
  const extras = extrasOf(own, whole.find(({ says }) => hasWork(says))?.base.find(({ says }) => hasWork(says) || says.sets !== undefined)?.from ?? 0);
  const ladder = ladderOf(whole);
  const lines = ladder ? [ladder] : completed(whole);
  const counted = lines.some(({ says }) => says.sets !== undefined);
  const total = lines.find(({ says }) => says.sets !== undefined)?.says.sets;
  // "Three sets, the first ten with the fourteens, then eight with the sixteens": the count is that of the lines.
  const isSplit = lines.length > 1 && total === lines.length && lines.filter(({ says }) => says.sets !== undefined).length === 1;
  const work = (says: Partial<Scheme>): Partial<Scheme> => (hasWork(says) ? {} : Object.fromEntries(Object.entries(lent).filter(([field]) => ["repsMin", "repsMax", "reps", "seconds", "meters", "amrap"].includes(field))));
  const lentRest = lent.restSeconds === undefined ? {} : { restSeconds: lent.restSeconds };
  const lentLoad = lent.load === undefined ? {} : { load: lent.load };
  if (lines.length === 0 && hasWork(lent) && (lent.sets !== undefined || lent.reps !== undefined)) lines.push({ says: {}, base: [] });
  lines.forEach((line, at) => {
    const says = { ...lentRest, ...lentLoad, ...work(line.says), ...fixed, ...extras, ...line.says };
    if (!hasWork(says)) {
      for (const statement of line.base) remarks.push({ statement, why: statement.says.sets === undefined ? (statement.remark ?? unfit) : workless, isOpen: true });
      return;
    }
    if (says.reps !== undefined) return add("working", line, says, null);
    // A second scheme without a count of its own, where the first has one, is talk; so is one that comes much later.
    const isUncounted = counted && line.says.sets === undefined && lines.slice(0, at).some(({ says: { sets: others = 0 } }) => others > 1);
    if (at > 0 && !isSplit && (isUncounted || isFar(line, lines[at - 1]))) {
      for (const statement of line.base) remarks.push({ statement, why: "A second scheme for the same exercise; the first one was taken.", isOpen: true });
      return;
    }
    const count = isSplit ? 1 : (line.says.sets ?? (counted ? 1 : lent.sets));
    add("working", line, { ...says, sets: count ?? 1 }, count === undefined ? uncounted : null);
  });
  return { sets, remarks };
}
