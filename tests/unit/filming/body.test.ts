import { describe, expect, it } from "vitest";
import { exerciseById, EXERCISES, type Exercise } from "../../../shared/exercises";
import { bodyOf, setupOf, standFor, USUAL_SETUP, type Body } from "../../../shared/filming";
import { countingIds, emptyBlock, emptyEpisode } from "../../../shared/episode";

const of = (id: string, stature = 1.75): Body => bodyOf(exerciseById(id) as Exercise, "standing", stature);

describe("the box of a movement", () => {
  it("is a box for every exercise of the catalogue, no smaller than a person", () => {
    for (const exercise of EXERCISES) {
      const { tall, broad, long, travel } = bodyOf(exercise, "standing", 1.75);
      expect([exercise.id, tall >= 0.6 && tall <= 3.2 && broad >= 0.8 && broad <= 2.6 && long >= 0.9 && long <= 2.6 && travel >= 0 && travel <= 4]).toEqual([exercise.id, true]);
    }
  });

  it("is as broad as the bar, whoever lifts it", () => {
    for (const id of ["deadlift", "back-squat", "bench-press", "overhead-press"]) {
      expect(of(id).broad).toBe(2.2);
      expect(of(id, 1.5).broad).toBe(2.2);
    }
  });

  it("is as tall as the arms reach when they go overhead", () => {
    expect(of("half-kneeling-dumbbell-press").tall).toBeGreaterThan(1.7);
    expect(of("overhead-press").tall).toBeGreaterThan(of("overhead-carry").tall);
    expect(of("overhead-carry").tall).toBeCloseTo(1.75 * 1.25);
    expect(of("pull-up").tall).toBeGreaterThan(of("dead-hang").tall);
    expect(of("bench-press").tall).toBeGreaterThan(1.2);
  });

  it("goes along when somebody walks", () => {
    expect(of("farmers-carry").travel).toBe(4);
    expect(of("goblet-squat").travel).toBe(0);
  });

  it("sends the camera back for a press overhead, and for the bar in an upright picture", () => {
    const setup = (id: string) => ({ ...USUAL_SETUP, exercise: exerciseById(id) as Exercise });
    expect(standFor({ ...setup("overhead-press"), angle: "side", size: "full" }).distance).toBeGreaterThan(standFor({ ...setup("goblet-squat"), angle: "side", size: "full" }).distance);
    // by hand: 2.2 / 0.9 = 2.444 m across 20.25 mm; 26 x 2.444 / 20.25 = 3.1 m
    expect(standFor({ ...setup("deadlift"), aspect: "9:16", angle: "front", size: "full" }).distance).toBe(3.1);
    // a walk towards the camera is framed where it comes nearest: 2 m before its middle
    expect(standFor({ ...setup("farmers-carry"), angle: "front", size: "full" }).distance).toBe(4.6);
  });

  it("comes from the block's exercise, or from its title", () => {
    const newId = countingIds("b-");
    const episode = emptyEpisode(newId);
    expect(setupOf(episode, emptyBlock(newId, "exercise", { title: "Deadlift" })).exercise?.id).toBe("deadlift");
    expect(setupOf(episode, emptyBlock(newId, "talk", { title: "Deadlift" })).exercise).toBeUndefined();
  });

  it("takes lens and stature from the session, and what is usual for absurd ones", () => {
    const newId = countingIds("b-");
    const episode = emptyEpisode(newId);
    const filming = { lens: 35, stature: 1.6, format: "", freeGigabytes: null, batteryMinutes: null };
    const block = emptyBlock(newId, "talk");
    expect(setupOf({ ...episode, session: { ...episode.session, filming } }, block)).toMatchObject({ lens: 35, stature: 1.6 });
    expect(setupOf({ ...episode, session: { ...episode.session, filming: { ...filming, lens: Number.NaN, stature: -1 } } }, block)).toMatchObject({ lens: "main", stature: 1.75 });
  });
});
