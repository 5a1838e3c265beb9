import type { Block, CarryOver, SetLine } from "../../shared/episode";
import { exerciseById } from "../../shared/exercises";
import { increase, parseSetLine, rampUp, type RampUpSet, type Scheme } from "../../shared/training";
import { listed } from "../words/count";

/** A load that can be reckoned with. */
interface Reckoned {
  readonly value: number;
  readonly unit: "kg" | "lb";
  readonly perHand: boolean;
}

function reckoned(scheme: Scheme): Reckoned | null {
  const { load } = scheme;
  if (!load || load.value === null || load.value <= 0 || (load.unit !== "kg" && load.unit !== "lb")) return null;
  return { value: load.value, unit: load.unit, perHand: load.perHand === true };
}

const readLine = (text: string): Scheme | null => {
  const parsed = parseSetLine(text);
  return parsed.ok ? parsed.scheme : null;
};

/** The heaviest working load of a block, where one is stated in kg or lb. */
function workLoad(sets: readonly SetLine[]): Reckoned | null {
  const loads = sets.filter((set) => set.role === "working").flatMap((set) => reckoned(readLine(set.text) ?? {}) ?? []);
  return loads.reduce<Reckoned | null>((most, load) => (most === null || load.value > most.value ? load : most), null);
}

/** A load without needless decimals: 7.5, 20. */
const figure = (value: number): string => String(Math.round(value * 100) / 100);
const named = ({ value, unit, perHand }: Reckoned): string => `${figure(value)} ${unit}${perHand ? " each hand" : ""}`;

/** Today's load against last time's, in one or two sentences; null when they cannot be compared. */
export function againstLastTime(block: Block, last: CarryOver): string | null {
  const now = workLoad(block.sets);
  const before = reckoned(readLine(last.sets) ?? {});
  if (!now || !before || now.unit !== before.unit || now.perHand !== before.perHand) return null;
  const change = now.value - before.value;
  if (change === 0) return `${named(now)} again.`;
  const percent = Math.round((100 * Math.abs(change)) / before.value);
  const sentence = `${named(now)} today, ${figure(before.value)} last time: ${figure(Math.abs(change))} ${now.unit} ${change > 0 ? "more" : "less"}, ${percent} %.`;
  return change > 0 && now.value > increase(before.value).max ? `${sentence} Common recommendation is 2 to 10 % at a time (ACSM, 2009).` : sentence;
}

/** What was really lifted last time: "20 kg x 10, 10, 10", loads apart where they changed. */
export function actualsInWords(last: CarryOver, unit: string): string {
  const groups: { load: number | null; reps: string[] }[] = [];
  for (const { load, reps } of last.actuals) {
    const group = groups.at(-1);
    const words = reps === null ? "?" : String(reps);
    if (group && group.load === load) group.reps.push(words);
    else groups.push({ load, reps: [words] });
  }
  return listed(groups.map(({ load, reps }) => `${load === null ? "" : `${figure(load)} ${unit} x `}${reps.join(", ")}`));
}

/** A usual way up to today's load, with the arithmetic to check it by. */
export interface Ramp {
  readonly sets: readonly RampUpSet[];
  /** "8 kg x 5 is 36 % of 22, ..." */
  readonly words: string;
  /** The same as set lines. */
  readonly lines: readonly string[];
}

const BARS = { kg: 20, lb: 45 } as const;
const STEPS = { kg: { hand: 2, other: 2.5 }, lb: { hand: 5, other: 5 } } as const;
const RAMP_REST_SECONDS = 60;

/** The ramp for a block whose exercise usually has one and whose load is stated in kg or lb; null otherwise. */
export function rampOf(block: Block): Ramp | null {
  const load = workLoad(block.sets);
  const exercise = block.exercise === null ? undefined : exerciseById(block.exercise);
  if (!load || !exercise?.rampUp) return null;
  const step = STEPS[load.unit][load.perHand ? "hand" : "other"];
  const sets = rampUp(load.value, { bar: exercise.equipment.includes("barbell") ? BARS[load.unit] : null, step });
  if (sets.length === 0) return null;
  const side = exercise.sides === "each side" ? " each side" : "";
  return {
    sets,
    words: `${sets.map((set) => `${figure(set.load)} ${load.unit} x ${set.reps} (${Math.round((100 * set.load) / load.value)} %)`).join(", ")}, then ${named(load)}. In steps of ${figure(step)} ${load.unit}.`,
    lines: sets.map((set) => `1 x ${set.reps}${side} @ ${named({ ...load, value: set.load })}, rest ${RAMP_REST_SECONDS} s`),
  };
}
