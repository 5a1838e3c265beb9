/** Movement families, named as coaches name them; one file of the catalogue each. */
export const FAMILIES = [
  "squat", "hinge", "bridge-thrust", "lunge-step", "leg-machine", "horizontal-press", "overhead-press", "row", "vertical-pull",
  "arm-isolation", "core", "kettlebell-swing", "plyometric", "carry", "back-extension", "cable", "mobility-warmup", "cooldown-stretch",
] as const;
export type Family = (typeof FAMILIES)[number];

export const JOINTS = ["ankle", "knee", "hip", "low back", "upper back", "shoulder", "elbow", "wrist", "neck"] as const;
export type Joint = (typeof JOINTS)[number];

export const MUSCLES = [
  "quadriceps", "hamstrings", "glutes", "adductors", "abductors", "calves", "shins", "hip flexors",
  "chest", "front shoulder", "side shoulder", "rear shoulder", "lats", "upper back", "trapezius", "rotator cuff",
  "biceps", "triceps", "forearms", "abdominals", "obliques", "low back", "neck",
] as const;
export type Muscle = (typeof MUSCLES)[number];

export const EQUIPMENT = [
  "bodyweight", "barbell", "rack", "bench", "incline bench", "dumbbell", "kettlebell", "cable", "landmine", "trap bar", "machine",
  "leg press", "pulldown", "pull-up bar", "dip bars", "suspension straps", "band", "box", "step", "back-extension bench", "sled",
  "medicine ball", "ab wheel", "mat", "sandbag", "wall", "foam roller", "treadmill", "rower", "bike",
] as const;
export type Equipment = (typeof EQUIPMENT)[number];

/** Camera angles as the trade names them. */
export const ANGLES = ["front", "three-quarter", "side", "rear", "high", "low", "insert"] as const;
export type Angle = (typeof ANGLES)[number];

export type Position = "standing" | "seated" | "kneeling" | "half-kneeling" | "lying face up" | "lying face down" | "side-lying" | "hanging" | "all fours" | "plank" | "walking";

/** One exercise of the catalogue. Text is for viewers: full words, no jargon, no brand. */
export interface Exercise {
  /** kebab-case, stable: files point at it. */
  readonly id: string;
  readonly name: string;
  /** What else people call it, in lower case, singular; used to find it in notes. */
  readonly otherNames: readonly string[];
  readonly family: Family;
  /** Everything that must be free at once. */
  readonly equipment: readonly Equipment[];
  /** Where it happens, as a gym would sign it: "bench", "cable tower", "free floor". */
  readonly station: string;
  readonly direct: readonly Muscle[];
  readonly indirect: readonly Muscle[];
  /** What a stretch lengthens; such muscles are not trained by it, so they count in no weekly volume. */
  readonly stretches?: readonly Muscle[];
  readonly joints: "multi" | "single";
  /** The joints that work or carry, to be prepared by the warm-up. */
  readonly loadedJoints: readonly Joint[];
  readonly sides: "both together" | "each side" | "alternating";
  readonly position: Position;
  /** Usual tempo, four figures: lowering, pause, lifting, pause. Seconds. Null where tempo has no meaning (carries, holds, jumps). */
  readonly tempo: string | null;
  /** Seconds to set the station up before the first set. */
  readonly setupSeconds: number;
  /** Usually loaded heavily enough that ramp-up sets come first. */
  readonly rampUp: boolean;
  /** A fast, explosive movement: done fresh, before slow strength work. */
  readonly power: boolean;
  /** The spine carries a heavy load (back squats, deadlifts, bent-over rows). */
  readonly spineLoaded: boolean;
  /** A bar or bells can pin or strike the lifter when a rep fails: spotter or safety arms. */
  readonly needsSpotter: boolean;
  readonly cues: readonly { readonly text: string; readonly seenFrom: readonly Angle[] }[];
  readonly avoid: readonly { readonly text: string; readonly seenFrom: readonly Angle[]; readonly instead: string }[];
  readonly cautions: readonly string[];
  readonly substitutes: readonly { readonly exercise: string; readonly without: Equipment }[];
}
