import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { advance, beginningOf, clipLeft, isAtEnd, momentAt, type Moment } from "../../../../renderer/prompter/moment";
import type { PromptBlock, PromptScript } from "../../../../renderer/prompter/script";

/** A script of blocks, each its clip's and its words' planned seconds; a stretch is the whole of a block's words. */
function scriptOf(...lengths: readonly (readonly [clip: number, speech: number])[]): PromptScript {
  let at = 0;
  const blocks = lengths.map(([clip, speech], i): PromptBlock => {
    const from = at;
    at += Math.max(clip, speech);
    return { id: `b${i}`, number: i + 1, name: `Block ${i}`, from, to: at, speechTo: from + speech, clip, stretches: [{ index: i, text: "Sit.", from, to: from + speech, breath: "line" }] };
  });
  return { blocks, stretches: blocks.flatMap(({ stretches }) => stretches), seconds: at };
}

/** Lets time pass in frames. */
function run(script: PromptScript, moment: Moment, seconds: number, how: { rate: number; waits: boolean }, frame = 1 / 60): Moment {
  let here = moment;
  for (let passed = 0; passed < seconds - 1e-9; passed += frame) {
    const { moment: next, stopsAt } = advance(script, here, Math.min(frame, seconds - passed), how);
    here = next;
    if (stopsAt !== null) break;
  }
  return here;
}

describe("the clip's seconds", () => {
  // At any pace a clip of 30 s takes 30 s; words that need more keep the block for as long as they take.
  it.each([
    ["words shorter than the clip, planned pace", 30, 20, 1, 30],
    ["words shorter than the clip, half as fast again", 30, 20, 1.5, 30],
    ["words as long as the clip, faster", 30, 30, 1.5, 30],
    ["words longer than the clip that fit when read faster", 30, 40, 1.6, 30],
    ["words longer than the clip, faster", 30, 60, 1.5, 40],
    ["words shorter than the clip that no longer fit when read slower", 30, 20, 0.5, 40],
    ["no words to speak of", 12, 0, 1.3, 12],
    ["words over no clip", 0, 6, 1.5, 4],
  ])("%s", (_, clip, speech, rate, leftAfter) => {
    const script = scriptOf([clip, speech], [5, 5]);
    expect(run(script, beginningOf(script, 0), leftAfter - 0.01, { rate, waits: true }).block).toBe(0);
    expect(run(script, beginningOf(script, 0), leftAfter + 0.01, { rate, waits: true })).toEqual({ block: 1, at: script.blocks[1]?.from, clip: 0 });
    expect(clipLeft(script, run(script, beginningOf(script, 0), 3, { rate, waits: true }))).toBeCloseTo(clip - 3, 6);
  });

  it("fall one a second whatever the pace is changed to, and the block is left when both clip and words are over", () => {
    const change = fc.record({ rate: fc.double({ min: 0.5, max: 1.6, noNaN: true }), seconds: fc.double({ min: 0.01, max: 4, noNaN: true }) });
    fc.assert(fc.property(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 0, max: 20 }), fc.array(change, { minLength: 1, maxLength: 12 }), (clip, speech, changes) => {
      // A block of nothing is over before it begins.
      fc.pre(clip + speech > 0);
      const script = scriptOf([clip, speech], [5, 5]);
      let here = beginningOf(script, 0);
      let [real, said] = [0, 0];
      for (const { rate, seconds } of changes) {
        const before = clipLeft(script, here);
        // Changing the pace by itself moves nothing.
        expect(clipLeft(script, advance(script, here, 0, { rate, waits: true }).moment)).toBe(before);
        const until = Math.max(clip - real, (speech - said) / rate);
        const { moment, stopsAt } = advance(script, here, seconds, { rate, waits: true });
        if (seconds > until + 1e-6) {
          expect({ moment, stopsAt }).toEqual({ moment: beginningOf(script, 1), stopsAt: "block" });
          return;
        }
        if (seconds > until - 1e-6) return;
        [real, said] = [real + seconds, Math.min(speech, said + seconds * rate)];
        expect(stopsAt).toBeNull();
        expect(before - clipLeft(script, moment)).toBeCloseTo(seconds, 6);
        expect(clipLeft(script, moment)).toBeCloseTo(clip - real, 6);
        expect(moment.at).toBeCloseTo(said, 6);
        here = moment;
      }
    }));
  });

  it("do not depend on how long a frame is", () => {
    const script = scriptOf([3, 2], [1, 4], [2, 0]);
    fc.assert(fc.property(fc.double({ min: 0.004, max: 0.25, noNaN: true }), fc.double({ min: 0.5, max: 1.6, noNaN: true }), fc.double({ min: 0.1, max: 9, noNaN: true }), (frame, rate, seconds) => {
      const how = { rate, waits: false };
      const [a, b] = [run(script, beginningOf(script, 0), seconds, how, frame), run(script, beginningOf(script, 0), seconds, how, 10)];
      // On the edge between two blocks rounding may put one of them a hair before it.
      if (a.block === b.block) expect([a.at, a.clip]).toEqual([expect.closeTo(b.at, 5), expect.closeTo(b.clip, 5)]);
      else expect(Math.min(a.clip, b.clip)).toBeCloseTo(0, 5);
    }));
  });
});

describe("the run through a script", () => {
  const script = scriptOf([4, 2], [1, 3]);

  it("goes on by itself where it need not wait, and ends after the last block", () => {
    expect(advance(script, beginningOf(script, 0), 5, { rate: 1, waits: false })).toEqual({ moment: { block: 1, at: 5, clip: 1 }, stopsAt: null });
    const end = advance(script, beginningOf(script, 1), 60, { rate: 1.5, waits: true });
    expect(end).toEqual({ moment: { block: 1, at: 7, clip: 2 }, stopsAt: "end" });
    expect([isAtEnd(script, end.moment), isAtEnd(script, beginningOf(script, 1))]).toEqual([true, false]);
  });

  it("rests on the last word while the clip goes on", () => {
    expect(advance(script, beginningOf(script, 0), 3, { rate: 1.5, waits: true }).moment).toEqual({ block: 0, at: 2, clip: 3 });
  });

  it("jumps to where the clip would be at the present pace", () => {
    expect(momentAt(script, 5.5, 1.5)).toEqual({ block: 1, at: 5.5, clip: 1 });
    expect(momentAt(script, 4, 1.5)).toEqual({ block: 1, at: 4, clip: 0 });
    expect(momentAt(script, 3, 1)).toEqual({ block: 0, at: 2, clip: 3 });
  });

  it("of an empty script is over at once", () => {
    const none = scriptOf();
    expect(isAtEnd(none, momentAt(none, 0, 1))).toBe(true);
    expect(advance(none, momentAt(none, 0, 1), 1, { rate: 1, waits: true })).toEqual({ moment: { block: 0, at: 0, clip: 0 }, stopsAt: "end" });
  });
});
