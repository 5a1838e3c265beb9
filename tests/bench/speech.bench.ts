import { bench, describe } from "vitest";
import { demoEpisode } from "../../shared/episode";
import { breaths, heardSpeech, speak } from "../../shared/speech";

/** The demo's narration over and over, up to so many words. */
const NARRATION = demoEpisode.blocks.flatMap(({ lines }) => lines.filter(({ kind }) => kind === "say").map(({ text }) => text)).join(" ").split(/\s+/);
const narration = (words: number): string => Array.from({ length: words }, (_, at) => NARRATION[at % NARRATION.length] ?? "").join(" ");

/** Every line different in its figures, so that nothing is remembered from the line before. */
const fresh = (words: number, turn: number): string => `${narration(words)} ${turn} kg`;
const [some, many] = [3000, 6000].map(narration) as [string, string];

/** Least milliseconds each of some pieces of work takes, turn about, so that a busy computer slows all alike. */
function leastMilliseconds(works: readonly ((turn: number) => unknown)[]): number[] {
  const least = works.map(() => Infinity);
  for (let turn = 0; turn < 20; turn += 1) {
    works.forEach((work, at) => {
      const start = performance.now();
      work(turn);
      least[at] = Math.min(least[at] ?? Infinity, performance.now() - start);
    });
  }
  return least;
}

describe("seconds of speech", () => {
  bench("3,000 words", () => { speak(some); });
  bench("6,000 words", () => { speak(many); });
  bench("6,000 words cut into breaths", () => { breaths(many); });
  bench("one typed line", () => { speak("Keep the bell close, sit between the heels, and do 3x8-10 @ 22.5 kg."); });
});

describe("a recording", () => {
  const minute = Float32Array.from({ length: 48_000 * 60 }, (_, at) => Math.sin(at / 20) * (Math.floor(at / 48_000) % 3 === 0 ? 0.001 : 0.3));
  bench("one minute at 48 kHz", () => { heardSpeech(minute, 48_000); });
});

const [half = Number.NaN, whole = Number.NaN] = leastMilliseconds([3000, 6000].map((words) => (turn) => speak(fresh(words, turn))));
console.log(`speech: 6,000 words take ${whole.toFixed(1)} ms; twice the words take ${(whole / half).toFixed(2)} times as long (2 is linear)`);
