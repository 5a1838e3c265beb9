import { bench, describe } from "vitest";
import { checkEpisode } from "../../shared/checks";
import { episodeClocks } from "../../shared/clocks";
import { applyEdits, countingIds, type Episode } from "../../shared/episode";
import { fresh, largeEpisode, middleSayLine, typing } from "./large-episode";

const newId = countingIds("remedy-");
const check = (episode: Episode): void => void checkEpisode({ episode, clocks: episodeClocks(episode), now: "2027-03-01T09:00:00Z", newId });

const episode = largeEpisode(60);
const words = episode.blocks.flatMap(({ lines }) => lines).filter(({ kind }) => kind === "say").flatMap(({ text }) => text.split(" ")).length;

/** Read the ratio: how much of a full check one keystroke costs. Both compute the clocks first, as the sheet does. */
describe(`checking ${episode.blocks.length} blocks with ${words} spoken words`, () => {
  const line = middleSayLine(episode);
  const typed = typing(line.text);
  let edited = episode;
  check(episode);

  bench("after one edited line", () => {
    edited = applyEdits(edited, [{ type: "set-line", line: line.id, fields: { text: typed() } }]);
    check(edited);
  });
  bench("in full", () => check(fresh(episode)), { iterations: 3, warmupIterations: 1 });
});

/** Read the ratio over the number of blocks: twenty times the blocks should cost no more than about twenty times the time. */
describe("a full check grows with the blocks", () => {
  for (const blocks of [10, 50, 200]) {
    const each = largeEpisode(blocks);
    check(each);
    bench(`${blocks} blocks`, () => check(fresh(each)), { iterations: 3, warmupIterations: 1 });
  }
});
