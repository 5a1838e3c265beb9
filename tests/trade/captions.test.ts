/** Our captions, read by parsers we did not write: the WebVTT validator of the W3C's community, and a SubRip reader. */
import SubRip from "srt-parser-2";
import { WebVTTParser } from "webvtt-parser";
import { describe, expect, it } from "vitest";
import { demoEpisode, type Episode } from "../../shared/episode";
import { captionLimitsOf, captionsOf } from "../../shared/exports/captions";
import { captionFaults, readCaptions, writeSubrip, writeWebvtt, type Cue } from "../../shared/speech";

const ODD: Cue[] = [
  { start: 0, end: 1.234, text: "Heels < toes & hips > knees" },
  { start: 1.234, end: 3, text: "3 x 8-10 at 42.5 kg\n- and \"rest\" --> there" },
  { start: 3600.001, end: 360_000, text: "NOTE this is said\n00:01 is said too" },
];
const captions = captionsOf(demoEpisode).cues;

describe("WebVTT of ours (W3C WebVTT)", () => {
  it.each([["the demo", captions], ["odd signs and long times", ODD], ["nothing", []]])("is valid and means the same to an independent parser: %s", (_, cues) => {
    const { cues: parsed, errors } = new WebVTTParser().parse(writeWebvtt(cues), "metadata");
    expect(errors).toEqual([]);
    expect(parsed.map(({ startTime, endTime }) => [startTime, endTime])).toEqual(cues.map(({ start, end }) => [expect.closeTo(start, 6), expect.closeTo(end, 6)]));
    const words = parsed.map(({ text }) => text.replace(/&lt;/g, "<").replace(/&gt;/g, ">").replace(/&amp;/g, "&"));
    expect(words).toEqual(cues.map(({ text }) => text));
  });

  it("holds only cue text its grammar allows", () => {
    for (const cues of [captions, ODD]) expect(new WebVTTParser().parse(writeWebvtt(cues), "captions").errors).toEqual([]);
  });

  it("is refused by that parser where we say so too, so the check can fail", () => {
    const broken = "WEBVTT\n\n00:00:05.000 --> 00:00:04.000\nBackwards\n";
    expect(new WebVTTParser().parse(broken, "metadata").errors.length).toBeGreaterThan(0);
    expect(readCaptions(broken).problems).toHaveLength(1);
  });
});

describe("WebVTT of others", () => {
  // T: cue settings, voices, classes, timestamps inside, comments, regions and styles, as the specification's own examples show them; words are ours.
  const file = "WEBVTT - Ours\n\nSTYLE\n::cue(b) { color: lime }\n\nREGION\nid:side\nwidth:40%\n\nNOTE A comment\nof two lines\n\nintro\n00:00.500 --> 00:02.000 position:10%,line-left align:left size:35%\n<v Coach>Walk <i>tall</i></v>\n\n00:02.000 --> 00:04.000 region:side vertical:rl\n<00:00:02.500><c.first.loud>Breathe</c> out &amp; rest&nbsp;now\n";
  it("is read with the times and words the independent parser finds", () => {
    const theirs = new WebVTTParser().parse(file, "metadata").cues;
    const ours = readCaptions(file).cues;
    expect(ours.map(({ start, end }) => [start, end])).toEqual(theirs.map(({ startTime, endTime }) => [startTime, endTime]));
    expect(ours.map(({ text }) => text)).toEqual(["Walk tall", "Breathe out & rest now"]);
  });
});

describe("SubRip of ours (no published standard)", () => {
  it.each([["the demo", captions], ["odd signs and long times", ODD.slice(0, 2)]])("means the same to an independent parser: %s", (_, cues) => {
    const parsed = new SubRip().fromSrt(writeSubrip(cues));
    expect(parsed.map(({ startSeconds, endSeconds }) => [startSeconds, endSeconds])).toEqual(cues.map(({ start, end }) => [expect.closeTo(start, 3), expect.closeTo(end, 3)]));
    expect(parsed.map(({ text }) => text)).toEqual(cues.map(({ text }) => text.replace("-->", "→")));
    expect(parsed.map(({ id }) => id)).toEqual(cues.map((_cue, at) => String(at + 1)));
  });
});

describe("limits of captions", () => {
  // BBC Subtitle Guidelines (two lines; 160-180 words a minute; gaps of none or a second); 42 characters, 1 and 7 seconds: captioning guide of the Enhancing Audio Description project.
  const unhurried: Episode = { ...demoEpisode, blocks: demoEpisode.blocks.map((block) => ({ ...block, clipSeconds: block.clipSeconds === 17 ? 40 : block.clipSeconds })) };
  const { cues } = captionsOf(unhurried);

  it("are all kept for the demo once its words fit their clips", () => {
    expect(captionFaults(cues, captionLimitsOf(unhurried))).toEqual([]);
    for (const { start, end, text } of cues) {
      const lines = text.split("\n");
      expect(lines.length).toBeLessThanOrEqual(2);
      lines.forEach((line) => expect(line.length).toBeLessThanOrEqual(42));
      expect(end - start).toBeGreaterThanOrEqual(0.9985);
      expect(end - start).toBeLessThanOrEqual(7.0015);
      expect(text.replace("\n", "").length / (end - start)).toBeLessThanOrEqual(17.1);
    }
  });

  it("leave no gap, or one that can be seen: two frames or at least a second", () => {
    cues.slice(1).forEach(({ start }, at) => {
      const gap = start - (cues[at]?.end ?? 0);
      expect(gap > 0.06 && (gap < 0.075 || gap >= 0.998)).toBe(true);
    });
  });

  it("do not let a caption hang on for more than a second and a half after its words", () => {
    // BBC Subtitle Guidelines, 5.2; words end at most this long before their caption, unless the reader needs the time.
    const said = captionsOf(unhurried).cues;
    expect(said.every(({ start, end, text }) => end - start <= Math.max(1.5 + text.length / 9, 7.001))).toBe(true);
  });
});
