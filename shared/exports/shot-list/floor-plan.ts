import type { Angle, Position } from "../../exercises";
import { drawing, type Drawing, type Shape } from "../paper";
import { shorten } from "./measures";

/** A camera mark as the floor plan shows it: a letter, where it looks from, how far it stands from the middle of the subject. */
export interface PlanMark {
  readonly letter: string;
  readonly angle: Angle;
  /** Metres. */
  readonly distance: number;
}

export interface FloorPlan {
  readonly marks: readonly PlanMark[];
  /** What the subject is on or at: "incline bench". Empty for none. */
  readonly station: string;
  readonly position: Position | null;
}

/** Room of the drawing, points: beside the marks, the same lower, or across the page. */
export const PLAN_SIZES = { beside: { width: 232, height: 188 }, low: { width: 232, height: 132 }, across: { width: 500, height: 270 } } as const;
type PlanSize = keyof typeof PLAN_SIZES;
/** Between the frame and the middle of the outermost mark: its distance is written above or below it. */
const EDGE = { x: 24, y: 34 } as const;
const RADIUS = 11;
/** Never more points to the metre than this, so that a close mark does not make a giant. */
const MAX_SCALE = 60;
/** Marks on one bearing are fanned out by so many degrees, to one side and the other: less would put a circle on its neighbour's distance. */
const FAN = 34;

/**
 * Degrees the camera stands from the way the subject faces (or its head points), counted towards its right-hand side of the page's left.
 * High and low shots are taken from the front quarter on the far side, where no other mark stands.
 */
const BEARINGS: Readonly<Record<Exclude<Angle, "insert">, number>> = { front: 0, "three-quarter": 45, side: 90, rear: 180, high: -35, low: -75 };

type Point = readonly [number, number];

const at = (bearing: number, distance: number): Point => {
  const radians = (bearing * Math.PI) / 180;
  // The subject faces up the page; bearings grow to the left, as the side camera stands left of the bench.
  return [-Math.sin(radians) * distance, -Math.cos(radians) * distance];
};

/** Half width and half length of the subject seen from above, metres. */
function subjectSize(position: Position | null): Point {
  switch (position) {
    case "lying face up":
    case "lying face down":
    case "side-lying":
    case "plank":
    case "all fours":
      return [0.28, 0.85];
    default:
      return [0.3, 0.3];
  }
}

const lies = (position: Position | null): boolean => subjectSize(position)[1] > 0.5;

interface Placed extends PlanMark {
  readonly bearing: number;
  readonly spot: Point;
}

/** Marks with their places, metres from the subject; those that share a bearing stand beside each other. */
function place(marks: readonly PlanMark[]): Placed[] {
  const seen = new Map<number, number>();
  return marks.flatMap((mark) => {
    if (mark.angle === "insert") return [];
    const home = BEARINGS[mark.angle];
    const before = seen.get(home) ?? 0;
    seen.set(home, before + 1);
    const bearing = home + Math.ceil(before / 2) * (before % 2 === 1 ? FAN : -FAN);
    return [{ ...mark, bearing, spot: at(bearing, mark.distance) }];
  });
}

const metres = (value: number): string => `${value.toFixed(1)} m`;

/** "A, side, 2.9 m; B, rear, 1.8 m" */
export function planInWords(plan: FloorPlan): string {
  const marks = plan.marks.filter((mark) => mark.angle !== "insert").map((mark) => `${mark.letter}, ${mark.angle}, ${metres(mark.distance)}`);
  return `Floor plan from above${plan.station === "" ? "" : ` of the ${plan.station}`}: ${marks.join("; ")}. The subject ${lies(plan.position) ? "lies with the head up the page" : "faces up the page"}.`;
}

/**
 * The block from above, to scale: the subject in the middle, marks as lettered circles at their angle and distance,
 * dashed lines for what they see.
 * @param size - beside the table of marks, or across the page when there are many
 * @returns null when no mark has a place on the floor
 */
export function floorPlan(plan: FloorPlan, size: PlanSize = "beside"): Drawing | null {
  const { width, height } = PLAN_SIZES[size];
  const placed = place(plan.marks);
  if (placed.length === 0) return null;
  const [halfWidth, halfLength] = subjectSize(plan.position);
  // Everything that must be inside, in metres; the arrow needs some room ahead of the subject.
  const xs = [...placed.map((mark) => mark.spot[0]), -halfWidth, halfWidth];
  const ys = [...placed.map((mark) => mark.spot[1]), -halfLength - 0.5, halfLength];
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  // The words beside the subject need room too, unless marks at the right give it.
  const beside = Math.max(EDGE.x, ...sideWords(plan).map((words) => words.length * 4.7 + 12));
  const rightEdge = right > halfWidth ? EDGE.x : beside;
  const scale = Math.min(MAX_SCALE, (width - EDGE.x - rightEdge) / (right - left), (height - 2 * EDGE.y) / (bottom - top));
  const origin: Point = [(width + EDGE.x - rightEdge) / 2 - ((left + right) / 2) * scale, height / 2 - ((top + bottom) / 2) * scale];
  const onPage = ([x, y]: Point): Point => [round(origin[0] + x * scale), round(origin[1] + y * scale)];

  return drawing({
    width,
    height,
    frame: true,
    alt: planInWords(plan),
    shapes: [...placed.flatMap((mark) => sightLines(mark, plan.position, onPage, scale)), ...besideSubject(plan, onPage), ...subject(plan, onPage), ...placed.map((mark) => distanceOf(mark, onPage)), ...placed.flatMap((mark, index) => lettered(mark, index, onPage)), ...scaleBar(scale, height)],
  });
}

const round = (value: number): number => Math.round(value * 10) / 10;

/** Two dashed lines from the mark to both ends of the side it sees. */
function sightLines(mark: Placed, position: Position | null, onPage: (point: Point) => Point, scale: number): Shape[] {
  const [halfWidth, halfLength] = subjectSize(position);
  const [x, y] = mark.spot;
  const length = Math.hypot(x, y) || 1;
  const [tx, ty]: Point = [-x / length, -y / length];
  const deep = Math.min(length * 0.5, Math.abs(tx) * halfWidth + Math.abs(ty) * halfLength);
  const wide = Math.abs(tx) * halfLength + Math.abs(ty) * halfWidth + 0.12;
  const from = onPage([x + (tx * RADIUS) / scale, y + (ty * RADIUS) / scale]);
  return [-1, 1].map((sign): Shape => ({ shape: "line", from, to: onPage([-tx * deep - ty * wide * sign, -ty * deep + tx * wide * sign]), dash: [3, 3] }));
}

/** Head and shoulders, or a body along the page, with an arrow the way it faces. */
function subject(plan: FloorPlan, onPage: (point: Point) => Point): Shape[] {
  const [halfWidth, halfLength] = subjectSize(plan.position);
  const [x1, y1] = onPage([-halfWidth, -halfLength]);
  const [x2, y2] = onPage([halfWidth, halfLength]);
  const [tipX, tipY] = onPage([0, -halfLength - 0.42]);
  const middle = round((x1 + x2) / 2);
  const body: Shape = lies(plan.position)
    ? { shape: "rect", x: x1, y: y1, w: round(x2 - x1), h: round(y2 - y1), fill: "light", width: 1.2 }
    : { shape: "circle", x: middle, y: round((y1 + y2) / 2), r: round((x2 - x1) / 2), fill: "light", width: 1.2 };
  return [
    body,
    { shape: "line", from: [middle, y1], to: [tipX, tipY], width: 1.2 },
    { shape: "polyline", points: [[middle - 3.5, tipY + 5], [tipX, tipY], [middle + 3.5, tipY + 5]], width: 1.2 },
  ];
}

/** White under words, so that no dashed line runs through them. */
const ground = (x: number, y: number, w: number, h: number): Shape => ({ shape: "polyline", points: [[x, y], [round(x + w), y], [round(x + w), round(y + h)], [x, round(y + h)]], closed: true, fill: "white", width: 0 });

function besideSubject(plan: FloorPlan, onPage: (point: Point) => Point): Shape[] {
  const [halfWidth, halfLength] = subjectSize(plan.position);
  const [x, top] = onPage([halfWidth, -halfLength]);
  const [, foot] = onPage([halfWidth, halfLength]);
  const words = sideWords(plan);
  const y = round((top + foot) / 2);
  return [
    ground(x + 3, round(y - 9), Math.max(...words.map((text) => text.length)) * 4.7, words.length * 11 + 2),
    ...words.map((text, row): Shape => ({ shape: "text", x: x + 5, y: round(y + row * 11), text, size: 9 })),
  ];
}

/** Beside the subject: where it is, and what the arrow means. */
function sideWords(plan: FloorPlan): string[] {
  const arrow = lies(plan.position) ? "arrow: head" : plan.position === "walking" ? "arrow: walks" : "arrow: faces";
  return [...(plan.station === "" ? [] : [shorten(plan.station, 18)]), arrow];
}

/** How far a mark is, on the side away from the subject. */
function distanceOf(mark: Placed, onPage: (point: Point) => Point): Shape {
  const [x, y] = onPage(mark.spot);
  const above = mark.spot[1] < -0.2;
  return { shape: "text", x, y: round(above ? y - RADIUS - 5 : y + RADIUS + 12), text: metres(mark.distance), size: 11, weight: "semibold", anchor: "middle" };
}

/** The first mark is black, later ones white, so that they are told apart at a glance. */
function lettered(mark: Placed, index: number, onPage: (point: Point) => Point): Shape[] {
  const [x, y] = onPage(mark.spot);
  return [
    { shape: "circle", x, y, r: RADIUS, fill: index === 0 ? "black" : "white", width: 2 },
    { shape: "text", x, y: round(y + 4.8), text: mark.letter, size: mark.letter.length > 1 ? 10 : 13.5, weight: "bold", anchor: "middle", white: index === 0 },
  ];
}

/** One metre at the foot, so that the room can be judged. */
function scaleBar(scale: number, height: number): Shape[] {
  const y = height - 8;
  return [
    { shape: "line", from: [8, y], to: [round(8 + scale), y], width: 1 },
    { shape: "line", from: [8, y - 3], to: [8, y + 3], width: 1 },
    { shape: "line", from: [round(8 + scale), y - 3], to: [round(8 + scale), y + 3], width: 1 },
    { shape: "text", x: round(8 + scale + 5), y: y + 3, text: "1 m", size: 8.5 },
  ];
}
