import { describe, expect, it } from "vitest";
import { fitPace, speak, spokenForm } from "../../shared/speech";
import recorded from "./speech-durations.json";
import { PACE_SENTENCES, PASSAGES } from "./speech-passages";
import { secondsHeard, spokenAloud, VOICES } from "./synthesiser";

const TEXTS = [...PACE_SENTENCES, ...PASSAGES.map(({ written, said = written }) => said)];
const DURATIONS = new Map(Object.entries(recorded.seconds));
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
const percent = (share: number): string => `${(share * 100).toFixed(1)} %`;

/** How far a count is off on every passage, once its one factor is fitted on the three pace sentences. */
function errorsOf(count: (written: string) => number, heard: readonly number[]): number[] {
  const pace = PACE_SENTENCES.length;
  const factor = mean(heard.slice(0, pace)) / mean(PACE_SENTENCES.map(count));
  return PASSAGES.map(({ written }, at) => Math.abs((factor * count(written)) / (heard[pace + at] ?? Number.NaN) - 1));
}

describe(`passages nothing was fitted on, as spoken by ${recorded.synthesiser.replace(/:.*?:/, "")}`, () => {
  it.each(VOICES)("take our seconds within 4 % on average and 15 % at most: $voice at $rate", ({ voice, rate }) => {
    const heard = DURATIONS.get(`${voice} ${rate}`) ?? [];
    expect(heard).toHaveLength(TEXTS.length);
    const ours = errorsOf((written) => speak(written).seconds, heard);
    const words = errorsOf((written) => speak(written).words, heard);
    console.log(`${voice} ${rate}: seconds off by ${percent(mean(ours))}, at most ${percent(Math.max(...ours))}; counting words ${percent(mean(words))} and ${percent(Math.max(...words))}`);
    expect(mean(ours)).toBeLessThanOrEqual(0.04);
    expect(Math.max(...ours)).toBeLessThanOrEqual(0.15);
    expect(mean(ours)).toBeLessThan(mean(words) / 2);
  });

  it("read figures, units and set lines as a coach says them", () => {
    for (const { written, said = written } of PASSAGES) expect(spokenForm(written)).toBe(said);
  });
});

describe("lines that were read through, timed by what was spoken", () => {
  it.each(VOICES)("teach the pace of what comes next: $voice at $rate", ({ voice, rate }) => {
    const heard = (DURATIONS.get(`${voice} ${rate}`) ?? []).slice(PACE_SENTENCES.length);
    const learnt = 12;
    // At every third line the reader stopped for something else.
    const fit = fitPace(PASSAGES.slice(0, learnt).map(({ written }, index) => ({ text: written, seconds: (heard[index] ?? Number.NaN) + (index % 3 === 2 ? 12 : 0) })));
    const errors = PASSAGES.slice(learnt).map(({ written }, index) => speak(written, fit?.pace).seconds / (heard[learnt + index] ?? Number.NaN) - 1);
    console.log(`${voice} ${rate}: from read lines off by ${percent(mean(errors.map(Math.abs)))}, ${percent(Math.abs(mean(errors)))} in sum`);
    expect(fit).toMatchObject({ used: 8, left: 4 });
    expect(Math.abs(mean(errors))).toBeLessThan(0.05);
    expect(mean(errors.map(Math.abs))).toBeLessThanOrEqual(0.05);
  });
});

// Where no synthesiser can be had, the recorded durations above are all there is, and this says so.
describe("the synthesiser itself", () => {
  const voice = VOICES[1];
  const first = spokenAloud(TEXTS[0] ?? "", voice);
  if (first === null) console.log("not run here: no espeak-ng; the recorded durations stand in for it");

  it("takes the seconds that were recorded", () => {
    if (first === null) return expect(DURATIONS.size).toBe(VOICES.length);
    TEXTS.slice(0, 12).forEach((text, at) => {
      const sound = spokenAloud(text, voice);
      const expected = DURATIONS.get(`${voice.voice} ${voice.rate}`)?.[at] ?? Number.NaN;
      // Another version of it may speak a little differently.
      expect(sound === null ? Number.NaN : Math.abs(secondsHeard(sound) / expected - 1)).toBeLessThan(0.05);
    });
  });

  it("is heard at its own pace in its takes: what it says next is foretold within 6 %", () => {
    const recordedSeconds = DURATIONS.get(`${voice.voice} ${voice.rate}`) ?? [];
    const pace = fitPace(PASSAGES.slice(0, 3).map(({ written, said = written }, at) => {
      const sound = first === null ? null : spokenAloud(said, voice);
      return { text: written, seconds: sound === null ? (recordedSeconds[PACE_SENTENCES.length + at] ?? Number.NaN) : secondsHeard(sound) };
    }))?.pace;
    expect(pace).toBeTruthy();
    const foretold = PASSAGES.slice(3).reduce((sum, { written }) => sum + speak(written, pace).seconds, 0);
    const heard = recordedSeconds.slice(PACE_SENTENCES.length + 3).reduce((sum, seconds) => sum + seconds, 0);
    expect(Math.abs(foretold / heard - 1)).toBeLessThan(0.06);
  });
});
