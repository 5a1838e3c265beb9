import { describe, expect, it } from "vitest";
import { countingIds, demoEpisode, emptyBlock, emptyEpisode, newLine, type Block, type LineKind } from "../../../shared/episode";
import { DEFAULT_PACE, HANDLE_SECONDS, readabilityOf, readingCounts, screenClock, speak, type Pace, type Spoken } from "../../../shared/speech";

const newId = countingIds("t-");
const block = (clipSeconds: number | null, ...lines: (readonly [LineKind, string])[]): Block =>
  emptyBlock(newId, "talk", { clipSeconds, lines: lines.map(([kind, text]) => newLine(newId, kind, text)) });
const clock = (one: Block, shots = 0): ReturnType<typeof screenClock>["blocks"][number] | undefined =>
  screenClock(emptyEpisode(newId, { blocks: [one] }), () => shots).blocks[0];

const spoken = (one: Block, pace: Pace = DEFAULT_PACE): Spoken => screenClock(emptyEpisode(newId, { blocks: [one] }), () => 0, pace).blocks[0]?.spoken ?? expect.fail("no block");

const WORDS = "Push the floor away and stand tall.";

describe("the screen clock", () => {
  it("takes the clip's length once it is set", () => {
    expect(clock(block(20, ["say", WORDS]), 9)).toMatchObject({ seconds: 20, from: "clip", overSeconds: 0, wordsToCut: 0, shotSeconds: 9 });
  });

  it("takes the words and the handles around them before that", () => {
    expect(clock(block(null, ["say", WORDS]), 9)).toMatchObject({ seconds: speak(WORDS).seconds + HANDLE_SECONDS, from: "words", clipSeconds: null });
  });

  it("takes the shots when nothing is said, else nothing", () => {
    expect(clock(block(null, ["cue", WORDS]), 9)).toMatchObject({ seconds: 9, from: "shots" });
    expect(clock(block(null, ["say", " / "]))).toMatchObject({ seconds: 0, from: "nothing" });
  });

  it("counts an empty clip as a clip, but as not set where words are said", () => {
    expect(clock(block(0, ["cue", WORDS]), 9)).toMatchObject({ seconds: 0, from: "clip", clipSeconds: 0 });
    expect(clock(block(0, ["say", WORDS]))).toEqual({ ...clock(block(null, ["say", WORDS])), block: expect.any(String) as string });
    expect(clock(block(0.5, ["say", WORDS]))).toMatchObject({ seconds: 0.5, from: "clip", clipSeconds: 0.5 });
  });

  it("says how many words to cut, by the block's own seconds per word, rounded up", () => {
    const { seconds } = speak(WORDS);
    const one = clock(block(2, ["say", WORDS]));
    expect(one?.overSeconds).toBeCloseTo(seconds - 2, 9);
    expect(one?.wordsToCut).toBe(Math.ceil((seconds - 2) / (seconds / 7)));
  });

  it("takes lines that were read and timed as long as they took, and counts the others", () => {
    const one = block(12, ["say", WORDS], ["say", "And again."]);
    const [first, second] = one.lines;
    const of = (measured: ReadonlyMap<string, { readonly seconds: number }>) => screenClock(emptyEpisode(newId, { blocks: [one] }), () => 0, DEFAULT_PACE, measured).blocks[0];
    expect(of(new Map([[first?.id ?? "", { seconds: 11 }]]))?.spoken.seconds).toBeCloseTo(11 + DEFAULT_PACE.sentenceSeconds + speak("And again.").seconds, 9);
    const all = of(new Map([[first?.id ?? "", { seconds: 11 }], [second?.id ?? "", { seconds: 3 }]]));
    expect(all).toMatchObject({ overSeconds: 11 + 3 + DEFAULT_PACE.sentenceSeconds - 12, spoken: { words: 9 } });
    expect(of(new Map([["elsewhere", { seconds: 99 }]]))).toEqual(clock(one));
    expect(of(new Map())).toEqual(clock(one));
  });

  it("leaves a sentence's pause between say lines", () => {
    const two = spoken(block(null, ["say", WORDS], ["note", "x"], ["say", WORDS]));
    expect(two.seconds).toBeCloseTo(2 * speak(WORDS).seconds + DEFAULT_PACE.sentenceSeconds, 9);
    expect(two.words).toBe(14);
  });

  it("is the sum of its blocks, against the target", () => {
    const whole = screenClock(demoEpisode, () => 0);
    expect(whole.seconds).toBe(whole.blocks.reduce((sum, { seconds }) => sum + seconds, 0));
    expect(whole.targetSeconds).toBe(600);
    expect(whole.blocks.map(({ block: id }) => id)).toEqual(demoEpisode.blocks.map(({ id }) => id));
  });

  it("keeps what it knows of a block, and listens to another pace", () => {
    const one = block(null, ["say", WORDS]);
    expect(spoken(one)).toBe(spoken(one));
    expect(spoken(one, { ...DEFAULT_PACE, syllablesPerSecond: 2 }).seconds).toBeGreaterThan(spoken(one).seconds);
  });
});

describe("reading counts", () => {
  it("count a number as one word of one syllable, and no breath mark", () => {
    expect(readingCounts("Do 17 reps. / Rest.")).toEqual({ sentences: 2, words: 4, syllables: 4 });
  });

  it("give no score without words", () => {
    expect(readabilityOf("")).toBeNull();
    expect(readabilityOf(" / ...")).toBeNull();
  });
});
