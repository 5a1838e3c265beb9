import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spokenForm } from "../../../shared/speech";

/** Pieces a coach strings together: shorthand, signs, words. */
const pieces = fc.constantFrom(
  "3x8-10", "@ 42.5 kg", "tempo 3-1-1-0,", "RIR 2", "RPE 8-9", "90 s", "1:30", "6:45.", "45°", "80% 1RM", "1½", "½", "e.g.", "L/R", "8/8", "10/side",
  "/", "-", "–", "—", "->", "40s", "the", "in your", "31X0", "2L", "Mr.", "No.", "Sat", "4 Mar.", "04/03/2027", "IT", "ACLs", "STOP", "example.com/a", "1 000", "US$40", "(", ")", "and", "Hold", "the bell,", "then.", "1st", "22nd", "T12", "-5", "~10", "w/", "w/o", "20-kg", "30-second", "×", "x", "x10",
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
    ["3 x 10/10, 20/20", "three sets of ten and ten, twenty and twenty"],
    ["10/10 reps", "ten and ten reps"],
    ["a 10/10 effort, a score of 9/10", "a ten out of ten effort, a score of nine out of ten"],
    ["40/20 x 8", "forty twenty for eight rounds"],
    ["E2MOM x 6 rounds", "every two minutes on the minute for six rounds"],
    ["Plank x 30 s, push-ups x 10", "Plank for thirty seconds, push-ups times ten"],
    ["20 + 2x20", "twenty plus two times twenty"],
    ["3x10 + 2x20", "three sets of ten plus two sets of twenty"],
    ["Set 2/3, 2/3 of it", "Set two of three, two thirds of it"],
    ["2:05/500 m, 5:30/km", "two oh five per five hundred metres, five thirty per kilometre"],
    ["5 x 3 @ 31X0", "five sets of three at three one X zero"],
    ["3x8@31X0, 31x0", "three sets of eight at three one X zero, three one X zero"],
    ["4010, then 31X1", "four zero one zero, then three one X one"],
    ["20X1 or 4010", "two zero X one or four zero one zero"],
    ["5 x 3 @ 4010", "five sets of three at four zero one zero"],
    ["5 x 500 m @ 2000 m", "five sets of five hundred metres at two thousand metres"],
    ["tempo 3:1:1, tempo 3:1:1:0, a 3:1:1 tempo", "tempo three one one, tempo three one one zero, a three one one tempo"],
    ["10x3, 20x5, 10X3", "ten sets of three, twenty sets of five, ten sets of three"],
    ["blood pressure of 90/60", "blood pressure of ninety over sixty"],
    ["blood pressure 60/40", "blood pressure sixty over forty"],
  ])("reads set shorthand: %s", (written, said) => {
    expect(spokenForm(written)).toBe(said);
  });

  it.each([
    ["3 x 8 – 20 kg", "three sets of eight, twenty kilos"],
    ["3 x 8 - 20 kg", "three sets of eight, twenty kilos"],
    ["5 × 5 — 100 kg", "five sets of five, one hundred kilos"],
    ["3 x 8-10 – 20 kg", "three sets of eight to ten, twenty kilos"],
    ["3 x 8 – 20-25 kg", "three sets of eight, twenty to twenty-five kilos"],
    ["3 x 8 – 70 %", "three sets of eight, seventy percent"],
    ["3 x 8 – 90 s rest", "three sets of eight, ninety second rest"],
    ["Set 1 – 20 kg, set 2 – 8 @ 22.5 kg", "Set one, twenty kilos, set two, eight at twenty-two point five kilos"],
    ["Day 1 – 3 x 8, round 2 – 10 push-ups", "Day one, three sets of eight, round two, ten push-ups"],
    ["Week 1 – 4: base, sets 1 – 3", "Week one to four: base, sets one to three"],
    ["8 – 10 reps, 20 – 25 kg, 8-10", "eight to ten reps, twenty to twenty-five kilos, eight to ten"],
    ["3 x 8 – 10, 3 x 8 - 10 reps", "three sets of eight to ten, three sets of eight to ten reps"],
    ["3 x 30 – 45 s, 4 x 20 – 30 m", "three sets of thirty to forty-five seconds, four sets of twenty to thirty metres"],
    ["20 kg -> 22.5 kg", "twenty kilos to twenty-two point five kilos"],
    ["20 kg → 25 kg --> 30 kg", "twenty kilos to twenty-five kilos to thirty kilos"],
    ["reps > 8", "reps more than eight"],
  ])("tells a dash between two things from one of a range: %s", (written, said) => {
    expect(spokenForm(written)).toBe(said);
  });

  it.each([
    ["In your 40s and 50s", "In your forties and fifties"],
    ["in her late 60s, in their mid-30s", "in her late sixties, in their mid-thirties"],
    ["In your 20s, rest 30s.", "In your twenties, rest thirty seconds."],
    ["the 1990s, the '90s, the ’80s", "the nineteen nineties, the nineties, the eighties"],
    ["the early 2000s, the 2010s", "the early two thousands, the twenty tens"],
    ["Under 15s, over 60s", "Under fifteens, over sixties"],
    ["Class for over 50s and under 15s", "Class for over fifties and under fifteens"],
    ["hold for under 30s, rest over 60s", "hold for under thirty seconds, rest over sixty seconds"],
    ["Take the 20s, or a pair of 22.5s", "Take the twenties, or a pair of twenty-two point fives"],
    ["Get the 20s off the rack", "Get the twenties off the rack"],
    ["the 6s", "the sixes"],
    ["40s on, 20s off, the 40s on, then the 20s off", "forty seconds on, twenty seconds off, the forty seconds on, then the twenty seconds off"],
    ["hold 30s, 30s rest, the 30s rest", "hold thirty seconds, thirty second rest, the thirty second rest"],
    ["Hold for 30s, then 40s and 50s", "Hold for thirty seconds, then forty seconds and fifty seconds"],
  ])("tells ages, decades and weights from seconds: %s", (written, said) => {
    expect(spokenForm(written)).toBe(said);
  });

  it.each([
    ["2L", "two litres"],
    ["1 L, drink 2 L a day", "one litre, drink two litres a day"],
    ["2 L of water", "two litres of water"],
    ["a 20 L bag", "a twenty litre bag"],
    ["10L/10R", "ten left ten right"],
    ["3 L, then 3 R", "three left, then three right"],
    ["8 L, then switch", "eight left, then switch"],
  ])("tells litres from the left side: %s", (written, said) => {
    expect(spokenForm(written)).toBe(said);
  });

  it.each([
    ["Mr. Hill and Mrs. Brown, with Dr. Low.", "Mister Hill and Missus Brown, with Doctor Low."],
    ["Prof. Hill. Then St. Anne.", "Professor Hill. Then Saint Anne."],
    ["On Elm St. we run. Turn into Oak St. Then rest.", "On Elm Street we run. Turn into Oak Street. Then rest."],
    ["See Ep. 4, Pt. 2, Vol. 3, p. 4 and Ex. 5 of Wk. 3.", "See episode four, part two, volume three, page four and exercise five of week three."],
    ["J. R. Hill", "J R Hill"],
    ["Stand at mark A. Then turn.", "Stand at mark A. Then turn."],
    ["R. knee, L. arm", "right knee, left arm"],
    ["10 lb. plates, a 12 kg. bell", "ten pound plates, a twelve kilo bell"],
    ["Use 12 kg. Then rest 5 min. Then go.", "Use twelve kilos. Then rest five minutes. Then go."],
    ["walk 40 m. turn round", "walk forty metres. turn round"],
    ["Max. 3 sets, approx. 10 kg", "Max three sets, about ten kilos"],
    ["Do 8 ea. Then 3 rds. Rest.", "Do eight each. Then three rounds. Rest."],
    ["The answer is no. 3 sets is plenty.", "The answer is no. three sets is plenty."],
    ["I said no. (5 were left.)", "I said no. five were left."],
    ["On Mar. 4, at 6 a.m. we film.", "On March fourth, at six A M we film."],
  ])("keeps the stops that end a sentence, and no others: %s", (written, said) => {
    expect(spokenForm(written)).toBe(said);
  });

  it.each([
    ["STOP IF IT HURTS", "STOP IF IT HURTS"],
    ["ASK A DOCTOR WHO KNOWS", "ASK A DOCTOR WHO KNOWS"],
    ["I AM strong, do IT now", "I AM strong, do IT now"],
    ["roll the IT band, the WHO says, the AM session, ROLL THE IT BAND", "roll the I T band, the W H O says, the A M session, ROLL THE I T BAND"],
    ["OHP, PE, FYI, RFESS, the US", "O H P, P E, F Y I, R F E S S, the U S"],
    ["ACLs, MCL's, PRs, two 1RMs", "A C Ls, M C L's, P Rs, two one rep maxes"],
    ["She works in IT", "She works in I T"],
    ["STOP AT RPE 8", "STOP AT R P E eight"],
    ["DOMS, AMRAP", "DOMS, AMRAP"],
  ])("spells initials and no words in capitals: %s", (written, said) => {
    expect(spokenForm(written)).toBe(said);
  });

  it.each([
    ["Go to example.com/trail. Then rest.", "Go to example dot com slash trail. Then rest."],
    ["https://www.example.com/a-b?week=3", "example dot com slash a dash b question mark week equals three"],
    ["www.example.org, coach@example.com", "example dot org, coach at example dot com"],
    ["10 kg.Then rest, e.g. a box", "ten kilos.Then rest, for example a box"],
    ["8 reps @ 20 kg, hands/feet", "eight reps at twenty kilos, hands or feet"],
  ])("reads addresses out: %s", (written, said) => {
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
    ["US$40, $5k, $1.5k, £2k", "forty U S dollars, five thousand dollars, one thousand five hundred dollars, two thousand pounds"],
    ["0.5 s pause, wait 0.5 s", "half-second pause, wait half a second"],
    ["A 1/4 squat, a 3/4 turn", "A quarter squat, a three quarters turn"],
    ["the 60 cm one, 60 cm one way", "the sixty centimetre one, sixty centimetres one way"],
    ["a 50 mm lens", "a fifty millimetre lens"],
    ["a 16kg/35lb bell", "a sixteen kilo or thirty-five pound bell"],
    ["lb for lb, 2 g per kg, in kg", "pound for pound, two grams per kilo, in kilos"],
    ["1 000 m, 10\u202f500 steps", "one thousand metres, ten thousand five hundred steps"],
    ["b/w sets, b/c it helps, w/c 3 May", "between sets, because it helps, week commencing the third of May"],
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
    ["Hold for 1:30, rest 0:45", "Hold for one minute thirty, rest forty-five seconds"],
    ["0:20 plank, a 1:30 hold", "twenty second plank, a one minute thirty hold"],
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
    ["The 4th of March, on the 5th of May", "The fourth of March, on the fifth of May"],
    ["on 4 March. Bring a friend.", "on the fourth of March. Bring a friend."],
    ["on 4 Mar. We start.", "on the fourth of March. We start."],
    ["21.03.2027, 03/21/2027, 03/03/2027", "the twenty-first of March, twenty twenty-seven, the twenty-first of March, twenty twenty-seven, the third of March, twenty twenty-seven"],
    ["04/03/2027", "four three twenty twenty-seven"],
    ["In 2019 I ran, since 2021 we train", "In twenty nineteen I ran, since twenty twenty-one we train"],
    ["in 2000 to 3000 steps", "in two thousand to three thousand steps"],
    ["Sat 4 March, Sun 9:00, Wed 6 pm", "Saturday the fourth of March, Sunday nine o'clock, Wednesday six P M"],
    ["Mon-Fri, Mon/Wed/Fri", "Monday to Friday, Monday, Wednesday, Friday"],
    ["Sat down in the sun", "Sat down in the sun"],
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

  it.each([
    ["Sat ) Sat", "Saturday, Saturday"],
    ["open Mon (Tue) – Wed", "open Monday, Tuesday, Wednesday"],
    ["in Mar. £1.50 a visit", "in Mar one pound fifty a visit"],
  ])("says it at once, not at the second reading: %s", (written, said) => {
    expect(spokenForm(written)).toBe(said);
    expect(spokenForm(said)).toBe(said);
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
