import type { Equipment, Exercise, Family, Position } from "../exercises";

/** The box a person and what they hold stay inside over the whole movement, metres. */
export interface Body {
  readonly tall: number;
  /** Across, as seen from the front or the rear. */
  readonly broad: number;
  /** Along, as seen from the side. */
  readonly long: number;
  /** How far the person moves along the way they face while being filmed; 0 for on the spot. */
  readonly travel: number;
}

/** Metres. Common practice, no source. */
export const USUAL_STATURE = 1.75;

const box = (tall: number, broad: number, long: number, travel = 0): Body => ({ tall, broad, long, travel });

/** Room a body of usual stature takes in a position, arms and a bell in the hands included. Common practice, no source. */
const POSTURES: Readonly<Record<Position, Body>> = {
  standing: box(1.75, 1, 1),
  walking: box(1.75, 1, 1, 4),
  seated: box(1.35, 1, 1.2),
  kneeling: box(1.3, 0.9, 1),
  "half-kneeling": box(1.3, 0.9, 1.2),
  hanging: box(2.4, 1, 1),
  "lying face up": box(0.8, 1, 2),
  "lying face down": box(0.8, 1, 2),
  "side-lying": box(0.7, 0.8, 2),
  "all fours": box(0.8, 0.8, 1.4),
  plank: box(0.6, 0.8, 2),
};

/** Fully stretched arms reach so much of the stature above the top of the head. @source vertical reach about 1.25 of stature, from memory */
const OVERHEAD = 0.25;
/** A bar for two hands from end to end, and a large disc. Metres. @source IWF Technical and Competition Rules: 2200 mm, 450 mm */
const BAR = 2.2;
const DISC = 0.45;

/** What a thing asks for at the least, whoever uses it. Metres; the bar by the rules named above, the rest common practice, no source. */
const THINGS: Readonly<Partial<Record<Equipment, Partial<Body>>>> = {
  barbell: { broad: BAR },
  "trap bar": { broad: 1.6, long: 1.5 },
  landmine: { long: 2 },
  bench: { long: 1.5 },
  "incline bench": { tall: 1.3, long: 1.5 },
  rack: { tall: 1.8, broad: 1.3, long: 1.4 },
  cable: { broad: 1.5, long: 1.5 },
  machine: { tall: 1.6, broad: 1.2, long: 1.6 },
  "leg press": { tall: 1.6, broad: 1.2, long: 2.2 },
  pulldown: { tall: 2.2, broad: 1.2, long: 1.5 },
  "back-extension bench": { tall: 1.4, long: 2 },
  "suspension straps": { tall: 2.2, long: 2.2 },
  sled: { long: 2.2 },
  rower: { tall: 1.2, long: 2.5 },
  bike: { tall: 1.5, long: 1.4 },
  treadmill: { tall: 2.1, long: 2 },
};

/** What a family's movement asks for at the least, for a person of usual stature. Common practice, no source. */
const MOVEMENTS: Readonly<Partial<Record<Family, Partial<Body>>>> = {
  hinge: { long: 1.3 },
  "lunge-step": { long: 1.5 },
  row: { long: 1.2 },
  "kettlebell-swing": { long: 1.7 },
  plyometric: { tall: 2.2, long: 1.2 },
};

/** What single exercises ask for beyond that, for a person of usual stature. Common practice, no source. */
const OWN: Readonly<Record<string, Partial<Body>>> = {
  "lateral-lunge": { broad: 1.8 },
  "step-up": { tall: 2.2 },
  "step-down": { tall: 2 },
  "box-jump": { tall: 2.6, long: 1.8 },
  "broad-jump": { travel: 2 },
  "skater-hop": { broad: 2.2 },
  "drop-landing": { tall: 2.3, long: 1.5 },
  "medicine-ball-slam": { tall: 2.3 },
  "pull-up": { tall: 2.6 },
  "chin-up": { tall: 2.6 },
  "lateral-raise": { broad: 1.8 },
  "rear-shoulder-raise": { broad: 1.8 },
  "band-pull-apart": { broad: 1.8 },
  "cable-fly": { broad: 2.5 },
  "arm-circles": { broad: 1.8 },
  "ab-wheel-rollout": { long: 2 },
  inchworm: { long: 2 },
  "single-leg-romanian-deadlift": { long: 1.8 },
  "leg-swings": { long: 1.6 },
  "cable-woodchop": { tall: 2.1 },
};

/** Exercises of other families that raise the hands above the head. */
const RAISED = new Set([
  "overhead-carry", "overhead-triceps-extension", "wall-slides", "arm-circles", "kettlebell-clean", "medicine-ball-slam", "triceps-stretch", "lat-stretch", "inchworm",
]);
/** Written down as hanging or on the back, though the box differs: under a low bar, on bars at hip height, hips up from a bench. */
const INSTEAD: Readonly<Record<string, Body>> = {
  "inverted-row": box(1.3, 1.3, 2),
  dip: box(2.3, 1, 1),
  "hip-thrust": box(1, 1, 1.8),
  "dumbbell-hip-thrust": box(1, 1, 1.8),
  "childs-pose": box(0.8, 0.9, 1.5),
};

const grown = (body: Body, least: Partial<Body> | undefined, scale = 1): Body => ({
  tall: Math.max(body.tall, (least?.tall ?? 0) * scale),
  broad: Math.max(body.broad, (least?.broad ?? 0) * scale),
  long: Math.max(body.long, (least?.long ?? 0) * scale),
  travel: Math.max(body.travel, least?.travel ?? 0),
});

const scaled = (body: Body, scale: number): Body => ({ tall: body.tall * scale, broad: body.broad * scale, long: body.long * scale, travel: body.travel });

/** The body alone, without equipment and before it moves. @param exercise - null for somebody in that position @param stature - metres */
export const postureOf = (exercise: Exercise | null, position: Position, stature: number): Body =>
  scaled((exercise && INSTEAD[exercise.id]) ?? POSTURES[exercise?.position ?? position], stature / USUAL_STATURE);

/** How far the hands come up, metres: above the head standing or sitting, above the chest lying. */
function raised(exercise: Exercise, body: Body, stature: number): number {
  const disc = exercise.equipment.includes("barbell") ? DISC / 2 : 0;
  const lies = exercise.position === "lying face up";
  if (lies && (exercise.family === "horizontal-press" || exercise.id === "lying-triceps-extension")) {
    const bench = exercise.equipment.some((item) => item === "bench" || item === "incline bench") ? 0.45 : 0;
    return bench + 0.5 * stature + disc;
  }
  return exercise.family === "overhead-press" || RAISED.has(exercise.id) ? body.tall + OVERHEAD * stature + disc : 0;
}

/**
 * The box of an exercise over the whole movement, with what it needs in the hands and underneath: bars keep their length whoever
 * lifts them, bodies and strides grow with the person.
 * @param exercise - null for somebody who is only in that position
 * @param stature - metres
 */
export function bodyOf(exercise: Exercise | null, position: Position, stature: number): Body {
  const posture = postureOf(exercise, position, stature);
  if (!exercise) return posture;
  const scale = stature / USUAL_STATURE;
  const moving = grown(grown(posture, MOVEMENTS[exercise.family], scale), OWN[exercise.id], scale);
  const lifted = grown(moving, { tall: raised(exercise, posture, stature) });
  return exercise.equipment.reduce((body, item) => grown(body, THINGS[item]), lifted);
}
