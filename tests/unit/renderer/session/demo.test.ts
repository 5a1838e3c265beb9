import { describe, expect, it } from "vitest";
import { countingIds, demoEpisode, newDemo } from "../../../../shared/episode";

describe("an episode begun from the demo", () => {
  it("says what the demo says, under an id of its own", () => {
    const newId = countingIds("d");
    const [one, two] = [newDemo(newId), newDemo(newId)];
    expect(new Set([one.id, two.id, demoEpisode.id]).size).toBe(3);
    for (const made of [one, two]) expect({ ...made, id: demoEpisode.id }).toEqual(demoEpisode);
  });
});
