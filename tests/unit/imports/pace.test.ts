import { readFileSync, readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { countingIds } from "../../../shared/episode";
import { importText } from "../../../shared/imports";
import { measurePace } from "../../../shared/imports/pace";
import { readSource } from "../../../shared/imports/source/read-source";
import { readCaptions, type Cue } from "../../../shared/speech";
import { captionsOf, readTranscript } from "../../corpus/imports/score";

const ROOT = new URL("../../corpus/imports/", import.meta.url).pathname;
const transcripts = readdirSync(ROOT, { withFileTypes: true }).filter((entry) => entry.isDirectory())
  .flatMap(({ name }) => readdirSync(ROOT + name).map((file) => readTranscript(readFileSync(`${ROOT}${name}/${file}`, "utf8"))));

const clock = (seconds: number): string => `${String(Math.floor(seconds / 3600)).padStart(2, "0")}:${String(Math.floor(seconds / 60) % 60).padStart(2, "0")}:${(seconds % 60).toFixed(3).padStart(6, "0")}`;
const written = (cues: readonly Cue[]): string => `WEBVTT\n\n${cues.map(({ start, end, text }) => `${clock(start)} --> ${clock(end)}\n${text}\n`).join("\n")}`;

/** What caption makers do to the times of the same speech. */
const HABITS: Readonly<Record<string, (cues: readonly Cue[]) => string>> = {
  "stay until the next one comes, through every silence": (cues) => written(cues.map((cue, at) => ({ ...cue, end: cues[at + 1]?.start ?? cue.end }))),
  "stay a second longer where they can": (cues) => written(cues.map((cue, at) => ({ ...cue, end: Math.min(cues[at + 1]?.start ?? cue.end, cue.end + 1.2) }))),
  "come early and stay late": (cues) => written(cues.map((cue, at) => ({ ...cue, start: Math.max(cues[at - 1]?.end ?? 0, cue.start - 0.3), end: Math.min(cues[at + 1]?.start ?? cue.end, cue.end + 0.3) }))),
  "overlap with the next one": (cues) => written(cues.map((cue, at) => ({ ...cue, end: cues[at + 1]?.end ?? cue.end }))),
};

/** The pace of each transcript against the true one, in captions treated this way. */
const errors = (habit: (cues: readonly Cue[]) => string): number[] => transcripts.map((transcript) => {
  const { vtt, wordsPerMinute } = captionsOf(transcript);
  const source = readSource(habit(readCaptions(vtt).cues));
  const pace = source.ok ? measurePace(source.words, []) : null;
  return pace ? Math.abs(pace.wordsPerMinute - wordsPerMinute) / wordsPerMinute : 1;
});

describe("the pace of old captions", () => {
  // Where nearly every caption is followed by a silence, a second that each stays longer cannot be told from speech.
  it.each(Object.entries(HABITS))("is found within five percent for nine of ten when captions %s, and within a tenth for 97 of 100", (_, habit) => {
    const found = errors(habit);
    const within = (share: number): number => found.filter((error) => error < share).length / found.length;
    expect(within(0.05)).toBeGreaterThanOrEqual(0.9);
    expect(within(0.1)).toBeGreaterThanOrEqual(0.97);
  });

  it("is found within five percent on average when only whole seconds are written, within a tenth for 99 of 100 and never further off than a ninth", () => {
    const found = errors((cues) => cues.map(({ start, text }) => `${Math.floor(start / 60)}:${String(Math.floor(start % 60)).padStart(2, "0")} ${text}`).join("\n"));
    expect(found.reduce((sum, error) => sum + error, 0) / found.length).toBeLessThan(0.05);
    expect(found.filter((error) => error < 0.1).length / found.length).toBeGreaterThanOrEqual(0.99);
    expect(Math.max(...found)).toBeLessThan(1 / 9);
  });

  it("is not told without times, or for a few words", () => {
    const without = importText("okay first up planks three sets of thirty seconds and keep your back flat the whole time because that is the point of it and then we rest and do it all again until we are done with the three of them today", "", countingIds("i-"));
    const few = importText("WEBVTT\n\n00:01.000 --> 00:03.000\nfirst up planks\n", "a.vtt", countingIds("i-"));
    expect([without.ok && without.pace, few.ok && few.pace]).toEqual([null, null]);
  });

  it("comes with the figures the screen clock counts with", () => {
    const result = importText(captionsOf(transcripts[0] ?? { rate: 4, parts: {}, exercises: [], body: "" }).vtt, "a.vtt", countingIds("i-"));
    expect(result.ok && result.pace?.own?.syllablesPerSecond).toBeGreaterThan(2);
  });
});
