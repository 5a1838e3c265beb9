import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spokenForm } from "../../../shared/speech";

/** Pieces a coach strings together: shorthand, signs, words. */
const pieces = fc.constantFrom(
  "3x8-10", "@ 42.5 kg", "tempo 3-1-1-0,", "RIR 2", "RPE 8-9", "90 s", "1:30", "6:45.", "45°", "80% 1RM", "1½", "½", "e.g.", "L/R", "8/8", "10/side",
  "/", "-", "–", "—", "(", ")", "and", "Hold", "the bell,", "then.", "1st", "22nd", "T12", "-5", "~10", "w/", "w/o", "20-kg", "30-second", "×", "x", "x10",
  "KB", "DO NOT", "don't", "’", "…", "...", "%", "°", "#3", "$5", "2027", "0:30", "45″", "3′", "1h 30m", "4010 tempo", "2027-03-04", "£1.50", "1x", "per week", "10kg/22lb", "20/10", "90/90", "a.m.", "6 a.m.", "etc.", "vs.", "🏋", "naïve", "ß", "&", "+", "=", "<", ">8", "10+",
);
const sentences = fc.array(pieces, { maxLength: 12 }).map((words) => words.join(" "));

describe("the spoken form", () => {
  it.each([
    ["3x8-10 @ 42.5 kg, tempo 3-1-1-0", "three sets of eight to ten at forty-two point five kilos, tempo three one one zero"],
    ["3 x 8-10 @ 22 kg each hand, tempo 3-1-1-0, rest 90 s, RIR 2", "three sets of eight to ten at twenty-two kilos each hand, tempo three one one zero, rest ninety seconds, two reps in reserve"],
    ["1 x 8 each side @ 7.5 kg", "one set of eight each side at seven point five kilos"],
    ["4x30s", "four sets of thirty seconds"],
    ["3 × 40 m", "three sets of forty metres"],
    ["5x5x100 kg", "five sets of five at one hundred kilos"],
    ["3 sets x 10 reps", "three sets of ten reps"],
    ["AMRAP in 6 min", "AMRAP in six minutes"],
    ["tempo 31X0", "tempo three one X zero"],
    ["12-10-8", "twelve ten eight"],
    ["2x bodyweight", "two times bodyweight"],
    ["80% 1RM", "eighty percent of one rep max"],
    ["5RM at RPE 8-9", "five rep max at R P E eight to nine"],
    ["RIR 1-2", "one to two reps in reserve"],
    ["1 RIR", "one rep in reserve"],
    ["3.5 W/kg", "three point five watts per kilo"],
    ["1 W/kg w/ a band", "one watt per kilo with a band"],
    ["1.6 g/kg of protein", "one point six grams per kilo of protein"],
    ["10/side, then 8/8", "ten per side, then eight and eight"],
    ["24 kg/hand", "twenty-four kilos per hand"],
    ["10 L, 10 R", "ten left, ten right"],
    ["L/R", "left and right"],
    ["R leg first, then L", "right leg first, then left"],
    ["each side (L then R)", "each side, left then right"],
    ["8ea, 10 e/s", "eight each, ten each side"],
    ["3 rds", "three rounds"],
    ["15/12/10/8 @ 25kg", "fifteen twelve ten eight at twenty-five kilos"],
    ["5 x 20 m @ 2x32kg", "five sets of twenty metres at two times thirty-two kilos"],
    ["3x8 @ BW-10kg, 2m rest", "three sets of eight at bodyweight minus ten kilos, two minute rest"],
    ["3x10, rest 1m15", "three sets of ten, rest one minute fifteen"],
    ["8/6/4, rest 3:00", "eight six four, rest three minutes"],
    ["4x6, 120\" rest", "four sets of six, one hundred twenty second rest"],
    ["3x10 rest 2'", "three sets of ten rest two minutes"],
    ["3x5 @ 185#", "three sets of five at one hundred eighty-five pounds"],
    ["3x10 @ 27,5kg", "three sets of ten at twenty-seven point five kilos"],
    ["4010 tempo", "four zero one zero tempo"],
    ["with a 31X0 tempo", "with a three one X zero tempo"],
    ["a tempo of 4010", "a tempo of four zero one zero"],
    ["tempo 4010", "tempo four zero one zero"],
    ["4000 steps", "four thousand steps"],
    ["1x per week", "once a week"],
    ["2x/week, 3x/week", "twice a week, three times per week"],
    ["1x weekly", "once weekly"],
    ["1x each side", "one time each side"],
    ["1x bodyweight", "one times bodyweight"],
    ["20/10 intervals", "twenty ten intervals"],
    ["40/20, 45/15, 30/30", "forty twenty, forty-five fifteen, thirty thirty"],
    ["the 90/90 stretch", "the ninety ninety stretch"],
    ["80/20", "eighty twenty"],
    ["10/10, 20/20", "ten and ten, twenty and twenty"],
    ["blood pressure of 90/60", "blood pressure of ninety over sixty"],
    ["blood pressure 60/40", "blood pressure sixty over forty"],
  ])("reads set shorthand: %s", (written, said) => {
    expect(spokenForm(written)).toBe(said);
  });

  it.each([
    ["rest 60–90 s", "rest sixty to ninety seconds"],
    ["20kg-25kg", "twenty kilos to twenty-five kilos"],
    ["1 kg, 2 kg, 0.5 kg", "one kilo, two kilos, zero point five kilos"],
    ["a 20 kg bell, a 20-kg bell", "a twenty kilo bell, a twenty kilo bell"],
    ["a 30-second hold", "a thirty-second hold"],
    ["45° bench", "forty-five degree bench"],
    ["1½ kg", "one and a half kilos"],
    ["2 1/2 minutes", "two and a half minutes"],
    ["½ rep", "half rep"],
    ["3/4 of the way", "three quarters of the way"],
    ["1,500 m", "one thousand five hundred metres"],
    ["15 lb", "fifteen pounds"],
    ["10 cm, 1 min, 5 sec", "ten centimetres, one minute, five seconds"],
    ["in kg", "in kilos"],
    ["-5 kg", "minus five kilos"],
    ["~10 min", "about ten minutes"],
    ["10+ reps", "ten plus reps"],
    ["120/80", "one hundred twenty over eighty"],
    ["T12 and L5", "T twelve and L five"],
    ["1st, 2nd, 3rd and 21st", "first, second, third and twenty-first"],
    ["No. 3, #4", "number three, number four"],
    ["the over-75s", "the over-seventy-fives"],
    ["a 40 cm box", "a forty centimetre box"],
    ["10—12 reps", "ten to twelve reps"],
    ["$5-10", "five to ten dollars"],
    ["0.5 L of water", "zero point five litres of water"],
    ["L4-L5", "L four to L five"],
    ["7/10 effort", "seven out of ten effort"],
    ["50/50, 24/7", "fifty fifty, twenty-four seven"],
    ["a 12-in box", "a twelve inch box"],
    ["ca. 5 min, incl. rest", "about five minutes, including rest"],
    ["min. 2 kg", "minimum two kilos"],
    ["5 min. rest", "five minute rest"],
    ["Nos. 1-3", "numbers one to three"],
    ["VO2 max", "V O two max"],
    ["she is 5'10\"", "she is five foot ten"],
    ["hold 5'10\"", "hold five minutes ten"],
    ["a 20\" box", "a twenty inch box"],
    ["a 20″ box", "a twenty inch box"],
    ["10kg/22lb", "ten kilos or twenty-two pounds"],
    ["20 kg/15 kg", "twenty kilos or fifteen kilos"],
    ["£1.50", "one pound fifty"],
    ["$2.05, €1, £0.50, $0.01, £.99", "two dollars five, one euro, fifty pence, one cent, ninety-nine pence"],
    ["£1,200.00 and £3.5", "one thousand two hundred pounds and three point five pounds"],
    ["£1.50-2.25", "one pound fifty to two pounds twenty-five"],
    ["$1-2", "one to two dollars"],
  ])("reads numbers and units: %s", (written, said) => {
    expect(spokenForm(written)).toBe(said);
  });

  it.each([
    ["6:45", "six forty-five"],
    ["06:05", "six oh five"],
    ["12:00", "twelve o'clock"],
    ["1:30", "one thirty"],
    ["0:30", "thirty seconds"],
    ["rest 1:30 min", "rest one minute thirty"],
    ["1:30-2:00", "one thirty to two o'clock"],
    ["45″", "forty-five seconds"],
    ["Hold 45″!", "Hold forty-five seconds!"],
    ["3′", "three minutes"],
    ["1′30″ rest", "one minute thirty rest"],
    ["30″/15″", "thirty seconds fifteen seconds"],
    ["30″–45″", "thirty seconds to forty-five seconds"],
    ["3′-4′", "three minutes to four minutes"],
    ["5′10″ tall", "five foot ten tall"],
    ["1h 30m", "one hour thirty minutes"],
    ["1h30m, 2 h 5 min", "one hour thirty minutes, two hours five minutes"],
    ["walk 30m", "walk thirty metres"],
    ["at 6 a.m. Then at 7 p.m.", "at six A M. Then at seven P M."],
  ])("reads times: %s", (written, said) => {
    expect(spokenForm(written)).toBe(said);
  });

  it.each([
    ["7.30 pm", "seven thirty P M"],
    ["on 5 May 2026", "on the fifth of May, twenty twenty-six"],
    ["on Nov 25", "on November twenty-fifth"],
    ["since 2019.", "since twenty nineteen."],
    ["2027-03-04", "the fourth of March, twenty twenty-seven"],
    ["from 2026-12-31.", "from the thirty-first of December, twenty twenty-six."],
    ["you may 5 times", "you may five times"],
    ["in 2000 m", "in two thousand metres"],
  ])("reads days and years: %s", (written, said) => {
    expect(spokenForm(written)).toBe(said);
  });

  it("takes the speaker's own way of saying a word, whole words only, the longest first", () => {
    const own = [{ written: "psoas", said: "so-as" }, { written: "kg", said: "keys" }, { written: "3RM", said: "triple" }, { written: "3RM test", said: "triple test" }];
    expect(spokenForm("The Psoas, the psoasis and a 3RM test at 40 kg", own)).toBe("The so-as, the psoasis and a triple test at forty keys");
    expect(spokenForm("3RM", own)).toBe("triple");
    expect(spokenForm("a (b", [{ written: "(b", said: "sea" }, { written: "", said: "x" }])).toBe("a sea");
  });

  it.each([
    ["e.g. a box. Then go.", "for example a box. Then go."],
    ["Don’t rush – breathe", "Don't rush, breathe"],
    ["a bench (set low) — then go", "a bench, set low, then go"],
    ["for it. / Ad: oats", "for it. / Ad: oats"],
    ["hands/feet", "hands or feet"],
    ["w/o weight", "without weight"],
    ["w/o", "without"],
    ["w/", "with"],
    ["w/o 10 kg, w/ 5 kg", "without ten kilos, with five kilos"],
    ["w/one arm, w/out a box", "with one arm, without a box"],
    ["DO NOT lock your knees", "DO NOT lock your knees"],
    ["KBs and a DB", "kettlebells and a dumbbell"],
    ["", ""],
    ["🏋️ ***", ""],
  ])("reads signs and short forms, and keeps what shapes the voice: %s", (written, said) => {
    expect(spokenForm(written)).toBe(said);
  });

  it("leaves no figure unread", () => {
    fc.assert(fc.property(fc.oneof(sentences, fc.string()), (text) => {
      expect(spokenForm(text)).not.toMatch(/\d/);
    }), { numRuns: 1500 });
  });

  it("does not change text that is already in words", () => {
    fc.assert(fc.property(sentences, (text) => {
      const said = spokenForm(text);
      expect(spokenForm(said)).toBe(said);
    }), { numRuns: 3000 });
  });

  it("never throws, whatever the speaker's own list holds", () => {
    const lists = fc.array(fc.record({ written: fc.string({ unit: "binary" }), said: fc.string({ unit: "binary" }) }), { maxLength: 5 });
    fc.assert(fc.property(fc.string({ unit: "binary" }), lists, (text, own) => {
      expect(typeof spokenForm(text, own)).toBe("string");
    }));
    for (const written of ["3x8-10", "^$.*+?()[]{}|/\\-", "-"]) expect(spokenForm(`a ${written} b`, [{ written, said: "it" }])).toContain("it");
  });

  it("never throws", () => {
    fc.assert(fc.property(fc.string({ unit: "binary" }), (text) => {
      expect(typeof spokenForm(text)).toBe("string");
    }), { numRuns: 1000 });
  });
});
