import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readCaptions, writeSubrip, writeWebvtt, type Cue } from "../../../../shared/speech";

const cues: Cue[] = [{ start: 1, end: 3.5, text: "Carry heavy,\nwalk <light> & tall --> there." }, { start: 3600, end: 3602.25, text: "The end." }];

/** Times on the millisecond, in order, each caption after the one before; lines of visible words. */
const anyLine = (letters: fc.Arbitrary<string>) => fc.string({ unit: letters, minLength: 1, maxLength: 40 }).map((text) => text.replace(/\s+/g, " ").trim()).filter((text) => text !== "" && !/[\u200b\u200e\u200f\u2028\u2029\ufeff]/.test(text));
const anyCues = (letters: fc.Arbitrary<string>): fc.Arbitrary<Cue[]> =>
  fc.array(fc.record({ gap: fc.integer({ min: 0, max: 90_000 }), shown: fc.integer({ min: 1, max: 9000 }), lines: fc.array(anyLine(letters), { minLength: 1, maxLength: 2 }) }), { minLength: 1, maxLength: 30 }).map((parts) => {
    let at = 0;
    return parts.map(({ gap, shown, lines }) => {
      const start = at + gap;
      at = start + shown;
      return { start: start / 1000, end: at / 1000, text: lines.join("\n") };
    });
  });
const printable = fc.oneof(fc.constantFrom(..." abcXYZ0189.,:;!?'\"&<>/-–→½×éłß漢🙂"), fc.string({ unit: "grapheme", minLength: 1, maxLength: 1 }).filter((letter) => !/[\p{C}]/u.test(letter)));
/** SubRip has no escapes: a tag or an arrow in the words would be read as one. */
const withoutSigns = printable.filter((letter) => !/[<>{}&]/.test(letter));

describe("captions written", () => {
  it("as WebVTT: signs escaped, full stop before thousandths", () => {
    expect(writeWebvtt(cues)).toBe("WEBVTT\n\n1\n00:00:01.000 --> 00:00:03.500\nCarry heavy,\nwalk &lt;light&gt; &amp; tall --&gt; there.\n\n2\n01:00:00.000 --> 01:00:02.250\nThe end.\n");
  });

  it("as SubRip: comma before thousandths, an arrow in the words as a sign of its own", () => {
    expect(writeSubrip(cues)).toBe("1\n00:00:01,000 --> 00:00:03,500\nCarry heavy,\nwalk <light> & tall → there.\n\n2\n01:00:00,000 --> 01:00:02,250\nThe end.\n");
  });

  it("never end before they begin, hold no empty line and no caption without words", () => {
    const odd: Cue[] = [{ start: 5, end: 4, text: "a\n\n \nb\u0007c" }, { start: 6, end: 7, text: " \n" }];
    expect(writeSubrip(odd)).toBe("1\n00:00:05,000 --> 00:00:05,001\na\nb c\n");
    expect(writeWebvtt([])).toBe("WEBVTT\n");
    expect(writeSubrip([])).toBe("");
  });

  it("and read again are the same, as WebVTT with any signs and as SubRip", () => {
    fc.assert(fc.property(anyCues(printable), (given) => {
      expect(readCaptions(writeWebvtt(given))).toEqual({ format: "webvtt", cues: given, problems: [], asides: [] });
    }));
    fc.assert(fc.property(anyCues(withoutSigns), (given) => {
      expect(readCaptions(writeSubrip(given))).toEqual({ format: "subrip", cues: given, problems: [], asides: [] });
    }));
  });

  it("read with another program's line ends and a mark at the start are the same", () => {
    for (const text of [writeWebvtt(cues), writeSubrip(cues)]) {
      const plain = readCaptions(text).cues;
      expect(readCaptions(`\ufeff${text.replace(/\n/g, "\r\n")}`).cues).toEqual(plain);
      expect(readCaptions(text.replace(/\n/g, "\r")).cues).toEqual(plain);
    }
  });
});

describe("reading", () => {
  it("never throws, and loses no word, whatever the order of times, words and empty lines", () => {
    // Words are followed by an empty line here: right above times they would be the caption's name.
    const part = fc.constantFrom("1", "", "00:00:01,000 --> 00:00:02,000", "00:05.000 --> 00:02.000", "now --> then 5", "word\n", "<b>word</b>\n", "0:05 word\n", "NOTE word\n");
    fc.assert(fc.property(fc.array(part, { maxLength: 40 }), fc.constantFrom("\n", "\r\n"), (parts, end) => {
      const text = ["00:00:00,000 --> 00:00:01,000", ...parts].join("\n").replace(/\n/g, end);
      const { cues, asides } = readCaptions(text);
      const kept = [...cues, ...asides].map((one) => one.text).join(" ");
      expect(kept.match(/word/g)?.length ?? 0).toBe(text.match(/word/g)?.length ?? 0);
      cues.forEach(({ start, end: until, text: words }) => {
        expect(until).toBeGreaterThan(start);
        expect(words).not.toBe("");
      });
    }));
  });
});
