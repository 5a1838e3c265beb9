import { $createRangeSelection, $getRoot, $getSelection, $isElementNode, $isRangeSelection, $setSelection, DELETE_CHARACTER_COMMAND, KEY_ENTER_COMMAND, type LexicalEditor } from "lexical";
import { describe, expect, it } from "vitest";
import { $duplicateBlock, $joinBlock, $moveBlock, $removeBlock, JOIN_BLOCK_COMMAND, MOVE_BLOCK_COMMAND } from "../../../../renderer/editor/block/block-commands";
import { $findById, $heads, $isRow, $setRowWord } from "../../../../renderer/editor/rows";
import { countingIds, emptyBlock, emptyEpisode, newLine, type Episode } from "../../../../shared/episode";
import { act, episodeOf, lines, sheetWith } from "./sheet-harness";

const small = (): Episode => {
  const id = countingIds("k");
  return emptyEpisode(id, {
    blocks: [
      emptyBlock(id, "opening", { title: "Opening", lines: [newLine(id, "say", "Hello there.")] }),
      emptyBlock(id, "exercise", { title: "Goblet squat", sets: [{ id: id(), role: "working", text: "3 x 10" }], lines: [newLine(id, "cue", "Knees over toes"), newLine(id, "avoid", "Rushing")], alternates: [{ id: id(), text: "Box squat" }] }),
    ],
  });
};
const rowWith = (editor: LexicalEditor, text: string): string => editor.read(() => $getRoot().getChildren().find((node) => node.getTextContent() === text)?.getKey() ?? "");
const caret = (editor: LexicalEditor, text: string, at: number): void => {
  const key = rowWith(editor, text);
  act(editor, () => {
    const row = $getRoot().getChildren().find((node) => node.getKey() === key);
    if (!$isRow(row) && !$heads().some((head) => head.is(row))) throw new Error(`no row "${text}"`);
    const node = row && "getFirstChild" in row ? $getRoot().getChildren().find((n) => n.getKey() === key) : null;
    const selection = node?.selectStart();
    if (selection && at > 0) {
      selection.anchor.set(selection.anchor.key, at, selection.anchor.type);
      selection.focus.set(selection.focus.key, at, selection.focus.type);
    }
  });
};
const enter = (editor: LexicalEditor): void => act(editor, () => void editor.dispatchCommand(KEY_ENTER_COMMAND, null));
const backspace = (editor: LexicalEditor): void => act(editor, () => void editor.dispatchCommand(DELETE_CHARACTER_COMMAND, true));
const type = (editor: LexicalEditor, text: string): void => act(editor, () => {
  const selection = $getSelection();
  if ($isRangeSelection(selection)) selection.insertText(text);
});
const typeSlowly = (editor: LexicalEditor, text: string): void => [...text].forEach((letter) => type(editor, letter));

describe("Enter", () => {
  it("starts a first line under a head: sets for an exercise without any, cue when it has rows", () => {
    const editor = sheetWith(small());
    caret(editor, "Goblet squat", 12);
    enter(editor);
    expect(lines(editor)[3]).toBe("cue:");
  });

  it("splits a line in two of the same kind", () => {
    const editor = sheetWith(small());
    caret(editor, "Hello there.", 5);
    enter(editor);
    expect(lines(editor).slice(1, 3)).toEqual(["say: Hello", "say: there."]);
  });

  it("follows a set line with a cue", () => {
    const editor = sheetWith(small());
    caret(editor, "3 x 10", 6);
    enter(editor);
    expect(lines(editor).slice(3, 5)).toEqual(["sets: 3 x 10", "cue:"]);
  });

  it("takes a scheme typed without its word for a set line", () => {
    const editor = sheetWith(small());
    caret(editor, "Rushing", 7);
    enter(editor);
    type(editor, "2 x 8 @ 16 kg");
    enter(editor);
    expect(lines(editor).slice(2)).toEqual(["# Goblet squat", "sets: 3 x 10", "sets: 2 x 8 @ 16 kg", "cue:", "cue: Knees over toes", "avoid: Rushing", "if taken: Box squat"]);
  });

  it("on an empty line begins a new block, which takes the lines below", () => {
    const editor = sheetWith(small());
    caret(editor, "Knees over toes", 15);
    enter(editor);
    enter(editor);
    expect(lines(editor)).toEqual(["# Opening", "say: Hello there.", "# Goblet squat", "sets: 3 x 10", "cue: Knees over toes", "#", "avoid: Rushing", "if taken: Box squat"]);
    expect(episodeOf(editor).blocks).toHaveLength(3);
  });
});

describe("typing a kind's word and a colon", () => {
  it("changes the line's kind and takes the word away", () => {
    const editor = sheetWith(small());
    caret(editor, "Rushing", 7);
    enter(editor);
    typeSlowly(editor, "caution: dizzy? stop");
    expect(lines(editor)).toContain("caution: dizzy? stop");
  });

  it("moves a set line to the top of its block and an alternate to its end", () => {
    const editor = sheetWith(small());
    caret(editor, "Hello there.", 12);
    enter(editor);
    typeSlowly(editor, "sets: 1 x 5");
    expect(lines(editor).slice(0, 3)).toEqual(["# Opening", "sets: 1 x 5", "say: Hello there."]);
  });

  it("leaves a colon in the middle of words alone", () => {
    const editor = sheetWith(small());
    caret(editor, "Rushing", 7);
    typeSlowly(editor, ", say: slowly");
    expect(lines(editor)).toContain("avoid: Rushing, say: slowly");
  });
});

describe("Backspace", () => {
  it("joins a line with the one above", () => {
    const editor = sheetWith(small());
    caret(editor, "Rushing", 0);
    backspace(editor);
    expect(lines(editor)).toContain("# Goblet squat");
    expect(lines(editor).filter((line) => line.includes("Rushing"))).toHaveLength(1);
  });

  it("at the start of a block's first line or of its title changes nothing", () => {
    const editor = sheetWith(small());
    const before = lines(editor);
    for (const text of ["Hello there.", "Goblet squat"]) {
      caret(editor, text, 0);
      backspace(editor);
    }
    expect(lines(editor)).toEqual(before);
  });
});

describe("typing a title", () => {
  it("names the exercise when the catalogue knows it, and forgets it when the name goes", async () => {
    const editor = sheetWith();
    act(editor, () => void $getRoot().getFirstChild()?.selectEnd());
    typeSlowly(editor, "goblet squat");
    await Promise.resolve();
    expect(episodeOf(editor).blocks.map(({ kind, exercise, title }) => ({ kind, exercise, title }))).toEqual([{ kind: "exercise", exercise: "goblet-squat", title: "goblet squat" }]);
    typeSlowly(editor, " of mine");
    await Promise.resolve();
    expect(episodeOf(editor).blocks[0]?.exercise).toBeNull();
  });

  it("takes Warm-up for a warm-up", async () => {
    const editor = sheetWith();
    act(editor, () => void $getRoot().getFirstChild()?.selectEnd());
    typeSlowly(editor, "Warm-up");
    await Promise.resolve();
    expect(episodeOf(editor).blocks[0]?.kind).toBe("warm-up");
  });
});

describe("block commands", () => {
  it("moves a block with all its rows", () => {
    const editor = sheetWith(small());
    const id = episodeOf(editor).blocks[1]?.id ?? "";
    editor.dispatchCommand(MOVE_BLOCK_COMMAND, { block: id, by: -1 });
    act(editor, () => undefined);
    expect(episodeOf(editor).blocks.map((block) => block.title)).toEqual(["Goblet squat", "Opening"]);
  });

  it("duplicates a block under new ids", () => {
    const editor = sheetWith(small());
    act(editor, () => {
      const head = $heads()[1];
      if (head) $duplicateBlock(head);
    });
    const [, one, two] = episodeOf(editor).blocks;
    expect(two?.title).toBe(one?.title);
    expect(two?.lines.map((line) => line.text)).toEqual(one?.lines.map((line) => line.text));
    expect(two?.id).not.toBe(one?.id);
    expect(two?.lines[0]?.id).not.toBe(one?.lines[0]?.id);
  });

  it("joins a block with the one above and keeps its title as a note", () => {
    const editor = sheetWith(small());
    editor.dispatchCommand(JOIN_BLOCK_COMMAND, { block: episodeOf(editor).blocks[1]?.id ?? "" });
    act(editor, () => undefined);
    const [only, ...others] = episodeOf(editor).blocks;
    expect(others).toEqual([]);
    expect(only?.lines.map((line) => `${line.kind}: ${line.text}`)).toEqual(["say: Hello there.", "note: Goblet squat", "cue: Knees over toes", "avoid: Rushing"]);
  });

  it("removes the last block and leaves a place for the caret", () => {
    const editor = sheetWith(small());
    act(editor, () => $heads().forEach($removeBlock));
    expect(episodeOf(editor).blocks).toEqual([]);
    expect(lines(editor)).toEqual(["#"]);
  });

  it("leaves the first block where it is when told to join or move up", () => {
    const editor = sheetWith(small());
    const before = lines(editor);
    act(editor, () => {
      const head = $heads()[0];
      if (head) {
        $joinBlock(head);
        $moveBlock(head, -1);
      }
    });
    expect(lines(editor)).toEqual(before);
  });

  it("changes a row's kind and keeps its id and words", () => {
    const editor = sheetWith(small());
    const id = episodeOf(editor).blocks[1]?.lines[0]?.id ?? "";
    act(editor, () => {
      const row = $findById(id);
      if ($isRow(row)) $setRowWord(row, "if taken");
    });
    expect(episodeOf(editor).blocks[1]?.alternates.map((alternate) => [alternate.id, alternate.text])).toContainEqual([id, "Knees over toes"]);
  });
});

describe("a selection over several rows", () => {
  /** Selects from a character of one row to a character of another, both named by their text. */
  const select = (editor: LexicalEditor, from: [string, number], to: [string, number]): void => act(editor, () => {
    const point = ([text, at]: [string, number]): [string, number] => {
      const row = $getRoot().getChildren().find((node) => node.getTextContent() === text);
      const words = $isElementNode(row) ? row.getFirstChild() : null;
      if (!words) throw new Error(`no row "${text}"`);
      return [words.getKey(), at];
    };
    const selection = $createRangeSelection();
    selection.anchor.set(...point(from), "text");
    selection.focus.set(...point(to), "text");
    $setSelection(selection);
  });
  /** What the page's own handler does with a selection that nobody took care of: it removes it. */
  const erase = (editor: LexicalEditor): void => act(editor, () => {
    const isDone = editor.dispatchCommand(DELETE_CHARACTER_COMMAND, true);
    const selection = $getSelection();
    if (!isDone && $isRangeSelection(selection)) selection.removeText();
  });

  it("that stops before the first letter of a row leaves that row alone when deleted", () => {
    const editor = sheetWith(small());
    select(editor, ["Knees over toes", 0], ["Rushing", 0]);
    erase(editor);
    expect(lines(editor).slice(4, 6)).toEqual(["cue:", "avoid: Rushing"]);
  });

  it("of a title with three clicks never pulls the first line into the title", () => {
    const editor = sheetWith(small());
    select(editor, ["Opening", 0], ["Hello there.", 0]);
    erase(editor);
    expect(lines(editor).slice(0, 2)).toEqual(["#", "say: Hello there."]);
  });

  it("joins what is left of both ends when it reaches into the words", () => {
    const editor = sheetWith(small());
    select(editor, ["Knees over toes", 6], ["Rushing", 4]);
    erase(editor);
    expect(lines(editor)[4]).toBe("cue: Knees ing");
  });

  it("over everything leaves the empty page", () => {
    const editor = sheetWith(small());
    select(editor, ["Opening", 0], ["Box squat", 9]);
    erase(editor);
    expect(lines(editor)).toEqual(["#"]);
    expect(episodeOf(editor).blocks).toEqual([]);
  });
});
