import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { applyEdits, countingIds, demoEpisode, emptyBlock, emptyEpisode, linesOf, newLine, type Block, type BlockKind, type Edit, type LineKind } from "../../../shared/episode";
import { blockFit, breathEdits, breaths, DEFAULT_PACE, editsToFit, speak, withBreathMarks, type CutReason } from "../../../shared/speech";

const newId = countingIds("f-");
const block = (clipSeconds: number | null, lines: readonly (readonly [LineKind, string])[], kind: BlockKind = "exercise"): Block =>
  emptyBlock(newId, kind, { title: "Goblet squat", clipSeconds, lines: lines.map(([one, text]) => newLine(newId, one, text)) });
const after = (one: Block, edits: readonly Edit[]): Block => applyEdits(emptyEpisode(newId, { blocks: [one] }), edits).blocks[0] ?? expect.fail("no block");
const said = (one: Block): string[] => linesOf(one, "say").map(({ text }) => text);
const proposed = (one: Block): [CutReason, string, string][] => blockFit(one, DEFAULT_PACE).suggestions.map(({ reason, sentence, becomes }) => [reason, sentence, becomes]);

const SQUAT = block(12, [
  ["cue", "Sit between the heels"],
  ["say", "Sit down between your heels. / My neighbour bought a green bicycle yesterday."],
  ["say", "What I want you to do is push the floor away. Sit right down between both heels."],
  ["say", "Stop if you feel pain in the knee and ask a physician."],
]);

describe("a block's words against its clip", () => {
  it("are over or under, never both", () => {
    expect(blockFit(SQUAT, DEFAULT_PACE)).toMatchObject({ clipSeconds: 12, underSeconds: 0, quiet: [] });
    expect(blockFit(SQUAT, DEFAULT_PACE).overSeconds).toBeCloseTo(blockFit(SQUAT, DEFAULT_PACE).spoken.seconds - 12, 9);
    expect(blockFit({ ...SQUAT, clipSeconds: 60 }, DEFAULT_PACE)).toMatchObject({ overSeconds: 0, wordsToCut: 0 });
    expect(blockFit({ ...SQUAT, clipSeconds: null }, DEFAULT_PACE)).toMatchObject({ overSeconds: 0, underSeconds: 0, quiet: [] });
  });

  it("propose what is said twice, then padding, then what is off the cue", () => {
    expect(proposed(SQUAT).slice(0, 3)).toEqual([
      ["repeated", "Sit right down between both heels.", ""],
      ["filler", "What I want you to do is push the floor away.", "Push the floor away."],
      ["off cue", "My neighbour bought a green bicycle yesterday.", ""],
    ]);
  });

  it("never propose a warning or a disclosure", () => {
    const careful = block(2, [["cue", "Sit"], ["say", "Stop if you feel pain in the knee and ask a physician. This is a paid advert for the invented Fernhill Oats, honestly."]]);
    expect(proposed(careful)).toEqual([]);
    expect(editsToFit(careful, DEFAULT_PACE)).toEqual([]);
  });

  it("judge nothing as off the cue where there is no cue", () => {
    expect(proposed(block(3, [["say", "My neighbour bought a bicycle. It is green."]], "opening")).map(([reason]) => reason)).not.toContain("off cue");
  });

  it("propose the last clause of the longest stretch without a pause", () => {
    const one = block(3, [["cue", "Sit"], ["say", "Keep your elbows inside your knees all the way down because they push the hips apart. Sit tall."]]);
    expect(proposed(one)).toContainEqual(["longest without a pause", "Keep your elbows inside your knees all the way down because they push the hips apart.", "Keep your elbows inside your knees all the way down."]);
  });

  it("say so where only the coach can find shorter words", () => {
    const one = block(2, [["cue", "Sit"], ["say", "Keep both of your elbows inside both of your knees all the way down."]]);
    const [only] = blockFit(one, DEFAULT_PACE).suggestions;
    expect(only).toMatchObject({ reason: "longest without a pause", edits: [], savesSeconds: 0 });
    expect(only?.why).toMatch(/^The longest stretch without a pause, [\d.]+ s\. Say it in fewer words\.$/);
  });

  it("save what they say they save", () => {
    const before = blockFit(SQUAT, DEFAULT_PACE).spoken;
    for (const { edits, savesSeconds, savesWords } of blockFit(SQUAT, DEFAULT_PACE).suggestions.filter(({ edits: steps }) => steps.length > 0)) {
      const left = blockFit(after(SQUAT, edits), DEFAULT_PACE).spoken;
      expect(before.words - left.words).toBe(savesWords);
      expect(Math.abs(before.seconds - left.seconds - savesSeconds)).toBeLessThan(0.3);
    }
  });

  it("leave breath marks and the other sentences as they are", () => {
    const off = blockFit(SQUAT, DEFAULT_PACE).suggestions.find(({ reason }) => reason === "off cue");
    expect(said(after(SQUAT, off?.edits ?? []))[0]).toBe("Sit down between your heels.");
    const middle = block(1, [["cue", "Sit"], ["say", "Sit tall. / My neighbour bought a bicycle. / Breathe out."]]);
    const cut = blockFit(middle, DEFAULT_PACE).suggestions.find(({ reason }) => reason === "off cue");
    expect(said(after(middle, cut?.edits ?? []))).toEqual(["Sit tall. / Breathe out."]);
  });

  it("are cut one by one until they fit, and not further", () => {
    const { spoken } = blockFit(SQUAT, DEFAULT_PACE);
    const nearly = { ...SQUAT, clipSeconds: spoken.seconds - 0.5 };
    expect(blockFit(after(nearly, editsToFit(nearly, DEFAULT_PACE)), DEFAULT_PACE).overSeconds).toBe(0);
    expect(said(after(nearly, editsToFit(nearly, DEFAULT_PACE)))).toHaveLength(3);
    expect(editsToFit({ ...SQUAT, clipSeconds: 300 }, DEFAULT_PACE)).toEqual([]);
  });

  it("end, whatever is written", () => {
    const pieces = fc.constantFrom("Sit down.", "Sit down between the heels.", "/", "What I want you to do is", "really", "push the floor away, because it helps.", "12 kg", "My neighbour is green.", "...", "Stop if it hurts.");
    fc.assert(fc.property(fc.array(fc.array(pieces, { minLength: 1, maxLength: 8 }), { minLength: 1, maxLength: 4 }), (lines) => {
      const one = block(1, [["cue", "Sit"], ...lines.map((words) => ["say", words.join(" ")] as const)]);
      const cut = after(one, editsToFit(one, DEFAULT_PACE));
      expect(blockFit(cut, DEFAULT_PACE).spoken.seconds).toBeLessThanOrEqual(blockFit(one, DEFAULT_PACE).spoken.seconds + 1e-9);
    }), { numRuns: 200 });
  });
});

describe("silence", () => {
  it("adds up to the free seconds and lies round the words", () => {
    fc.assert(fc.property(fc.double({ min: 0, max: 120, noNaN: true }), (clipSeconds) => {
      const { underSeconds, quiet } = blockFit({ ...SQUAT, clipSeconds }, DEFAULT_PACE);
      expect(quiet.reduce((sum, { seconds }) => sum + seconds, 0)).toBeCloseTo(underSeconds, 6);
      expect(quiet.every(({ seconds }) => seconds > 0)).toBe(true);
    }));
  });

  it("stands before the first word, between the lines and, for the most part, after the last", () => {
    const { quiet } = blockFit({ ...SQUAT, clipSeconds: 90 }, DEFAULT_PACE);
    expect(quiet.map(({ after: line }) => line)).toEqual([null, ...linesOf(SQUAT, "say").map(({ id }) => id)]);
    expect(quiet.at(-1)?.seconds).toBeGreaterThan(quiet[1]?.seconds ?? Infinity);
  });

  it("is nowhere in a block without words", () => {
    expect(blockFit(block(20, [["cue", "Sit"]]), DEFAULT_PACE)).toMatchObject({ underSeconds: 20, quiet: [], suggestions: [] });
  });
});

describe("breath marks", () => {
  const LONG = "Keep the ribs over the hips and the bell close to the chest while you sit between the heels with your elbows inside the knees and your eyes on the wall";

  it("stand no further apart than a breath lasts", () => {
    const marked = withBreathMarks(LONG, DEFAULT_PACE, 5);
    expect(marked).toContain(" / ");
    for (const { seconds } of breaths(marked, DEFAULT_PACE, 60)) expect(seconds).toBeLessThanOrEqual(5);
  });

  it("leave no run of figures longer than a breath", () => {
    const marked = withBreathMarks(Array.from({ length: 40 }, (_, at) => `${10 + at}kg`).join(" "), DEFAULT_PACE);
    for (const { seconds } of breaths(marked, DEFAULT_PACE, 600)) expect(seconds).toBeLessThanOrEqual(6);
  });

  it("keep every word and are not set twice", () => {
    const words = fc.constantFrom("push", "the", "floor", "away,", "and", "stand", "tall.", "/", "10", "kg", "with", "slowly;", "shoulders");
    fc.assert(fc.property(fc.array(words, { maxLength: 60 }), (list) => {
      const marked = withBreathMarks(list.join(" "), DEFAULT_PACE, 3);
      const plain = (text: string): string[] => text.split(/\s+/).filter((word) => word !== "" && word !== "/");
      expect(plain(marked)).toEqual(plain(list.join(" ")));
      expect(withBreathMarks(marked, DEFAULT_PACE, 3)).toBe(marked);
    }));
  });

  it("are one edit for each line that needs some", () => {
    const one = block(null, [["say", LONG], ["say", "Sit tall."], ["cue", LONG]]);
    const edits = breathEdits(one, DEFAULT_PACE, 5);
    expect(edits).toHaveLength(1);
    expect(breathEdits(after(one, edits), DEFAULT_PACE, 5)).toEqual([]);
  });
});

describe("the demo episode", () => {
  it("has a fit for every block", () => {
    expect(demoEpisode.blocks.map((one) => blockFit(one, DEFAULT_PACE)).map(({ block: id }) => id)).toEqual(demoEpisode.blocks.map(({ id }) => id));
    expect(speak("").seconds).toBe(0);
  });
});
