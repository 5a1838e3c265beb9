import { describe, expect, it } from "vitest";
import { DEFAULT_PACE, readability, readabilityOf, readingCounts, speak, syllablesOf } from "../../shared/speech";

/** An ordinary piece of narration, made up for this test: 375 words, with figures written as a coach writes them. */
const NARRATION = `
Today is a short day, and short days are where good habits are made. We have six exercises, about an hour, and nobody in a hurry. /
Before you touch a weight, walk for 5 min and let your shoulders hang. Then circle the ankles, the knees and the hips, ten times each, and breathe through the nose.
If something feels stiff, give it a little longer. If something hurts, leave it out today and ask a person who can look at it. /
The first exercise is the goblet squat. Hold the bell close to the chest, set the feet as wide as the shoulders, and sit down between the heels. Three seconds on the way down, a pause of one second, and up without bouncing.
We do 3 sets of 10 with 16 kg, and we rest for 90 s. The last two repetitions should be slow, but they should look like the first. If your heels come off the floor, put a small plate under them and carry on. /
The second exercise is the row. Lie chest down on the bench, let both arms hang, and drive the elbows towards the back pockets. Stop when the shoulder blades meet, and lower the weights as if they were full of water.
Do not lift the chest to finish a repetition. When you have to, the set is over, and that is fine. /
The third is the carry, and it is the simplest one. Pick up two heavy bells, stand tall, and walk for 40 m with quiet steps. Look ahead, keep the ribs over the hips, and talk to yourself if nobody else is there.
When the grip goes, put the weights down and rest. There is no prize for dropping them. /
Then we press, we hold the side of the body still against the cable, and we stretch what is tight. You will find every number below this video, together with a column for your own.
Start lighter than I do. Write down what you lifted, because next week we will add one repetition to every set, and you will want to know where you began.
Have a good week, and I will see you on Sunday morning for the long and hilly one.
`.trim().replace(/\n/g, " ");

describe("narration against published speaking rates", () => {
  const { seconds, words, syllables } = speak(NARRATION);

  it("is 375 words as said", () => {
    expect(words).toBe(375);
  });

  // 375 words take 150 s at 150 words a minute. Bands: instruction 110-130, audiobook 150-160 (Williams 1998, from memory),
  // conversation 120-150, lecture to learners 140 (Tauroza & Allison, Applied Linguistics 11, 1990, from memory).
  it("takes between 375/155 and 375/130 minutes: slower than an audiobook, quicker than a demonstration", () => {
    expect(seconds).toBeGreaterThan((375 / 155) * 60);
    expect(seconds).toBeLessThan((375 / 130) * 60);
  });

  // Syllables a second, pauses included: lecture 3.17, conversation 4.33 (same 1990 paper, from memory).
  it("is no quicker than conversation and about as quick as a lecture to learners", () => {
    expect(syllables / seconds).toBeLessThan(4.33);
    expect(syllables / seconds).toBeGreaterThan(3.17 * 0.85);
  });
});

describe("pauses", () => {
  // Worked with syllables of one length: 14 at 4.0 a second in two sentences, no comma, the pause at the end left out, 3.5 + 0.6 = 4.1 s.
  // Ours are of several lengths, so only about that.
  it("add 0.6 s between two sentences and none at the end", () => {
    const spoken = speak("Push the floor away and stand. Breathe at the top then repeat.", { ...DEFAULT_PACE, syllablesPerSecond: 4 });
    expect(spoken.syllables).toBe(14);
    expect(spoken.seconds).toBeGreaterThan(4.1 * 0.9);
    expect(spoken.seconds).toBeLessThan(4.1 * 1.1);
  });

  // 0.6 s at punctuation is judged most natural: Frontiers in Psychology 13:778018, 2022. Read pauses between sentences
  // run from 0.2 to 0.98 s for faster readers: Respectus Philologicus 37(42), 2020.
  it("stay within what readers do", () => {
    expect(DEFAULT_PACE.sentenceSeconds).toBe(0.6);
    for (const pause of [DEFAULT_PACE.commaSeconds, DEFAULT_PACE.breathSeconds, DEFAULT_PACE.sentenceSeconds]) {
      expect(pause).toBeGreaterThanOrEqual(0.2);
      expect(pause).toBeLessThanOrEqual(0.98);
    }
  });
});

describe("readability against published worked examples", () => {
  // Flesch 1948 and Kincaid et al. 1975; texts and scores from a public encyclopaedia article, reused in several test suites.
  it.each([
    ["The cat sat on the mat.", 1, 6, 6, 116.145, -1.45],
    ["This sentence, taken as a reading passage unto itself, is being used to prove a point.", 1, 16, 23, 68.983, 7.613],
    ["The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.", 1, 13, 24, 37.455, 11.265],
  ])("%s", (text, sentences, words, syllables, ease, grade) => {
    const score = readability({ sentences, words, syllables });
    expect(score?.ease).toBeCloseTo(ease, 2);
    expect(score?.grade).toBeCloseTo(grade, 2);
    expect(readingCounts(text)).toEqual({ sentences, words, syllables });
    expect(readabilityOf(text)?.ease).toBeCloseTo(ease, 2);
  });

  it.each([
    [5, 100, 140, 68.095, 8.73],
    [8, 120, 156, 81.63, 5.6],
  ])("%i sentences, %i words, %i syllables", (sentences, words, syllables, ease, grade) => {
    expect(readability({ sentences, words, syllables })?.ease).toBeCloseTo(ease, 3);
    expect(readability({ sentences, words, syllables })?.grade).toBeCloseTo(grade, 2);
  });

  it("gives no score for nothing", () => {
    expect(readability({ sentences: 0, words: 0, syllables: 0 })).toBeNull();
    expect(readability({ sentences: 1, words: 0, syllables: 0 })).toBeNull();
  });

  it("counts the caption example as published: 7 words, 8 syllables", () => {
    const text = "Push the floor away and stand tall.";
    expect(speak(text)).toMatchObject({ words: 7, syllables: 8 });
    expect(syllablesOf("away")).toBe(2);
  });
});
