import { useLayoutEffect, useRef, useState, type CSSProperties, type RefObject } from "react";
import type { Remedy } from "../../shared/checks";
import type { Episode } from "../../shared/episode";
import { changedPart, remedyPreview, type RowChange } from "./remedy-preview";
import type { PreviewHandlers } from "./use-preview";

/** Least room beside the list for the slip; CSS pixels. */
const LEAST_ROOM = 420;
const GAP = 8;
/** What the list keeps free at its own left, between its words and the paper. */
const MARGIN = 20;

interface Props {
  readonly id: string;
  readonly remedy: Remedy;
  readonly button: HTMLElement;
  readonly episode: Episode;
  /** The list it belongs to. */
  readonly frame: RefObject<HTMLElement | null>;
  readonly handlers: PreviewHandlers;
}

/**
 * What a remedy would do, row by row, on a slip beside the list: over the sheet, where the words will change, so that
 * nothing in the list moves or is covered. Where there is no room beside it, the slip lies over or under the remedy.
 */
export function RemedySlip({ id, remedy, button, episode, frame, handlers }: Props) {
  const slip = useRef<HTMLDivElement>(null);
  const [place, setPlace] = useState<CSSProperties>({ visibility: "hidden" });
  const changes = remedyPreview(episode, remedy.edits);
  useLayoutEffect(() => {
    const put = (): void => {
      const list = frame.current?.getBoundingClientRect();
      const height = slip.current?.offsetHeight ?? 0;
      if (!list) return;
      const at = button.getBoundingClientRect();
      if (list.left >= LEAST_ROOM) setPlace({ right: window.innerWidth - list.left + MARGIN + GAP, top: Math.max(GAP, Math.min(at.top - 12, window.innerHeight - height - GAP)) });
      else if (at.top > height + 2 * GAP) setPlace({ right: GAP, bottom: window.innerHeight - at.top + GAP / 2 });
      else setPlace({ right: GAP, top: at.bottom + GAP / 2 });
    };
    put();
    // A focus that comes by key may bring its list with it.
    window.addEventListener("scroll", put, true);
    return () => window.removeEventListener("scroll", put, true);
  }, [frame, button, remedy]);
  return (
    <div ref={slip} id={id} className="slip" role="tooltip" style={place} onMouseEnter={handlers.hold} onMouseLeave={handlers.leave}>
      {changes.length === 0 && <p className="soft">Changes nothing now: the words it was made for are gone.</p>}
      {changes.map(({ where, rows }, i) => (
        <section key={i}>
          <p className="slip-where">{where}</p>
          {rows.map((row, at) => <Row key={at} row={row} />)}
        </section>
      ))}
    </div>
  );
}

function Row({ row: { word, now, then } }: { row: RowChange }) {
  const differs = now !== null && then !== null ? changedPart(now, then) : null;
  // Where every word is another, marking them all would mark nothing.
  const part = differs && differs.start === 0 && differs.nowEnd === now?.length && differs.thenEnd === then?.length ? null : differs;
  const side = (verb: string, text: string, end: number | undefined) => (
    <p><span className="slip-verb">{verb}</span> {part && end !== undefined ? <>{text.slice(0, part.start)}<b>{text.slice(part.start, end)}</b>{text.slice(end)}</> : text}</p>
  );
  return (
    <div className="slip-row">
      <span className="slip-word">{word}</span>
      <div>
        {now !== null && side(then === null ? "taken away" : "now", now, part?.nowEnd)}
        {then !== null && side(now === null ? "added" : "then", then, part?.thenEnd)}
      </div>
    </div>
  );
}
