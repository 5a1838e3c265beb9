import { readFileSync, readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { captionsOf, readTranscript, scoreTranscript } from "../../corpus/imports/score";

const ROOT = new URL("../../corpus/imports/", import.meta.url).pathname;
const files = readdirSync(ROOT, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && entry.name !== "held-out")
  .flatMap((folder) => readdirSync(`${ROOT}${folder.name}`).filter((name) => name.endsWith(".txt")).map((name) => `${folder.name}/${name}`))
  .sort();
const scores = new Map(files.map((file) => [file, scoreTranscript(readFileSync(ROOT + file, "utf8"), file)]));

/** Milliseconds in which all of them are read on a busy machine. */
const READS_ALL = 600_000;

describe("transcripts of whole episodes, as captions of two to four seconds", () => {
  const inOrder = [...scores.values()].filter(({ orderRight }) => orderRight).length;
  const withParts = [...scores.values()].filter(({ partsRight }) => partsRight).length;

  // The readers have learned from these; what they make of new speech is told below.
  it("puts the exercises of most files in their order, and finds warm-up, cool-down and closing or tells them as missing", () => {
    expect(inOrder / files.length).toBeGreaterThanOrEqual(0.85);
    expect(withParts / files.length).toBeGreaterThanOrEqual(0.9);
  });

  it.each(files)("%s: the pace is within five percent", (file) => {
    expect(scores.get(file)?.paceError).toBeLessThan(0.05);
  });

  it.each(files)("%s: every word is in the draft or listed", (file) => {
    expect(scores.get(file)?.lost).toEqual([]);
  });

  it("gets most set schemes right", () => {
    const all = [...scores.values()];
    expect(all.reduce((sum, score) => sum + score.schemesRight, 0) / all.reduce((sum, score) => sum + score.schemes, 0)).toBeGreaterThanOrEqual(0.84);
  });

  it("does nearly as well when the captions show no silence shorter than two seconds", () => {
    const coarse = files.map((file) => scoreTranscript(readFileSync(ROOT + file, "utf8").replace(/\{([\d.]+)\}/g, (silence, seconds: string) => (Number(seconds) >= 2 ? silence : "")), file));
    expect(coarse.filter(({ orderRight }) => orderRight).length).toBeGreaterThanOrEqual(inOrder - 4);
    expect(coarse.reduce((sum, { schemesRight }) => sum + schemesRight, 0) / coarse.reduce((sum, { schemes }) => sum + schemes, 0)).toBeGreaterThanOrEqual(0.83);
    expect(coarse.flatMap(({ lost }) => lost)).toEqual([]);
  }, READS_ALL);

  it("holds an episode of a quarter of an hour", () => {
    const captions = captionsOf(readTranscript(readFileSync(`${ROOT}unseen2/f-fifteen-minutes.txt`, "utf8"))).vtt;
    const last = [...captions.matchAll(/--> (\d\d):(\d\d):(\d\d)/g)].at(-1);
    expect(Number(last?.[1]) * 60 + Number(last?.[2])).toBeGreaterThanOrEqual(15);
  });
});
