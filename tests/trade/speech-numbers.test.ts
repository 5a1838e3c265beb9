import { ToWords } from "to-words/en-US";
import { describe, expect, it } from "vitest";
import { decimalWords, numberWords, ordinalWords } from "../../shared/speech";

const reference = new ToWords();
/** The library writes capitals and no hyphens. */
const plain = (words: string): string => words.toLowerCase().replace(/-/g, " ");

describe("numbers in words against the general-purpose library to-words", () => {
  it("agree from 0 to 9999", () => {
    for (let n = 0; n <= 9999; n += 1) {
      if (plain(numberWords(n)) !== plain(reference.convert(n))) throw new Error(`${n}: ours ${numberWords(n)}, reference ${reference.convert(n)}`);
    }
    expect(plain(numberWords(9999))).toBe("nine thousand nine hundred ninety nine");
  });

  it("agree for large numbers", () => {
    for (const n of [10_000, 12_345, 100_000, 999_999, 1_000_000, 20_030_004, 1_000_000_001, 987_654_321_012]) {
      expect(plain(numberWords(n))).toBe(plain(reference.convert(n)));
    }
  });

  it("agree on decimals with one figure, and with a zero after the point", () => {
    // With two figures the library reads "point twenty-five"; on a gym floor it is "point two five", so those are not compared.
    for (let tenths = 0; tenths <= 9999; tenths += 1) {
      if (tenths % 10 === 0) continue;
      const written = (tenths / 10).toFixed(1);
      if (plain(decimalWords(written)) !== plain(reference.convert(written))) throw new Error(`${written}: ours ${decimalWords(written)}, reference ${reference.convert(written)}`);
    }
    for (const written of ["42.05", "0.01", "100.08"]) expect(plain(decimalWords(written))).toBe(plain(reference.convert(written)));
    expect(decimalWords("12.25")).toBe("twelve point two five");
  });

  it("agree on places in an order from first to nine hundred ninety-ninth", () => {
    for (let n = 1; n <= 999; n += 1) {
      if (plain(ordinalWords(n)) !== plain(reference.toOrdinal(n))) throw new Error(`${n}: ours ${ordinalWords(n)}, reference ${reference.toOrdinal(n)}`);
    }
    expect(ordinalWords(21)).toBe("twenty-first");
  });
});
