import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { applyEdits, countingIds, demoEpisode, emptyBlock, emptyEpisode, episodeSchema, type Episode } from "../../../shared/episode";
import { editsOf, readReport, takeOver, writeReport, writeReportCode, type SessionReport } from "../../../shared/session-report";

const row = demoEpisode.blocks[2]?.id ?? "";
const [side = "", rear = ""] = demoEpisode.blocks[2]?.lines.filter(({ kind }) => kind === "shot").map(({ id }) => id) ?? [];

const report = (fields: Partial<SessionReport> = {}): SessionReport => ({
  format: "repwright-session", version: 1, episode: demoEpisode.id, title: "Rows, presses, carries", plan: "abc", units: "kg",
  sets: [
    { block: row, set: 1, role: "ramp-up", number: 1, seconds: 30, lifted: { load: 12, reps: 8, rir: null } },
    { block: row, set: 2, role: "working", number: 1, seconds: 44, lifted: { load: 22, reps: 10, rir: 2 } },
    { block: row, set: 3, role: "working", number: 2, seconds: 44, lifted: { load: 22.5, reps: 9, rir: null } },
    { block: row, set: 4, role: "working", number: 3, seconds: 40, lifted: null },
  ],
  shots: [{ block: row, shot: side, set: 3, got: true }, { block: row, shot: rear, set: null, got: false }],
  blocks: [], extras: [], ...fields,
});

const blockOf = (episode: Episode) => episode.blocks.find(({ id }) => id === row);

describe("what came back, as edits", () => {
  it("puts loads under the number of the working set, and answered shots under their lines", () => {
    const after = applyEdits(demoEpisode, editsOf(report(), demoEpisode));
    expect(blockOf(after)?.actuals).toEqual([{ set: 1, load: 22, reps: 10, rir: 2 }, { set: 2, load: 22.5, reps: 9, rir: null }]);
    expect(blockOf(after)?.filming?.filmed).toEqual([{ shot: side, set: 3, got: true }, { shot: rear, set: null, got: false }]);
    expect(episodeSchema.safeParse(after).success).toBe(true);
  });

  it("changes nothing the second time", () => {
    const after = applyEdits(demoEpisode, editsOf(report(), demoEpisode));
    expect(editsOf(report(), after)).toEqual([]);
  });

  it("keeps what it does not speak of: other sets, other shots, moved marks", () => {
    const marks = [{ mark: "side full", bearing: 80, distance: 2.4 }];
    const before = applyEdits(demoEpisode, [{ type: "set-block", block: row, fields: { actuals: [{ set: 3, load: 20, reps: 8, rir: 1 }], filming: { marks, filmed: [{ shot: "gone-by-now", set: 2, got: true }, { shot: rear, set: 4, got: true }] } } }]);
    const after = blockOf(applyEdits(before, editsOf(report(), before)));
    expect(after?.actuals.map(({ set }) => set)).toEqual([1, 2, 3]);
    expect(after?.filming).toEqual({ marks, filmed: [{ shot: "gone-by-now", set: 2, got: true }, { shot: side, set: 3, got: true }, { shot: rear, set: null, got: false }] });
  });

  it("never removes or moves a block; a station that was taken is told", () => {
    const { edits, summary } = takeOver(report({ blocks: [{ block: row, what: "dropped", words: "" }] }), demoEpisode);
    expect(edits.map(({ type }) => type)).toEqual(["set-block"]);
    expect(summary.told).toEqual([{ block: "Chest-supported row", words: "was left out or ended early" }]);
  });

  it("says what it puts in the place of what was there", () => {
    const before = applyEdits(demoEpisode, [{ type: "set-block", block: row, fields: { actuals: [{ set: 1, load: 20, reps: 10, rir: null }, { set: 2, load: 22.5, reps: 9, rir: null }], filming: { marks: [], filmed: [{ shot: rear, set: 4, got: true }] } } }]);
    const { summary } = takeOver(report(), before);
    expect(summary.logged.map(({ words }) => words)).toEqual(["set 1: 22 kg, 10 reps, 2 in reserve instead of 20 kg, 10 reps", "set 2: 22.5 kg, 9 reps"]);
    expect(summary.lost[0]?.words).toMatch(/^Rear, medium, .+ \(was in the box before\)$/);
  });

  it("lists what has lost its place: a block, a shot, a set that is gone since", () => {
    const shorter = applyEdits(demoEpisode, [
      { type: "remove-line", line: rear },
      { type: "set-set", set: demoEpisode.blocks[2]?.sets[1]?.id ?? "", fields: { text: "1 x 8 @ 22 kg" } },
    ]);
    const { summary } = takeOver(report({ sets: [...report().sets, { block: "gone", set: 1, role: "working", number: 1, seconds: null, lifted: { load: 5, reps: 5, rir: null } }] }), shorter);
    expect(summary.noPlace).toEqual([
      "Chest-supported row has no set 2 any more; left out: 22.5 kg, 9 reps.",
      "A block that was done is not in the episode any more: 1 logged set and 0 shots of it are left out.",
      "Chest-supported row: a shot that was lost is not in the episode any more.",
    ]);
    expect(summary.logged).toEqual([{ block: "Chest-supported row", words: "set 1: 22 kg, 10 reps, 2 in reserve" }]);
  });

  it("turns loads into the unit the session has now", () => {
    const pounds = applyEdits(demoEpisode, [{ type: "set-facts", fields: { session: { ...demoEpisode.session, units: "lb" } } }]);
    expect(blockOf(applyEdits(pounds, editsOf(report(), pounds)))?.actuals[0]?.load).toBe(48.5);
  });

  it("gives an episode that can be saved, and no edits the second time, whatever a report says", () => {
    const newId = countingIds("x-");
    const episode = emptyEpisode(newId, { id: "e", blocks: [emptyBlock(newId, "exercise", { id: "b", sets: [{ id: "s", role: "working", text: "3 x 5 @ 60 kg" }], lines: [{ id: "l", kind: "shot", text: "side, full" }, { id: "k", kind: "cue", text: "up" }] })] });
    const id = fc.constantFrom("b", "c");
    const lifted = fc.record({ load: fc.option(fc.integer({ min: 0, max: 4000 }).map((n) => n / 2)), reps: fc.option(fc.nat(1000)), rir: fc.option(fc.nat(10)) });
    const any = fc.record({
      sets: fc.array(fc.record({ block: id, set: fc.integer({ min: 1, max: 9 }), role: fc.constantFrom("working" as const, "ramp-up" as const), number: fc.integer({ min: 1, max: 5 }), seconds: fc.constant(null), lifted: fc.option(lifted) })),
      shots: fc.array(fc.record({ block: id, shot: fc.constantFrom("l", "k", "m"), set: fc.option(fc.integer({ min: 1, max: 9 })), got: fc.boolean() })),
      units: fc.constantFrom("kg" as const, "lb" as const),
    });
    fc.assert(fc.property(any, (fields) => {
      const made = report({ ...fields, episode: "e" });
      const after = applyEdits(episode, editsOf(made, episode));
      expect(episodeSchema.safeParse(after).success).toBe(true);
      expect(editsOf(made, after)).toEqual([]);
    }));
  });
});

describe("reading what came back", () => {
  it("takes the file and the code alike", () => {
    for (const text of [writeReport(report()), `\ufeff${writeReport(report())}`, writeReportCode(report()), `\n ${writeReportCode(report())} \n`]) expect(readReport(text, demoEpisode)).toEqual({ ok: true, report: report() });
  });

  const whole = writeReport(report());
  it.each([
    ["nothing", " \n ", "empty", /nothing in it/],
    ["some words", "Set 1 went well", "not-a-report", /nothing a phone sheet handed back/],
    ["another JSON file", '{"format":"repwright-episode","version":2}', "not-a-report", /nothing a phone sheet/],
    ["half a file", whole.slice(0, 200), "damaged", /cut short/],
    ["a file with a wrong number", whole.replace('"load": 22,', '"load": -22,'), "damaged", /At sets\[1\]\.lifted\.load: /],
    ["a code cut short", writeReportCode(report()).slice(0, -20), "damaged", /damaged: a part is missing/],
    ["a newer file", whole.replace('"version": 1', '"version": 2'), "newer-version", /version 2, and this one reads 1/],
    ["a newer code", writeReportCode(report()).replace("RWS1", "RWS3"), "newer-version", /newer Repwright/],
    ["far too much", "x".repeat(300_000), "too-big", /far more than a session/],
    ["bytes that are no text", String.fromCharCode(0, 1, 2, 255).repeat(50), "not-a-report", /nothing a phone sheet/],
  ])("refuses %s with a sentence", (_, text, code, words) => {
    expect(readReport(text, demoEpisode)).toEqual({ ok: false, code, message: expect.stringMatching(words) });
  });

  it("tells a code of another episode from a damaged one, by its title", () => {
    const other = report({ episode: "another", title: "Legs" });
    for (const text of [writeReport(other), writeReportCode(other)]) {
      expect(readReport(text, demoEpisode)).toEqual({ ok: false, code: "other-episode", message: 'This is another episode\'s session: "Legs". Open that episode and take it over there.' });
    }
  });

  it("never throws, whatever is pasted", () => {
    fc.assert(fc.property(fc.oneof(fc.string(), fc.json(), fc.string().map((text) => `RWS1.${text}`)), (text) => void readReport(text, demoEpisode)));
  });
});
