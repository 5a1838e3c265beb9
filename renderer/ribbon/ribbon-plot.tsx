import { memo, useLayoutEffect, useMemo, useRef, useState, type KeyboardEvent, type MouseEvent } from "react";
import { useActions } from "../session/context";
import { useSize } from "../words/use-size";
import { Bands, LEFT_MARGIN, RIGHT_MARGIN, cutEdges } from "./bands";
import { ribbonShape } from "./geometry";
import { moveTo } from "./order";
import type { RibbonRow } from "./rows";
import { useDrag } from "./use-drag";

/** Least height of the middle of a band that takes its name on one line, and on two. Pixels. */
const ONE_LINE = 17;
const TWO_LINES = 38;
/** How long the sheet may take to follow before it may have the focus. */
const HOLD_MS = 200;

interface Props {
  readonly rows: readonly RibbonRow[];
  /** Seconds the axes stand for. */
  readonly slot: number;
  readonly target: number;
  /** Id of the block the caret is in. */
  readonly here: string | null;
  /** The sheet is on screen, so going somewhere moves its caret; elsewhere the place scrolls. */
  readonly isWriting: boolean;
}

/** The bands with everything that can be done to them. Typing that changes no name and no time leaves it alone. */
export const RibbonPlot = memo(function RibbonPlot({ rows, slot, target, here, isWriting }: Props) {
  const actions = useActions();
  const plot = useRef<HTMLDivElement>(null);
  const list = useRef<HTMLOListElement>(null);
  const { width, height } = useSize(plot);
  const [focused, setFocused] = useState<string | null>(null);
  /** The block last scrolled to outside Write, until the caret goes elsewhere. */
  const [looked, setLooked] = useState<{ readonly block: string; readonly from: string | null } | null>(null);
  const [said, setSaid] = useState("");
  /** The band that keeps the focus for a moment while the sheet follows, so that arrow keys go on from there. */
  const holdFocus = useRef<string | null>(null);

  const shape = useMemo(() => ribbonShape(rows, slot, target, height), [rows, slot, target, height]);
  const indexOf = (id: string | null): number => rows.findIndex((row) => row.id === id);
  const selected = indexOf(!isWriting && looked?.from === here ? looked.block : here);

  const focusBand = (id: string): void => list.current?.querySelector<HTMLElement>(`[data-block="${id}"]`)?.focus();
  const hold = (id: string): void => {
    holdFocus.current = id;
    focusBand(id);
    window.setTimeout(() => (holdFocus.current = holdFocus.current === id ? null : holdFocus.current), HOLD_MS);
  };
  useLayoutEffect(() => {
    if (holdFocus.current) focusBand(holdFocus.current);
  }, [rows, here]);

  /** In Write the caret goes there; the other places scroll to their own part of that block. */
  const go = (index: number): void => {
    const row = rows[index];
    if (!row) return;
    setLooked({ block: row.id, from: here });
    const part = isWriting ? null : document.getElementById(`at-${row.id}`);
    if (part) part.scrollIntoView({ block: "start" });
    else actions.goTo({ block: row.id });
  };
  const move = (from: number, cut: number): void => {
    const row = rows[from];
    const to = moveTo(from, cut);
    if (!row || to === null) return;
    actions.apply([{ type: "move-block", block: row.id, to }]);
    setSaid(`${row.name} is now ${to + 1} of ${rows.length}`);
  };
  const { drag, hovered, indexAt, handlers, swallowClick } = useDrag(plot, shape, ({ from, cut }) => move(from, cut));

  const onClick = (event: MouseEvent, index: number): void => {
    holdFocus.current = null;
    if (swallowClick.current) return;
    go(event.detail === 0 ? index : indexAt(event));
  };
  const onKeyDown = (event: KeyboardEvent, index: number): void => {
    if (event.key === "Tab") holdFocus.current = null;
    const target = { ArrowDown: index + 1, ArrowUp: index - 1, Home: 0, End: rows.length - 1 }[event.key] ?? index;
    const row = rows[event.altKey ? index : target];
    if (!row || target === index) return;
    event.preventDefault();
    if (event.altKey) move(index, target > index ? target + 1 : target);
    else go(target);
    hold(row.id);
  };

  const tabStop = Math.max(0, indexOf(focused) >= 0 ? indexOf(focused) : selected);
  const drop = drag && moveTo(drag.from, drag.cut) !== null ? drag.cut : null;
  return (
    <>
      <div className={drag ? "ribbon-plot dragging" : "ribbon-plot"} ref={plot} style={{ minHeight: Math.max(220, rows.length * 6) }} {...handlers}>
        {height > 0 && (
          <Bands
            rows={rows} shape={shape} width={width} height={height} selected={selected} drop={drop} dragged={drag?.from ?? -1}
            hovered={drag ? -1 : hovered} focused={indexOf(focused)}
          />
        )}
        {rows.length === 0 && <p className="ribbon-empty">No blocks yet. Most episodes begin with an opening and a warm-up.</p>}
        <ol ref={list} aria-label="Blocks in order">
          {rows.map((row, i) => {
            const band = shape.bands[i];
            const top = band ? (band.left.top + band.right.top) / 2 : 0;
            const tall = band ? (band.left.bottom + band.right.bottom) / 2 - top : 0;
            const middle = top + tall / 2;
            const fit = tall >= TWO_LINES ? "two" : tall >= ONE_LINE ? "one" : middle > height - 60 ? "beside above" : "beside below";
            const hatched = middle > (shape.limit.left + shape.limit.right) / 2;
            return (
              <li key={row.id}>
                <button
                  type="button"
                  data-block={row.id}
                  className={`ribbon-button ${fit}${i === selected ? " selected" : ""}${i === hovered && !drag ? " hovered" : ""}${hatched ? " hatched" : ""}`}
                  style={{ top, height: tall, left: LEFT_MARGIN, right: RIGHT_MARGIN }}
                  tabIndex={i === tabStop ? 0 : -1}
                  aria-label={row.sentence}
                  aria-current={i === selected ? "true" : undefined}
                  aria-describedby="ribbon-keys"
                  onClick={(event) => onClick(event, i)}
                  onKeyDown={(event) => onKeyDown(event, i)}
                  onFocus={(event) => setFocused(event.currentTarget.matches(":focus-visible") ? row.id : null)}
                  onBlur={() => {
                    setFocused(null);
                    if (holdFocus.current === row.id) window.setTimeout(() => holdFocus.current === row.id && focusBand(row.id));
                  }}
                >
                  <span className="ribbon-name">{row.name}</span>
                </button>
              </li>
            );
          })}
        </ol>
        {drop !== null && <DropWords rows={rows} drop={drop} at={cutEdges(shape, drop)} />}
      </div>
      <p id="ribbon-keys" className="visually-hidden">Arrow keys go from block to block, Alt with an arrow key moves the block.</p>
      <p className="visually-hidden" aria-live="polite">{said}</p>
    </>
  );
});

function DropWords({ rows, drop, at }: { rows: readonly { name: string }[]; drop: number; at: { left: number; right: number } }) {
  const next = rows[drop];
  return (
    <p className="ribbon-drop-words" style={{ top: (at.left + at.right) / 2, left: LEFT_MARGIN, right: RIGHT_MARGIN }}>
      <span>{next ? `before ${next.name}` : "to the end"}</span>
    </p>
  );
}
