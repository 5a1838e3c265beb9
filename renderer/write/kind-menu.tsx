import { useEffect, useRef } from "react";
import { LINE_KIND_HELP, type LineKind } from "../../shared/episode";
import { ROW_WORDS, type RowWord } from "../editor/rows";
import { useDismiss, type Anchor } from "./use-menu";

const HELP: Readonly<Record<RowWord, string>> = { sets: "working sets", "ramp-up": "light sets before them", "if taken": "when the station is busy", ...(LINE_KIND_HELP as Record<LineKind, string>) };

/** The kinds a line can be, opened from its margin word. */
export function KindMenu({ word, anchor, onChoose, onClose }: { word: RowWord; anchor: Anchor; onChoose: (word: RowWord) => void; onClose: () => void }) {
  const ref = useRef<HTMLUListElement>(null);
  useDismiss(ref, onClose);
  useEffect(() => ref.current?.querySelector<HTMLElement>("[aria-checked=true]")?.focus(), []);
  const step = (event: React.KeyboardEvent): void => {
    const items = [...(ref.current?.querySelectorAll<HTMLElement>("[role=menuitemradio]") ?? [])];
    const at = items.indexOf(document.activeElement as HTMLElement);
    const to = event.key === "ArrowDown" ? at + 1 : event.key === "ArrowUp" ? at - 1 : event.key === "Home" ? 0 : event.key === "End" ? items.length - 1 : null;
    if (to === null) return;
    event.preventDefault();
    items[(to + items.length) % items.length]?.focus();
  };
  return (
    <ul ref={ref} className="sheet-menu" role="menu" aria-label="Kind of line" style={anchor} onKeyDown={step}>
      {ROW_WORDS.map((each) => (
        <li key={each} role="none">
          <button type="button" role="menuitemradio" aria-checked={each === word} tabIndex={-1} onClick={() => onChoose(each)}>
            <b>{each}</b> <span className="second">{HELP[each]}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}
