import { bench, describe } from "vitest";
import { countingIds, emptyBlock, emptyEpisode, newLine, type Episode } from "../../shared/episode";
import { captionsOf } from "../../shared/exports";
import { readCaptions, writeSubrip, writeWebvtt, type Cue } from "../../shared/speech";

const SENTENCES = [
  "Lie chest down on a bench set at about thirty degrees, and let the weights hang from straight arms.",
  "3x8-10 @ 22.5 kg, three seconds down on every one, and rest for ninety seconds.",
  "If your neck feels it more than your back, look at the floor.",
  "Walk as if late, but polite, and watch the lane: people cross it without looking.",
];

/** A script of so many words, forty blocks long; other words each time it is asked for, so that nothing is remembered. */
function scriptOf(words: number): Episode {
  const newId = countingIds(`bench-${words}-`);
  const blocks = Array.from({ length: 40 }, (_, at) => {
    const lines: string[] = [];
    for (let said = 0, i = at; said < words / 40; i += 1) {
      const sentence = SENTENCES[i % SENTENCES.length] ?? "";
      lines.push(sentence);
      said += sentence.split(" ").length;
    }
    return emptyBlock(newId, "talk", { title: `Block ${at}`, lines: lines.map((text) => newLine(newId, "say", text)) });
  });
  return emptyEpisode(newId, { title: "Bench", blocks });
}

const cuesOf = (count: number): Cue[] => Array.from({ length: count }, (_, at) => ({ start: at * 3, end: at * 3 + 2.9, text: SENTENCES[at % SENTENCES.length] ?? "" }));
const quarterHour = writeWebvtt(cuesOf(300));
const fiveMegabytes = writeSubrip(cuesOf(42_000));
const tenMegabytes = writeSubrip(cuesOf(84_000));

describe("captions built from a script; twice the words should take twice the time", () => {
  bench("3,000 words", () => void captionsOf(scriptOf(3000)), { iterations: 5, warmupIterations: 1, time: 0 });
  bench("6,000 words", () => void captionsOf(scriptOf(6000)), { iterations: 5, warmupIterations: 1, time: 0 });
});

describe("captions read; twice the file should take twice the time", () => {
  bench("a quarter of an hour", () => void readCaptions(quarterHour), { iterations: 10, warmupIterations: 1, time: 0 });
  bench("5 MB", () => void readCaptions(fiveMegabytes), { iterations: 3, warmupIterations: 1, time: 0 });
  bench("10 MB", () => void readCaptions(tenMegabytes), { iterations: 3, warmupIterations: 1, time: 0 });
});
