import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { countingIds } from "../../../../shared/episode";
import { importNotes, type Imported } from "../../../../shared/imports";
import { lostWords } from "../../../corpus/imports/score";

/** Invented notes as coaches type them, each with its draft: "# exercise or kind: title", its rows, and "? " what is listed of them. */
const CASES = readFileSync(join(import.meta.dirname, "as-typed.txt"), "utf8").split(/^=== /m).slice(1).map((text) => {
  const [, name = "", notes = "", draft = ""] = /^(.*)\n([\s\S]*?)\n--> draft\n([\s\S]*?)\s*$/.exec(text) ?? [];
  return [name, notes, draft] as const;
});

const draftOf = ({ episode, notUnderstood }: Imported): string[] => [
  ...(episode.title === "" ? [] : [`title: ${episode.title}`]),
  ...episode.blocks.flatMap(({ kind, exercise, title, sets, lines, alternates }) => [
    `# ${exercise ?? kind}: ${title}`, ...sets.map(({ role, text }) => `${role === "working" ? "sets" : role}: ${text}`),
    ...lines.map((line) => `${line.kind}: ${line.text}`), ...alternates.map(({ text }) => `if taken: ${text}`),
  ]),
  ...notUnderstood.filter(({ reason }) => reason !== "comment").map(({ text }) => `? ${text}`),
];

describe("notes as they are typed", () => {
  it("are many", () => {
    expect(CASES.length).toBeGreaterThan(40);
  });

  it.each(CASES)("become a draft: %s", (_, notes, draft) => {
    const read = importNotes(notes, countingIds("i-"));
    expect(read && draftOf(read)).toEqual(draft.split("\n"));
    // Dots between a name and its figures are no part of a word.
    const source = notes.replace(/\.{3}/g, " ");
    expect(read && lostWords(source, read)).toEqual([]);
  });
});
