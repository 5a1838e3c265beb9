import { useEffect, useRef, useState, type PointerEvent as ReactPointerEvent, type RefObject } from "react";
import { LEFT_MARGIN, RIGHT_MARGIN } from "./bands";
import { bandAt, cutAt, type RibbonShape } from "./geometry";

/** Pixels a pointer travels before a press becomes a drag. */
const SLACK = 5;

/** A band under way: which one, and the cut it would drop into. */
export interface Drag {
  readonly from: number;
  readonly cut: number;
}

/**
 * Pointer work on the ribbon: which band lies under the pointer (bands are curved, so boxes cannot tell) and dragging one.
 * Escape gives a drag up.
 */
export function useDrag(plot: RefObject<HTMLElement | null>, shape: RibbonShape, onDrop: (drag: Drag) => void) {
  const [drag, setDrag] = useState<Drag | null>(null);
  const [hovered, setHovered] = useState(-1);
  const press = useRef<{ from: number; y: number } | null>(null);
  /** A drag ends with a click of the browser's own; it must not go anywhere. */
  const swallowClick = useRef(false);

  const pointAt = (event: { clientX: number; clientY: number }): { across: number; y: number } => {
    const box = plot.current?.getBoundingClientRect();
    if (!box) return { across: 0, y: 0 };
    return { across: (event.clientX - box.left - LEFT_MARGIN) / (box.width - LEFT_MARGIN - RIGHT_MARGIN), y: event.clientY - box.top };
  };
  const indexAt = (event: { clientX: number; clientY: number }): number => {
    const { across, y } = pointAt(event);
    return bandAt(shape, across, y);
  };
  const giveUp = (): void => {
    press.current = null;
    setDrag(null);
  };

  useEffect(() => {
    if (!drag) return;
    const onKey = (event: KeyboardEvent): void => {
      if (event.key === "Escape") giveUp();
    };
    window.addEventListener("keydown", onKey);
    return () => window.removeEventListener("keydown", onKey);
  }, [drag]);

  const handlers = {
    onPointerDown: (event: ReactPointerEvent): void => {
      swallowClick.current = false;
      if (event.button !== 0 || !(event.target instanceof Element) || !event.target.closest("button")) return;
      press.current = { from: indexAt(event), y: event.clientY };
    },
    onPointerMove: (event: ReactPointerEvent): void => {
      setHovered(event.target instanceof Element && event.target.closest("button") ? indexAt(event) : -1);
      const held = press.current;
      if (!held || (!drag && Math.abs(event.clientY - held.y) < SLACK)) return;
      if (!drag) plot.current?.setPointerCapture(event.pointerId);
      const { across, y } = pointAt(event);
      const cut = cutAt(shape, across, y);
      if (drag?.cut !== cut) setDrag({ from: held.from, cut });
    },
    onPointerUp: (): void => {
      if (drag) {
        swallowClick.current = true;
        onDrop(drag);
      }
      giveUp();
    },
    onPointerCancel: giveUp,
    onPointerLeave: (): void => setHovered(-1),
  };
  return { drag, hovered, indexAt, handlers, swallowClick };
}
