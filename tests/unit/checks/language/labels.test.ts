import { describe, expect, it } from "vitest";
import type { CueInput, CueLabel } from "../../../../shared/checks";
import { analyse, readGrammar } from "../../../../shared/checks/language/grammar";
import { LABEL_READERS } from "../../../../shared/checks/language/grammar/labels";
import { CUE_LABELS } from "../../../../shared/checks";

const read = (line: CueInput): CueLabel[] => [...readGrammar(analyse(line.text), line).found];
const input = (text: string, fields: Partial<CueInput>): CueInput => ({ text, family: "general", slot: "cue", audience: "general", exercise: null, ...fields });

it("every label has its reader, in the order of the list", () => {
  expect(LABEL_READERS.map(({ label }) => label)).toEqual([...CUE_LABELS]);
});

describe.each(LABEL_READERS.map((reader) => [reader.label, reader] as const))("%s", (label, { patterns, habits = [], silent }) => {
  it.each([...patterns, ...habits].map((pattern) => [pattern.example, pattern] as const))("reads: %s", (example, pattern) => {
    const found = read(input(example, { family: pattern.family ?? pattern.only?.[0] ?? "general", audience: pattern.audience?.[0] ?? "general" }));
    expect(found.map((each) => each.label)).toContain(label);
    for (const { start, end } of found) expect(example.slice(start, end).trim()).not.toBe("");
  });

  it.each(silent.map(({ text, family }) => [text, family] as const))("is silent on: %s", (text, family) => {
    expect(read(input(text, { family: family ?? "general" })).map((each) => each.label)).toEqual([]);
  });

  it("has an example of its own for every pattern", () => {
    const examples = [...patterns, ...habits].map(({ example }) => example);
    expect(new Set(examples).size).toBe(examples.length);
    expect(silent.length).toBeGreaterThanOrEqual(3);
  });
});
