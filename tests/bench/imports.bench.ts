import { readFileSync } from "node:fs";
import { bench, describe } from "vitest";
import { countingIds } from "../../shared/episode";
import { importText } from "../../shared/imports";
import { captionsOf, readTranscript } from "../corpus/imports/score";

const transcript = readTranscript(readFileSync(new URL("../corpus/imports/unseen2/f-fifteen-minutes.txt", import.meta.url), "utf8"));
const times = (count: number): string => captionsOf({ ...transcript, body: Array.from({ length: count }, () => transcript.body).join("\n") }).vtt;
const [one, two, four] = [times(1), times(2), times(4)];

/** A reading takes seconds; a few tell enough. */
const FEW = { iterations: 3, time: 0, warmupIterations: 1, warmupTime: 0 };

/** Twice the words should take about twice the time. */
describe("import of captions", () => {
  bench("fifteen minutes, 1,400 words", () => void importText(one, "a.vtt", countingIds("i-")), FEW);
  bench("half an hour", () => void importText(two, "a.vtt", countingIds("i-")), FEW);
  bench("an hour", () => void importText(four, "a.vtt", countingIds("i-")), FEW);
});
