import { $getRoot } from "lexical";
import { describe, expect, it } from "vitest";
import { $copiedText, $paste, kindOfTitle, readNotes } from "../../../../renderer/editor/clipboard";
import { $heads } from "../../../../renderer/editor/rows";
import { demoEpisode } from "../../../../shared/episode";
import { act, episodeOf, lines, sheetWith } from "./sheet-harness";

describe("readNotes", () => {
  it.each([
    ["cue: elbows in", [{ type: "row", word: "cue", text: "elbows in" }]],
    ["- Avoid: leaning back", [{ type: "row", word: "avoid", text: "leaning back" }]],
    ["1. Goblet squat", [{ type: "block", kind: "exercise", title: "Goblet squat", exercise: "goblet-squat" }]],
    ["Warm-up:", [{ type: "block", kind: "warm-up", title: "Warm-up", exercise: null }]],
    ["3 x 8-10 @ 22 kg", [{ type: "row", word: "sets", text: "3 x 8-10 @ 22 kg" }]],
    ["just a thought", [{ type: "row", word: null, text: "just a thought" }]],
    ["\r\n\n", []],
  ])("reads %j", (text, pieces) => {
    expect(readNotes(text)).toEqual(pieces);
  });

  it("cuts a very long paragraph at a sentence and drops nothing", () => {
    const long = "A sentence of some length. ".repeat(200).trim();
    const found = readNotes(long).map((piece) => (piece.type === "row" ? piece.text : ""));
    expect(found.length).toBeGreaterThan(2);
    expect(found.join(" ")).toBe(long);
  });
});

describe("kindOfTitle", () => {
  it.each([["Cool-down", "cool-down"], ["OPENING", "opening"], ["outro", "closing"], ["goblet squats", "exercise"]])("takes %s for %s", (title, kind) => {
    expect(kindOfTitle(title)?.kind).toBe(kind);
  });
  it("takes an unknown title for nothing", () => {
    expect(kindOfTitle("Why packs hurt")).toBeNull();
  });
});

describe("paste", () => {
  it("turns notes on an empty page into blocks and lines", () => {
    const editor = sheetWith();
    act(editor, () => {
      $getRoot().getFirstChild()?.selectEnd();
      $paste("Opening\nsay: Hello.\nGoblet squat\n3 x 10 @ 20 kg\ncue: Elbows inside the knees\nsomething loose");
    });
    expect(lines(editor)).toEqual(["# Opening", "say: Hello.", "# Goblet squat", "sets: 3 x 10 @ 20 kg", "cue: Elbows inside the knees", "cue: something loose"]);
    expect(episodeOf(editor).blocks.map((block) => [block.kind, block.exercise])).toEqual([["opening", null], ["exercise", "goblet-squat"]]);
  });

  it("gives back the blocks that were copied, under new ids", () => {
    const editor = sheetWith(demoEpisode);
    let copied = "";
    act(editor, () => {
      $getRoot().select(0, $getRoot().getChildrenSize());
      const first = $getRoot().getFirstDescendant();
      const last = $getRoot().getLastDescendant();
      if (!first || !last) throw new Error("empty sheet");
      const selection = first.selectStart();
      selection.focus.set(last.getKey(), last.getTextContentSize(), "text");
      copied = $copiedText();
    });
    const other = sheetWith();
    act(other, () => {
      $getRoot().getFirstChild()?.selectEnd();
      $paste(copied);
    });
    expect(lines(other)).toEqual(lines(editor));
    const ids = new Set(episodeOf(other).blocks.map((block) => block.id));
    expect(demoEpisode.blocks.some((block) => ids.has(block.id))).toBe(false);
  });

  it("puts a single phrase into the line it lands in", () => {
    const editor = sheetWith(demoEpisode);
    act(editor, () => {
      $heads()[0]?.selectEnd();
      $paste(" again");
    });
    expect(lines(editor)[0]).toBe("# Opening again");
  });
});
