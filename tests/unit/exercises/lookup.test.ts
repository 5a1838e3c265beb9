import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { demoEpisode } from "../../../shared/episode";
import { EXERCISES, exerciseById, exercisesMentioned, findExercise, searchExercises } from "../../../shared/exercises";

const ids = (exercises: readonly { readonly id: string }[]): string[] => exercises.map((exercise) => exercise.id);

describe("exerciseById", () => {
  it("finds every id and nothing else", () => {
    expect(EXERCISES.every((exercise) => exerciseById(exercise.id) === exercise)).toBe(true);
    expect(exerciseById("no-such-thing")).toBeNull();
    expect(exerciseById("Goblet squat")).toBeNull();
  });
});

describe("findExercise", () => {
  it.each([
    ["Farmer's carry", "farmers-carry"], ["farmers carry", "farmers-carry"], ["FARMER’S CARRIES", "farmers-carry"], ["farmers walk", "farmers-carry"],
    ["Push-ups", "push-up"], ["pushup", "push-up"], ["press ups", "push-up"],
    ["RDLs", "romanian-deadlift"], ["db rdl", "dumbbell-romanian-deadlift"], ["SL RDL", "single-leg-romanian-deadlift"],
    ["1-arm row", "single-arm-dumbbell-row"], ["one arm rows", "single-arm-dumbbell-row"],
    ["Calf raises", "calf-raise"], ["calve raise", "calf-raise"], ["lateral raises", "lateral-raise"],
    ["Bulgarian split squats", "bulgarian-split-squat"], ["walking lunges", "walking-lunge"], ["box jumps", "box-jump"],
    ["lat pull down", "lat-pulldown"], ["lat pull-downs", "lat-pulldown"], ["face pulls", "face-pull"], ["facepull", "face-pull"],
    ["bicep curls", "biceps-curl"], ["tricep pushdown", "triceps-pushdown"], ["kb swings", "kettlebell-swing"],
    ["dumbell bench press", "dumbbell-bench-press"], ["OHP", "overhead-press"], ["hex bar deadlift", "trap-bar-deadlift"],
    ["cable flyes", "cable-fly"], ["reverse flies", "rear-shoulder-raise"], ["cat cow", "cat-camel"], ["childs pose", "childs-pose"],
    ["  Goblet   Squat ", "goblet-squat"], ["Half-kneeling landmine press", "half-kneeling-landmine-press"], ["Anti-rotation press", "anti-rotation-press"],
  ])("reads %j as %s", (text, id) => {
    expect(findExercise(text)?.id).toBe(id);
  });

  it.each(["", "   ", "squat rack", "goblet squat 3 x 10", "the deadlift question", "?!"])("does not read %j as an exercise", (text) => {
    expect(findExercise(text)).toBeNull();
  });

  it("finds every exercise by every name it lists, plural or shouted", () => {
    for (const exercise of EXERCISES) {
      for (const name of [exercise.name, ...exercise.otherNames]) {
        expect(findExercise(name), name).toBe(exercise);
        expect(findExercise(name.toUpperCase()), name).toBe(exercise);
        expect(findExercise(name.replaceAll("-", " ")), name).toBe(exercise);
      }
    }
  });
});

describe("the demo episode", () => {
  it("titles each exercise block with a name the catalogue knows under the same id", () => {
    const blocks = demoEpisode.blocks.filter((block) => block.kind === "exercise");
    expect(blocks.length).toBe(5);
    expect(blocks.map((block) => findExercise(block.title)?.id)).toEqual(blocks.map((block) => block.exercise));
  });
});

describe("exercisesMentioned", () => {
  it.each<[string, string[]]>([
    ["Ten easy squats to a box, ten wall slides, ten band pull-aparts", ["squat-to-box", "wall-slides", "band-pull-apart"]],
    ["Three minutes on the rower or a brisk walk, easy enough to talk", ["easy-row", "easy-walk"]],
    ["Leg swings and arm circles, then cat-camel", ["leg-swings", "arm-circles", "cat-camel"]],
    ["Suitcase carry, one bell, 20 m each side", ["suitcase-carry"]],
    ["Dumbbell row with one hand on a bench, same set line", ["single-arm-dumbbell-row"]],
    ["One-arm dumbbell press, half-kneeling, light", ["half-kneeling-dumbbell-press"]],
    ["Bodyweight squat to a box, slow", ["squat-to-box"]],
    ["Ten squats, some lunges", ["back-squat", "forward-lunge"]],
    ["ten push ups and ten step-ups", ["push-up", "step-up"]],
    ["Push-ups. Push-ups. Planks.", ["push-up", "plank"]],
    ["Half-kneeling hip flexor stretch and child's pose", ["hip-flexor-stretch", "childs-pose"]],
  ])("in %j finds %j", (text, expected) => {
    expect(ids(exercisesMentioned(text))).toEqual(expected);
  });

  it.each(["Press up and slightly away: the bar moves on an arc", "Lie chest down on a bench set at about thirty degrees", "Curl the toes and keep breathing", "Bridge the gap", "Then step up the pace", "Do not push up through pain", "No names in here", "", "face. Pull"])("finds none in %j", (text) => {
    expect(exercisesMentioned(text)).toEqual([]);
  });

  it("prefers the longest name", () => {
    expect(ids(exercisesMentioned("single-leg Romanian deadlifts with a bell"))).toEqual(["single-leg-romanian-deadlift"]);
  });

  it("finds any two names written in one line", () => {
    const some = fc.constantFrom(...EXERCISES);
    fc.assert(fc.property(some, some, (first, second) => {
      expect(ids(exercisesMentioned(`10 ${first.name}, then: ${second.name}`))).toEqual([...new Set([first.id, second.id])]);
    }), { seed: 7 });
  });
});

describe("searchExercises", () => {
  it.each<[string, string]>([
    ["gob", "goblet-squat"], ["farm", "farmers-carry"], ["rdl", "romanian-deadlift"], ["press-up", "push-up"], ["anti", "anti-rotation-press"],
    ["landm", "landmine-row"], ["kneeling landmine", "half-kneeling-landmine-press"], ["squat jump", "squat-jump"], ["jump squat", "squat-jump"],
    ["pullu", "pull-up"], ["calf rai", "calf-raise"], ["shoulder pre", "machine-shoulder-press"], ["bulg", "bulgarian-split-squat"],
  ])("answers %j with %s first", (query, id) => {
    expect(searchExercises(query, 5)[0]?.id).toBe(id);
  });

  it("lists names that match before exercises that only go by another name", () => {
    const found = searchExercises("bench", 40);
    const isNamed = found.slice(1).map((exercise) => /bench/i.test(exercise.name));
    expect(isNamed.indexOf(false)).toBeGreaterThan(0);
    expect(isNamed.lastIndexOf(true)).toBeLessThan(isNamed.indexOf(false));
  });

  it("lists the catalogue when nothing is typed, and nothing for nonsense", () => {
    expect(searchExercises("  ", 3)).toEqual(EXERCISES.slice(0, 3));
    expect(searchExercises("zzzz", 10)).toEqual([]);
  });

  it("survives anything typed, keeps to the limit, lists nothing twice and answers the same again", () => {
    fc.assert(fc.property(fc.string({ maxLength: 12 }), fc.nat(20), (query, limit) => {
      const found = searchExercises(query, limit);
      expect(found.length).toBeLessThanOrEqual(limit);
      expect(new Set(found).size).toBe(found.length);
      expect(searchExercises(query, limit)).toEqual(found);
    }), { seed: 11 });
  });

  it("keeps an exercise among the answers while its name is typed letter by letter", () => {
    for (const exercise of EXERCISES) {
      for (let length = 3; length <= exercise.name.length; length += 1) {
        expect(searchExercises(exercise.name.slice(0, length), EXERCISES.length), exercise.name.slice(0, length)).toContain(exercise);
      }
    }
  });
});
