import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readCaptions } from "../../../../shared/speech";

const cue = (start: number, end: number, text: string) => ({ start, end, text });

describe("captions read from WebVTT", () => {
  it("takes words and times, and leaves settings, tags, styles, regions and identifiers out", () => {
    const read = readCaptions(`WEBVTT Episode 7
Kind: captions
Language: en

STYLE
::cue { color: white }

REGION
id:low

NOTE Spoken by
Odalys

opening
00:01.000 --> 00:03.500 line:90% align:center
<v Odalys>Carry <b>heavy</b>, <00:00:02.000><c.loud>walk</c> light &amp; tall.
Second &lt;line&gt;

2
01:00:00.000 --> 01:00:02.250
The end.
`);
    expect(read.format).toBe("webvtt");
    expect(read.cues).toEqual([cue(1, 3.5, "Carry heavy, walk light & tall.\nSecond <line>"), cue(3600, 3602.25, "The end.")]);
    expect(read.problems).toEqual([]);
    expect(read.asides).toEqual([{ line: 11, kind: "comment", text: "Spoken by\nOdalys" }]);
  });

  it("reads a file whose head and first caption are not parted", () => {
    expect(readCaptions("WEBVTT\n00:00.000 --> 00:01.000\nHello").cues).toEqual([cue(0, 1, "Hello")]);
    expect(readCaptions("WEBVTT\n1\n00:00.000 --> 00:01.000\nHello").cues).toEqual([cue(0, 1, "Hello")]);
  });

  it("says that a file holds no captions", () => {
    expect(readCaptions("WEBVTT\n\n")).toMatchObject({ format: "webvtt", cues: [], problems: [{ line: 1, sentence: "The file holds no captions." }] });
  });
});

describe("captions read from SubRip", () => {
  it("reads numbers, commas, tags and placing, with a mark at the start and CRLF", () => {
    const read = readCaptions("\ufeff1\r\n00:00:01,000 --> 00:00:02,500\r\n<i>Three sets</i>\r\nof {\\an8}eight\r\n\r\n2\r\n00:00:03,000 --> 00:00:04,000 X1:10 X2:20\r\n<font color=\"#ffffff\">Rest.</font>\r\n");
    expect(read).toEqual({ format: "subrip", cues: [cue(1, 2.5, "Three sets\nof eight"), cue(3, 4, "Rest.")], problems: [], asides: [] });
  });

  it("keeps words after an empty line with their caption, and a number that is said", () => {
    const read = readCaptions("1\n00:00:01,000 --> 00:00:02,000\nCount down\n\n3\n\n2\n00:00:03,000 --> 00:00:04,000\n10\n");
    expect(read.cues).toEqual([cue(1, 2, "Count down\n3"), cue(3, 4, "10")]);
    expect(read.problems.map(({ line }) => line)).toEqual([5]);
  });

  it("keeps words right above the next times, which only a number may be left out", () => {
    const read = readCaptions("1\n00:00:01,000 --> 00:00:02,000\nHello\n\nworld\n00:00:03,000 --> 00:00:04,000\nAgain\n\n 3 \n00:00:05,000 --> 00:00:06,000\nBye");
    expect(read.cues.map(({ text }) => text)).toEqual(["Hello\nworld", "Again", "Bye"]);
    expect(read.problems.map(({ line }) => line)).toEqual([5]);
    expect(readCaptions("Made at home\n00:00:01,000 --> 00:00:02,000\nOne").asides).toEqual([{ line: 1, kind: "untimed", text: "Made at home" }]);
  });

  it("loses no word, whatever stands where", () => {
    const line = fc.constantFrom("00:00:01,000 --> 00:00:02,000", "00:00:03,000 --> 00:00:05,000", "", "", "1", "hello", "world", "stand tall", "NOTE that");
    const wordsIn = (text: string): string[] => text.match(/\p{L}+/gu) ?? [];
    fc.assert(fc.property(fc.array(line, { maxLength: 16 }), (lines) => {
      const { cues, asides, format } = readCaptions(lines.join("\n"));
      if (format === "subrip") expect([...asides, ...cues].flatMap(({ text }) => wordsIn(text))).toEqual(wordsIn(lines.join("\n")));
    }));
  });

  it("reads captions without numbers and without empty lines between them", () => {
    const read = readCaptions("00:00:01,000 --> 00:00:02,000\nOne\n00:00:02,000 --> 00:00:03,000\nTwo");
    expect(read.cues).toEqual([cue(1, 2, "One"), cue(2, 3, "Two")]);
  });

  it("keeps words that stand before the first times", () => {
    expect(readCaptions("Made at home\n\n1\n00:00:01,000 --> 00:00:02,000\nOne").asides).toEqual([{ line: 1, kind: "untimed", text: "Made at home" }]);
  });
});

describe("captions with bad times", () => {
  it("keeps overlapping captions as they are and says so", () => {
    const read = readCaptions("1\n00:00:01,000 --> 00:00:04,000\nOne\n\n2\n00:00:03,000 --> 00:00:05,000\nTwo");
    expect(read.cues).toEqual([cue(1, 4, "One"), cue(3, 5, "Two")]);
    expect(read.problems).toEqual([{ line: 6, sentence: "Line 6: the caption begins at 0:03.0 while the one above is shown until 0:04.0." }]);
  });

  it("keeps the order of the file where times go back, as in two parts put together", () => {
    const read = readCaptions("1\n00:00:10,000 --> 00:00:12,000\nOne\n\n1\n00:00:00,000 --> 00:00:02,000\nTwo");
    expect(read.cues.map(({ text }) => text)).toEqual(["One", "Two"]);
    expect(read.problems[0]?.sentence).toBe("Line 6: the times go back from 0:10.0 to 0:00.0; the order of the file was kept.");
  });

  it("gives a caption that ends before it begins an end of its own", () => {
    const read = readCaptions("1\n00:00:05,000 --> 00:00:04,000\nOne two three\n\n2\n00:00:09,000 --> 00:00:10,000\nFour");
    expect(read.cues[0]?.start).toBe(5);
    expect(read.cues[0]?.end).toBeGreaterThan(5);
    expect(read.cues[0]?.end).toBeLessThanOrEqual(9);
    expect(read.problems).toHaveLength(1);
  });

  it("understands sloppy times and says so; keeps words whose times cannot be read", () => {
    const read = readCaptions("1\n0:00:01 --> 0:00:02,5\nOne\n\n2\nsoon --> later 3\nTwo\n\n3\n00:00:06,000 --> 00:00:07,000\nThree");
    expect(read.cues.map(({ text }) => text)).toEqual(["One", "Two", "Three"]);
    expect(read.cues[1]?.start).toBe(2.5);
    expect(read.problems.map(({ line }) => line)).toEqual([2, 6]);
  });

  it("counts what happens all the time instead of saying it each time", () => {
    const text = Array.from({ length: 40 }, (_, i) => `${i}\n00:00:${String(i).padStart(2, "0")},000 --> 00:00:59,000\nWord`).join("\n\n");
    const { problems } = readCaptions(text);
    expect(problems).toHaveLength(6);
    expect(problems.at(-1)?.sentence).toBe("34 more captions begin while the one above is still shown.");
  });
});

describe("plain lines with times", () => {
  it.each([
    ["0:05 Hello there\n0:07 Again", [cue(5, 7, "Hello there")]],
    ["[00:05] Hello there\n[00:07] Again", [cue(5, 7, "Hello there")]],
    ["0:05 - 0:06 Hello there\n0:07 Again", [cue(5, 6, "Hello there")]],
    ["(0:00:05.5): Hello there\n(0:00:07) Again", [cue(5.5, 7, "Hello there")]],
    ["0:05\nHello\nthere\n0:07\nAgain", [cue(5, 7, "Hello\nthere")]],
    ["5.0\t6.5\tHello there\n7\t8\tAgain", [cue(5, 6.5, "Hello there")]],
  ])("reads %j", (text, first) => {
    const read = readCaptions(text);
    expect(read.format).toBe("timed lines");
    expect(read.cues.slice(0, 1)).toEqual(first);
    expect(read.cues).toHaveLength(2);
  });

  it("does not let words last through a long silence", () => {
    const [first] = readCaptions("0:05 Hello there\n1:30 Again").cues;
    expect(first?.end).toBeLessThan(10);
  });
});

describe("files that are no captions", () => {
  it.each([
    ["", "The file is empty."],
    ["\ufeff \r\n ", "The file is empty."],
    ["\u0000\u0001\u0002PNG\u0000\u0000", "The file is not text, so it holds no captions that can be read."],
    ["Just some notes.\nAnd more.", "The file holds no times, so it is no captions."],
  ])("%j is told in a sentence", (text, sentence) => {
    expect(readCaptions(text)).toEqual({ format: "none", cues: [], problems: [{ line: 1, sentence }], asides: [] });
  });
});
