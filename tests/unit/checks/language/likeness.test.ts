import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CUE_LABELS, readCue, type CueInput } from "../../../../shared/checks";
import { analyse, readGrammar } from "../../../../shared/checks/language/grammar";
import { featuresOf } from "../../../../shared/checks/language/likeness/features";
import { prohibitions } from "../../../../shared/checks/language/likeness/lessons";
import { opened } from "../../../../shared/checks/language/likeness/model";
import { nearest, shelved } from "../../../../shared/checks/language/likeness/nearest";
import { sensesOf } from "../../../../shared/checks/language/likeness/senses";
import { train, type Example } from "../../../../shared/checks/language/likeness/train";
import { digestOf } from "../../../../shared/checks/language/likeness/training";
import weights from "../../../../shared/checks/language/likeness/weights.json";
import type { JudgedLine } from "../../../../shared/checks/language/types";

const line = (text: string, fields: Partial<CueInput> = {}): CueInput => ({ text, family: "general", slot: "cue", audience: "general", exercise: null, ...fields });
const linesOf = (path: string): (JudgedLine & { readonly difficulty: string })[] =>
  readFileSync(path, "utf8").trim().split("\n").map((row) => JSON.parse(row) as JudgedLine & { difficulty: string });
const HOME = join(__dirname, "../../../../shared/checks/language/likeness/corpus");
const corpus = readdirSync(HOME).sort().flatMap((name) => linesOf(join(HOME, name)));
const heldOut = linesOf(join(__dirname, "../../../corpus/cues/held-out.jsonl"));

describe("senses", () => {
  const senses = (...words: string[]): (readonly string[])[] => sensesOf(words.map((word) => ({ word, lemma: word })));
  it("reads a word by its own form, its lemma or without its ending", () => {
    expect(senses("knees")[0]).toContain("KNEE");
    expect(sensesOf([{ word: "swung", lemma: "swing" }])[0]).toContain("BOUNCE");
    expect(senses("hammocks")[0]).toContain("BENDY");
    expect(senses("zxqv")[0]).toEqual([]);
  });
  it("reads a phrase at its first word", () => {
    expect(senses("there", "is", "no", "need")[2]).toContain("NONEED");
    expect(senses("no", "nonsense")[0]).not.toContain("SHAME");
  });
});

describe("features of a line", () => {
  const of = (input: CueInput): ReadonlySet<string> => {
    const text = analyse(input.text);
    return featuresOf(text, input, readGrammar(text, input));
  };
  it("hold words, senses, place and what the grammar reader said", () => {
    const found = of(line("Let your back round under the bar.", { family: "hinge", audience: "older" }));
    for (const name of ["l:back", "LUMBAR", "family:hinge", "audience:older", "grammar:spine-under-load", "hinge LOAD", "older LOAD"]) expect(found).toContain(name);
  });
  it("tell a fault that is turned down from one that is asked for", () => {
    const found = of(line("Don't let your back round under the bar.", { family: "hinge" }));
    expect(found).toContain("turned down:spine-under-load");
    expect(found).toContain("n:back");
    expect(found).not.toContain("grammar:spine-under-load");
  });
});

describe("training", () => {
  const example = (words: string, ...labels: Example["labels"][number][]): Example => ({ features: new Set(words.split(" ")), labels });
  const lessons = [
    ...Array.from({ length: 30 }, (_, i) => example(`bounce chest n${i % 5}`, "ballistic-or-bounce")),
    ...Array.from({ length: 30 }, (_, i) => example(`bounce never n${i % 5}`)),
    ...Array.from({ length: 30 }, (_, i) => example(`fat belly gone n${i % 5}`, "claim-spot-reduction", "claim-guarantee")),
  ];
  const read = (words: string): Record<string, number> => {
    const odds = opened(train(lessons)).probabilities(new Set(words.split(" ")));
    return Object.fromEntries(CUE_LABELS.map((label, i) => [label, odds[i] ?? 0]));
  };
  it("learns what goes with a label and what takes it away", () => {
    expect(read("bounce chest")["ballistic-or-bounce"]).toBeGreaterThan(0.8);
    expect(read("bounce never")["ballistic-or-bounce"]).toBeLessThan(0.2);
  });
  it("shares a line of two labels between them", () => {
    const { "claim-spot-reduction": spot = 0, "claim-guarantee": sure = 0 } = read("fat belly gone");
    expect(spot).toBeGreaterThan(0.4);
    expect(sure).toBeGreaterThan(0.4);
  });
  it("comes to the same weights from the same lines", () => {
    expect(train(lessons)).toEqual(train(lessons));
  });
  it("gives odds that never exceed one together, for any features", () => {
    const reader = opened(train(lessons));
    fc.assert(fc.property(fc.array(fc.constantFrom("bounce", "chest", "never", "fat", "belly", "gone", "unknown")), (names) => {
      const odds = [...reader.probabilities(new Set(names))];
      expect(odds.every((each) => each >= 0)).toBe(true);
      expect(odds.reduce((sum, each) => sum + each, 0)).toBeLessThanOrEqual(1 + 1e-9);
    }));
  });
  it("forbids plain orders only", () => {
    const judged = (text: string): JudgedLine => ({ ...line(text), labels: ["ballistic-or-bounce"] });
    const texts = prohibitions([judged("Bounce the bar off your chest."), judged("It bounces, and that is fine."), judged("Bounce it. Then bounce it again.")]).map(({ text }) => text);
    expect(texts.some((text) => text.endsWith("bounce the bar off your chest."))).toBe(true);
    expect(texts.some((text) => /fine|again/.test(text) && /bounce it|it bounces/i.test(text))).toBe(false);
  });
});

it("the nearest lines share the most words and senses", () => {
  const shelf = shelved(["Double the plates today.", "Pull your head forward.", "Twice the plates, same day."]);
  expect(nearest("Put double the plates on.", shelf, 2)[0]).toBe("Double the plates today.");
  expect(nearest("", shelf, 1)).toHaveLength(1);
});

describe("the trained reader", () => {
  it("was trained on the corpus as it stands", () => {
    // Out of date? node electron/start-up/likeness.mjs
    expect(weights.digest).toBe(digestOf(corpus));
  });
  it("has at least half of its lines acceptable, and every label in hundreds", () => {
    expect(corpus.filter(({ labels }) => labels.length === 0).length / corpus.length).toBeGreaterThanOrEqual(0.5);
    for (const label of CUE_LABELS) expect(corpus.filter(({ labels }) => labels.includes(label)).length, label).toBeGreaterThanOrEqual(300);
  });
  it("never saw the held-out lines", () => {
    const seen = new Set(corpus.map(({ text }) => text.toLowerCase()));
    expect(heldOut.filter(({ text }) => seen.has(text.toLowerCase()))).toEqual([]);
  });
});

describe("both readers together, on lines of a writer the model never saw", () => {
  const answers = heldOut.filter(({ difficulty }) => difficulty !== "disputed").map((each) => ({ labels: each.labels, found: readCue(each) }));
  const right = answers.flatMap(({ labels, found }) => found.filter(({ label }) => labels.includes(label))).length;

  it("are seldom wrong", () => {
    expect(right / answers.flatMap(({ found }) => found).length).toBeGreaterThanOrEqual(0.95);
    const acceptable = answers.filter(({ labels }) => labels.length === 0);
    expect(acceptable.filter(({ found }) => found.length > 0).length / acceptable.length).toBeLessThanOrEqual(0.02);
  });
  it("find most of what there is, far more than the grammar reader alone", () => {
    const meant = answers.flatMap(({ labels }) => labels).length;
    const plain = heldOut.filter(({ difficulty }) => difficulty !== "disputed").flatMap((each) => readGrammar(analyse(each.text), each).found.filter(({ label }) => each.labels.includes(label))).length;
    expect(right / meant).toBeGreaterThanOrEqual(0.7);
    expect(right).toBeGreaterThan(plain * 1.5);
  });
  it("say which of them speaks", () => {
    const found = answers.flatMap((each) => each.found);
    for (const by of ["grammar", "likeness"]) expect(found.some((each) => each.by === by)).toBe(true);
  });
});
