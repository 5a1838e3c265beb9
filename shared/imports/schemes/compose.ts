import type { SetRole } from "../../episode";
import { parseSetLine, printSetLine, type Scheme } from "../../training";
import { isRemark, type Statement } from "./statement";

/** A set line made from what was said. */
export interface MadeSet {
  readonly role: SetRole;
  readonly text: string;
  readonly scheme: Scheme;
}

/** What one block's speech says about its sets. */
export interface SchemeRead {
  readonly sets: readonly MadeSet[];
  /** Statements that could not become a set line, with why; and choices that were made. */
  readonly remarks: readonly { readonly statement: Statement; readonly why: string; readonly isOpen: boolean }[];
}

/** The fields that say what one set consists of. */
export const WORK_FIELDS = ["repsMin", "repsMax", "reps", "seconds", "meters", "amrap"] as const;

/** Does it say what one set consists of? */
export const hasWork = (says: Partial<Scheme>): boolean => WORK_FIELDS.some((field) => says[field] !== undefined);

/** What one set consists of, and nothing else. */
export const pickWork = (says: Partial<Scheme>): Partial<Scheme> => Object.fromEntries(WORK_FIELDS.filter((field) => says[field] !== undefined).map((field) => [field, says[field]]));

/** The reps of one set, where a figure tells them and nothing else. */
export const repsOf = ({ says }: Pick<Statement, "says">): number | undefined => (says.repsMin === says.repsMax && says.sets === undefined ? says.repsMin : undefined);

/** Is it a number of working sets, more than one? */
export const isSeveral = ({ says, about }: Pick<Statement, "says" | "about">): boolean => about === "working" && (says.sets ?? 1) > 1;

/** A held position of a few seconds is a pause within a rep. */
const SHORTEST_BOUT = 8;
const isBout = ({ says }: Statement): boolean => says.seconds === undefined || says.seconds >= SHORTEST_BOUT;

/** The set line for a scheme, when the set line grammar takes it. */
export function made(role: SetRole, scheme: Scheme): MadeSet | null {
  const text = printSetLine(scheme);
  const read = parseSetLine(text);
  return read.ok ? { role, text, scheme: read.scheme } : null;
}

export interface Ordered extends Statement {
  /** The sentence it stands in. */
  readonly sentence: number;
}

/** What goes with the work: the figure said in the same sentence, else the first one said. */
function extrasFor(whole: readonly Ordered[], extras: readonly Ordered[]): { readonly says: Partial<Scheme>; readonly used: readonly Ordered[] } {
  const homes = new Set(whole.map(({ sentence }) => sentence));
  // "A plate on a belt, so bodyweight plus five kilos": the fuller of two loads.
  const fuller = extras.filter(({ says }) => says.load?.unit.startsWith("bodyweight+") === true);
  const near = [...fuller, ...extras.filter(({ sentence }) => homes.has(sentence)), ...extras.filter(({ sentence }) => !homes.has(sentence))];
  const says: Record<string, unknown> = {};
  const used = near.filter((statement) => {
    const fresh = Object.entries(statement.says).filter(([field]) => says[field] === undefined);
    for (const [field, value] of fresh) says[field] = value;
    return fresh.length > 0;
  });
  return { says, used };
}

/** Effort stated twice must agree; where it does not, the reps in reserve are what the viewer can feel. */
export function settled(scheme: Scheme): Scheme {
  if (scheme.rpe === undefined || scheme.rir === undefined || made("working", scheme) !== null) return scheme;
  return Object.fromEntries(Object.entries(scheme).filter(([field]) => field !== "rpe"));
}

/**
 * Set lines from the statements of one block.
 * @param statements - in order; `sentence` tells which belong together
 */
export function compose(statements: readonly Ordered[]): SchemeRead {
  const remarks: { statement: Statement; why: string; isOpen: boolean }[] = [];
  const sets: MadeSet[] = [];
  const ramps = statements.filter(({ about, rank }) => about === "ramp-up" && rank === "whole");
  const wholes = statements.filter(({ about, rank }) => about !== "ramp-up" && about !== "step" && rank === "whole");
  const steps = statements.filter(({ about }) => about === "step");
  const parts = statements.filter((statement) => statement.rank === "part" && statement.about !== "ramp-up" && isBout(statement));
  const extras = statements.filter(({ rank }) => rank === "extra");
  /** The scheme an extra belongs to: the last one named before it in its sentence, or the next one in it. */
  const named = new Map<number, Ordered[]>();
  for (const whole of statements.filter(({ rank }) => rank === "whole")) named.set(whole.sentence, [...(named.get(whole.sentence) ?? []), whole]);
  const ownerOf = (extra: Ordered): Ordered | null => {
    const here = (named.get(extra.sentence) ?? []).filter(({ about, says }) => !(about === "ramp-up" && says.load !== undefined && extra.says.load !== undefined && says.load.value !== extra.says.load.value));
    return here.findLast(({ from }) => from <= extra.from) ?? here[0] ?? null;
  };
  const add = (role: SetRole, base: readonly Ordered[], scheme: Scheme): boolean => {
    const line = made(role, settled(scheme));
    if (line) sets.push(line);
    else base.forEach((statement) => remarks.push({ statement, why: "The figures do not make a set line together.", isOpen: true }));
    return line !== null;
  };

  for (const ramp of ramps) {
    const { says } = extrasFor([ramp], extras.filter((extra) => ownerOf(extra) === ramp));
    add("ramp-up", [ramp], { ...says, ...ramp.says });
  }
  const forWork = extras.filter((extra) => {
    const owner = ownerOf(extra);
    return owner === null || !ramps.includes(owner);
  });

  if (steps.length > 1 && wholes.length === 0) {
    // Sets that differ in weight: what else is said goes with each of them.
    const { says } = extrasFor(steps, forWork.filter(({ says: { load } }) => load === undefined));
    for (const step of steps) add("working", [step], { ...says, ...step.says });
    return { sets, remarks };
  }
  for (const statement of extras.filter(isRemark)) remarks.push({ statement, why: statement.remark ?? "", isOpen: true });
  const first = wholes[0];
  let base: readonly Ordered[] = first ? [first] : [];
  let scheme: Scheme = first ? first.says : {};
  if (!first) {
    // "Forty-five seconds, four of them": the second figure counts sets, unless it is all the work there is.
    const works = parts.filter(({ says, either }) => hasWork(says) && !either);
    const loose = parts.filter(({ either }) => either);
    if (works.length === 0) works.push(...loose);
    const said = parts.find(({ says }) => says.sets !== undefined);
    // "Thirty seconds each side, and once more, so that's two each side."
    const bouts = works[0]?.says.seconds !== undefined ? parts.find(({ says }) => says.repsMin !== undefined && says.repsMin === says.repsMax && says.repsMin <= 4) : undefined;
    const told = bouts ?? loose.find((statement) => !works.includes(statement));
    const counted: Ordered | undefined = said ?? (told?.says.repsMin === undefined ? undefined : { ...told, says: { sets: told.says.repsMin } });
    const counts = works.filter((each) => each !== bouts);
    const work = counts.find(({ sentence }) => sentence === counted?.sentence) ?? counts[0];
    base = [...(counted ? [counted] : []), ...(work && work !== counted ? [work] : [])];
    scheme = { ...work?.says, ...(counted?.says.sets === undefined ? {} : { sets: counted.says.sets }) };
  }
  const others = wholes.slice(1).filter(({ says }) => JSON.stringify(says) !== JSON.stringify(first?.says));
  const { says, used } = extrasFor(base, forWork.filter((extra) => !others.includes(ownerOf(extra) ?? extra) && !isOfOther(extra, base, statements)));
  if (base.length > 0) {
    const complete = { ...says, ...scheme };
    if (hasWork(complete) && (complete.sets !== undefined || complete.emomMinutes !== undefined || complete.reps !== undefined)) {
      if (add("working", base, complete)) used.concat(base).forEach((statement) => statement.remark !== null && remarks.push({ statement, why: statement.remark, isOpen: false }));
    } else if (hasWork(complete)) {
      if (add("working", base, { ...complete, sets: 1 })) base.forEach((statement) => remarks.push({ statement, why: "No number of sets was heard; one was written.", isOpen: false }));
    }
    else base.forEach((statement) => remarks.push({ statement, why: "A number of sets was heard, but not what one set is.", isOpen: true }));
  }
  // Further work in the same block: a back-off set, a last set. What differs and is counted stands on its own line.
  for (const other of others) {
    const { says: own } = extrasFor([other], forWork.filter((extra) => ownerOf(extra) === other));
    if (isFurther(other, first)) add("working", [other], { ...own, ...other.says });
    else remarks.push({ statement: other, why: "A second scheme for the same exercise; the first one was taken.", isOpen: true });
  }
  return { sets, remarks };
}

/** "Take off ten a side", "stretch for a minute each side": the sides of a figure that is not the work. */
function isOfOther(extra: Ordered, base: readonly Ordered[], statements: readonly Ordered[]): boolean {
  if (extra.says.eachSide !== true) return false;
  const holder = statements.find((other) => other !== extra && other.rank !== "extra" && other.from <= extra.from && other.to >= extra.to && hasWork(other.says));
  return holder !== undefined && !base.some(({ says }) => WORK_FIELDS.every((field) => says[field] === holder.says[field]));
}

/** A second scheme is more work when it follows closely; far away it is somebody else's, or a slip of memory. */
const isFurther = (other: Ordered, first: Ordered | undefined): boolean => first !== undefined && other.from - first.to <= 14 && other.sentence - first.sentence <= 1;
