import { describe, expect, it } from "vitest";
import { EXERCISES, exerciseById, exercisesOfFamily } from "../../shared/exercises";
import type { Angle, Exercise, Family, Muscle } from "../../shared/exercises";

const known = (id: string): Exercise => {
  const exercise = exerciseById(id);
  if (!exercise) throw new Error(`no exercise ${id}`);
  return exercise;
};

/** The angles of the lines whose words match, cues and faults together. */
const anglesOf = (exercise: Exercise, words: RegExp): Set<Angle> => new Set([...exercise.cues, ...exercise.avoid].filter((line) => words.test(line.text)).flatMap((line) => line.seenFrom));
const allAngles = (exercise: Exercise): Set<Angle> => anglesOf(exercise, /./);

// Source: Haff & Triplett (eds.), Essentials of Strength Training and Conditioning, NSCA, exercise technique chapters and
// the list of core (multi-joint) and assistance (single-joint) exercises. From memory.
describe("multi-joint and single-joint exercises, as the strength handbook sorts them", () => {
  it.each(["back-squat", "front-squat", "deadlift", "romanian-deadlift", "bench-press", "incline-bench-press", "overhead-press", "bent-over-row", "lat-pulldown", "cable-row", "leg-press", "forward-lunge", "step-up", "push-press", "push-up", "pull-up"])("%s moves several joints", (id) => {
    expect(known(id).joints).toBe("multi");
  });

  it.each(["leg-extension", "leg-curl", "lying-leg-curl", "calf-raise", "seated-calf-raise", "biceps-curl", "hammer-curl", "triceps-pushdown", "lying-triceps-extension", "lateral-raise", "cable-fly", "wrist-curl"])("%s moves one joint", (id) => {
    expect(known(id).joints).toBe("single");
  });
});

// Source: the prime movers below are those of Haff & Triplett (as above) and of Floyd, Manual of Structural Kinesiology, muscle analysis of common exercises. From memory.
describe("prime movers of the staples", () => {
  it.each<[string, Muscle[]]>([
    ["back-squat", ["quadriceps", "glutes"]], ["front-squat", ["quadriceps", "glutes"]], ["leg-press", ["quadriceps", "glutes"]],
    ["deadlift", ["glutes", "hamstrings"]], ["romanian-deadlift", ["hamstrings", "glutes"]], ["hip-thrust", ["glutes"]], ["split-squat", ["quadriceps", "glutes"]],
    ["bench-press", ["chest"]], ["close-grip-bench-press", ["triceps"]], ["push-up", ["chest"]], ["overhead-press", ["front shoulder"]],
    ["pull-up", ["lats"]], ["lat-pulldown", ["lats"]], ["bent-over-row", ["lats", "upper back"]], ["cable-row", ["lats", "upper back"]],
    ["leg-extension", ["quadriceps"]], ["leg-curl", ["hamstrings"]], ["calf-raise", ["calves"]], ["biceps-curl", ["biceps"]], ["triceps-pushdown", ["triceps"]],
    ["lateral-raise", ["side shoulder"]], ["face-pull", ["rear shoulder"]], ["plank", ["abdominals"]], ["side-plank", ["obliques"]], ["kettlebell-swing", ["glutes", "hamstrings"]],
  ])("%s trains %j directly", (id, muscles) => {
    expect(known(id).direct).toEqual(expect.arrayContaining(muscles));
  });

  // Source: Pelland et al., The Resistance Training Dose-Response, preprint 2024, counts a bench press set as indirect for the
  // triceps; the other helping muscles are common practice, no source.
  it.each<[string, Muscle]>([["bench-press", "triceps"], ["overhead-press", "triceps"], ["pull-up", "biceps"], ["lat-pulldown", "biceps"], ["cable-row", "biceps"], ["bent-over-row", "low back"], ["deadlift", "forearms"], ["romanian-deadlift", "low back"]])("%s helps the %s", (id, muscle) => {
    expect(known(id).indirect).toContain(muscle);
  });
});

// Source: NSCA spotting guidelines (Haff & Triplett): free-weight exercises over the face, over the head, on the back or racked on
// the front of the shoulders need a spotter; power exercises are not spotted. From memory.
describe("who needs a spotter", () => {
  it.each(["bench-press", "incline-bench-press", "close-grip-bench-press", "dumbbell-bench-press", "incline-dumbbell-press", "dumbbell-floor-press", "lying-triceps-extension"])("over the face: %s", (id) => expect(known(id).needsSpotter).toBe(true));
  it.each(["overhead-press", "seated-dumbbell-press", "half-kneeling-dumbbell-press", "overhead-triceps-extension"])("over the head: %s", (id) => expect(known(id).needsSpotter).toBe(true));
  it.each(["back-squat", "box-squat", "good-morning", "front-squat"])("on the back or the front of the shoulders: %s", (id) => expect(known(id).needsSpotter).toBe(true));

  it("is asked for in no power exercise", () => {
    expect(EXERCISES.filter((exercise) => exercise.power && exercise.needsSpotter)).toEqual([]);
  });

  it("is asked for only where something free can fall on the lifter", () => {
    const free = EXERCISES.filter((exercise) => exercise.needsSpotter && !exercise.equipment.some((piece) => piece === "barbell" || piece === "dumbbell"));
    expect(free).toEqual([]);
  });

  // Common practice, no source: whoever trains alone is told about safety arms, a helper, or how to end a rep.
  it("comes with a caution in every barbell lift that can pin the lifter", () => {
    const silent = EXERCISES.filter((exercise) => exercise.needsSpotter && exercise.equipment.includes("barbell") && !/safety arms|spotter|somebody|if a rep fails/i.test(exercise.cautions.join(" ")));
    expect(silent.map((exercise) => exercise.id)).toEqual([]);
  });
});

// Common practice, no source: which camera angle shows what.
describe("angles that show the cue", () => {
  it.each<Family>(["hinge", "row", "squat", "bridge-thrust", "back-extension", "kettlebell-swing"])("each %s exercise has lines seen from the side", (family) => {
    expect(exercisesOfFamily(family).filter((exercise) => !allAngles(exercise).has("side")).map((exercise) => exercise.id)).toEqual([]);
  });

  it.each<Family>(["squat", "lunge-step", "plyometric"])("the line of the knees in a %s exercise is seen from the front", (family) => {
    const hidden = exercisesOfFamily(family).flatMap((exercise) => {
      const angles = anglesOf(exercise, /\bknees?\b.*\b(?:toes?|in|inwards?|foot|caving|knocking)\b/i);
      return angles.size > 0 && !angles.has("front") ? [exercise.id] : [];
    });
    expect(hidden).toEqual([]);
    expect(exercisesOfFamily(family).filter((exercise) => allAngles(exercise).has("front")).length).toBeGreaterThanOrEqual(3);
  });

  it("the back line of a hinge is seen from the side", () => {
    const lines = exercisesOfFamily("hinge").flatMap((exercise) => [...exercise.cues, ...exercise.avoid]).filter((line) => /\bback (?:shape|stays|rounding)|flat back|leaning back/i.test(line.text));
    expect(lines.length).toBeGreaterThanOrEqual(4);
    expect(lines.filter((line) => !line.seenFrom.includes("side"))).toEqual([]);
  });

  it("the width of a push-up is seen from the front", () => {
    expect([...anglesOf(known("push-up"), /wider than the shoulders/)]).toContain("front");
  });

  it("pull-ups and the bar of a back squat are seen from the rear or at three-quarter", () => {
    for (const id of ["pull-up", "chin-up", "assisted-pull-up", "lat-pulldown"]) expect([...allAngles(known(id))], id).toEqual(expect.arrayContaining(["three-quarter"]));
    expect([...anglesOf(known("back-squat"), /\bbar\b/)]).toEqual(expect.arrayContaining(["rear"]));
  });

  it("a hip thrust is seen from the side", () => {
    for (const id of ["hip-thrust", "dumbbell-hip-thrust"]) {
      const exercise = known(id);
      expect(exercise.cues.filter((cue) => cue.seenFrom.includes("side")).length).toBeGreaterThanOrEqual(3);
    }
  });

  it("grip and feet have inserts", () => {
    const shown = EXERCISES.flatMap((exercise) => exercise.cues).filter((cue) => /\bthumbs?\b.*\b(?:around|wrapped)\b|\bwrap the thumb/i.test(cue.text));
    expect(shown.length).toBeGreaterThanOrEqual(3);
    expect(shown.filter((cue) => !cue.seenFrom.includes("insert"))).toEqual([]);
  });
});

describe("kinds of effort", () => {
  // Source: NSCA exercise order (Haff & Triplett): power exercises first. From memory; which ones are power is common practice.
  it("counts jumps, swings and the push press as power", () => {
    expect([...exercisesOfFamily("plyometric"), ...exercisesOfFamily("kettlebell-swing"), known("push-press")].filter((exercise) => !exercise.power)).toEqual([]);
    expect(EXERCISES.filter((exercise) => exercise.power && !["plyometric", "kettlebell-swing", "overhead-press"].includes(exercise.family))).toEqual([]);
  });

  // Common practice, no source.
  it("loads the spine in squats with a bar, deadlifts and bent-over rows, and not on machines or with chest support", () => {
    for (const id of ["back-squat", "front-squat", "deadlift", "romanian-deadlift", "trap-bar-deadlift", "bent-over-row", "good-morning"]) expect(known(id).spineLoaded, id).toBe(true);
    expect(EXERCISES.filter((exercise) => exercise.spineLoaded && exercise.equipment.some((piece) => piece === "machine" || piece === "leg press" || piece === "cable"))).toEqual([]);
    expect(known("chest-supported-row").spineLoaded).toBe(false);
  });

  it("ramps up to heavy multi-joint lifts and never to a single joint, a drill or a stretch", () => {
    for (const id of ["back-squat", "deadlift", "bench-press", "overhead-press", "leg-press", "hip-thrust"]) expect(known(id).rampUp, id).toBe(true);
    expect(EXERCISES.filter((exercise) => exercise.rampUp && (exercise.joints === "single" || ["mobility-warmup", "cooldown-stretch"].includes(exercise.family)))).toEqual([]);
  });
});

// Wordings that coaches widely reject, in cues a viewer is told to follow. Sources: position of common practice, and for the
// upright row and behind-the-neck work the Strength and Conditioning Journal reviews, from memory.
describe("no cue tells a viewer to do what is widely rejected", () => {
  it.each([
    ["bounce or jerk", /\b(?:bounce|jerk|yank|snap|slam|heave|throw the leg|kick up)\b/i],
    ["hold the breath", /\bhold (?:your|the|a) breath|\bdo not breathe|without breathing/i],
    ["round the back", /\bround(?:ed|ing)? (?:your|the|over)\b|\bcurl the low/i],
    ["lock a joint", /\block(?:ed|ing)?(?:\s?out)?\b/i],
    ["go through pain", /\bthrough (?:the )?pain|\bignore\b|\bno pain\b/i],
    ["bend the neck or work behind it", /behind the neck|crank|look up at|throw the head/i],
    ["arch hard", /\barch\b/i],
  ])("%s", (_name, words) => {
    expect(EXERCISES.flatMap((exercise) => exercise.cues.map((cue) => cue.text)).filter((text) => words.test(text))).toEqual([]);
  });

  it("makes no promise and names no cure", () => {
    const lines = EXERCISES.flatMap((exercise) => [...exercise.cues.map((cue) => cue.text), ...exercise.avoid.flatMap((fault) => [fault.text, fault.instead]), ...exercise.cautions]);
    expect(lines.filter((text) => /\b(?:cure|heal|fix(?:es)? your|guarantee|melt|burn fat|tone|slim|detox)\b/i.test(text))).toEqual([]);
  });
});
