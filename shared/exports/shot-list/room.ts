import type { Floor, FloorSide } from "../../episode";
import type { Shape } from "../paper";

/** Metres on the floor: to the right of the page, and down it; the subject faces up the page. */
export type FloorPoint = readonly [number, number];
/** From the floor to points of the drawing. */
export type OnPage = (point: FloorPoint) => FloorPoint;

/** What the plan shows, metres on the page: x to the right, y down. */
export interface PlanExtent {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

type Segment = readonly [from: readonly [number, number], to: readonly [number, number]];

const round = (value: number): number => Math.round(value * 10) / 10;

/** Which way each side lies on the page. */
const OUT: Readonly<Record<FloorSide, FloorPoint>> = { ahead: [0, -1], behind: [0, 1], left: [-1, 0], right: [1, 0] };

/** The wall of a side across the drawing; null when it lies outside of it. */
function wallAt(side: FloorSide, distance: number, onPage: OnPage, { width, height }: { width: number; height: number }): Segment | null {
  const [dx, dy] = OUT[side];
  const [x, y] = onPage([dx * distance, dy * distance]);
  const isAcross = side === "ahead" || side === "behind";
  if (isAcross ? y < 2 || y > height - 2 : x < 2 || x > width - 2) return null;
  return isAcross ? [[0, y], [width, y]] : [[x, 0], [x, height]];
}

/** The same line further out by so many points. */
const pushed = ([[x1, y1], [x2, y2]]: Segment, side: FloorSide, by: number): Segment => {
  const [dx, dy] = OUT[side];
  return [[round(x1 + dx * by), round(y1 + dy * by)], [round(x2 + dx * by), round(y2 + dy * by)]];
};

const line = ([from, to]: Segment, width: number): Shape => ({ shape: "line", from, to, width });

/** A wall is a thick line; one with a mirror is two thin ones with the word beside it. */
function wallShapes(side: FloorSide, segment: Segment, isMirror: boolean, width: number, height: number): Shape[] {
  if (!isMirror) return [line(segment, 3)];
  const [[x1, y1]] = segment;
  const isAcross = side === "ahead" || side === "behind";
  const word: Shape = isAcross
    ? { shape: "text", x: width - 6, y: round(side === "ahead" ? y1 + 11 : y1 - 5), text: "mirror", size: 8.5, anchor: "end" }
    : { shape: "text", x: round(side === "left" ? x1 + 5 : x1 - 5), y: height - 20, text: "mirror", size: 8.5, anchor: side === "left" ? "start" : "end" };
  return [line(segment, 1), line(pushed(segment, side, 3.5), 1), word];
}

const HATCH = 9;
/** How broad the hatched aisle is, points. */
export const AISLE_STRIP = 13;

/** Where people walk past: a hatched strip along that edge of the drawing. */
function aisleShapes(side: FloorSide, width: number, height: number): Shape[] {
  const isAcross = side === "ahead" || side === "behind";
  const [x, y, w, h] = isAcross ? [0, side === "ahead" ? 0 : height - AISLE_STRIP, width, AISLE_STRIP] : [side === "left" ? 0 : width - AISLE_STRIP, 0, AISLE_STRIP, height];
  const strokes = Array.from({ length: Math.floor((isAcross ? w : h) / HATCH) }, (_, i): Shape => ({
    shape: "line", width: 0.6, grey: true,
    from: isAcross ? [x + i * HATCH, y + h] : [x, y + i * HATCH + HATCH], to: isAcross ? [x + i * HATCH + HATCH, y] : [x + w, y + i * HATCH],
  }));
  const words = "aisle: keep free";
  const [at, base] = isAcross ? [width / 2, y + 9.5] : [side === "left" ? AISLE_STRIP + 4 : width - AISLE_STRIP - 4, 12];
  return [
    ...strokes,
    ...(isAcross ? [{ shape: "polyline" as const, points: [[at - 36, y], [at + 36, y], [at + 36, y + AISLE_STRIP], [at - 36, y + AISLE_STRIP]] as const, closed: true, fill: "white" as const, width: 0 }] : []),
    { shape: "text", x: at, y: base, text: words, size: 8.5, anchor: isAcross ? "middle" : side === "left" ? "start" : "end" },
  ];
}

/** The line the subject faces along, and what is round the station: walls, mirrors, the aisle. */
export function roomShapes(room: Floor | null, { top, bottom }: PlanExtent, onPage: OnPage, page: { width: number; height: number }): Shape[] {
  const [x, y1] = onPage([0, top - 0.3]);
  const [, y2] = onPage([0, bottom + 0.3]);
  const middle: Shape = { shape: "line", from: [x, Math.max(4, y1)], to: [x, Math.min(page.height - 4, y2)], dash: [1, 3], grey: true, width: 0.8 };
  if (!room) return [middle];
  const walls = (Object.entries(room.walls) as [FloorSide, number | null][]).flatMap(([side, distance]) => {
    const segment = distance === null ? null : wallAt(side, distance, onPage, page);
    return segment ? wallShapes(side, segment, room.mirrors.includes(side), page.width, page.height) : [];
  });
  return [...(room.aisle ? aisleShapes(room.aisle, page.width, page.height) : []), middle, ...walls];
}
