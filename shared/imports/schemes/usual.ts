import type { Exercise } from "../../exercises";
import { lbToKg, type Scheme } from "../../training";
import { made, type SchemeRead } from "./compose";

/** What coaches do not say of an exercise because it goes without saying. Common practice, no source. */

/** Taken with a weight in each hand; who says "twelve kilos" of them means each. */
const PAIRS: ReadonlySet<string> = new Set([
  "lateral-raise", "biceps-curl", "hammer-curl", "seated-dumbbell-press", "dumbbell-bench-press", "incline-dumbbell-press", "dumbbell-floor-press",
  "dumbbell-romanian-deadlift", "chest-supported-row", "rear-shoulder-raise", "walking-lunge", "forward-lunge", "split-squat", "bulgarian-split-squat", "step-up", "farmers-carry",
]);
const PAIR_TITLE = new RegExp(String.raw`\b(?:${[
  String.raw`dumbbell (?:push press|front squat|shrug|fly|thruster|bent-over row|z press|squat|hang clean|clean|skull crusher|lunge|shoulder press|deadlift|hang power snatch)`,
  String.raw`double kettlebell|renegade row|arnold press|incline (?:dumbbell )?curl|zottman|gorilla row|tate press|devil press|standing dumbbell press|bent-over dumbbell row|farmer'?s`,
].join("|")})\b`, "i");

/** Weights that nobody holds in one hand for it: the machine's, the barbell's. Kilograms. */
const TOO_HEAVY: Readonly<Record<string, number>> = { "chest-supported-row": 38, "rear-shoulder-raise": 18, "walking-lunge": 38, "split-squat": 38 };

/** Takes one weight at a time, however many lie about. */
const ONE_WEIGHT = /single[- ]arm|suitcase|landmine|one[- ]arm/i;

/** Done with one side after the other; who says "ten" of them means ten each. */
const SIDED_TITLE = new RegExp(String.raw`\b(?:${[
  "(?:single|one)[- ](?:leg|arm)|split squat|half-kneeling|copenhagen|clam(?:shell)?|(?:turkish )?get-up|fire hydrant|donkey kick|pistol squat|cossack squat|windmill",
  "hip airplane|tandem stand|(?:b|kickstand|staggered)[- ]stance|kickstand|side-lying|side leg (?:lift|raise)|meadows row|bayesian curl|concentration curl|suitcase|side bend",
  "cable (?:lateral raise|abduction|hip abduction)|kettlebell (?:press|row)|standing hip (?:abduction|extension)|pallof",
].join("|")})\b`, "i");
/** The catalogue's forearm work is done one side at a time for its clock; on camera both work together. */
const BOTH_AT_ONCE: ReadonlySet<string> = new Set(["wrist-curl"]);

interface Subject {
  readonly exercise: Exercise | null;
  readonly title: string;
}

const isPair = ({ exercise, title }: Subject): boolean => (exercise ? PAIRS.has(exercise.id) : PAIR_TITLE.test(title));
const isOneWeight = ({ exercise, title }: Subject): boolean => ONE_WEIGHT.test(exercise?.id ?? title);
/** Two bells at once work both sides at once. */
const isDouble = ({ exercise, title }: Subject, load: Scheme["load"]): boolean => load?.perHand === true && (exercise ? exercise.equipment.includes("kettlebell") : /kettlebell/i.test(title));
export const isSided = ({ exercise, title }: Subject): boolean => (exercise ? exercise.sides === "each side" && !BOTH_AT_ONCE.has(exercise.id) : SIDED_TITLE.test(title));

function inHand(load: Scheme["load"], subject: Subject, isOne: boolean): Scheme["load"] {
  if (typeof load?.value !== "number" || (load.unit !== "kg" && load.unit !== "lb")) return load;
  const isTooHeavy = load.perHand !== true && (load.unit === "lb" ? lbToKg(load.value) : load.value) > (TOO_HEAVY[subject.exercise?.id ?? ""] ?? Infinity);
  if (isTooHeavy) return load;
  if (isOne || isOneWeight(subject)) return { value: load.value, unit: load.unit };
  return isPair(subject) ? { ...load, perHand: true } : load;
}

/** The set lines with what goes without saying: "in each hand" of a pair, "each side" of what is done one side at a time. @param isOne - is one weight told of? */
export function asUsual({ sets, remarks }: SchemeRead, subject: Subject, isOne = false): SchemeRead {
  return {
    sets: sets.map((line) => {
      const load = inHand(line.scheme.load, subject, isOne);
      return made(line.role, { ...line.scheme, ...(load ? { load } : {}), ...(isSided(subject) && !isDouble(subject, load) ? { eachSide: true as const } : {}) }) ?? line;
    }),
    remarks,
  };
}
