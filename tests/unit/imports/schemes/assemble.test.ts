import { describe, expect, it } from "vitest";
import { agreed } from "../../../../shared/imports/schemes/agree";
import { assemble } from "../../../../shared/imports/schemes/assemble";
import { made, type Ordered, type SchemeRead } from "../../../../shared/imports/schemes/compose";
import { parseSetLine, type Scheme } from "../../../../shared/training";

type Said = Partial<Scheme> & { readonly ramp?: true };

/** Figures in the order they are said, a word apart. */
const figures = (...said: readonly Said[]): Ordered[] => said.map(({ ramp, ...says }, at) => ({ says, rank: "part", about: ramp ? "ramp-up" : "working", either: false, remark: null, from: at, to: at, sentence: 0 }));
const reps = (count: number): Said => ({ repsMin: count, repsMax: count });
const load = (value: number): Said => ({ load: { value, unit: "kg" } });
const lines = ({ sets }: SchemeRead): string[] => sets.map(({ role, text }) => (role === "ramp-up" ? `ramp ${text}` : text));

/** Places as signs: [ begins a line, + goes on with it, * holds for all lines, - is an aside. */
const placesIn = (signs: string): number[] => [...signs].map((sign) => "-[+*".indexOf(sign));

describe("set lines from single figures", () => {
  it.each<readonly [string, string, readonly Said[], readonly string[]]>([
    ["sets, reps and a load are one line", "[++", [{ sets: 3 }, reps(10), load(60)], ["3 x 10 @ 60 kg"]],
    ["a figure said twice is the same line", "[++", [reps(10), { sets: 3 }, reps(10)], ["3 x 10"]],
    ["other loads with other reps are lines of one set each", "[+[+", [reps(15), load(100), reps(12), load(120)], ["1 x 15 @ 100 kg", "1 x 12 @ 120 kg"]],
    ["loads after one figure of reps share it", "[+[[", [reps(5), load(60), load(70), load(80)], ["1 x 5 @ 60 kg", "1 x 5 @ 70 kg", "1 x 5 @ 80 kg"]],
    ["as many reps as sets are a ladder", "[+++", [{ sets: 3 }, reps(10), reps(8), reps(6)], ["10/8/6"]],
    ["other reps that are no ladder are not taken", "[++", [{ sets: 3 }, reps(10), reps(20)], ["3 x 10"]],
    ["a range says more than one of its ends", "[++", [{ sets: 3 }, reps(10), { repsMin: 8, repsMax: 10 }], ["3 x 8-10"]],
    ["what holds for all goes with every line", "[+[+*", [reps(5), load(60), reps(3), load(80), { restSeconds: 120 }], ["1 x 5 @ 60 kg, rest 2 min", "1 x 3 @ 80 kg, rest 2 min"]],
    ["a rest said last is taken after the sets before it too", "[+[++", [reps(5), load(60), reps(3), load(80), { restSeconds: 120 }], ["1 x 5 @ 60 kg, rest 2 min", "1 x 3 @ 80 kg, rest 2 min"]],
    ["a rest of several sets is theirs alone", "[+[+++", [reps(3), load(140), { sets: 3 }, reps(5), load(115), { restSeconds: 180 }], ["1 x 3 @ 140 kg", "3 x 5 @ 115 kg, rest 3 min"]],
    ["a weight stays on the bar until another is told", "[+[[+", [reps(10), load(60), reps(8), reps(6), load(70)], ["1 x 10 @ 60 kg", "1 x 8 @ 60 kg", "1 x 6 @ 70 kg"]],
    ["a count that is the number of lines counts them", "*[+[+", [{ sets: 2 }, reps(10), load(14), reps(8), load(16)], ["1 x 10 @ 14 kg", "1 x 8 @ 16 kg"]],
    ["of more sets than are told one by one the first was done more often", "*[+[+", [{ sets: 3 }, reps(12), load(10), reps(20), load(6)], ["2 x 12 @ 10 kg", "1 x 20 @ 6 kg"]],
    ["a number of sets behind as many single ones counts them", "[+[+[++", [load(35), reps(12), load(40), reps(10), load(45), reps(8), { sets: 3 }], ["1 x 12 @ 35 kg", "1 x 10 @ 40 kg", "1 x 8 @ 45 kg"]],
    ["another number of sets behind them is of the last", "[+[+[++", [load(35), reps(12), load(40), reps(10), load(45), reps(8), { sets: 4 }], ["1 x 12 @ 35 kg", "1 x 10 @ 40 kg", "4 x 8 @ 45 kg"]],
    ["of two, the number of sets is of the last", "[+[++", [load(140), reps(3), load(120), reps(5), { sets: 2 }], ["1 x 3 @ 140 kg", "2 x 5 @ 120 kg"]],
    ["a top set and the sets after it keep their counts", "[+[++", [load(140), reps(3), { sets: 3 }, reps(5), load(117.5)], ["1 x 3 @ 140 kg", "3 x 5 @ 117.5 kg"]],
    ["the way up is told apart", "[+[++", [{ ...reps(8), ramp: true }, { ...load(40), ramp: true }, { sets: 3 }, reps(5), load(80)], ["ramp 1 x 8 @ 40 kg", "3 x 5 @ 80 kg"]],
    ["an aside is left out", "[+-", [{ sets: 3 }, reps(10), reps(20)], ["3 x 10"]],
    ["who holds two dumbbells in one set holds two in all", "[+[+", [reps(12), { load: { value: 16, unit: "kg", perHand: true } }, reps(10), load(14)], ["1 x 12 @ 16 kg each hand", "1 x 10 @ 14 kg each hand"]],
    ["several sets told again are the same", "[++[++", [{ sets: 3 }, reps(10), load(40), { sets: 3 }, reps(10), load(40)], ["3 x 10 @ 40 kg"]],
    ["single sets that are alike are as many", "[+[+", [reps(10), load(40), reps(10), load(40)], ["1 x 10 @ 40 kg", "1 x 10 @ 40 kg"]],
    ["a number of sets before as many single ones counts them", "[++[+[+", [{ sets: 3 }, load(40), reps(12), load(50), reps(10), load(55), reps(8)], ["1 x 12 @ 40 kg", "1 x 10 @ 50 kg", "1 x 8 @ 55 kg"]],
    ["right before its reps a number of sets is of them", "[++[+[+", [{ sets: 3 }, reps(5), load(100), load(80), reps(8), load(60), reps(10)], ["3 x 5 @ 100 kg", "1 x 8 @ 80 kg", "1 x 10 @ 60 kg"]],
    ["a rest alone begins no line", "[+[", [reps(10), load(40), { restSeconds: 90 }], ["1 x 10 @ 40 kg, rest 90 s"]],
    ["sets alone make no line", "[", [{ sets: 3 }], []],
  ])("%s", (_, signs, said, wanted) => {
    expect(lines(assemble(figures(...said), placesIn(signs), {}, {}))).toEqual(wanted);
  });

  it("takes what the circuit lends, and tells when no number of sets was heard", () => {
    expect(lines(assemble(figures(reps(10)), placesIn("["), { sets: 4, restSeconds: 30 }, {}))).toEqual(["4 x 10, rest 30 s"]);
    expect(lines(assemble([], [], { sets: 4, seconds: 40, restSeconds: 20 }, {}))).toEqual(["4 x 40 s, rest 20 s"]);
    expect(lines(assemble(figures(reps(10), reps(8), reps(6)), placesIn("[[["), { sets: 3 }, {}))).toEqual(["1 x 10", "1 x 8", "1 x 6"]);
    // Sets with weights of their own are as many as are told, two of them may be fewer than were done.
    expect(lines(assemble(figures(reps(12), load(10), reps(10), load(12), reps(8), load(14)), placesIn("[+[+[+"), { sets: 4 }, {}))).toEqual(["1 x 12 @ 10 kg", "1 x 10 @ 12 kg", "1 x 8 @ 14 kg"]);
    expect(lines(assemble(figures(reps(12), load(10), reps(20), load(6)), placesIn("[+[+"), { sets: 3 }, {}))).toEqual(["2 x 12 @ 10 kg", "1 x 20 @ 6 kg"]);
    const alone = assemble(figures(reps(10)), placesIn("["), {}, {});
    expect(lines(alone)).toEqual(["1 x 10"]);
    expect(alone.remarks.map(({ why }) => why)).toEqual(["No number of sets was heard; one was written."]);
  });

  it("lists work that was said and not taken", () => {
    expect(assemble(figures({ sets: 3 }, reps(10), reps(20)), placesIn("[+-"), {}, {}).remarks.map(({ why, isOpen }) => [why, isOpen])).toEqual([["A second scheme for the same exercise; the first one was taken.", true]]);
  });
});

const readOf = (...texts: readonly string[]): SchemeRead => ({
  sets: texts.flatMap((text) => {
    const read = parseSetLine(text);
    const set = read.ok ? made("working", read.scheme) : null;
    return set ? [set] : [];
  }),
  remarks: [],
});

describe("two readings of one exercise", () => {
  it("stand as the figures say where they differ", () => {
    expect(lines(agreed(readOf("3 x 10"), readOf("4 x 8"), false))).toEqual(["3 x 10"]);
  });

  it("stand as the phrases say where the figures gave no count, or nothing", () => {
    expect(lines(agreed(readOf("1 x 10"), readOf("4 x 10"), true))).toEqual(["4 x 10"]);
    expect(lines(agreed(readOf(), readOf("4 x 10"), true))).toEqual(["4 x 10"]);
  });
});
