import { describe, expect, it } from "vitest";
import { BEGINS, FOR_ALL, GOES_ON } from "../../../../shared/imports/assembly/assembly";
import { assemblyExamples } from "../../../../shared/imports/assembly/training";
import { withRoles } from "../../../../shared/imports/heard";
import { lessonOf } from "../../../../shared/imports/learning/read";
import { truthOf } from "../../../../shared/imports/learning/truth";
import { holdingMarked, markedScene, NEVER, ownersMarked, PERHAPS, SURELY } from "../../../../shared/imports/owners/training";
import { ROLES } from "../../../../shared/imports/roles/tagger";
import { forSeveralIn, labelsOf } from "../../../../shared/imports/roles/training";

const rolesIn = (body: string): string[] => labelsOf(lessonOf(`rate: 4\n---\n${body}\n`)).map((label) => ROLES[label] ?? "");

describe("labelsOf", () => {
  it("gives the mark of a range in one word to both its figures", () => {
    expect(rolesIn("we do 3/s sets of 8-10/r with 60-90/t seconds between")).toEqual(["sets", "reps", "reps-high", "rest", "rest"]);
  });

  it("gives the mark of one figure to that one", () => {
    expect(rolesIn("we do three/s sets of ten/r and my dog is six")).toEqual(["sets", "reps", "none"]);
  });
});

/** The scene of a transcript and whose each figure is, by its number among the exercises. */
function owned(file: string) {
  const lesson = lessonOf(file);
  const scene = markedScene(lesson.turns, truthOf(file), withRoles(lesson.ready, labelsOf(lesson)));
  if (scene === null) throw new Error("the marks and the head tell of other exercises");
  const forSeveral = forSeveralIn(lesson);
  return { scene, forSeveral, owners: ownersMarked(scene, truthOf(file), forSeveral, lesson.ready.candidates) };
}

const ownersIn = (file: string): number[][] => owned(file).owners;

describe("ownersMarked", () => {
  it("gives figures that follow a name in a summing-up to the exercise named", () => {
    expect(ownersIn("rate: 4\nback-squat: 3 x 5\nbench-press: 3 x 8\nplank: 3 x 45 s\n---\n<back-squat> first the squats and look at the knees <bench-press> then bench press nice and slow <plank> and planks to finish now the numbers again back squats three/s sets of five/r bench press three/s sets of eight/r and the plank three/s times forty five/w seconds\n")).toEqual([[0], [0], [1], [1], [2], [2]]);
  });

  it("gives what is told once to all it is true of", () => {
    expect(ownersIn("rate: 4\nback-squat: 3 x 5\nbench-press: 3 x 8\n---\nthree/as sets of both today <back-squat> first the squats for five/r <bench-press> then bench press for eight/r\n")).toEqual([[0, 1], [0], [1]]);
  });
});

describe("holdingMarked", () => {
  const holding = (file: string): number[][] => {
    const { scene, owners, forSeveral } = owned(file);
    return holdingMarked(scene, owners, forSeveral);
  };

  it("is sure of what an exercise says itself, and says nothing certain of what a neighbour says as well", () => {
    expect(holding("rate: 4\nback-squat: 3 x 5\nbench-press: 3 x 8\nplank: 3 x 45 s\n---\n<back-squat> first the squats for five/r <bench-press> then bench press for eight/r and three/as sets of both <plank> and planks to finish three/s times forty five/w seconds\n")).toEqual([
      [SURELY, NEVER, NEVER], [NEVER, SURELY, NEVER], [SURELY, SURELY, PERHAPS], [NEVER, NEVER, SURELY], [NEVER, NEVER, SURELY],
    ]);
  });

  it("leaves open which of two rounds that say the same holds", () => {
    expect(holding("rate: 4\nback-squat: 3 x 5\nbench-press: 3 x 8\n---\nthree/as sets of both today <back-squat> first the squats for five/r <bench-press> then bench press for eight/r and as i said three/as sets of both\n")).toEqual([
      [PERHAPS, PERHAPS], [SURELY, NEVER], [NEVER, SURELY], [PERHAPS, PERHAPS],
    ]);
  });
});

describe("assemblyExamples", () => {
  const labelsIn = (file: string): number[][] => {
    const { scene, owners } = owned(file);
    return assemblyExamples(scene, owners, truthOf(file)).map(({ labels }) => [...labels]);
  };

  it("lets a rest that is told between single sets hold for all of them, on whichever line it is written", () => {
    expect(labelsIn("rate: 4\nleg-curl: 1 x 15 @ 20 kg; 1 x 12 @ 25 kg; 1 x 10 @ 30 kg, rest 75 s\n---\n<leg-curl> leg curls twenty/l kilos for fifteen/r seventy five/t seconds rest twenty five/l for twelve/r and thirty/l for ten/r\n")).toEqual([[BEGINS, GOES_ON, FOR_ALL, BEGINS, GOES_ON, BEGINS, GOES_ON]]);
  });

  it("takes figures that are told again for the next set where there is one", () => {
    expect(labelsIn("rate: 4\nleg-curl: 1 x 10 @ 20 kg; 1 x 10 @ 20 kg; 1 x 6 @ 30 kg\n---\n<leg-curl> leg curls twenty/l kilos for ten/r then twenty/l again for ten/r and thirty/l for six/r\n")).toEqual([[BEGINS, GOES_ON, BEGINS, GOES_ON, BEGINS, GOES_ON]]);
  });

  it("makes one of each exercise, of its own figures", () => {
    const file = "rate: 4\nback-squat: 1 x 5; 1 x 3\nbench-press: 3 x 8\nplank: 2 x 45 s\n---\n<back-squat> first the squats for five/r and then for three/r <bench-press> then bench press three/s sets of eight/r <plank> and planks to finish two/s times forty five/w seconds\n";
    const { scene, owners } = owned(file);
    expect(assemblyExamples(scene, owners, truthOf(file)).map(({ labels }) => labels)).toEqual([[BEGINS, BEGINS], [BEGINS, GOES_ON], [BEGINS, GOES_ON]]);
  });
});
