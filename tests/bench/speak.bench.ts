import { bench, describe } from "vitest";
import { foldLine } from "../../renderer/places/speak/fold";
import { blockTimeline } from "../../renderer/voiceover/timeline";
import { applyEdits, type Episode } from "../../shared/episode";
import { shotSeconds } from "../../shared/filming";
import { DEFAULT_PACE, screenClock } from "../../shared/speech";
import { fresh, largeEpisode, middleSayLine, typing } from "./large-episode";

const SIZE = { rowSeconds: 4, width: 560, measure: (text: string): number => text.length * 8 };

/** As the screens do it: a block that is the same object is not set again. */
const known = new WeakSet<Episode["blocks"][number]>();

/** Everything the rulers show, reckoned. */
function rulers(episode: Episode): void {
  const clocks = screenClock(episode, shotSeconds, DEFAULT_PACE).blocks;
  episode.blocks.forEach((block, at) => {
    if (known.has(block)) return;
    known.add(block);
    const { lines, length } = blockTimeline(block, DEFAULT_PACE, clocks[at]?.seconds ?? 0);
    for (const { placed, from } of lines) foldLine(placed, from, length, 0, SIZE);
  });
}

/** One more letter in the middle of an episode, each time other words. */
function letterIn(blocks: number): () => void {
  let episode = fresh(largeEpisode(blocks));
  const line = middleSayLine(episode);
  const typed = typing(line.text);
  rulers(episode);
  return () => {
    episode = applyEdits(episode, [{ type: "set-line", line: line.id, fields: { text: typed() } }]);
    rulers(episode);
  };
}

describe("a letter typed in Speak", () => {
  bench("in 15 blocks", letterIn(15));
  bench("in 60 blocks", letterIn(60));
  bench("the rulers of 60 blocks from nothing", () => rulers(fresh(largeEpisode(60))));
});

/** Turn about, so that a busy computer slows both alike. */
function middleMilliseconds(works: readonly (() => void)[]): number[] {
  const taken = works.map((): number[] => []);
  for (let turn = 0; turn < 200; turn += 1) {
    works.forEach((work, at) => {
      const start = performance.now();
      work();
      taken[at]?.push(performance.now() - start);
    });
  }
  return taken.map((times) => times.sort((a, b) => a - b)[100] ?? Number.NaN);
}

const [few = Number.NaN, many = Number.NaN] = middleMilliseconds([letterIn(15), letterIn(60)]);
console.log(`speak: a letter in 60 blocks takes ${many.toFixed(2)} ms to reckon, ${(many / few).toFixed(2)} times as long as in 15 (1 is a letter that costs for its own line alone)`);
