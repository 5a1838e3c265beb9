import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countingIds, demoEpisode, emptyBlock, emptyEpisode, newLine } from "../../../../shared/episode";
import { DEFAULT_PACE, ownPace } from "../../../../shared/speech";
import { advance, beginningOf, clipLeft, momentAt } from "../../../../renderer/prompter/moment";
import { blockAt, promptScript, stretchAt } from "../../../../renderer/prompter/script";
import { pushAt } from "../../../../renderer/prompter/scroll";
import { stepByBlock, stepByStretch } from "../../../../renderer/prompter/steps";

const script = promptScript(demoEpisode, DEFAULT_PACE);
const id = countingIds("p");

describe("the prompter's script", () => {
  it("holds every word that is said, one breath at a time, numbered in order", () => {
    const said = demoEpisode.blocks.flatMap(({ lines }) => lines.filter(({ kind }) => kind === "say")).flatMap(({ text }) => text.split(/\s+/).filter((word) => word !== "/"));
    expect(script.stretches.flatMap(({ text }) => text.split(" "))).toEqual(said);
    expect(script.stretches.map(({ index }) => index)).toEqual(script.stretches.map((_, i) => i));
  });

  it("gives each block its clip, or more when the words need it", () => {
    for (const block of script.blocks) {
      expect(block.to - block.from).toBeGreaterThanOrEqual(block.clip - 1e-6);
      expect(block.stretches.at(-1)?.to).toBeLessThanOrEqual(block.to + 1e-6);
    }
    const squat = script.blocks.find(({ name }) => name === "Goblet squat") ?? expect.fail();
    expect(squat.clip).toBe(17);
    expect(squat.to - squat.from).toBeGreaterThan(18);
  });

  it("keeps a clip without words in its place, with what is seen there, so that the words behind it are not ahead of the picture", () => {
    const shots = ["Side, full, set 1, 15 s: back shape at the bottom", "Front, 10 s: knees over toes", "Wide, 5 s"].map((text) => newLine(id, "shot", text));
    const episode = emptyEpisode(id, { blocks: [emptyBlock(id, "opening", { clipSeconds: 9 }), emptyBlock(id, "talk", { clipSeconds: 5, lines: [newLine(id, "say", "Hello there.")] }), emptyBlock(id, "cool-down", { clipSeconds: 90, lines: shots })] });
    const { blocks, stretches, seconds } = promptScript(episode, DEFAULT_PACE);
    expect(blocks.map(({ number, name, from, to, speechTo }) => [number, name, from, to, speechTo])).toEqual([[1, "Opening", 0, 9, 0], [2, "Talk", 9, 14, expect.any(Number)], [3, "Cool-down", 14, 104, 14]]);
    expect(stretches.map(({ index, text, breath }) => [index, text, breath])).toEqual([
      [0, "No words for 9 s.", "silent"], [1, "Hello there.", "line"], [2, "No words for 1:30. On screen: back shape at the bottom; knees over toes.", "silent"],
    ]);
    expect(seconds).toBe(104);
  });

  it("waits through a clip without words at any pace, when it stops at no block", () => {
    const say = (text: string) => emptyBlock(id, "talk", { clipSeconds: 4, lines: [newLine(id, "say", text)] });
    const made = promptScript(emptyEpisode(id, { blocks: [say("Hello there."), emptyBlock(id, "cool-down", { clipSeconds: 40 }), say("Goodbye.")] }), DEFAULT_PACE);
    for (const rate of [0.5, 1, 1.6]) {
      const after = (real: number) => advance(made, beginningOf(made, 0), real, { rate, waits: false }).moment;
      expect([4.1, 43.9, 44.1].map((real) => after(real).block)).toEqual([1, 1, 2]);
      expect(clipLeft(made, after(14))).toBeCloseTo(30);
      expect(stretchAt(made, after(14).at)?.breath).toBe("silent");
    }
    expect(stepByStretch(made, momentAt(made, 0.5, 1), 1)).toEqual({ to: 4, entersBlock: true });
    expect(stepByStretch(made, momentAt(made, 20, 1), 1)).toEqual({ to: made.stretches[2]?.from, entersBlock: true });
    expect(stepByStretch(made, momentAt(made, 20, 1), -1)).toEqual({ to: made.stretches[0]?.from, entersBlock: false });
  });

  it("leaves out what has neither words nor a clip, and keeps the running order's numbers", () => {
    const episode = emptyEpisode(id, { blocks: [emptyBlock(id, "opening"), emptyBlock(id, "talk", { lines: [newLine(id, "say", "Hello there.")] })] });
    expect(promptScript(episode, DEFAULT_PACE).blocks.map(({ number, name, from }) => [number, name, from])).toEqual([[2, "Talk", 0]]);
    expect(promptScript(emptyEpisode(id), DEFAULT_PACE)).toEqual({ blocks: [], stretches: [], seconds: 0 });
  });

  it("runs faster for a faster speaker", () => {
    const slow = ownPace(["Sit back and stand up again with both feet on the floor."], 3, DEFAULT_PACE) ?? expect.fail();
    const length = (pace: typeof slow): number => promptScript(demoEpisode, pace).stretches.reduce((sum, { from, to }) => sum + to - from, 0);
    expect(length(slow)).toBeLessThan(length(DEFAULT_PACE) * 0.95);
  });
});

describe("steps", () => {
  const stretchFrom = (at: number, step: 1 | -1): number => stepByStretch(script, momentAt(script, at, 1), step).to;
  const blockFrom = (at: number, step: 1 | -1): number => stepByBlock(script, momentAt(script, at, 1), step);

  it("go breath by breath through the whole script and back", () => {
    let at = 0;
    const seen: number[] = [];
    for (let i = 1; i < script.stretches.length; i++) seen.push((at = stretchFrom(at, 1)));
    expect(seen).toEqual(script.stretches.slice(1).map(({ from }) => from));
    expect(stretchFrom(at, 1)).toBe(at);
    expect(stretchFrom(at, -1)).toBe(script.stretches.at(-2)?.from);
    expect(stretchFrom(at + 1, -1)).toBe(at);
    expect(stretchFrom(0, -1)).toBe(0);
  });

  it("say when they go on into another block: from its last breath, and from the quiet behind it", () => {
    for (const [i, block] of script.blocks.slice(0, -1).entries()) {
      const next = script.blocks[i + 1]?.stretches[0]?.from;
      block.stretches.forEach((stretch, n) => {
        const isLast = n === block.stretches.length - 1;
        expect(stepByStretch(script, { block: i, at: stretch.from, clip: 0 }, 1).entersBlock, `${block.name} ${n}`).toBe(isLast);
      });
      expect(stepByStretch(script, { block: i, at: block.speechTo, clip: 0 }, 1)).toEqual({ to: next, entersBlock: true });
    }
    const last = script.blocks.length - 1;
    expect(stepByStretch(script, { block: last, at: script.stretches.at(-1)?.from ?? 0, clip: 0 }, 1).entersBlock).toBe(false);
  });

  it("back from within a block go to its beginning, from there to the block before", () => {
    const second = script.blocks[1] ?? expect.fail();
    expect(blockFrom(second.from + 5, -1)).toBe(second.from);
    expect(blockFrom(second.from, -1)).toBe(0);
    expect(blockAt(script, second.from)).toBe(second);
    expect(blockAt(script, 1e9)).toBe(script.blocks.at(-1));
  });
});

describe("the reading line", () => {
  const places = script.stretches.map((_, i) => i * 100);

  it("has the stretch that is read on it when it begins, and the next one when it ends", () => {
    const stretch = script.stretches[3] ?? expect.fail();
    expect(pushAt(script.stretches, places, stretch.from, true)).toBe(300);
    expect(pushAt(script.stretches, places, (stretch.from + stretch.to) / 2, true)).toBeCloseTo(350);
    expect(pushAt(script.stretches, places, stretch.to - 1e-9, true)).toBeCloseTo(400);
  });

  it("rests in the breath between two stretches", () => {
    const [stretch, next] = [script.stretches[3] ?? expect.fail(), script.stretches[4] ?? expect.fail()];
    expect(next.from - stretch.to).toBeGreaterThan(0.2);
    for (const share of [0.1, 0.5, 0.9]) expect(pushAt(script.stretches, places, stretch.to + share * (next.from - stretch.to), true)).toBe(400);
  });

  it("moves from stretch to stretch at once for people who want less motion", () => {
    const stretch = script.stretches[3] ?? expect.fail();
    expect(pushAt(script.stretches, places, stretch.to - 0.01, false)).toBe(300);
    expect(pushAt(script.stretches, places, stretch.to + 0.01, false)).toBe(400);
  });

  it("never moves back while time goes on, and stays inside the text", () => {
    fc.assert(fc.property(fc.double({ min: 0, max: script.seconds + 10, noNaN: true }), fc.double({ min: 0, max: 3, noNaN: true }), fc.boolean(), (at, later, smooth) => {
      const [a, b] = [pushAt(script.stretches, places, at, smooth), pushAt(script.stretches, places, at + later, smooth)];
      expect(b).toBeGreaterThanOrEqual(a - 1e-9);
      expect(b).toBeLessThanOrEqual(places.at(-1) ?? 0);
    }));
  });

  it("knows the stretch that comes up in a pause", () => {
    const [stretch, next] = [script.stretches[3] ?? expect.fail(), script.stretches[4] ?? expect.fail()];
    expect(stretchAt(script, stretch.to - 0.01)).toBe(stretch);
    expect(stretchAt(script, stretch.to + 0.01)).toBe(next);
    expect(stretchAt(script, 1e9)).toBe(script.stretches.at(-1));
    expect(pushAt([], [], 3, true)).toBe(0);
  });
});
