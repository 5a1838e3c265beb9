import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { episodeClocks } from "../../../../shared/clocks";
import { countingIds, demoEpisode, emptyBlock, emptyEpisode, newLine, type Block, type Episode } from "../../../../shared/episode";
import { captionLimitsOf, captionsOf, captionsVtt } from "../../../../shared/exports/captions";
import { spelledForReader } from "../../../../shared/exports/captions/reader-spelling";
import { CAPTION_LIMITS, DEFAULT_PACE, UPRIGHT_LIMITS, captionFaults, charactersIn, speak } from "../../../../shared/speech";

const newId = countingIds("c-");
const block = (says: readonly string[], fields: Partial<Block> = {}): Block =>
  emptyBlock(newId, "exercise", { title: "Press", lines: says.map((text) => newLine(newId, "say", text)), ...fields });
const episode = (...blocks: Block[]): Episode => emptyEpisode(newId, { title: "Short", blocks });
const textsOf = (of: Episode): string[] => captionsOf(of).cues.map(({ text }) => text);

const VOCABULARY = ["the", "a", "press", "and", "heels", "down", "with", "your", "shoulder", "slowly", "to", "42.5", "kg", "3", "x", "8-10", "but", "elbows", "anti-rotation", "breathe", "it", "is", "not", "gastrocnemius", "ten", "reps", "/", "forty-two", "kilos"];
const sentence = fc.tuple(fc.array(fc.constantFrom(...VOCABULARY), { minLength: 1, maxLength: 60 }), fc.constantFrom(".", "?", ",", "", "!")).map(([words, mark]) => words.join(" ") + mark);
const line = fc.array(sentence, { minLength: 1, maxLength: 6 }).map((sentences) => sentences.join(" "));

describe("captions of an episode", () => {
  it("say every word once and in order, within every limit, whatever the script", () => {
    fc.assert(fc.property(fc.array(fc.array(line, { maxLength: 3 }), { minLength: 1, maxLength: 4 }), (blocks) => {
      const made = episode(...blocks.map((says) => block(says)));
      const { cues, notes } = captionsOf(made);
      const spoken = blocks.flat().filter((text) => speak(text).words > 0);
      expect(cues.flatMap(({ text }) => text.split(/\s/)).join(" ")).toBe(spoken.map((text) => spelledForReader(text).split(" ").filter((word) => word !== "/" && word !== "").join(" ")).join(" "));
      expect(captionFaults(cues).filter(({ kind }) => kind !== "too fast")).toEqual([]);
      cues.forEach((cue) => expect(Math.max(...cue.text.split("\n").map(charactersIn))).toBeLessThanOrEqual(42));
      expect(notes.filter((note) => note.includes("hurried"))).toEqual([]);
    }), { numRuns: 150 });
  });

  it("keep every limit for the demo but where its words do not fit the clip", () => {
    const { cues, notes } = captionsOf(demoEpisode);
    const hurried = demoEpisode.blocks.slice(0, 4).reduce((sum, { clipSeconds }) => sum + (clipSeconds ?? 0), 0);
    const faults = captionFaults(cues, captionLimitsOf(demoEpisode)).filter(({ cue }) => (cues[cue]?.start ?? 0) < hurried || (cues[cue]?.start ?? 0) >= hurried + 17);
    expect(faults).toEqual([]);
    expect(notes[0]).toMatch(/^Goblet squat: the words take \d+ s longer than the clip; its captions are hurried to fit\.$/);
  });

  it("begin after the picture's lead, and each block's words on its own clip", () => {
    const { cues } = captionsOf(episode(block(["Hello there, and welcome."], { clipSeconds: 20 }), block([], { clipSeconds: 10 }), block(["Now we press."], { clipSeconds: 8 })));
    expect(cues.map(({ start }) => start)).toEqual([1, 31]);
  });

  it("move with a clip's length: what follows is later, the clip's own words stay", () => {
    const at = (clipSeconds: number) => captionsOf(episode(block(["Hello there, and welcome."], { clipSeconds }), block(["Now we press."], { clipSeconds: 8 }))).cues.map(({ start }) => start);
    expect(at(20)).toEqual([1, 21]);
    expect(at(35.5)).toEqual([1, 36.5]);
  });

  it("hurry words that do not fit, so that they never reach into the next clip", () => {
    const long = "Press up and slightly away, and let the bar move on its arc. Then lower it slowly, all the way.";
    const { cues, notes } = captionsOf(episode(block([long], { clipSeconds: 3 }), block(["Rest."], { clipSeconds: 10 })));
    expect(cues.filter(({ start }) => start < 3).every(({ end }) => end < 4)).toBe(true);
    expect(cues.at(-1)?.start).toBe(4);
    expect(notes[0]).toMatch(/^Press: the words take \d s longer/);
    expect(notes[1]).toMatch(/characters a second, at most 17 can be read/);
  });

  describe("on clips of 0 seconds", () => {
    const TEXT = "Press up and slightly away, and let the bar move on its arc. Then lower it slowly, all the way.";

    it("take the seconds their words need, as without a clip, and say so", () => {
      const at = (clipSeconds: number | null) => captionsOf(episode(block([TEXT], { clipSeconds }), block(["Rest."], { clipSeconds: 10 })));
      const { cues, notes } = at(0);
      expect(cues).toEqual(at(null).cues);
      expect(captionFaults(cues)).toEqual([]);
      expect(notes).toEqual([`Press: a clip of 0 s holds no words, so it counts as not set, and the block takes the ${Math.round(speak(TEXT).seconds + 2)} s of its words. Set the clip's length.`]);
    });

    it.each([0, 0.5, 20, null])("end where the finished video does: %j", (clipSeconds) => {
      const made = episode(block([TEXT], { clipSeconds }), block(["Rest."], { clipSeconds: 10 }));
      const [first] = episodeClocks(made).screen.blocks;
      expect(captionsOf(made).cues.find(({ text }) => text === "Rest.")?.start).toBeCloseTo((first?.seconds ?? 0) + 1, 3);
    });

    it("are hurried on a clip of half a second, which is set", () => {
      const { cues, notes } = captionsOf(episode(block([TEXT], { clipSeconds: 0.5 }), block(["Rest."], { clipSeconds: 10 })));
      expect(cues.slice(0, -1).map(({ text }) => text.replace(/\n/g, " ")).join(" ")).toBe(TEXT);
      expect(notes[0]).toMatch(/^Press: the words take \d s longer than the clip; its captions are hurried to fit\.$/);
    });

    it("say nothing where nothing is said", () => {
      const { cues, notes } = captionsOf(episode(block([], { clipSeconds: 0 }), block(["Rest."], { clipSeconds: 10 })));
      expect([cues.map(({ start }) => start), notes]).toEqual([[1], []]);
    });

    it("keep every word and every limit, one or several in a row", () => {
      fc.assert(fc.property(fc.array(fc.tuple(fc.array(line, { maxLength: 2 }), fc.constantFrom(0, 0, null)), { minLength: 1, maxLength: 5 }), (blocks) => {
        const of = (clip: (seconds: number | null) => number | null) => captionsOf(episode(...blocks.map(([says, clipSeconds]) => block(says, { clipSeconds: clip(clipSeconds) }))));
        const { cues } = of((seconds) => seconds);
        expect(captionFaults(cues).filter(({ kind }) => kind !== "too fast")).toEqual([]);
        expect(cues.map(({ text }) => text)).toEqual(of(() => null).cues.map(({ text }) => text));
      }), { numRuns: 100 });
    });
  });

  it("follow measured times where a line was read and timed", () => {
    const made = episode(block(["Hello there.", "And welcome."], { clipSeconds: 30 }));
    const [first, second] = made.blocks[0]?.lines ?? [];
    const { cues } = captionsOf(made, { measured: new Map([[first?.id ?? "", { from: 2.5, seconds: 2 }], [second?.id ?? "", { from: 12, seconds: 3 }]]) });
    expect(cues.map(({ start }) => start)).toEqual([2.5, 12]);
    expect(cues.map(({ end }) => end)).toEqual([5, 15.5]);
  });

  describe("timed by takes", () => {
    const TEXTS = ["Press up and slightly away.", "Let the bar move on its arc.", "Then lower it slowly, all the way."];
    const startsOf = (of: Episode, takes: readonly (number | null)[]) => {
      const lines = of.blocks.flatMap(({ lines: own }) => own);
      const measured = new Map(takes.flatMap((seconds, at) => (seconds === null ? [] : [[lines[at]?.id ?? "", { seconds }] as const])));
      return captionsOf(of, { measured });
    };
    const wide = () => episode(block(TEXTS, { clipSeconds: 40 }));
    const counted = TEXTS.map((text) => speak(text).seconds);

    it("a line takes as long as its take and what follows is later, the others as counted", () => {
      const { cues } = startsOf(wide(), [null, 6, null]);
      const [first = 0, , last = 0] = counted;
      const second = 1 + first + DEFAULT_PACE.sentenceSeconds;
      expect(cues.map(({ text }) => text.replace("\n", " "))).toEqual(TEXTS);
      expect(cues[1]?.start).toBeCloseTo(second, 2);
      expect(cues[2]?.start).toBeCloseTo(second + 6 + DEFAULT_PACE.sentenceSeconds, 2);
      expect(cues[2]?.end ?? 0).toBeGreaterThanOrEqual(second + 6.6 + last - 0.01);
    });

    it("make a block without a clip as long as they need, and what comes after it later", () => {
      const two = () => episode(block([TEXTS[0] ?? ""]), block([TEXTS[1] ?? ""]));
      const taken = startsOf(two(), [9, null]).cues;
      expect([taken[0]?.start, taken.at(-1)?.start]).toEqual([1, 12]);
      const plain = captionsOf(two()).cues;
      expect(plain[1]?.start).toBeCloseTo((counted[0] ?? 0) + 3, 2);
    });

    it("are hurried like counted words where the takes are longer than the clip", () => {
      const { cues, notes } = startsOf(episode(block(TEXTS, { clipSeconds: 10 }), block(["Rest."], { clipSeconds: 5 })), [8, 8, 8]);
      expect(notes).toContain("Press: the words take 15 s longer than the clip; its captions are hurried to fit.");
      expect(cues.at(-1)?.start).toBe(11);
    });

    it.each<[readonly (number | null)[], string | null]>([
      [[6, null, null], "1 of 3 lines is timed by its take, the others at the pace."], [[6, 5, null], "2 of 3 lines are timed by their takes, the other at the pace."],
      [[6, 5, 4], "All 3 lines are timed by their takes."], [[null, null, null], null],
    ])("%j says so in a note", (takes, sentence) => {
      const { notes } = startsOf(wide(), takes);
      expect(notes.filter((note) => note.includes("timed"))).toEqual(sentence === null ? [] : [sentence]);
    });

    it("keep the words and every limit of time order, whatever the takes", () => {
      fc.assert(fc.property(fc.array(fc.option(fc.double({ min: 0.2, max: 20, noNaN: true })), { minLength: 3, maxLength: 3 }), fc.option(fc.integer({ min: 4, max: 60 })), (takes, clipSeconds) => {
        const { cues } = startsOf(episode(block(TEXTS, { clipSeconds }), block(["Rest."], { clipSeconds: 5 })), takes);
        expect(cues.map(({ text }) => text.replace(/\n/g, " ")).join(" ")).toBe([...TEXTS, "Rest."].join(" "));
        cues.forEach((cue, at) => {
          expect(cue.end).toBeGreaterThan(cue.start);
          expect(cue.start).toBeGreaterThanOrEqual(cues[at - 1]?.end ?? 0);
        });
      }), { numRuns: 100 });
    });
  });

  it("say words as the series says them, at a speaker's own pace too", () => {
    const made = episode(block(["Squeeze the psoas, then the psoas again."], { clipSeconds: 30 }), block(["Rest."]));
    const drawn = { ...made, series: { ...made.series, pronunciations: [{ written: "psoas", said: "so ass of great and enormous length" }] } };
    const own = { ...DEFAULT_PACE, syllablesPerSecond: 3 };
    const lastOf = (of: Episode) => captionsOf({ ...of, blocks: of.blocks.slice(0, 1) }, { pace: own }).cues.at(-1)?.end ?? 0;
    expect(lastOf(drawn)).toBeGreaterThan(lastOf(made) + 3);
  });

  it("break where phrases end, and never between a figure and its unit", () => {
    expect(textsOf(episode(block(["Lie chest down on a bench set at about thirty degrees, and pull the elbows back."])))).toEqual(["Lie chest down on a bench set\nat about 30°, and pull the elbows back."]);
    expect(textsOf(episode(block(["Go.", "Rest.", "Go."])))).toEqual(["Go. Rest. Go."]);
    for (const text of textsOf(episode(block(["Do three by eight for the whole of the next month at 42.5 kg and then rest for at least 90 s before you go."])))) {
      expect(text).not.toMatch(/42\.5$|90$|42\.5\n|90\n|\ba\n|\bthe\n/);
    }
  });

  it("are spelled for the reader", () => {
    expect(textsOf(episode(block(["3x8 @ 42.5kg, tempo three one one zero."])))).toEqual(["3 x 8 at 42.5 kg, tempo 3-1-1-0."]);
  });

  it("are slower for a slower voice, and shorter in the line for an upright picture", () => {
    const made = episode(block(["Forty metres there and back, and walk as if late, but polite."]));
    const lengthOf = (syllablesPerSecond: number) => captionsOf(made, { pace: { ...DEFAULT_PACE, syllablesPerSecond } }).cues.at(-1)?.end ?? 0;
    expect(lengthOf(2)).toBeGreaterThan(lengthOf(4));
    expect(captionLimitsOf(demoEpisode).lineCharacters).toBe(CAPTION_LIMITS.lineCharacters);
    const upright = { ...made, video: { ...made.video, aspect: "9:16" as const } };
    expect(captionLimitsOf(upright).lineCharacters).toBe(UPRIGHT_LIMITS.lineCharacters);
    expect(captionsOf(upright).cues.every(({ text }) => text.split("\n").every((part) => part.length <= 25))).toBe(true);
  });

  it("cut a word that fits no line, and lose none of it", () => {
    const word = "Donaudampfschifffahrts".repeat(5);
    expect(textsOf(episode(block([word]))).join("").replace(/\s/g, "")).toBe(word);
  });

  it("of an episode without words are empty, and the coach is told", async () => {
    expect(captionsOf(emptyEpisode(newId))).toEqual({ cues: [], notes: [] });
    const none = new Uint8Array();
    const { bytes, notes } = await captionsVtt.render(episode(block(["  "])), { paper: "a4", units: "kg", date: "2027-03-04", pace: DEFAULT_PACE, fonts: { regular: none, semibold: none, bold: none, italic: none, fallback: none } });
    expect(new TextDecoder().decode(bytes)).toBe("WEBVTT\n");
    expect(notes).toEqual(["Nothing is said in this episode, so the captions are empty."]);
  });
});
