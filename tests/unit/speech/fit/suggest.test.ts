import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { applyEdits, countingIds, emptyBlock, emptyEpisode, linesOf, newLine, type Block, type Edit } from "../../../../shared/episode";
import { blockFit, DEFAULT_PACE, editsToFit } from "../../../../shared/speech";

const newId = countingIds("s-");
/** A bench press two seconds long, so that its words are over. */
const block = (...says: string[]): Block =>
  emptyBlock(newId, "exercise", { title: "Bench press", clipSeconds: 2, lines: [newLine(newId, "cue", "Press the bar over the shoulders"), ...says.map((text) => newLine(newId, "say", text))] });
const after = (one: Block, edits: readonly Edit[]): string[] => {
  const [left] = applyEdits(emptyEpisode(newId, { blocks: [one] }), edits).blocks;
  return left ? linesOf(left, "say").map(({ text }) => text) : expect.fail("no block");
};
const touched = (one: Block): string[] => blockFit(one, DEFAULT_PACE).suggestions.filter(({ edits }) => edits.length > 0).map(({ sentence }) => sentence);

describe("what protects people", () => {
  it("is no repetition of its opposite", () => {
    expect(touched(block("Lock the elbows hard at the top. Press up. Do not lock the elbows hard at the top."))).toEqual([]);
    expect(touched(block("Do not lock the elbows hard at the top. Press up. Lock the elbows hard at the top."))).toEqual([]);
  });

  it.each([
    "Never do this alone.", "Do not bounce.", "Never jerk it.", "Don’t rush.", "You won't need music.", "Avoid music.", "Have a friend nearby, or ask someone.", "Stop when you feel odd.", "Careful with that.",
    "If in doubt, call a doctor.", "A spotter is worth gold.", "If it goes numb, call a friend.", "Without music, please.", "No music.", "That is too much.", "Beware of traffic.",
  ])("%j is not off the cue", (sentence) => {
    expect(touched(block(`Press the bar up. ${sentence}`))).not.toContain(sentence);
  });

  it("keeps its tail, and its padding", () => {
    expect(touched(block("Lower the bar slowly all the way down, but never bounce it off the ribs."))).toEqual([]);
    expect(touched(block("Keep the bar over the shoulders, which is not easy."))).toEqual([]);
    expect(touched(block("Just lower the bar and don't bounce it."))).toEqual([]);
  });

  it("stays whole across a breath mark", () => {
    expect(touched(block("Press the bar up. Do not, ever, / drop it like music. / Press again."))).toEqual([]);
  });

  it("is not met in place of the sentence that is meant", () => {
    const one = block("Never just press the bar up. just press the bar up.");
    const [filler] = blockFit(one, DEFAULT_PACE).suggestions.filter(({ reason }) => reason === "filler");
    expect(after(one, filler?.edits ?? [])).toEqual(["Never just press the bar up. Press the bar up."]);
  });

  it("is in no edit, whatever is written", () => {
    const CARE = /(?<![\p{L}'’])(?:not|no|never|don['’]t|avoid|without|alone|stop|careful|pain|spotter|doctor)(?![\p{L}'’])/giu;
    const careIn = (texts: readonly string[]): string[] => texts.flatMap((text) => text.match(CARE) ?? []).map((word) => word.toLowerCase()).sort();
    const piece = fc.constantFrom(
      "Press the bar up.", "Do not press the bar up.", "lower it slowly", "but never bounce it.", "Never jerk it.", "What I want you to do is", "just", "press the bar", "because", "it doesn't hurt.", ", which",
      "stop", "alone.", "Call a doctor.", "My neighbour bought a bicycle.", "/", "don’t", "don't", "avoid", "without", "Careful.", "pain", "a spotter", "You know,", "so that", "No music.", ".", "lock the elbows hard at the top.",
    );
    fc.assert(fc.property(fc.array(fc.array(piece, { minLength: 1, maxLength: 10 }), { minLength: 1, maxLength: 3 }), (lines) => {
      const one = block(...lines.map((words) => words.join(" ")));
      const before = careIn(linesOf(one, "say").map(({ text }) => text));
      for (const { edits } of blockFit(one, DEFAULT_PACE).suggestions) expect(careIn(after(one, edits))).toEqual(before);
      expect(careIn(after(one, editsToFit(one, DEFAULT_PACE)))).toEqual(before);
    }), { numRuns: 300 });
  });
});

describe("what is said twice", () => {
  it.each([
    ["Keep the left foot flat on the floor. Breathe. Keep the right foot flat on the floor."],
    ["Rest sixty seconds between the sets. Breathe. Rest ninety seconds between the sets."],
    ["Rest 60 seconds after hard sets. Breathe. Rest 90 seconds after hard sets."],
    ["Breathe in through your nose with the bar high. Press. Breathe out through your nose with the bar high."],
  ])("is not %j, which says two things", (text) => {
    expect(blockFit(block(text), DEFAULT_PACE).suggestions.map(({ reason }) => reason)).not.toContain("repeated");
  });
});
