import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countingIds, demoEpisode, emptyBlock, emptyEpisode, newLine, type Block, type Episode } from "../../../../shared/episode";
import { blockWantsOf, cueWantsOf, parseShotLine, usualShot, wantsOf, type EpisodeWant } from "../../../../shared/filming";

const newId = countingIds("w-");
const squat = (...lines: readonly ["cue" | "avoid" | "shot", string][]): Block =>
  emptyBlock(newId, "exercise", { title: "Goblet squat", exercise: "goblet-squat", lines: lines.map(([kind, text]) => newLine(newId, kind, text)) });
const episode = (...blocks: Block[]): Episode => emptyEpisode(newId, { blocks });
const byId = (wants: readonly EpisodeWant[], id: string): EpisodeWant | undefined => wants.find((each) => each.id === id);
const withShot = (text: string): Episode => episode(squat(["shot", text]));

describe("what an episode needs anyway", () => {
  it("is an opening, the place, a closing, a still and the room's sound, though no block has them", () => {
    const wants = wantsOf(episode());
    expect(wants.map(({ id, need, block, coveredBy }) => [id, need, block, coveredBy])).toEqual([
      ["opening", "must", null, null], ["place", "nice", null, null], ["closing", "must", null, null], ["thumbnail", "nice", null, null], ["room-tone", "nice", null, null],
    ]);
    expect(byId(wants, "room-tone")).toMatchObject({ seconds: 30, what: "30 s of room tone", shot: "30 s, nice: room tone, the room without you" });
  });

  it("is found in the shot lines by what they say", () => {
    const cover = (text: string, id: string): boolean => byId(wantsOf(withShot(text)), id)?.coveredBy !== null;
    expect(cover("Three-quarter, medium: still for the thumbnail", "thumbnail")).toBe(true);
    expect(cover("30 s: room tone at the end", "room-tone")).toBe(true);
    expect(cover("Wide, 5 s: all of it", "place")).toBe(true);
    expect(cover("Side, medium: the gym from the entrance", "place")).toBe(true);
    for (const id of ["thumbnail", "room-tone", "place"]) expect(cover("Side, full, set 1: the whole movement", id)).toBe(false);
  });

  it("names the demonstration's missing closing shot and its partner's product", () => {
    const open = wantsOf(demoEpisode).filter(({ need, coveredBy }) => need === "must" && coveredBy === null);
    expect(open.map(({ what, shot }) => [what, shot])).toEqual(expect.arrayContaining([
      ["the closing, to camera", "Front, medium, 12 s: to camera, goodbye"],
      ["what Fernhill Oats stands for, with its disclosure", "Three-quarter, medium, 6 s: Fernhill Oats in the picture while the disclosure is said"],
    ]));
  });

  it("takes a partner's product as shown when a shot names the partner or, being the only one, the product", () => {
    const partner = demoEpisode.partners.slice(0, 1);
    const shown = (text: string, partners = partner): boolean => byId(wantsOf({ ...withShot(text), partners }), `partner:${partner[0]?.id ?? ""}`)?.coveredBy !== null;
    expect(shown("Insert, 5 s: a bowl of oats")).toBe(true);
    expect(shown("Insert, 5 s: the product on the bench")).toBe(true);
    expect(shown("Insert, 5 s: the product on the bench", [...partner, { id: "p2", name: "Quiet Mats", relation: "paid", disclosure: "" }])).toBe(false);
    expect(shown("Insert, 5 s: hands in chalk")).toBe(false);
  });

  it("leaves out a partner without a name", () => {
    expect(wantsOf({ ...episode(), partners: [{ id: "p", name: " ", relation: "paid", disclosure: "" }] }).some(({ id }) => id.startsWith("partner"))).toBe(false);
  });
});

describe("what a block needs", () => {
  it("is its usual shot; an exercise with a load also a demonstration and an insert, both nice to have", () => {
    const block = squat();
    expect(blockWantsOf(block).map(({ id, need, on }) => [id.split(":")[0], need, on])).toEqual([["exercise", "must", "any"], ["demonstration", "nice", "demonstration"], ["insert", "nice", "any"]]);
    expect(blockWantsOf(emptyBlock(newId, "exercise", { exercise: "push-up" })).map(({ id }) => id.split(":")[0])).toEqual(["exercise"]);
    expect(blockWantsOf(emptyBlock(newId, "talk"))).toEqual([]);
    expect(usualShot({ kind: "talk" })).toBe("");
  });

  it("is covered by the block's own lines", () => {
    const block = squat(["shot", "Insert: hands"], ["shot", "Three-quarter, full, demo: slow"], ["shot", ""]);
    const [whole, demo, insert] = blockWantsOf(block);
    expect(insert?.coveredBy).toBe(block.lines[0]?.id);
    expect(demo?.coveredBy).toBe(block.lines[1]?.id);
    expect(whole?.coveredBy).toBe(block.lines[1]?.id);
  });

  it("is a must for a cue that only an unplanned angle shows, nice to have for one that is shown and for faults", () => {
    const block = squat(["cue", "Sit between the heels, elbows inside the knees"], ["cue", "Stop where your back would change its shape"], ["cue", "Have fun"], ["shot", "Side, full: x"]);
    const wants = cueWantsOf(block);
    expect(wants.map(({ need, coveredBy, angle }) => [need, coveredBy, angle])).toEqual([["must", null, "front"], ["nice", block.lines[3]?.id, "side"]]);
    expect(wants[0]?.shot).toBe("Front, full, 10 s: Sit between the heels, elbows inside the knees");
    expect(cueWantsOf(squat(["avoid", "Letting the knees fall in on the way up: push the floor apart instead"])).every(({ need }) => need === "nice")).toBe(true);
  });

  it("may be shown by a shot that names no angle", () => {
    expect(cueWantsOf(squat(["cue", "Sit between the heels, elbows inside the knees"], ["shot", "a nice one"]))[0]?.coveredBy).not.toBeNull();
  });
});

describe("every want", () => {
  it("has an id of its own, and a shot line that reads back as what is asked for and covers it when put in", () => {
    const texts = fc.array(fc.tuple(fc.constantFrom("cue" as const, "avoid" as const, "shot" as const), fc.constantFrom("Side, full: x", "Insert: grip", "Sit between the heels, elbows inside the knees", "demo: slow", "", "thumbnail", "Knees travel in line with the toes")), { maxLength: 8 });
    fc.assert(fc.property(texts, (lines) => {
      const block = squat(...lines);
      const wants = wantsOf(episode(block));
      expect(new Set(wants.map(({ id }) => id)).size).toBe(wants.length);
      for (const { id, shot, asked, block: home, coveredBy } of wants) {
        expect(parseShotLine(shot)).toEqual(asked);
        if (home === null || coveredBy !== null) continue;
        const filled = { ...block, lines: [...block.lines, newLine(newId, "shot", shot)] };
        expect(byId(wantsOf(episode(filled)), id)?.coveredBy).not.toBeNull();
      }
    }));
  });
});
