import { useId, useRef, useState, type PointerEvent } from "react";
import { FLOOR_SIDES, type PlacedMark } from "../../../shared/episode";
import { snapped, type BlockFloor, type Snapped } from "../../../shared/filming";
import { MarkHandle, placeOf } from "./mark-handle";
import { lineInWords, placeInWords } from "./mark-words";
import { aisleStrip, planScale, scaleBar, toPoint, toSpot, wallLine, within, type PlanScale, type Point } from "./plan-geometry";
import { Aisle, Wall } from "./surroundings";

interface Props {
  readonly floor: BlockFloor;
  readonly name: string;
  /** One mark comes to rest somewhere else. */
  readonly onMove: (placed: PlacedMark) => void;
}

/** A mark in the hand of a pointer: how far beside its middle it was taken, and whether it has left its place. */
interface Grip {
  readonly mark: string;
  readonly at: Point;
  readonly beside: Point;
  hasLeft: boolean;
}
/** A hand that trembles by less has not moved a mark; units of the drawing. */
const TREMBLE = 4;

/** A station from above, to scale; its marks can be dragged, or moved with the arrow keys. */
export function FloorPlan({ floor, name, onMove }: Props) {
  const svg = useRef<SVGSVGElement>(null);
  const grip = useRef<Grip | null>(null);
  const hatch = useId();
  const [draft, setDraft] = useState<{ readonly mark: string; readonly place: Snapped } | null>(null);
  const [focused, setFocused] = useState<string | null>(null);
  const scale = planScale(floor);
  const { line, room } = floor;

  const pointUnder = (event: PointerEvent): Point | null => {
    const box = svg.current?.getBoundingClientRect();
    if (!box || box.width === 0) return null;
    return [((event.clientX - box.left) / box.width) * scale.width, ((event.clientY - box.top) / box.height) * scale.height];
  };
  const onGrip = (mark: string, [x, y]: Point, event: PointerEvent): void => {
    const at = pointUnder(event);
    grip.current = at && { mark, at, beside: [at[0] - x, at[1] - y], hasLeft: false };
  };
  const onDrag = (event: PointerEvent): void => {
    const [held, at] = [grip.current, pointUnder(event)];
    if (!held || !at) return;
    held.hasLeft ||= Math.hypot(at[0] - held.at[0], at[1] - held.at[1]) > TREMBLE;
    if (held.hasLeft) setDraft({ mark: held.mark, place: snapped(floor, held.mark, toSpot(scale, within(scale, [at[0] - held.beside[0], at[1] - held.beside[1]]))) });
  };
  const letGo = (): void => {
    grip.current = null;
    setDraft(null);
  };
  const move = (mark: string, { bearing, distance }: Snapped): void => onMove({ mark, bearing, distance });
  const onDrop = (): void => {
    const from = floor.marks.find(({ mark }) => mark === draft?.mark);
    if (draft && from && (draft.place.bearing !== from.bearing || draft.place.distance !== from.distance)) move(draft.mark, draft.place);
    letGo();
  };

  const focusedMark = floor.marks.find(({ mark }) => mark === focused);
  const told = draft ?? (focusedMark ? { mark: focusedMark.mark, place: placeOf(focusedMark) } : null);
  return (
    <figure className="floor-plan">
      <svg ref={svg} viewBox={`0 0 ${scale.width} ${scale.height}`} role="group" aria-label={`Floor plan of ${name} from above, the person ${line.along === "lies" ? "lies with the head" : line.along} up`}>
        <defs><pattern id={hatch} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V7" className="plan-hatch" /></pattern></defs>
        {room?.aisle && <Aisle side={room.aisle} strip={aisleStrip(scale, room, room.aisle)} fill={`url(#${hatch})`} />}
        {room && FLOOR_SIDES.map((side) => {
          const wall = wallLine(scale, room, side);
          return wall && <Wall key={side} side={side} wall={wall} isMirror={room.mirrors.includes(side)} />;
        })}
        <Person floor={floor} scale={scale} />
        {floor.marks.map((mark, index) => (
          <MarkHandle
            key={mark.mark} mark={mark} index={index} scale={scale} floor={floor} place={draft?.mark === mark.mark ? draft.place : placeOf(mark)}
            onGrip={onGrip} onDrag={onDrag} onDrop={onDrop} onCancel={letGo} onStep={(place) => move(mark.mark, place)} onFocus={(isHere) => setFocused(isHere ? mark.mark : null)}
          />
        ))}
        <ScaleBar scale={scale} at={scaleBar(scale, room)} />
      </svg>
      {/* A screen reader hears the same as the value of the mark in hand. */}
      <figcaption className="second">{told ? `${floor.marks.find(({ mark }) => mark === told.mark)?.letter ?? ""}: ${placeInWords(told.place)}.` : lineInWords(floor)}</figcaption>
    </figure>
  );
}

const shortened = (text: string): string => (text.length > 18 ? `${text.slice(0, 17).trimEnd()}…` : text);
const WAYS = { lies: "head up", faces: "faces up", walks: "walks up" } as const;

/** The person in the middle, which way they face, and the line along it that cameras do not cross. */
function Person({ floor: { person, line, station }, scale }: { floor: BlockFloor; scale: PlanScale }) {
  const [x, y] = toPoint(scale, [0, 0]);
  const [wide, long] = [person.halfWide * scale.metre, person.halfLong * scale.metre];
  const tip = y - long - 0.42 * scale.metre;
  return (
    <>
      <path d={`M${x} 6V${scale.height - 6}`} className="plan-line" />
      <g className="plan-person" aria-hidden="true">
        {line.along === "lies" ? <rect x={x - wide} y={y - long} width={2 * wide} height={2 * long} /> : <circle cx={x} cy={y} r={wide} />}
        <path d={`M${x} ${y - long}V${tip}M${x - 4} ${tip + 6}L${x} ${tip}L${x + 4} ${tip + 6}`} />
        <text x={x + wide + 5} y={y + 4}>{station === "" ? WAYS[line.along] : shortened(station)}</text>
      </g>
    </>
  );
}

function ScaleBar({ scale: { metre }, at: [x, y] }: { scale: PlanScale; at: Point }) {
  return (
    <g className="plan-scale" aria-hidden="true">
      <path d={`M${x} ${y}v-6m0 3h${metre}m0-3v6`} />
      <text x={x + metre + 5} y={y + 1}>1 m</text>
    </g>
  );
}
