import { $getRoot, $getSelection, $isElementNode, $isRangeSelection, COMMAND_PRIORITY_LOW, KEY_DOWN_COMMAND, type LexicalEditor } from "lexical";
import { useCallback, useEffect, useLayoutEffect, useRef, useState } from "react";
import type { Finding } from "../../shared/checks";
import { findBlock, newLine, type Edit } from "../../shared/episode";
import type { Exercise } from "../../shared/exercises";
import { DUPLICATE_BLOCK_COMMAND, JOIN_BLOCK_COMMAND, MOVE_BLOCK_COMMAND, REMOVE_BLOCK_COMMAND, SPLIT_BLOCK_COMMAND } from "../editor/block/block-commands";
import { $findById, $isRow, $rowWord, $setRowWord, $topOf, type RowWord } from "../editor/rows";
import { useActions, useSession } from "../session/context";
import { paintFindings, paintRemarks } from "./annotate";
import { BlockPanel, type BlockAction } from "./block-panel";
import { ExercisePicker } from "./exercise-picker";
import { KindMenu } from "./kind-menu";
import { SheetHead } from "./sheet-head";
import { StartPage } from "./start-page";
import { anchorUnder, type Anchor } from "./use-menu";
import "./sheet.css";

type PopUp = { type: "kind"; id: string; word: RowWord; anchor: Anchor } | { type: "block"; id: string; anchor: Anchor };

const NO_FINDINGS: readonly Finding[] = [];
const rowOf = (target: EventTarget | null): HTMLElement | null => (target instanceof Element ? target.closest<HTMLElement>(".row") : null);

/** Keeps the row of the caret off the lower edge, where the next line would be typed out of sight. */
function keepInView(): void {
  const node = getSelection()?.focusNode ?? null;
  rowOf(node instanceof Element ? node : node?.parentElement ?? null)?.scrollIntoView({ block: "nearest" });
}

/**
 * The episode as a script. The editor is made once for the window; this mounts it.
 * @param isCovered - a dialog lies over it, so it cannot take the focus yet
 */
export function Sheet({ editor, isCovered }: { editor: LexicalEditor; isCovered: boolean }) {
  const session = useSession();
  const { apply, newId } = useActions();
  const frame = useRef<HTMLDivElement>(null);
  const surface = useRef<HTMLDivElement>(null);
  const [popUp, setPopUp] = useState<PopUp | null>(null);
  const { episode, here, findings } = session;

  useLayoutEffect(() => {
    editor.setRootElement(surface.current);
    return () => editor.setRootElement(null);
  }, [editor]);

  // Nobody sees the sheet while another place is open; letters typed there need not wait for it.
  const isShown = session.place === "write";
  useEffect(() => {
    if (surface.current && isShown) paintRemarks(surface.current, session);
  }, [session, isShown]);
  // Each check hands out a new list, a moment after the words; until then the ranges move with the text.
  useEffect(() => {
    if (surface.current) paintFindings(surface.current, isShown ? findings : NO_FINDINGS);
  }, [findings, isShown]);
  // Another episode begins at its top, with the caret: an empty one in its title.
  const shown = useRef(episode.id);
  const isBlank = episode.blocks.length === 0;
  useEffect(() => {
    if (isCovered || shown.current === episode.id) return;
    shown.current = episode.id;
    frame.current?.closest(".app-place")?.scrollTo(0, 0);
    if (isBlank) frame.current?.querySelector<HTMLElement>(".title")?.focus();
    else editor.focus();
  }, [editor, episode.id, isBlank, isCovered]);
  useEffect(() => {
    const rows = surface.current?.querySelectorAll<HTMLElement>(".block-head") ?? [];
    for (const row of rows) row.classList.toggle("here", row.dataset["id"] === here.block);
  }, [here.block, episode]);

  const openFor = useCallback((row: HTMLElement): void => {
    const id = row.dataset["id"] ?? "";
    if (!frame.current) return;
    if (row.classList.contains("block-head")) {
      setPopUp({ type: "block", id, anchor: anchorUnder(row, frame.current) });
      return;
    }
    const word = editor.read(() => {
      const node = $findById(id);
      return $isRow(node) ? $rowWord(node) : null;
    });
    const margin = row.querySelector(".margin-word");
    if (word && margin) setPopUp({ type: "kind", id, word, anchor: anchorUnder(margin, frame.current) });
  }, [editor]);

  // F2 opens what the margin or the head would open by mouse.
  useEffect(() => editor.registerCommand(KEY_DOWN_COMMAND, (event) => {
    if (event.key !== "F2") return false;
    const selection = $getSelection();
    const top = $isRangeSelection(selection) ? $topOf(selection.anchor.getNode()) : null;
    const element = top ? editor.getElementByKey(top.getKey()) : null;
    if (element) openFor(element);
    return true;
  }, COMMAND_PRIORITY_LOW), [editor, openFor]);

  const close = useCallback(() => setPopUp(null), []);

  const toFirstBlock = (): void => {
    editor.update(() => {
      const first = $getRoot().getFirstChild();
      if ($isElementNode(first)) first.selectEnd();
    }, { discrete: true });
    editor.focus();
  };

  const chooseKind = (id: string, word: RowWord): void => {
    editor.update(() => {
      const node = $findById(id);
      if ($isRow(node)) $setRowWord(node, word).selectEnd();
    });
    close();
    editor.focus();
  };

  const act = (id: string, action: BlockAction): void => {
    close();
    if (action === "split") editor.dispatchCommand(SPLIT_BLOCK_COMMAND, undefined);
    else if (action === "up" || action === "down") editor.dispatchCommand(MOVE_BLOCK_COMMAND, { block: id, by: action === "up" ? -1 : 1 });
    else editor.dispatchCommand({ duplicate: DUPLICATE_BLOCK_COMMAND, join: JOIN_BLOCK_COMMAND, remove: REMOVE_BLOCK_COMMAND }[action], { block: id });
    editor.focus();
  };

  const block = here.block === null ? null : findBlock(episode, here.block);
  const pick = useCallback((exercise: Exercise, withLines: boolean): void => {
    if (!block) return;
    const edits: Edit[] = [{ type: "set-block", block: block.id, fields: { kind: "exercise", title: exercise.name, exercise: exercise.id } }];
    if (withLines) {
      const [fault] = exercise.avoid;
      const [caution] = exercise.cautions;
      const lines = [
        ...exercise.cues.slice(0, 2).map((cue) => newLine(newId, "cue", cue.text)),
        ...(fault ? [newLine(newId, "avoid", `${fault.text}: ${fault.instead}`)] : []),
        ...(caution ? [newLine(newId, "caution", caution)] : []),
      ];
      edits.push(...lines.map((line): Edit => ({ type: "insert-line", block: block.id, at: null, line })));
    }
    apply(edits);
    editor.update(() => void $findById(block.id)?.selectEnd());
  }, [apply, block, editor, newId]);

  const pickAnchor = ((): Anchor | null => {
    if (!block || here.line !== null || !frame.current) return null;
    const title = surface.current?.querySelector(`.block-head[data-id="${CSS.escape(block.id)}"] > .text`);
    return title ? anchorUnder(title, frame.current) : null;
  })();

  const opened = popUp?.type === "block" ? findBlock(episode, popUp.id) : null;
  return (
    <div className="sheet" ref={frame} onClick={(event) => {
      const target = event.target instanceof Element ? event.target : null;
      const row = rowOf(target);
      if (row && target?.closest(".margin-word, .block-head > .remark")) openFor(row);
    }}>
      <SheetHead onDown={toFirstBlock} />
      {episode.blocks.length === 0 && <StartPage editor={editor} />}
      <div
        ref={surface} className="surface" contentEditable suppressContentEditableWarning role="textbox" aria-multiline="true"
        aria-label="The episode, block by block. F2 opens the kind of a line or the facts of a block." spellCheck onKeyUp={keepInView}
      />
      {pickAnchor && block && block.kind === "exercise" && <ExercisePicker editor={editor} block={block} anchor={pickAnchor} onPick={pick} />}
      {popUp?.type === "kind" && <KindMenu word={popUp.word} anchor={popUp.anchor} onChoose={(word) => chooseKind(popUp.id, word)} onClose={close} />}
      {popUp?.type === "block" && opened && <BlockPanel key={popUp.id} block={opened} anchor={popUp.anchor} onAct={(action) => act(popUp.id, action)} onClose={close} />}
    </div>
  );
}
