import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countingIds, demoEpisode, emptyBlock, newLine, type Block } from "../../../../shared/episode";
import { DEFAULT_PACE, speak } from "../../../../shared/speech";
import { blockScreen, blockTimeline, placedLines, wordsOf } from "../../../../renderer/voiceover/timeline";

const id = countingIds("t");
const talk = (...texts: string[]): Block => emptyBlock(id, "talk", { lines: texts.map((text) => newLine(id, "say", text)) });
const only = (text: string) => placedLines(talk(text), DEFAULT_PACE)[0] ?? expect.fail();

describe("a line's words", () => {
  it("are the written ones, in order, breath marks left out", () => {
    expect(only("Sit back / and stand 3x8-10 @ 42.5 kg.").words.map(({ text }) => text)).toEqual(["Sit", "back", "and", "stand", "3x8-10", "@", "42.5", "kg."]);
  });

  it("fill exactly the seconds the engine counts, one after the other", () => {
    const words = fc.constantFrom("sit", "back,", "knees", "out.", "/", "3 x 8-10 @ 42.5 kg", "through", "RIR", "¿?", "日本語", "antirotation;", "—");
    fc.assert(fc.property(fc.array(words, { minLength: 1, maxLength: 40 }), (parts) => {
      const text = parts.join(" ");
      const line = only(text);
      expect(line.seconds).toBeCloseTo(speak(text).seconds);
      let at = 0;
      for (const word of line.words) {
        expect(word.from).toBeGreaterThanOrEqual(at - 1e-9);
        expect(word.to).toBeGreaterThanOrEqual(word.from);
        at = word.to;
      }
      expect(at).toBeLessThanOrEqual(line.seconds + 1e-6);
      if (line.words.length > 0 && line.seconds > 0) expect(line.stretches.at(-1)?.to).toBeCloseTo(line.seconds, 5);
    }));
  });

  it("leave a gap where a breath is marked, at a sentence's end, and only there where none is suggested", () => {
    const { breaths, words } = only("Sit back. Stand up / and breathe.");
    expect(breaths.map(({ afterWord, why }) => [words[afterWord]?.text, why])).toEqual([["back.", "sentence"], ["up", "marked"]]);
    expect(breaths.map(({ from, to }) => to - from)).toEqual([expect.closeTo(DEFAULT_PACE.sentenceSeconds), expect.closeTo(DEFAULT_PACE.breathSeconds)]);
    expect(words[2]?.from).toBeCloseTo((words[1]?.to ?? 0) + DEFAULT_PACE.sentenceSeconds);
  });

  it("are stretches between breaths without a gap or an overlap in words", () => {
    for (const line of demoEpisode.blocks.flatMap((block) => placedLines(block, DEFAULT_PACE))) {
      expect(line.stretches.flatMap(({ firstWord, endWord }) => Array.from({ length: endWord - firstWord }, (_, i) => firstWord + i))).toEqual(line.words.map((_, i) => i));
      expect(line.words.map(({ text }) => text)).toEqual(wordsOf(line.text));
    }
  });

  it("of a line that did not change are the same object", () => {
    const block = talk("Sit back.", "Stand up.");
    const changed = { ...block, lines: block.lines.map((line, i) => (i === 0 ? { ...line, text: "Sit back now." } : line)) };
    const [before, after] = [placedLines(block, DEFAULT_PACE), placedLines(changed, DEFAULT_PACE)];
    expect(after[1]).toBe(before[1]);
    expect(after[0]).not.toBe(before[0]);
  });
});

describe("a block's words on its clip", () => {
  const block = talk("Sit back and stand up.", "Breathe out on the way up.");
  const { spoken } = blockScreen(block, DEFAULT_PACE);

  it("begin a second in where there is room, sooner in a short clip, at once in one too short", () => {
    expect(blockTimeline(block, DEFAULT_PACE, 60).speechFrom).toBe(1);
    expect(blockTimeline(block, DEFAULT_PACE, spoken.seconds + 1).speechFrom).toBeCloseTo(0.5);
    expect(blockTimeline(block, DEFAULT_PACE, spoken.seconds - 1).speechFrom).toBe(0);
  });

  it("follow one another with a sentence's pause, and end when the engine says", () => {
    const { lines, speechFrom, speechTo } = blockTimeline(block, DEFAULT_PACE, 60);
    expect(lines[1]?.from).toBeCloseTo(1 + (lines[0]?.placed.seconds ?? 0) + DEFAULT_PACE.sentenceSeconds);
    expect(speechTo - speechFrom).toBeCloseTo(spoken.seconds);
  });

  it("that are not spoken to their end when the clip ends are counted", () => {
    expect(blockTimeline(block, DEFAULT_PACE, 60).hanging).toBe(0);
    expect(blockTimeline(block, DEFAULT_PACE, 0).hanging).toBe(11);
    const all = blockTimeline(block, DEFAULT_PACE, spoken.seconds);
    expect(all.hanging).toBe(0);
    const last = all.lines[1]?.placed.words.at(-1);
    const short = spoken.seconds - ((last?.to ?? 0) - (last?.from ?? 0)) / 2;
    expect(blockTimeline(block, DEFAULT_PACE, short).hanging).toBe(1);
  });

  it("move at once when a word before them is added", () => {
    const longer = { ...block, lines: block.lines.map((line, i) => (i === 0 ? { ...line, text: "Sit slowly back and stand up." } : line)) };
    const [before, after] = [blockTimeline(block, DEFAULT_PACE, 60), blockTimeline(longer, DEFAULT_PACE, 60)];
    expect((after.lines[1]?.from ?? 0) - (before.lines[1]?.from ?? 0)).toBeCloseTo(speak("Sit slowly back and stand up.").seconds - speak("Sit back and stand up.").seconds);
  });

  it("are none when nothing is said, and an empty line takes no time", () => {
    expect(blockTimeline(talk(), DEFAULT_PACE, 20)).toMatchObject({ lines: [], speechFrom: 0, speechTo: 0, hanging: 0 });
    const { lines } = blockTimeline(talk("One.", "", "Two."), DEFAULT_PACE, 20);
    expect(lines[1]?.from).toBe(lines[2]?.from);
  });
});
