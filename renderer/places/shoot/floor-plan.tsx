import { useId, useRef, useState, type KeyboardEvent, type PointerEvent } from "react";
import { FLOOR_SIDES, type PlacedMark } from "../../../shared/episode";
import { snapped, spotAt, STEP_METRES, type BlockFloor, type FloorMark, type Snapped } from "../../../shared/filming";
import { markWords, placeInWords } from "./mark-words";
import { planScale, toPoint, toSpot, wallLine, type PlanScale } from "./plan-geometry";

interface Props {
  readonly floor: BlockFloor;
  readonly name: string;
  /** One mark comes to rest somewhere else. */
  readonly onMove: (placed: PlacedMark) => void;
}

const RADIUS = 12;
/** Degrees an arrow key turns a mark round the person. */
const TURN = 15;

const placeOf = (mark: FloorMark): Snapped => ({ bearing: mark.bearing, distance: mark.distance, shows: mark.shows, stand: mark.stand });

/** A station from above, to scale; its marks can be dragged, or moved with the arrow keys. */
export function FloorPlan({ floor, name, onMove }: Props) {
  const svg = useRef<SVGSVGElement>(null);
  const hatch = useId();
  const [draft, setDraft] = useState<{ readonly mark: string; readonly place: Snapped } | null>(null);
  const [held, setHeld] = useState<string | null>(null);
  const scale = planScale(floor);
  const { person, line, room } = floor;
  const lies = line.along === "lies";
  const [x, y] = toPoint(scale, [0, 0]);
  const tip = y - (person.halfLong + 0.42) * scale.metre;

  const spotUnder = (event: PointerEvent) => {
    const box = svg.current?.getBoundingClientRect();
    if (!box || box.width === 0) return null;
    return toSpot(scale, [((event.clientX - box.left) / box.width) * scale.width, ((event.clientY - box.top) / box.height) * scale.height]);
  };
  const holding = floor.marks.find(({ mark }) => mark === held);
  const shown = draft ?? (holding ? { mark: holding.mark, place: placeOf(holding) } : null);
  return (
    <figure className="floor-plan">
      <svg ref={svg} viewBox={`0 0 ${scale.width} ${scale.height}`} role="group" aria-label={`Floor plan of ${name} from above, the person ${lies ? "lies with the head" : line.along} up`}>
        <defs><pattern id={hatch} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V7" className="plan-hatch" /></pattern></defs>
        {room?.aisle && <Aisle side={room.aisle} scale={scale} fill={`url(#${hatch})`} />}
        {FLOOR_SIDES.map((side) => {
          const distance = room?.walls[side] ?? null;
          const wall = distance === null ? null : wallLine(scale, side, distance);
          return wall && <Wall key={side} wall={wall} isMirror={room?.mirrors.includes(side) ?? false} />;
        })}
        <path d={`M${x} 6V${scale.height - 6}`} className="plan-line" />
        <g className="plan-person" aria-hidden="true">
          {lies
            ? <rect x={x - person.halfWide * scale.metre} y={y - person.halfLong * scale.metre} width={2 * person.halfWide * scale.metre} height={2 * person.halfLong * scale.metre} />
            : <circle cx={x} cy={y} r={person.halfWide * scale.metre} />}
          <path d={`M${x} ${y - person.halfLong * scale.metre}V${tip}M${x - 4} ${tip + 6}L${x} ${tip}L${x + 4} ${tip + 6}`} />
          <text x={x + person.halfWide * scale.metre + 5} y={y + 4}>{floor.station === "" ? { lies: "head up", faces: "faces up", walks: "walks up" }[line.along] : shortened(floor.station)}</text>
        </g>
        {floor.marks.map((mark, index) => (
          <MarkHandle
            key={mark.mark} mark={mark} index={index} scale={scale} floor={floor} place={draft?.mark === mark.mark ? draft.place : placeOf(mark)}
            onDraft={(event) => {
              const spot = spotUnder(event);
              if (spot) setDraft({ mark: mark.mark, place: snapped(floor, mark.mark, spot) });
            }}
            onDrop={() => {
              if (draft?.mark === mark.mark && (draft.place.bearing !== mark.bearing || draft.place.distance !== mark.distance)) onMove({ mark: mark.mark, bearing: draft.place.bearing, distance: draft.place.distance });
              setDraft(null);
            }}
            onCancel={() => setDraft(null)} onSay={(isHere) => setHeld(isHere ? mark.mark : null)}
            onStep={(place) => onMove({ mark: mark.mark, bearing: place.bearing, distance: place.distance })}
          />
        ))}
        <g className="plan-scale" aria-hidden="true">
          <path d={`M8 ${scale.height - 9}v-6m0 3h${scale.metre}m0-3v6`} />
          <text x={8 + scale.metre + 5} y={scale.height - 8}>1 m</text>
        </g>
      </svg>
      <figcaption aria-live="polite" className="second">
        {shown ? `${floor.marks.find(({ mark }) => mark === shown.mark)?.letter ?? ""}: ${placeInWords(shown.place)}.` : ""}
      </figcaption>
    </figure>
  );
}

const shortened = (text: string): string => (text.length > 18 ? `${text.slice(0, 17).trimEnd()}…` : text);

function Wall({ wall: [x1, y1, x2, y2], isMirror }: { wall: readonly [number, number, number, number]; isMirror: boolean }) {
  if (!isMirror) return <path d={`M${x1} ${y1}L${x2} ${y2}`} className="plan-wall" />;
  const isAcross = y1 === y2;
  return (
    <g className="plan-mirror">
      <path d={`M${x1} ${y1}L${x2} ${y2}M${isAcross ? x1 : x1 + 4} ${isAcross ? y1 + 4 : y1}L${isAcross ? x2 : x2 + 4} ${isAcross ? y2 + 4 : y2}`} />
      <text x={isAcross ? x2 - 6 : x1 + 8} y={isAcross ? y1 - 4 : y2 - 24} textAnchor={isAcross ? "end" : "start"}>mirror</text>
    </g>
  );
}

const STRIP = 15;

function Aisle({ side, scale: { width, height }, fill }: { side: (typeof FLOOR_SIDES)[number]; scale: PlanScale; fill: string }) {
  const isAcross = side === "ahead" || side === "behind";
  const [x, y] = [side === "right" ? width - STRIP : 0, side === "behind" ? height - STRIP : 0];
  return (
    <g className="plan-aisle">
      <rect x={x} y={y} width={isAcross ? width : STRIP} height={isAcross ? STRIP : height} fill={fill} />
      <text x={isAcross ? width - 6 : side === "left" ? STRIP + 5 : width - STRIP - 5} y={side === "behind" ? height - STRIP - 4 : isAcross ? STRIP + 11 : 14} textAnchor={side === "left" ? "start" : "end"}>aisle, keep free</text>
    </g>
  );
}

interface HandleProps {
  readonly mark: FloorMark;
  readonly index: number;
  readonly scale: PlanScale;
  readonly floor: BlockFloor;
  readonly place: Snapped;
  readonly onDraft: (event: PointerEvent) => void;
  readonly onDrop: () => void;
  readonly onCancel: () => void;
  readonly onStep: (place: Snapped) => void;
  /** The mark is in the hand of a keyboard: what it shows is said below the plan. */
  readonly onSay: (isHere: boolean) => void;
}

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

function MarkHandle({ mark, index, scale, floor, place, onDraft, onDrop, onCancel, onStep, onSay }: HandleProps) {
  const [x, y] = toPoint(scale, spotAt(place.bearing, place.distance));
  const [px, py] = toPoint(scale, [0, 0]);
  const [dx, dy] = [px - x, py - y];
  const away = Math.hypot(dx, dy) || 1;
  const [ux, uy] = [dx / away, dy / away];
  const half = (mark.frame.wide / 2) * scale.metre * Math.min(1, place.distance / Math.max(0.1, mark.distance));
  const from = `${x + ux * RADIUS} ${y + uy * RADIUS}`;
  const onKeyDown = (event: KeyboardEvent): void => {
    const next = stepped(floor, mark, event.key);
    if (!event.key.startsWith("Arrow")) return;
    event.preventDefault();
    if (next) onStep(next);
  };
  return (
    <g className={index === 0 ? "plan-mark first" : "plan-mark"}>
      {mark.size !== "insert" && <path className="plan-sight" d={`M${from}L${px - uy * half} ${py + ux * half}M${from}L${px + uy * half} ${py - ux * half}`} />}
      <g
        role="slider" tabIndex={0} aria-label={`Mark ${mark.letter}, ${markWords(mark)}`} aria-valuemin={0} aria-valuemax={50} aria-valuenow={Math.round(place.distance * 10) / 10} aria-valuetext={placeInWords(place)}
        onKeyDown={onKeyDown}
        onPointerDown={(event) => {
          if (event.button === 0) event.currentTarget.setPointerCapture(event.pointerId);
        }}
        onPointerMove={(event) => {
          if (event.currentTarget.hasPointerCapture(event.pointerId)) onDraft(event);
        }}
        onPointerUp={onDrop} onPointerCancel={onCancel} onFocus={() => onSay(true)} onBlur={() => onSay(false)}
      >
        <circle cx={x} cy={y} r={RADIUS + 6} className="plan-reach" />
        <circle cx={x} cy={y} r={RADIUS} className="plan-dot" />
        <text x={x} y={y + 5} className="plan-letter">{mark.letter}</text>
      </g>
      {mark.size !== "insert" && <text x={x} y={y + (uy >= 0.3 ? -RADIUS - 6 : RADIUS + 15)} className="plan-distance">{place.distance.toFixed(1)} m</text>}
    </g>
  );
}
