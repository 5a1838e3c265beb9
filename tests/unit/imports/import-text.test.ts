import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countingIds, readEpisode, writeEpisode } from "../../../shared/episode";
import { importBytes, importText, titleFrom, type Imported, type ImportResult } from "../../../shared/imports";
import { lostWords } from "../../corpus/imports/score";

const read = (text: string): Imported => {
  const result = importText(text, "", countingIds("i-"));
  if (!result.ok) throw new Error(result.message);
  return result;
};
const outline = ({ episode }: Imported): string[] => episode.blocks.map(({ kind, title, sets }) => `${kind}: ${title}${sets.length > 0 ? ` [${sets.map(({ text }) => text).join(" | ")}]` : ""}`);

const LEGS = "okay hello everyone welcome back today we train legs so let's warm up first ten leg swings each side and ten hip circles right first exercise goblin squats three sets of eight no sorry ten at twenty kilos with ninety seconds rest keep your chest up don't let your knees cave in if your knees hurt squat to a box and that's it for today thanks for watching see you next week";

describe("importText", () => {
  it("makes blocks, set lines and lines of each kind out of speech without a sign", () => {
    const result = read(LEGS);
    expect(outline(result)).toEqual(["opening: Opening", "warm-up: Warm-up", "exercise: Goblet squat [3 x 10 @ 20 kg, rest 90 s]", "closing: Closing"]);
    const kinds = result.episode.blocks[2]?.lines.map(({ kind }) => kind);
    expect(kinds).toEqual(expect.arrayContaining(["say", "cue", "avoid", "caution"]));
    expect(result.missing).toEqual(["cool-down"]);
    expect(result.format).toBe("speech");
    expect(result.pace).toBeNull();
  });

  it("gives an episode that is written and read again unchanged", () => {
    const { episode } = read(LEGS);
    expect(readEpisode(writeEpisode(episode))).toMatchObject({ ok: true, episode });
  });

  it("gives the same draft for the same words", () => {
    expect(read(LEGS)).toEqual(read(LEGS));
  });

  it("keeps a digression as words of its block, and talk without any exercise as talk", () => {
    expect(read("i went to the shop and bought a coat it was raining the whole day").episode.blocks.map(({ kind }) => kind)).toEqual(["talk"]);
  });

  it("does not begin a block with an exercise named in passing", () => {
    const result = read("welcome back last week we did deadlifts and my back felt it so today it's first up romanian deadlifts three sets of eight at forty kilos which also helps your squat instead of lunges push your hips back and that's it for today see you");
    expect(outline(result).filter((row) => row.startsWith("exercise"))).toEqual(["exercise: Romanian deadlift [3 x 8 @ 40 kg]"]);
  });

  it("takes no greeting for an exercise, and no order to push up for a push-up", () => {
    expect(outline(read("good morning everyone today is a good day so first up goblet squats three sets of ten push up through your heels and stand tall and then step up to the rack and that's it for today bye"))
      .filter((row) => row.startsWith("exercise"))).toEqual(["exercise: Goblet squat [3 x 10]"]);
  });

  it("makes a block of an exercise the catalogue lacks, by the words said", () => {
    expect(outline(read("okay first up pistol squats three sets of five each side keep your heel down then we've got burpees three sets of ten and that's it for today"))).toEqual([
      "exercise: Pistol squat [3 x 5 each side]", "exercise: Burpee [3 x 10]",
    ]);
  });

  it("names captions by their file and leaves language marks out of the title", () => {
    expect(titleFrom("/home/o/ep_12 legs.en.vtt")).toBe("Ep 12 legs");
    expect(titleFrom("")).toBe("");
  });

  it("drops no word, whatever the words are", () => {
    const word = fc.constantFrom("okay", "next", "up", "squats", "goblet", "three", "sets", "of", "eight", "to", "ten", "kilos", "um", "no", "sorry", "rest", "minutes", "don't", "your", "back", "keep", "warm", "cool", "down", "thanks", "2", "3x8", "42.5kg", "café", "[music]", "—", "row", "press", "bye", "same", "again", "rounds", "seconds", "on", "off");
    fc.assert(fc.property(fc.array(fc.tuple(word, fc.constantFrom(" ", " ", " ", "\n", ". ", ", ", "\n\n")), { minLength: 1, maxLength: 150 }), (pieces) => {
      const source = pieces.flat().join("");
      const result = importText(source, "", countingIds("i-"));
      if (result.ok) {
        expect(lostWords(source, result)).toEqual([]);
        expect(readEpisode(writeEpisode(result.episode)).ok).toBe(true);
      }
    }), { numRuns: 150 });
  });

  it("drops no word of captions, however their times lie", () => {
    const cue = fc.tuple(fc.integer({ min: 0, max: 200 }), fc.integer({ min: -3, max: 12 }), fc.array(fc.constantFrom("okay", "planks", "next", "three", "sets", "of", "thirty", "seconds", "um", "hold", "it", "rest"), { minLength: 1, maxLength: 9 }));
    const clock = (seconds: number): string => `00:${String(Math.floor(seconds / 60)).padStart(2, "0")}:${String(Math.max(0, seconds) % 60).padStart(2, "0")}.000`;
    fc.assert(fc.property(fc.array(cue, { minLength: 1, maxLength: 30 }), (cues) => {
      const source = cues.map(([, , words]) => words.join(" ")).join("\n");
      const result = read(`WEBVTT\n\n${cues.map(([start, length, words], at) => `${clock(start)} --> ${clock(Math.max(0, start + length))}\n${words.join(" ")} w${at}\n`).join("\n")}`);
      const held = result.problems.some(({ sentence }) => sentence.startsWith("The captions roll"));
      if (!held) expect(lostWords(source, result)).toEqual([]);
    }), { numRuns: 100 });
  });

  it("never throws on any text", () => {
    fc.assert(fc.property(fc.string({ unit: "binary", maxLength: 400 }), (text) => {
      const result: ImportResult = importText(text, "x.vtt", countingIds("i-"));
      if (result.ok) expect(readEpisode(writeEpisode(result.episode)).ok).toBe(true);
      else expect(result.message).toMatch(/\.$|\?$/);
    }), { numRuns: 200 });
  });
});

describe("importBytes", () => {
  const bytes = (...values: number[]): Uint8Array => Uint8Array.from(values);
  const utf16 = (text: string): Uint8Array => Uint8Array.from([0xff, 0xfe, ...[...text].flatMap((char) => [char.charCodeAt(0) & 255, char.charCodeAt(0) >> 8])]);
  const of = (data: Uint8Array): ImportResult => importBytes(data, "words.txt", countingIds("i-"));

  it("reads UTF-16, a mark at the start, CRLF and Western one-byte letters", () => {
    const text = "first up planks\r\nthree sets of thirty seconds at the café";
    for (const data of [utf16(text), bytes(0xef, 0xbb, 0xbf, ...new TextEncoder().encode(text)), bytes(...[...text].map((char) => char.charCodeAt(0)))]) {
      const result = of(data);
      expect(result).toMatchObject({ ok: true });
      if (result.ok) expect(outline(result)).toEqual(["exercise: Plank [3 x 30 s]"]);
    }
  });

  it.each([
    ["nothing", bytes(), /empty/],
    ["blank space", new TextEncoder().encode(" \r\n\t "), /empty/],
    ["bytes of a video", Uint8Array.from({ length: 5000 }, (_, at) => (at * 31) % 27), /not text/],
    ["captions without words", new TextEncoder().encode("WEBVTT\n\n00:01.000 --> 00:02.000\n\n"), /no words|empty/],
    ["fifty megabytes", new Uint8Array(50 * 1024 * 1024), /50\.0 MB/],
    ["a book", new TextEncoder().encode("word ".repeat(70_000)), /70,000 words/],
    ["signs alone", new TextEncoder().encode("... --- ..."), /no words/],
  ])("refuses %s in a sentence", (_, data, sentence) => {
    const result = of(data);
    expect(result.ok).toBe(false);
    if (!result.ok) expect(result.message).toMatch(sentence);
  });

  it("reads captions whose times overlap or run backwards, and says so", () => {
    const result = importText("1\n00:00:05,000 --> 00:00:09,000\nfirst up planks\n\n2\n00:00:04,000 --> 00:00:03,000\nthree sets of thirty seconds\n\n3\n00:00:06,000 --> 00:00:08,000\nkeep your back flat\n", "a.srt", countingIds("i-"));
    expect(result.ok && outline(result)).toEqual(["exercise: Plank [3 x 30 s]"]);
    expect(result.ok && result.problems.length).toBeGreaterThan(0);
  });

  it("reads captions that roll once, and says so", () => {
    const rows = ["okay first up we do", "goblet squats three sets", "of ten at twenty kilos", "keep your chest tall", "and that is it for today"];
    const vtt = `WEBVTT\n\n${rows.map((row, at) => `00:00:0${at}.000 --> 00:00:0${at + 1}.000\n${at === 0 ? "" : `${rows[at - 1]}\n`}${row}\n`).join("\n")}`;
    const result = importText(vtt, "a.vtt", countingIds("i-"));
    expect(result.ok && result.words).toBe(rows.join(" ").split(" ").length);
    expect(result.ok && result.problems.map(({ sentence }) => sentence)).toEqual(["The captions roll: 4 lines are shown twice, and each was read once."]);
  });

  it("lists sounds and comments apart from speech", () => {
    const result = importText("WEBVTT\n\nNOTE made by machine\n\n00:01.000 --> 00:03.000\n[music] okay first up planks\n\n00:03.000 --> 00:05.000\nthree sets of um thirty seconds\n", "a.vtt", countingIds("i-"));
    expect(result.ok && result.notUnderstood.map(({ reason, text }) => [reason, text])).toEqual([["comment", "made by machine"], ["sound", "[music]"], ["hesitation", "um"]]);
  });
});
