import { describe, expect, it } from "vitest";
import { ANGLES, EQUIPMENT, EXERCISES, exerciseById, exercisesOfFamily, FAMILIES, JOINTS, MUSCLES } from "../../../shared/exercises";
import type { Exercise } from "../../../shared/exercises";
import { keyOf } from "../../../shared/exercises/words";

/** Ids at fault, so that a failure names them. */
const failing = (isFine: (exercise: Exercise) => boolean): string[] => EXERCISES.filter((exercise) => !isFine(exercise)).map((exercise) => exercise.id);

const wordCount = (text: string): number => text.trim().split(/\s+/).length;
const isUnloaded = (exercise: Exercise): boolean => exercise.family === "mobility-warmup" || exercise.family === "cooldown-stretch";

describe("the catalogue as a whole", () => {
  it("holds at least ninety exercises, at least three in each of the eighteen families", () => {
    expect(EXERCISES.length).toBeGreaterThanOrEqual(90);
    expect(FAMILIES.filter((family) => exercisesOfFamily(family).length < 3)).toEqual([]);
  });

  it("stands in the order of the families", () => {
    const order = EXERCISES.map((exercise) => FAMILIES.indexOf(exercise.family));
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  it("gives every exercise an id of its own in kebab-case", () => {
    expect(new Set(EXERCISES.map((exercise) => exercise.id)).size).toBe(EXERCISES.length);
    expect(failing((exercise) => /^[a-z0-9]+(-[a-z0-9]+)*$/.test(exercise.id))).toEqual([]);
  });

  it("uses each name once, whatever its spelling", () => {
    const owners = new Map<string, string[]>();
    for (const exercise of EXERCISES) {
      for (const name of [exercise.name, ...exercise.otherNames]) owners.set(keyOf(name), [...(owners.get(keyOf(name)) ?? []), `${exercise.id}: ${name}`]);
    }
    expect([...owners.values()].filter((names) => names.length > 1)).toEqual([]);
  });

  it("repeats no line word for word in more than two exercises", () => {
    const uses = new Map<string, number>();
    for (const exercise of EXERCISES) {
      const lines = [...exercise.cues.map((cue) => cue.text), ...exercise.avoid.flatMap((fault) => [fault.text, fault.instead]), ...exercise.cautions];
      for (const line of lines) uses.set(line.toLowerCase(), (uses.get(line.toLowerCase()) ?? 0) + 1);
    }
    expect([...uses].filter(([, count]) => count > 2)).toEqual([]);
  });
});

describe("every exercise", () => {
  it("has at least two other names, three cues, two faults and one caution", () => {
    expect(failing((exercise) => exercise.otherNames.length >= 2 && exercise.cues.length >= 3 && exercise.avoid.length >= 2 && exercise.cautions.length >= 1)).toEqual([]);
  });

  it("uses only the words of the trade lists, each once", () => {
    const known = <T>(values: readonly T[], list: readonly T[]): boolean => values.every((value) => list.includes(value)) && new Set(values).size === values.length;
    expect(failing((exercise) => known(exercise.equipment, EQUIPMENT) && exercise.equipment.length > 0)).toEqual([]);
    expect(failing((exercise) => known(exercise.loadedJoints, JOINTS) && exercise.loadedJoints.length > 0)).toEqual([]);
    expect(failing((exercise) => known([...exercise.direct, ...exercise.indirect], MUSCLES) && known(exercise.stretches ?? [], MUSCLES))).toEqual([]);
  });

  it("trains some muscle directly, unless it is a warm-up drill or a stretch", () => {
    expect(failing((exercise) => isUnloaded(exercise) || exercise.direct.length > 0)).toEqual([]);
  });

  it("claims no training effect for a stretch, and says what the stretch lengthens", () => {
    const stretches = exercisesOfFamily("cooldown-stretch").filter((exercise) => exercise.id !== "slow-breathing");
    expect(stretches.filter((exercise) => exercise.direct.length + exercise.indirect.length > 0 || (exercise.stretches ?? []).length === 0)).toEqual([]);
  });

  it("shows each cue and each fault from at least one known angle, no angle twice", () => {
    expect(failing((exercise) => [...exercise.cues, ...exercise.avoid].every((line) => line.seenFrom.length > 0 && line.seenFrom.every((angle) => ANGLES.includes(angle)) && new Set(line.seenFrom).size === line.seenFrom.length))).toEqual([]);
  });

  it("keeps cues to twelve words and faults to fourteen", () => {
    expect(EXERCISES.flatMap((exercise) => exercise.cues.map((cue) => cue.text)).filter((text) => wordCount(text) > 12)).toEqual([]);
    expect(EXERCISES.flatMap((exercise) => exercise.avoid.map((fault) => fault.text)).filter((text) => wordCount(text) > 14)).toEqual([]);
  });

  it("writes cues and faults as lines: capital first, no full stop; cautions as sentences", () => {
    const isLine = (text: string): boolean => /^[A-Z0-9]/.test(text) && !/[.!]$/.test(text);
    expect(EXERCISES.flatMap((exercise) => [...exercise.cues, ...exercise.avoid].map((line) => line.text)).filter((text) => !isLine(text))).toEqual([]);
    expect(EXERCISES.flatMap((exercise) => exercise.avoid.map((fault) => fault.instead)).filter((text) => !/^[a-z]/.test(text) || /[.!]$/.test(text))).toEqual([]);
    expect(EXERCISES.flatMap((exercise) => exercise.cautions).filter((text) => !/^[A-Z].*[.?]$/.test(text))).toEqual([]);
  });

  it("names a fault as a thing, never as an order", () => {
    const order = /^(?:let|drop|swing|pull|push|lean|arch|bounce|lift|rush|twist|bend|hold|keep|jerk|snap|do|don't|never)\b/i;
    expect(EXERCISES.flatMap((exercise) => exercise.avoid.map((fault) => fault.text)).filter((text) => order.test(text))).toEqual([]);
  });

  it("has a tempo of four figures or none, and a set-up time under five minutes", () => {
    expect(failing((exercise) => exercise.tempo === null || /^\d-\d-\d-\d$/.test(exercise.tempo))).toEqual([]);
    expect(failing((exercise) => exercise.setupSeconds > 0 && exercise.setupSeconds < 300)).toEqual([]);
  });

  it("has no usual tempo when it is a jump, a swing, a carry or a stretch", () => {
    expect(failing((exercise) => !(exercise.power || ["carry", "plyometric", "kettlebell-swing", "cooldown-stretch"].includes(exercise.family)) || exercise.tempo === null)).toEqual([]);
  });

  it("loads the joints that its muscles cross in the plainest cases", () => {
    expect(failing((exercise) => !exercise.direct.includes("quadriceps") || exercise.loadedJoints.includes("knee"))).toEqual([]);
    expect(failing((exercise) => !exercise.direct.includes("calves") || exercise.loadedJoints.includes("ankle"))).toEqual([]);
    expect(failing((exercise) => !exercise.direct.includes("triceps") || exercise.loadedJoints.includes("elbow"))).toEqual([]);
    expect(failing((exercise) => !exercise.spineLoaded || exercise.loadedJoints.includes("low back"))).toEqual([]);
  });
});

describe("substitutes", () => {
  const all = EXERCISES.flatMap((exercise) => exercise.substitutes.map((substitute) => ({ exercise, substitute, other: exerciseById(substitute.exercise) })));

  it("point at another exercise of the catalogue", () => {
    expect(all.filter(({ exercise, other }) => other === null || other === exercise).map(({ exercise, substitute }) => `${exercise.id} -> ${substitute.exercise}`)).toEqual([]);
  });

  it("are given for equipment the exercise needs, and do without it", () => {
    expect(all.filter(({ exercise, substitute }) => !exercise.equipment.includes(substitute.without)).map(({ exercise }) => exercise.id)).toEqual([]);
    expect(all.filter(({ substitute, other }) => other?.equipment.includes(substitute.without)).map(({ exercise, substitute }) => `${exercise.id} -> ${substitute.exercise}`)).toEqual([]);
  });

  it("cover every piece of equipment that can be taken", () => {
    const missing = EXERCISES.flatMap((exercise) => exercise.equipment.filter((piece) => piece !== "bodyweight" && !exercise.substitutes.some((substitute) => substitute.without === piece)).map((piece) => `${exercise.id}: ${piece}`));
    expect(missing).toEqual([]);
  });

  it("share a trained muscle with what they replace, outside warm-up and cool-down", () => {
    const strangers = all.filter(({ exercise, other }) => {
      if (!other || isUnloaded(exercise) || isUnloaded(other)) return false;
      const there = [...other.direct, ...other.indirect];
      return !exercise.direct.some((muscle) => there.includes(muscle));
    });
    expect(strangers.map(({ exercise, substitute }) => `${exercise.id} -> ${substitute.exercise}`)).toEqual([]);
  });
});
