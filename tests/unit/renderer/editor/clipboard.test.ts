import { createEmptyHistoryState, registerHistory } from "@lexical/history";
import { $getRoot, UNDO_COMMAND } from "lexical";
import { describe, expect, it } from "vitest";
import { $copiedText, $paste, kindOfTitle, readNotes } from "../../../../renderer/editor/clipboard";
import { $heads } from "../../../../renderer/editor/rows";
import { countingIds, demoEpisode, emptyEpisode } from "../../../../shared/episode";
import { importNotes } from "../../../../shared/imports";
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
    expect(lines(editor)).toEqual(["# Opening", "say: Hello.", "# Goblet squat", "sets: 3 x 10 @ 20 kg", "cue: Elbows inside the knees", "note: Something loose"]);
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

  const NOTES = "Leg day\n\nWarm up\n5 min bike\n\nGoblet squat 3x10 @ 16kg rest 90\nshot: side, full body\nTODO buy chalk\nSandbag shouldering 5x3 @ 50 kg\nCool down - hips, 2 min";

  it("reads notes on an empty page as the import reads them, in one undo step", () => {
    const editor = sheetWith();
    const stop = registerHistory(editor, createEmptyHistoryState(), 400);
    act(editor, () => {
      $getRoot().getFirstChild()?.selectEnd();
    });
    act(editor, () => $paste(NOTES));
    const read = importNotes(NOTES, countingIds("i-"));
    const episode = episodeOf(editor);
    expect(episode.title).toBe("Leg day");
    expect(episode.blocks.map(({ kind, exercise, title, sets, lines: rows }) => [kind, exercise, title, sets.map(({ text }) => text), rows.map(({ kind: word, text }) => [word, text])]))
      .toEqual(read?.episode.blocks.map(({ kind, exercise, title, sets, lines: rows }) => [kind, exercise, title, sets.map(({ text }) => text), rows.map(({ kind: word, text }) => [word, text])]));
    expect(lines(editor)).toEqual(["# Warm up", "note: 5 min bike", "# Goblet squat", "sets: 3x10 @ 16kg rest 90", "shot: side, full body", "note: TODO buy chalk", "# Sandbag shouldering", "sets: 5x3 @ 50 kg", "# Cool down", "note: Hips, 2 min"]);
    editor.dispatchCommand(UNDO_COMMAND, undefined);
    act(editor, () => undefined);
    expect([lines(editor), episodeOf(editor).title]).toEqual([["#"], ""]);
    stop();
  });

  it("keeps a title that the page has, and the one of the notes as a note", () => {
    const editor = sheetWith({ ...emptyEpisode(countingIds("e-")), title: "Stairs" });
    act(editor, () => {
      $getRoot().getFirstChild()?.selectEnd();
      $paste(NOTES);
    });
    expect(episodeOf(editor).title).toBe("Stairs");
    expect(lines(editor).slice(0, 3)).toEqual(["# Warm up", "note: Leg day", "note: 5 min bike"]);
  });

  it("takes no line after a shot for a shot, among blocks that are there", () => {
    const editor = sheetWith(demoEpisode);
    act(editor, () => {
      $heads()[0]?.selectEnd();
      $paste("shot: side full\nbuy chalk\nshot: front medium");
    });
    expect(lines(editor).slice(0, 4)).toEqual(["# Opening", "shot: side full", "note: buy chalk", "shot: front medium"]);
  });
});
