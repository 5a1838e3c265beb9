import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countingIds, demoEpisode, emptyBlock, emptyEpisode, newLine, type Block, type Episode } from "../../../../shared/episode";
import { cueCardPdf, voiceoverPdf } from "../../../../shared/exports";
import { charactersIn, DEFAULT_PACE } from "../../../../shared/speech";
import { keyWords, shortened } from "../../../../shared/exports/voiceover/key-words";
import { fonts, pageTexts } from "../paper/kit";

const newId = countingIds("k-");
const block = (says: readonly string[], fields: Partial<Block> = {}): Block =>
  emptyBlock(newId, "exercise", { title: "Press", lines: says.map((text) => newLine(newId, "say", text)), ...fields });
const options = (paper: "a4" | "letter") => ({ paper, units: "kg", fonts, pace: DEFAULT_PACE, date: "2027-03-04" }) as const;
const flat = (text: string): string => text.replace(/\u00a0/g, " ");

/** Blocks of the demo over and over, one in five with a very long name. */
const blocksOf = (count: number): Block[] => Array.from({ length: count }, (_, at) => {
  const model = demoEpisode.blocks[at % demoEpisode.blocks.length];
  return block(model?.lines.filter(({ kind }) => kind === "say").map(({ text }) => text) ?? [], { title: at % 5 === 4 ? `${model?.title ?? ""} WITH A LONG PAUSE ON THE MAT BY THE WINDOW ${at + 1}` : `${model?.title ?? ""} ${at + 1}`, clipSeconds: at % 2 ? 9 : 40 });
});
const episodeOf = (count: number): Episode => emptyEpisode(newId, { title: "Wörter für Ł", blocks: blocksOf(count) });

describe("the cue card", () => {
  it.each([1, 3, 9, 15, 22, 30, 45, 60])("stands on one page with %i blocks, on either paper, each with number, name and seconds", async (count) => {
    for (const paper of ["a4", "letter"] as const) {
      const pages = await pageTexts((await cueCardPdf.render(episodeOf(count), options(paper))).bytes);
      expect(pages).toHaveLength(1);
      expect(pages[0]?.match(/\d+ s(?= |$)/g)?.length ?? 0).toBeGreaterThanOrEqual(count);
      expect(pages[0]).toContain("Opening 1 ");
    }
  });

  it("says which words do not fit their clip, and which block has none", async () => {
    const made = emptyEpisode(newId, { title: "Short", blocks: [block(["One two three four five six seven eight nine ten."], { clipSeconds: 1 }), block([], { title: "Silence", clipSeconds: 8 })] });
    const [page = ""] = await pageTexts((await cueCardPdf.render(made, options("a4"))).bytes);
    expect(page).toMatch(/Press +\d s too long/);
    expect(page).toMatch(/Silence +no words/);
  });

  it("of an empty episode is a page that says so", async () => {
    expect((await pageTexts((await cueCardPdf.render(emptyEpisode(newId), options("a4"))).bytes)).join()).toContain("nothing to say");
  });
});

describe("the script on paper", () => {
  it("never turns a page inside a sentence", async () => {
    const pages = await pageTexts((await voiceoverPdf.render(episodeOf(12), options("letter"))).bytes);
    const said = new Set(blocksOf(9).flatMap(({ lines }) => lines).flatMap(({ text }) => text.replace(/ \//g, "").split(/(?<=[.!?]) /)));
    const whole = (page: string): string => page.replace(/ [/¦](?= |$)/g, "").replace(/\s+/g, " ");
    for (const sentence of said) expect(pages.some((page) => whole(page).includes(sentence))).toBe(true);
    const count = (sentence: string): number => pages.reduce((sum, page) => sum + whole(page).split(sentence).length - 1, 0);
    expect(count("Breathe out as the bar goes up.")).toBe(1);
  });
});

describe("keyWords", () => {
  it("gives the best of each sentence in the order it is said, figures whole", () => {
    const [, , row] = demoEpisode.blocks;
    expect(row && flat(keyWords(row, 92))).toMatch(/^Lie chest · .*3 sets of 8 to 10 · .*2 reps/);
  });

  it("puts stressed words first, and a stressed small word with them", () => {
    expect(flat(keyWords(block(["Stretching is *not* a contest, and a mild pull is *enough* for the whole afternoon session."]), 24))).toBe("not a contest · enough");
  });

  it("is empty without words, and cuts a single phrase that is too long", () => {
    expect(keyWords(block([]), 40)).toBe("");
    expect(keyWords(block(["Gastrocnemius-stretching-everywhere"]), 12)).toBe("Gastrocnemi…");
  });

  it("never takes more room than there is, and only says what is said", () => {
    const word = fc.constantFrom("heels", "down", "the", "elbow", "42.5 kg", "three sets", "*slowly*", "press", "and", "breathe", "/");
    fc.assert(fc.property(fc.array(word, { maxLength: 40 }), fc.integer({ min: 8, max: 120 }), (words, room) => {
      const keys = keyWords(block([`${words.join(" ")}.`]), room);
      expect(charactersIn(keys)).toBeLessThanOrEqual(room);
      for (const phrase of flat(keys).replace(/…$/, "").split(" · ")) expect(words.join(" ").replace(/\*/g, "").replace("three sets", "3 sets").replaceAll("three sets", "3 sets")).toContain(phrase);
    }));
  });
});

describe("shortened", () => {
  it.each([["Half-kneeling landmine press", 22, "Half-kneeling landmin…"], ["Goblet squat", 12, "Goblet squat"], ["Farmer's carry for two", 18, "Farmer's carry…"], ["ab", 1, "a…"]])("%s in %i characters is %s", (text, room, short) => {
    expect(shortened(text, room)).toBe(short);
  });
});
