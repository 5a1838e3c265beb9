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

  it("wraps neither seconds of a hundred and more nor times of an hour and more, and fills its page", async () => {
    const long = "Set the feet under the hips and feel the whole foot on the floor, then breathe. ".repeat(38).trim();
    for (const count of [4, 9, 14, 20]) {
      const made = emptyEpisode(newId, { title: "Long", blocks: Array.from({ length: count }, (_, at) => block([long], { title: `Block ${at + 1}`, clipSeconds: 1200 })) });
      const pages = await pageTexts((await cueCardPdf.render(made, options("a4"))).bytes);
      expect(pages).toHaveLength(1);
      expect(pages[0]?.match(/\b\d{3} s\b/g)).toHaveLength(count);
      if (count > 3) expect(pages[0]).toContain("1:00:00");
    }
  });

  it("sends to the script for a block of which no part can stand alone", async () => {
    const made = emptyEpisode(newId, { title: "Go", blocks: [block(["Go."])] });
    expect((await pageTexts((await cueCardPdf.render(made, options("a4"))).bytes)).join()).toContain("read it from the script");
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

  it.each([
    ["No rush today. Don't copy my weights.", "no rush today · don't copy weights"],
    ["Never lift alone without a spotter. Do not lock the elbows hard. Not for beginners.", "never lift alone without a spotter · do not lock elbows hard · not for beginners"],
    ["Keep the bar close. Never hold your breath if you have high blood pressure.", "bar close · never hold breath if you have high blood pressure"],
    ["Stop if it hurts, and do not push through pain. Without shoes is fine.", "stop if it hurts · do not push through pain · without shoes is fine"],
    ["You cannot rush this. It isn't a race. Nobody needs 100 kg today.", "cannot rush this · isn't a race · nobody needs 100 kg today"],
    ["Less than 40 kg is plenty. No more than three sets.", "less than 40 kg is plenty · no more than 3 sets"],
    ["If you are pregnant, leave out the plank, skip the jumps and avoid lying flat.", "if you are pregnant, leave out plank · skip jumps · avoid lying flat"],
    ["Don\u2019t rush. Leave the jumps out.", "don\u2019t rush · leave jumps out"],
    ["Do not bounce, twist, or jerk the bar.", "do not bounce, twist, or jerk bar"],
    ["Jumps, twists and sprints are not for today.", "Jumps, twists and sprints are not for today"],
    ["Rounding your back, bouncing, or jerking is never fine.", "Rounding back, bouncing, or jerking is never fine"],
    ["Never do these: bounce, twist, hold the breath.", "never do these: bounce, twist, hold breath"],
    ["Jumps and twists, you don't need today.", "Jumps and twists, you don't need today"],
    ["Jumps? Not today. Breathe out.", "Breathe"],
    ["Bounce the bar. Never! Brace hard.", "Brace hard"],
    ["Do not / bounce the bar. / Brace hard.", "do not bounce bar · Brace hard"],
    ["Squat low but not fast.", "Squat low · not fast"],
    ["Use a hook grip, not straps.", "use a hook grip, not straps"],
    ["Drive the knees out, lift the chest, and don't look down.", "Drive · knees · lift · chest · don't look down"],
    ["Pause on the chest instead of bouncing.", "Pause on chest instead of bouncing"],
    ["If it doesn't hurt, add five kilos.", "if it doesn't hurt, add 5 kg"],
    ["Grip hard w/o chalk.", "Grip hard w/o chalk"],
    ["At least 2 minutes of rest. Only the last two reps slow down.", "at least 2 minutes of rest · only last 2 reps slow down"],
    ["Stay under 40 kg. Up to 10 reps. Stop 2 reps short.", "stay under 40 kg · up to 10 reps · stop 2 reps short"],
    ["Keep the knee from caving in. The bell is too heavy.", "keep knee from caving in · bell is too heavy"],
    ["More than 100 kg? Ask a spotter. Rather slow than heavy.", "more than 100 kg · spotter · rather slow than heavy"],
    ["Do not, whatever you do, bounce the bar.", "do not, whatever you do, bounce bar"],
    ["Don't \u2013 and I mean don't \u2013 round your back.", "don't \u2013 and I mean don't \u2013 round back"],
    ["Squat as deep as you like, if it doesn't hurt.", "Squat as deep as you like, if it doesn't hurt"],
    ["Breathing out early, that is what you want to avoid.", "Breathing out early, that is what you want to avoid"],
    ["The deep squat from the box, which you should leave out, comes next.", "deep squat from box, which you should leave out, comes next"],
    ["Dont bounce. Knees in is a no-no.", "dont bounce · Knees in is a no-no"],
    ["Hold your breath? I wouldn't.", ""],
    ["Don't stop unless it hurts.", "don't stop unless it hurts"],
    ["Use w/ a box, e.g. 45 cm high.", "box · 45 cm high"],
  ])("never says the opposite: %j is %j", (says, keys) => {
    expect(flat(keyWords(block([says]), 220))).toBe(keys);
  });

  it.each([[40, "3 x 8-10 at 22 kg"], [15, "3 x 8-10"], [7, ""]])("in %i characters figures stand whole or not at all: %j", (room, keys) => {
    expect(flat(keyWords(block(["Do 3 x 8-10 at 22 kg."]), room))).toBe(keys);
  });

  const noun = fc.constantFrom("heels", "elbows", "bar", "chest", "spine", "grip", "jumps", "belt", "wrists", "40 kg", "three sets");
  const negated = fc.tuple(
    fc.constantFrom("never", "do not", "don't", "don\u2019t", "you cannot", "avoid", "nobody should", "leave out", "skip", "at most", "no more than", "less than", "only", "without", "stop", "it won't", "doesn't", "instead of"),
    fc.constantFrom("bounce", "press", "lift", "load", "twist"), fc.constantFrom("the", "your", "a", "any"),
  );
  const plainClause = fc.tuple(fc.constantFrom("brace", "drive", "slowly", "squeeze", "keep"), fc.constantFrom("the", "your", "both"));
  const clause = fc.oneof(
    fc.tuple(negated, noun).map(([[guard, verb, the], of]) => ({ guard, text: `${guard} ${verb} ${the} ${of}` })),
    fc.tuple(negated, noun, noun, noun).map(([[guard, verb, the], a, b, c]) => ({ guard, text: `${guard} ${verb} ${the} ${a}, ${b} or ${c}` })),
    fc.tuple(noun, noun).map(([a, b]) => ({ guard: "never", text: `the ${a}, or the ${b}, is never free` })),
    fc.tuple(plainClause, noun).map(([[verb, the], of]) => ({ guard: null, text: `${verb} ${the} ${of}` })),
  );
  it("prints a phrase out of a negated or limited sentence only with its negation or limit, in any room", () => {
    fc.assert(fc.property(fc.array(fc.tuple(clause, fc.constantFrom(".", "!", ". /", " /", ";", ", and", ", but", " \u2013")), { minLength: 1, maxLength: 6 }), fc.integer({ min: 8, max: 220 }), (clauses, room) => {
      // Every noun is told from the same noun elsewhere by a tail of its own.
      const marked = clauses.map(([{ guard, text }, end], at) => ({ guard, end, text: text.replace(/heels|elbows|bar|chest|spine|grip|jumps|belt|wrists|kg|sets/g, (one) => `${one} q${String.fromCharCode(97 + at)}`) }));
      const keys = flat(keyWords(block([marked.map(({ text, end }) => text + end).join(" ")]), room)).toLowerCase();
      expect(charactersIn(keys)).toBeLessThanOrEqual(room);
      marked.forEach(({ guard }, at) => {
        if (guard === null) return;
        for (const phrase of keys.split(" · ")) {
          if (phrase.includes(`q${String.fromCharCode(97 + at)}`)) expect(phrase).toContain(guard.replace(/^(?:you|nobody|it) (?=cannot|won't)/, "").replace("nobody should", "nobody"));
        }
      });
    }), { numRuns: 500 });
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
