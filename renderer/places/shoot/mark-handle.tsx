import type { KeyboardEvent, PointerEvent } from "react";
import { markWords, snapped, spotAt, STEP_METRES, type BlockFloor, type FloorMark, type Snapped } from "../../../shared/filming";
import { placeInWords } from "./mark-words";
import { MARK_RADIUS as RADIUS, toPoint, type PlanScale, type Point } from "./plan-geometry";

/** Degrees an arrow key turns a mark round the person. */
const TURN = 15;

interface HandleProps {
  readonly mark: FloorMark;
  readonly index: number;
  readonly scale: PlanScale;
  readonly floor: BlockFloor;
  readonly place: Snapped;
  /** A pointer takes the mark, which is drawn at that point. */
  readonly onGrip: (mark: string, at: Point, event: PointerEvent) => void;
  readonly onDrag: (event: PointerEvent) => void;
  readonly onDrop: () => void;
  /** The mark goes back to where it was taken. */
  readonly onCancel: () => void;
  readonly onStep: (place: Snapped) => void;
  readonly onFocus: (isHere: boolean) => void;
}

export const placeOf = ({ bearing, distance, shows, stand }: FloorMark): Snapped => ({ bearing, distance, shows, stand });

/** Where one press of an arrow key leads: far enough that the mark comes to rest somewhere else, or null at a wall. */
function stepped(floor: BlockFloor, { mark, bearing, distance }: FloorMark, key: string): Snapped | null {
  const turn = { ArrowLeft: TURN, ArrowRight: -TURN }[key] ?? 0;
  const away = { ArrowUp: 1, ArrowDown: -1 }[key] ?? 0;
  if (turn === 0 && away === 0) return null;
  for (let step = 1; step <= 6; step++) {
    const next = snapped(floor, mark, spotAt(bearing + turn * step, Math.max(0.1, distance + (away * step * STEP_METRES) / 4)));
    const isFurther = away === 0 ? next.bearing !== bearing : Math.sign(next.distance - distance) === away;
    if (isFurther) return next;
  }
  return null;
}

/** One mark with its sight: a lettered circle that follows the pointer or the arrow keys. */
export function MarkHandle({ mark, index, scale, floor, place, onGrip, onDrag, onDrop, onCancel, onStep, onFocus }: HandleProps) {
  const [x, y] = toPoint(scale, spotAt(place.bearing, place.distance));
  const [px, py] = toPoint(scale, [0, 0]);
  const [dx, dy] = [px - x, py - y];
  const away = Math.hypot(dx, dy) || 1;
  const [ux, uy] = [dx / away, dy / away];
  const half = (mark.frame.wide / 2) * scale.metre * Math.min(1, place.distance / Math.max(0.1, mark.distance));
  const from = `${x + ux * RADIUS} ${y + uy * RADIUS}`;
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === "Escape") return onCancel();
    if (!event.key.startsWith("Arrow") || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    const next = stepped(floor, mark, event.key);
    if (next) onStep(next);
  };
  return (
    <g className={index === 0 ? "plan-mark first" : "plan-mark"}>
      {mark.size !== "insert" && <path className="plan-sight" d={`M${from}L${px - uy * half} ${py + ux * half}M${from}L${px + uy * half} ${py - ux * half}`} />}
      <g
        role="slider" tabIndex={0} aria-label={`Mark ${mark.letter}, ${markWords(mark)}`} aria-valuemin={0} aria-valuemax={50} aria-valuenow={Math.round(place.distance * 10) / 10} aria-valuetext={placeInWords(place)}
        onKeyDown={onKeyDown}
        onPointerDown={(event) => {
          if (event.button !== 0) return;
          event.currentTarget.setPointerCapture(event.pointerId);
          onGrip(mark.mark, [x, y], event);
        }}
        onPointerMove={(event) => {
          if (event.currentTarget.hasPointerCapture(event.pointerId)) onDrag(event);
        }}
        onPointerUp={onDrop} onPointerCancel={onCancel} onFocus={() => onFocus(true)} onBlur={() => onFocus(false)}
      >
        <circle cx={x} cy={y} r={RADIUS + 6} className="plan-reach" />
        <circle cx={x} cy={y} r={RADIUS} className="plan-dot" />
        <text x={x} y={y + 5} className="plan-letter">{mark.letter}</text>
      </g>
      {mark.size !== "insert" && <text x={x} y={y + (uy >= 0.3 ? -RADIUS - 6 : RADIUS + 15)} className="plan-distance">{place.distance.toFixed(1)} m</text>}
    </g>
  );
}
