import { bench, describe } from "vitest";
import { episodeClocks } from "../../shared/clocks";
import { applyEdits } from "../../shared/episode";
import { fresh, largeEpisode, middleSayLine, typing } from "./large-episode";

const episode = largeEpisode(60);
const quarter = largeEpisode(15);

/** Read the ratios: a quarter of the blocks should take about a quarter of the time, and one edited line far less. */
describe("both clocks", () => {
  const line = middleSayLine(episode);
  const typed = typing(line.text);
  let edited = episode;
  episodeClocks(episode);

  bench("of 60 blocks after one edited line", () => {
    edited = applyEdits(edited, [{ type: "set-line", line: line.id, fields: { text: typed() } }]);
    episodeClocks(edited);
  });
  bench("of 15 blocks", () => void episodeClocks(fresh(quarter)));
  bench("of 60 blocks", () => void episodeClocks(fresh(episode)));
});
