import { crc32 as otherCrc, inflateRawSync } from "node:zlib";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { crc32, readCode, writeCode } from "../../../shared/session-report";

const json = fc.jsonValue().map((value) => JSON.stringify(value));

describe("a session's code", () => {
  it("brings back every JSON text, whatever a messenger puts between the letters", () => {
    fc.assert(fc.property(json, fc.integer({ min: 1, max: 70 }), fc.constantFrom("\n", "\r\n", " ", "\n> ", "\u200b"), (text, width, between) => {
      const folded = writeCode(text).match(new RegExp(`.{1,${width}}`, "g"))?.join(between) ?? "";
      expect(readCode(`Here it is:\n${folded}\n`)).toEqual({ ok: true, json: text });
    }));
  });

  it("never reads a code in which one letter was changed, left out or doubled", () => {
    fc.assert(fc.property(json, fc.nat(), fc.constantFrom("change", "drop", "double"), (text, at, how) => {
      const code = writeCode(text);
      const place = 5 + (at % (code.length - 5));
      const letter = code.charAt(place);
      const other = letter === "a" ? "b" : "a";
      const broken = code.slice(0, place) + (how === "change" ? other : how === "drop" ? "" : letter + letter) + code.slice(place + 1);
      const read = readCode(broken);
      // A checksum letter doubled at the very end is only a word after the code.
      if (read.ok) expect([how, read.json]).toEqual(["double", text]);
      else expect(read.reason).toBe("damaged");
    }));
  });

  it.each([["", "none"], ["hello", "none"], ["RWS1.", "damaged"], ["RWS1.abc", "damaged"], ["RWS2.abcdef.0000000", "newer"], [`${writeCode("{}").slice(0, -8)}.0000000`, "damaged"]])("says why %j is none", (text, reason) => {
    expect(readCode(text)).toEqual({ ok: false, reason });
  });

  it("packs and sums as the standards say, read by other programs", () => {
    fc.assert(fc.property(fc.string({ unit: "grapheme" }), (text) => {
      expect(crc32(text)).toBe(otherCrc(Buffer.from(text)));
      const [, letters = ""] = writeCode(text).split(".");
      expect(inflateRawSync(Buffer.from(letters, "base64url")).toString("utf8")).toBe(text);
    }));
    // Check value of CRC-32/ISO-HDLC.
    expect(crc32("123456789")).toBe(0xcbf43926);
  });
});
