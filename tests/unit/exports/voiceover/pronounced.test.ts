import { describe, expect, it } from "vitest";
import { pronounced } from "../../../../shared/exports/voiceover/pronounced";

describe("pronounced", () => {
  it.each([
    ["3x8-10 @ 22 kg, three seconds down on every one.", [{ written: "3x8-10 @ 22 kg", said: "three sets of eight to ten at twenty-two kilos" }]],
    ["Do 3 x 8 @ 20 kg. / Breathe out, slowly.", [{ written: "3 x 8 @ 20 kg", said: "three sets of eight at twenty kilos" }]],
    ["Then 90 s rest at 80% and 8/8.", [{ written: "90 s", said: "ninety second" }, { written: "80%", said: "eighty percent" }, { written: "8/8", said: "eight and eight" }]],
    ["Hold for *20 s*.", [{ written: "20 s", said: "twenty seconds" }]],
  ])("finds what is said otherwise in %j", (text, found) => {
    expect(pronounced(text, undefined)).toEqual(found);
  });

  it("gives the coach's own way with a word", () => {
    expect(pronounced("Fernhill Oats sent me oats.", [{ written: "Fernhill", said: "fern-ill" }])).toEqual([{ written: "Fernhill", said: "fern-ill" }]);
  });

  it("is silent on plain numbers up to a hundred, which nobody says in another way", () => {
    expect(pronounced("Do 2 of these; 8 of those, and 10 more, 100 in all.", undefined)).toEqual([]);
    expect(pronounced("Do 250 of these.", undefined)).toEqual([{ written: "250", said: "two hundred fifty" }]);
    expect(pronounced("Do 8 of these.", [{ written: "8", said: "ate" }])).toEqual([{ written: "8", said: "ate" }]);
  });

  it.each(["Walk as if late, but polite.", "Don't lean / hold it *there*.", "Well-known: heels down!", ""])("is silent when every word is said as it stands: %j", (text) => {
    expect(pronounced(text, undefined)).toEqual([]);
  });
});
