import { $getRoot, $getState, type LexicalEditor } from "lexical";
import { clock, minutes } from "../words/clock";
import type { CheckLevel } from "../../shared/checks";
import type { Block } from "../../shared/episode";
import { speak } from "../../shared/speech";
import { parseSetLine, readBack } from "../../shared/training";
import { $isSheetNode } from "../editor/rows";
import { idState } from "../editor/states";
import { paintRemark, textPart } from "../editor/row/row-view";
import type { Session } from "../session/types";

interface Remark { readonly text: string; readonly isFault: boolean }

/** The grey words beside each row of a block: set lines read back, seconds of spoken lines. */
function blockRemarks(block: Block, session: Session): Map<string, Remark> {
  const remarks = new Map<string, Remark>();
  for (const set of block.sets) {
    if (set.text.trim() === "") continue;
    const parse = parseSetLine(set.text);
    remarks.set(set.id, parse.ok ? { text: readBack(parse.scheme), isFault: false } : { text: parse.error, isFault: true });
  }
  for (const line of block.lines) {
    if (line.kind === "say" && line.text.trim() !== "") remarks.set(line.id, { text: `${speak(line.text, session.pace).seconds.toFixed(1)} s`, isFault: false });
  }
  const gym = session.clocks.gym.blocks.find((each) => each.block === block.id);
  const screen = session.clocks.screen.blocks.find((each) => each.block === block.id);
  const onFloor = gym ? `${minutes(gym.seconds)} min` : "";
  const onScreen = screen && screen.seconds > 0 ? `${clock(screen.seconds)} on screen` : "no picture yet";
  remarks.set(block.id, { text: [onFloor, onScreen].filter(Boolean).join(", "), isFault: false });
  return remarks;
}

/** Row elements on the page by episode id. */
export function rowElements(editor: LexicalEditor): Map<string, HTMLElement> {
  const rows = new Map<string, HTMLElement>();
  editor.read(() => {
    for (const node of $getRoot().getChildren()) {
      const element = $isSheetNode(node) ? editor.getElementByKey(node.getKey()) : null;
      if (element && $isSheetNode(node)) rows.set($getState(node, idState), element);
    }
  });
  return rows;
}

export function paintRemarks(editor: LexicalEditor, session: Session): void {
  const rows = rowElements(editor);
  const remarks = new Map(session.episode.blocks.flatMap((block) => [...blockRemarks(block, session)]));
  for (const [id, row] of rows) {
    const remark = remarks.get(id);
    paintRemark(row, remark?.text ?? "", remark?.isFault ?? false);
  }
}

/** The DOM range of characters of a row's text, or null when the text is shorter by now. */
function textRange(row: HTMLElement, start: number, end: number): Range | null {
  const walker = document.createTreeWalker(textPart(row), NodeFilter.SHOW_TEXT);
  const range = document.createRange();
  let at = 0;
  let isStarted = false;
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const size = node.textContent?.length ?? 0;
    if (!isStarted && start < at + size) {
      range.setStart(node, start - at);
      isStarted = true;
    }
    if (isStarted && end <= at + size) {
      range.setEnd(node, end - at);
      return range;
    }
    at += size;
  }
  return null;
}

const LEVELS: readonly CheckLevel[] = ["stop", "fix", "consider"];

/**
 * Underlines and washes the words each open finding points at. Uses the browser's highlight ranges,
 * so the text's own elements are never touched while someone types in them.
 */
export function paintFindings(editor: LexicalEditor, session: Session): void {
  if (!("highlights" in CSS)) return;
  const rows = rowElements(editor);
  for (const level of LEVELS) {
    const ranges = session.findings
      .filter((finding) => finding.level === level && finding.waiver === null && finding.range !== null && finding.line !== null)
      .flatMap((finding) => {
        const row = rows.get(finding.line ?? "");
        const range = row && finding.range ? textRange(row, finding.range.start, finding.range.end) : null;
        return range ? [range] : [];
      });
    CSS.highlights.set(`finding-${level}`, new Highlight(...ranges));
  }
}
