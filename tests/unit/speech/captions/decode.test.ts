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

  it("takes any bytes; a picture is told to be no text", () => {
    expect(decodeText(new Uint8Array())).toEqual({ text: "", problems: [] });
    const png = Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 0x0d, 0x49, 0x48, 0x44, 0x52, 0, 0, 0, 1, 0, 0, 0, 1]);
    expect(readCaptions(decodeText(png).text).problems[0]?.sentence).toBe("The file is not text, so it holds no captions that can be read.");
  });
});
