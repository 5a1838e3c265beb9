import { clock, minutes } from "../words/clock";
import type { CheckLevel } from "../../shared/checks";
import { memoOn, type Line, type SetLine } from "../../shared/episode";
import { speak, type Pace } from "../../shared/speech";
import { parseSetLine, readBack } from "../../shared/training";
import { paintRemark, textPart } from "../editor/row/row-view";
import type { Session } from "../session/types";

interface Remark { readonly text: string; readonly isFault: boolean }
const remark = (text: string): Remark => ({ text, isFault: false });

/** A set line read back in words, or what cannot be read. Kept per set line: a key changes one of them. */
const setRemark = memoOn((set: SetLine): Remark | null => {
  if (set.text.trim() === "") return null;
  const parse = parseSetLine(set.text);
  return parse.ok ? remark(readBack(parse.scheme)) : { text: parse.error, isFault: true };
});

/** The seconds of a spoken line, kept per pace and per line. */
const sayRemark = memoOn((pace: Pace) => memoOn((line: Line): Remark => remark(`${speak(line.text, pace).seconds.toFixed(1)} s`)));

/** The grey words beside each row, by the row's id: set lines read back, seconds of spoken lines, clocks of blocks. */
function remarks({ episode, clocks, pace }: Session): Map<string, Remark> {
  const found = new Map<string, Remark>();
  const gym = new Map(clocks.gym.blocks.map((each) => [each.block, each.seconds]));
  const screen = new Map(clocks.screen.blocks.map((each) => [each.block, each.seconds]));
  for (const block of episode.blocks) {
    const onFloor = gym.get(block.id);
    const onScreen = screen.get(block.id) ?? 0;
    const words = [onFloor === undefined ? "" : `${minutes(onFloor)} min`, onScreen > 0 ? `${clock(onScreen)} on screen` : "no picture yet"];
    found.set(block.id, remark(words.filter(Boolean).join(", ")));
    for (const set of block.sets) {
      const said = setRemark(set);
      if (said) found.set(set.id, said);
    }
    for (const line of block.lines) if (line.kind === "say" && line.text.trim() !== "") found.set(line.id, sayRemark(pace)(line));
  }
  return found;
}

/** The rows of the sheet on the page, by episode id. */
function rowElements(surface: HTMLElement): Map<string, HTMLElement> {
  const rows = new Map<string, HTMLElement>();
  for (const row of surface.children) if (row instanceof HTMLElement) rows.set(row.dataset["id"] ?? "", row);
  return rows;
}

/** Brings the remarks up to date; rows that say the same already are not touched. */
export function paintRemarks(surface: HTMLElement, session: Session): void {
  const found = remarks(session);
  for (const [id, row] of rowElements(surface)) {
    const { text, isFault } = found.get(id) ?? remark("");
    paintRemark(row, text, isFault);
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
export function paintFindings(surface: HTMLElement, findings: Session["findings"]): void {
  if (!("highlights" in CSS)) return;
  const rows = rowElements(surface);
  for (const level of LEVELS) {
    const ranges = findings
      .filter((finding) => finding.level === level && finding.waiver === null && finding.range !== null && finding.line !== null)
      .flatMap((finding) => {
        const row = rows.get(finding.line ?? "");
        const range = row && finding.range ? textRange(row, finding.range.start, finding.range.end) : null;
        return range ? [range] : [];
      });
    CSS.highlights.set(`finding-${level}`, new Highlight(...ranges));
  }
}
