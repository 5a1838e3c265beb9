import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countingIds, demoEpisode, emptyBlock, newLine } from "../../../../../shared/episode";
import { DEFAULT_PACE } from "../../../../../shared/speech";
import { foldLine, rowCount, rowSecondsFor, type FoldSize } from "../../../../../renderer/places/speak/fold";
import { blockTimeline, placedLines } from "../../../../../renderer/voiceover/timeline";

const id = countingIds("f");
/** Letters eight pixels wide. */
const size: FoldSize = { rowSeconds: 5, width: 600, measure: (text) => text.length * 8 };
const place = (text: string) => placedLines(emptyBlock(id, "talk", { lines: [newLine(id, "say", text)] }), DEFAULT_PACE)[0] ?? expect.fail();

describe("a line folded into rows", () => {
  it("keeps every word once, in order, and never lets two touch", () => {
    const words = fc.constantFrom("sit", "back,", "straight", "up.", "/", "I", "Pneumonoultramicroscopicsilicovolcanoconiosis", "3 x 8");
    fc.assert(fc.property(fc.array(words, { maxLength: 60 }), fc.integer({ min: 40, max: 900 }), fc.double({ min: 0, max: 30, noNaN: true }), (parts, width, length) => {
      const line = place(parts.join(" "));
      const rows = foldLine(line, 1, length, 0, { ...size, width });
      expect(rows.flatMap((row) => row.words.map(({ index }) => index))).toEqual(line.words.map((_, i) => i));
      for (const row of rows) {
        let free = 0;
        for (const word of row.words) {
          expect(word.x).toBeGreaterThanOrEqual(free - 1e-9);
          free = word.x + size.measure(word.text);
        }
      }
    }));
  });

  it("sets a word where it is spoken when letters leave room", () => {
    const line = place("Sit, then stand, then rest.");
    const [row] = foldLine(line, 2, 60, 0, { ...size, measure: () => 1 });
    expect(row?.words.map(({ x }) => x)).toEqual(line.words.map(({ from }) => expect.closeTo((from * 600) / 5) as number));
  });

  it("marks the clip's end once, where it lies, and what lies behind it", () => {
    const line = place("Same weight for every set, and look at the floor in front of you while you breathe out slowly on the way up again.");
    const rows = foldLine(line, 0, 6, 0, size);
    expect(rows.map(({ end }) => end && end.x)).toEqual([null, expect.closeTo(120), ...rows.slice(2).map(() => null)]);
    expect(rows[0]?.over).toBeNull();
    expect(rows[1]?.over).toEqual({ x: expect.closeTo(120), width: expect.any(Number) });
    expect(rows.flatMap(({ words }) => words).filter(({ hangs }) => hangs).map(({ text }) => text)).toEqual(line.words.filter(({ to }) => to > 6.1).map(({ text }) => text));
  });

  it("keeps every place to the last digit when the line only moves in time, so that nothing of it is drawn again", () => {
    const line = place("Sit, then stand, then rest. Go on at 42.5 kg, and slowly.");
    const placesAt = (from: number) => foldLine(line, from, 600, 0, size).map(({ words, speech, breaths }) => ({ words, speech, breaths }));
    for (const from of [0.1, 1 / 3, 2.7, 19.83]) expect(placesAt(from)).toEqual(placesAt(0));
  });

  describe("with room to stay quiet", () => {
    const line = place("Sit. Stand.");
    const small = (): number => 20;
    const quietOf = (quiet: number, measure = small) => foldLine(line, 0, 60, 0, { ...size, measure }, quiet).map((row) => row.quiet);
    const scale = size.width / size.rowSeconds;

    it("draws it after the last word at its length, with its words beside the words that are said", () => {
      const [room] = quietOf(2);
      expect(room?.x).toBeCloseTo(line.seconds * scale, 2);
      expect(room?.width).toBeCloseTo(2 * scale, 2);
      expect(room?.words).toBe("room for 2 s of quiet");
      expect(room?.isBelow).toBe(false);
      expect(room?.wordsX ?? 0).toBeGreaterThan(room?.x ?? Infinity);
    });

    it("never leaves the row, and puts its words below where they have no room", () => {
      const [room] = quietOf(300, (text?: string) => (text?.startsWith("room") ? 5000 : 20));
      expect((room?.x ?? 0) + (room?.width ?? 0)).toBeCloseTo(size.width, 2);
      expect(room?.isBelow).toBe(true);
    });

    it("stands in the last row alone, and says nothing of less than a second", () => {
      const long = place("Breathe out on the way up and in on the way down. ".repeat(8).trim());
      const rows = foldLine(long, 0, 300, 0, { ...size, measure: small }, 3).map((row) => row.quiet !== null);
      expect(rows.length).toBeGreaterThan(2);
      expect(rows.indexOf(true)).toBe(rows.length - 1);
      expect(quietOf(0.9)).toEqual([null]);
      expect(quietOf(0)).toEqual([null]);
    });
  });

  it("draws speech only where there is speech, at its length", () => {
    const line = place("Sit. Stand.");
    const bars = foldLine(line, 0, 60, 0, size).flatMap(({ speech }) => speech);
    expect(bars.reduce((sum, { width }) => sum + width, 0)).toBeCloseTo(((line.seconds - DEFAULT_PACE.sentenceSeconds) * 600) / 5);
  });

  it("marks whole fives of the clip's seconds, but not where the line's own time stands", () => {
    const line = place("Same weight for every set, and look at the floor in front of you while you breathe out.");
    expect(foldLine(line, 10, 60, 0, size).flatMap(({ marks }) => marks.map(({ seconds }) => seconds))).toEqual([15]);
    expect(foldLine(line, 9, 60, 0, size).flatMap(({ marks }) => marks.map(({ seconds }) => seconds))).toEqual([10, 15]);
  });

  describe("below the ruler", () => {
    /** Figures and words there, each with its edges; letters are as wide as the styles draw them. */
    const below = (rows: ReturnType<typeof foldLine>) => rows.map(({ marks, end, quiet }) => [
      ...marks.map(({ seconds, wordsX }) => ({ words: `mark ${seconds}`, left: wordsX, right: wordsX + size.measure("0:05") * (0.75 / 1.03125) })),
      ...(end ? [{ words: end.words, left: end.wordsX, right: end.wordsX + size.measure(end.words) * (0.75 / 1.03125) }] : []),
      ...(quiet?.isBelow && quiet.wordsX !== null ? [{ words: quiet.words, left: quiet.wordsX, right: quiet.wordsX + size.measure(quiet.words) * (0.84375 / 1.03125) }] : []),
    ]);
    const says = (rows: ReturnType<typeof foldLine>): string[][] => below(rows).map((row) => row.map(({ words }) => words));

    it("a mark gives way to the clip's end, and to room to be quiet", () => {
      const long = place("Same weight for every set, and look at the floor in front of you while you breathe out slowly on the way up again.");
      expect(says(foldLine(long, 3, 10, 0, size)).flat()).toEqual(["mark 5", "10 s, clip ends"]);
      const short = place("Sit back and stand up again, all the way.");
      expect(says(foldLine(short, 1, 300, 0, { ...size, width: 300 }, 44)).flat()).toEqual(["room for 44 s of quiet"]);
    });

    it("the clip's end stands left of itself where the row is over, and nothing stands on anything else", () => {
      const long = place("Same weight for every set, and look at the floor in front of you while you breathe out slowly on the way up again.");
      const rows = foldLine(long, 0, 5, 0, size);
      expect(rows[0]?.end).toEqual({ x: 600, words: "5 s, clip ends", wordsX: expect.any(Number) });
      expect(below(rows)[0]?.[0]?.right).toBeLessThan(600);
      const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
      fc.assert(fc.property(double(0, 30), double(0, 60), double(0, 60), fc.integer({ min: 2, max: 12 }), fc.integer({ min: 320, max: 900 }), (from, rest, quiet, rowSeconds, width) => {
        // There is room to be quiet only before the clip ends.
        const length = quiet < 1 ? rest : from + long.seconds + quiet + rest / 10;
        for (const row of below(foldLine(long, from, length, length, { ...size, rowSeconds, width }, quiet))) {
          const sorted = [...row].sort((a, b) => a.left - b.left);
          sorted.forEach(({ left, right, words }, i) => {
            expect(left, words).toBeGreaterThanOrEqual(0);
            expect(sorted[i + 1]?.left ?? Infinity, `${words} and ${sorted[i + 1]?.words}`).toBeGreaterThanOrEqual(right);
          });
        }
      }));
    });
  });

  it("keeps a breath that would help clear of the words on both sides", () => {
    const line = place("Breathe out as the weight goes up and let the ribs sink down again while the whole foot stays flat on the floor and the knees travel in line with the toes all the way to the top of the lift");
    expect(line.breaths.map(({ why }) => why)).toContain("suggested");
    for (const width of [300, 450, 600, 900]) {
      for (const { words, breaths } of foldLine(line, 0, 60, 0, { ...size, width })) {
        for (const { afterWord, x } of breaths) {
          const place = words.findIndex(({ index }) => index === afterWord);
          const [word, next] = [words[place] ?? expect.fail(), words[place + 1]];
          expect(x).toBeGreaterThanOrEqual(word.x + size.measure(word.text));
          expect(next?.x ?? Infinity).toBeGreaterThanOrEqual(x + size.measure("(/)"));
        }
      }
    }
  });

  it("has as many rows as are counted beforehand", () => {
    for (const block of demoEpisode.blocks) {
      for (const { placed, from } of blockTimeline(block, DEFAULT_PACE, 30).lines) {
        expect(foldLine(placed, from, 30, from + placed.seconds + 2, size)).toHaveLength(rowCount(placed, from, from + placed.seconds + 2, size.rowSeconds));
      }
    }
  });
});

describe("the seconds of a row", () => {
  it.each([[650, 3.6, 16, 5], [650, 5, 16, 3], [650, 3.6, 21, 3], [10, 3.6, 16, 2], [9000, 3.6, 16, 12]])("%d px wide at %d syllables a second and letters of %d px are %d", (width, rate, rem, rowSeconds) => {
    expect(rowSecondsFor(width, rate, rem)).toBe(rowSeconds);
  });
});
