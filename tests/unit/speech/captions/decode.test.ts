import { describe, expect, it } from "vitest";
import { decodeText, readCaptions } from "../../../../shared/speech";

const TEXT = "1\n00:00:01,000 --> 00:00:02,000\nŁódź café – ½\n";
const utf16 = (text: string, little: boolean): Uint8Array => Uint8Array.from(Array.from({ length: text.length }, (_, i) => text.charCodeAt(i)).flatMap((unit) => (little ? [unit & 255, unit >> 8] : [unit >> 8, unit & 255])));

describe("decodeText", () => {
  it.each([
    ["UTF-8", new TextEncoder().encode(TEXT)], ["UTF-8 with a mark", new TextEncoder().encode(`\ufeff${TEXT}`)],
    ["UTF-16, low byte first", utf16(TEXT, true)], ["the same with a mark", utf16(`\ufeff${TEXT}`, true)],
    ["UTF-16, high byte first", utf16(TEXT, false)], ["the same with its mark", utf16(`\ufeff${TEXT}`, false)],
  ])("reads %s", (_, bytes) => {
    expect(decodeText(bytes)).toEqual({ text: TEXT, problems: [] });
  });

  it("reads one-byte letters and says that it guessed", () => {
    const bytes = Uint8Array.from([...new TextEncoder().encode("1\n00:00:01,000 --> 00:00:02,000\ncaf"), 0xe9, 0x20, 0x96, 0x20, 0xbd]);
    const { text, problems } = decodeText(bytes);
    expect(readCaptions(text).cues[0]?.text).toBe("café – ½");
    expect(problems).toEqual([{ line: 1, sentence: "The file is not in UTF-8; its letters were read as Western European ones. Check names and accents." }]);
  });

  describe("of UTF-8 with a few broken bytes", () => {
    const utf8 = (text: string): number[] => [...new TextEncoder().encode(text)];
    const HEAD = "1\n00:00:01,000 --> 00:00:02,000\n";

    it("reads the rest as UTF-8 and says where and how many", () => {
      const { text, problems } = decodeText(Uint8Array.from([...utf8(`${HEAD}Élan – “café” `), 0xff, ...utf8("\nand on")]));
      expect(readCaptions(text).cues[0]?.text).toBe("Élan – “café” \ufffd\nand on");
      expect(problems).toEqual([{ line: 3, sentence: "The file is in UTF-8 but for one place, in line 3; what could not be read there stands as \"\ufffd\". Check that word." }]);
    });

    it("names the first lines and counts the others", () => {
      const lines = Array.from({ length: 7 }, () => [...utf8("é – ½ and quite a long line of plain words to go with it "), 0xe9, 0x0d, 0x0a]).flat();
      const { text, problems } = decodeText(Uint8Array.from([...utf8("Ł\r\n"), ...lines]));
      expect(text.match(/\ufffd/g)).toHaveLength(7);
      expect(problems).toEqual([{ line: 2, sentence: "The file is in UTF-8 but for 7 places, in lines 2, 3, 4, 5, 6 and 2 more; what could not be read there stands as \"\ufffd\". Check these words." }]);
      expect(decodeText(Uint8Array.from([...utf8("é – ½\n"), 0xff, 0x0a, 0xfe])).problems[0]?.sentence).toContain("2 places, in lines 2 and 3;");
    });

    it("reads a file cut off in the middle of a letter", () => {
      const whole = utf8(`${HEAD}Élan – café – ł`);
      const { text } = decodeText(Uint8Array.from(whole.slice(0, -1)));
      expect(readCaptions(text).cues[0]?.text).toBe("Élan – café – \ufffd");
    });

    it("reads Western letters as such where broken places are as many as letters of several bytes", () => {
      expect(decodeText(Uint8Array.from([...utf8(`${HEAD}caf`), 0xe9, 0x20, 0xc9, 0x85, 0x20, 0xe9])).text).toBe(`${HEAD}café É… é`);
    });
  });

  it("takes any bytes; a picture is told to be no text", () => {
    expect(decodeText(new Uint8Array())).toEqual({ text: "", problems: [] });
    const png = Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 0x0d, 0x49, 0x48, 0x44, 0x52, 0, 0, 0, 1, 0, 0, 0, 1]);
    expect(readCaptions(decodeText(png).text).problems[0]?.sentence).toBe("The file is not text, so it holds no captions that can be read.");
  });
});
