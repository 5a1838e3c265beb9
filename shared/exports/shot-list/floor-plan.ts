import type { FloorSide } from "../../episode";
import { metres, type BlockFloor, type FloorMark } from "../../filming";
import { drawing, type Drawing, type Shape } from "../paper";
import { shorten } from "./measures";
import { AISLE_STRIP, roomShapes, type FloorPoint as Point, type OnPage } from "./room";

/** Room of the drawing, points: beside the marks, the same lower, or across the page. */
export const PLAN_SIZES = { beside: { width: 232, height: 188 }, low: { width: 232, height: 132 }, across: { width: 500, height: 270 } } as const;
type PlanSize = keyof typeof PLAN_SIZES;
/** Between the frame and the middle of the outermost mark: its distance is written above or below it. */
const EDGE = { x: 24, y: 34 } as const;
const RADIUS = 11;
/** Never more points to the metre than this, so that a close mark does not make a giant. */
const MAX_SCALE = 60;
/** A wall so far outside everything else is left out, so that it does not shrink the rest. Metres. */
const FAR_WALL = 2.5;

/** A detail is filmed from beside the body: its mark has no room on a plan of the station. */
const standing = (floor: BlockFloor): FloorMark[] => floor.marks.filter(({ size }) => size !== "insert");
const spotOf = ({ spot: [right, ahead] }: FloorMark): Point => [right, -ahead];

const FACES = { lies: "The subject lies with the head up the page", faces: "The subject faces up the page", walks: "The subject walks up the page" } as const;

/** "A, side, 2.9 m; B, rear, 1.8 m" and what is round them, for those who cannot see it. */
export function planInWords(floor: BlockFloor): string {
  const marks = standing(floor).map((mark) => `${mark.letter}, ${mark.angle}, ${metres(mark.distance)}`);
  const { room } = floor;
  const walls = (Object.entries(room?.walls ?? {}) as [FloorSide, number | null][]).flatMap(([side, distance]) => (distance === null ? [] : [`${room?.mirrors.includes(side) ? "mirror" : "wall"} ${side} at ${metres(distance)}`]));
  const aisle = room?.aisle ? [`people walk past ${room.aisle}`] : [];
  return [
    `Floor plan from above${floor.station === "" ? "" : ` of the ${floor.station}`}: ${marks.join("; ")}`, FACES[floor.line.along],
    ...(walls.length + aisle.length > 0 ? [[...walls, ...aisle].join("; ")] : []),
  ].map((part) => `${part.charAt(0).toUpperCase()}${part.slice(1)}.`).join(" ");
}

/**
 * The block from above, to scale: the subject in the middle, marks as lettered circles where they stand, dashed lines for what they see,
 * the line the cameras keep to one side of, walls, mirrors and the aisle.
 * @param size - beside the table of marks, or across the page when there are many
 * @returns null when no mark has a place on the floor
 */
export function floorPlan(floor: BlockFloor, size: PlanSize = "beside"): Drawing | null {
  const { width, height } = PLAN_SIZES[size];
  const marks = standing(floor);
  if (marks.length === 0) return null;
  const { halfWide, halfLong } = floor.person;
  // Everything that must be inside, in metres; the arrow needs some room ahead of the subject.
  const xs = [...marks.map((mark) => spotOf(mark)[0]), -halfWide, halfWide];
  const ys = [...marks.map((mark) => spotOf(mark)[1]), -halfLong - 0.5, halfLong];
  const near = (distance: number | null | undefined, reach: number): number[] => (distance !== null && distance !== undefined && distance < reach + FAR_WALL ? [distance] : []);
  const { ahead, behind, left: onLeft, right: onRight } = floor.room?.walls ?? { ahead: null, behind: null, left: null, right: null };
  const left = Math.min(...xs, ...near(onLeft, -Math.min(...xs)).map((d) => -d));
  const right = Math.max(...xs, ...near(onRight, Math.max(...xs)));
  const top = Math.min(...ys, ...near(ahead, -Math.min(...ys)).map((d) => -d));
  const bottom = Math.max(...ys, ...near(behind, Math.max(...ys)));
  // The words beside the subject need room too, unless marks at the right give it.
  const beside = Math.max(EDGE.x, ...sideWords(floor).map((words) => words.length * 4.7 + 12));
  // A hatched aisle runs along an edge; no mark's distance may stand in it.
  const strip = floor.room?.aisle ? AISLE_STRIP : 0;
  const edge = { x: EDGE.x + strip, y: EDGE.y + strip };
  const rightEdge = right > halfWide ? edge.x : beside + strip;
  const scale = Math.min(MAX_SCALE, (width - edge.x - rightEdge) / (right - left), (height - 2 * edge.y) / (bottom - top));
  const origin: Point = [(width + edge.x - rightEdge) / 2 - ((left + right) / 2) * scale, height / 2 - ((top + bottom) / 2) * scale];
  const onPage: OnPage = ([x, y]) => [round(origin[0] + x * scale), round(origin[1] + y * scale)];

  return drawing({
    width,
    height,
    frame: true,
    alt: planInWords(floor),
    shapes: [
      ...roomShapes(floor.room, { left, right, top, bottom }, onPage, { width, height }), ...marks.flatMap((mark) => sightLines(mark, floor, onPage, scale)), ...besideSubject(floor, onPage), ...subject(floor, onPage),
      ...marks.map((mark) => distanceOf(mark, onPage)), ...marks.flatMap((mark, index) => lettered(mark, index, onPage)), ...scaleBar(scale, height),
    ],
  });
}

const round = (value: number): number => Math.round(value * 10) / 10;

/** Two dashed lines from the mark to both ends of the side it sees. */
function sightLines(mark: FloorMark, { person: { halfWide, halfLong } }: BlockFloor, onPage: OnPage, scale: number): Shape[] {
  const [x, y] = spotOf(mark);
  const length = Math.hypot(x, y) || 1;
  const [tx, ty]: Point = [-x / length, -y / length];
  const deep = Math.min(length * 0.5, Math.abs(tx) * halfWide + Math.abs(ty) * halfLong);
  const wide = Math.abs(tx) * halfLong + Math.abs(ty) * halfWide + 0.12;
  const from = onPage([x + (tx * RADIUS) / scale, y + (ty * RADIUS) / scale]);
  return [-1, 1].map((sign): Shape => ({ shape: "line", from, to: onPage([-tx * deep - ty * wide * sign, -ty * deep + tx * wide * sign]), dash: [3, 3] }));
}

/** Head and shoulders, or a body along the page, with an arrow the way it faces. */
function subject({ person: { halfWide, halfLong }, line }: BlockFloor, onPage: OnPage): Shape[] {
  const [x1, y1] = onPage([-halfWide, -halfLong]);
  const [x2, y2] = onPage([halfWide, halfLong]);
  const [tipX, tipY] = onPage([0, -halfLong - 0.42]);
  const middle = round((x1 + x2) / 2);
  const body: Shape = line.along === "lies"
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

function besideSubject(floor: BlockFloor, onPage: OnPage): Shape[] {
  const { halfWide, halfLong } = floor.person;
  const [x, top] = onPage([halfWide, -halfLong]);
  const [, foot] = onPage([halfWide, halfLong]);
  const words = sideWords(floor);
  const y = round((top + foot) / 2);
  return [
    ground(x + 3, round(y - 9), Math.max(...words.map((text) => text.length)) * 4.7, words.length * 11 + 2),
    ...words.map((text, row): Shape => ({ shape: "text", x: x + 5, y: round(y + row * 11), text, size: 9 })),
  ];
}

const ARROWS = { lies: "arrow: head", walks: "arrow: walks", faces: "arrow: faces" } as const;

/** Beside the subject: where it is, and what the arrow means. */
const sideWords = ({ station, line }: BlockFloor): string[] => [...(station === "" ? [] : [shorten(station, 18)]), ARROWS[line.along]];

/** How far a mark is, on the side away from the subject. */
function distanceOf(mark: FloorMark, onPage: OnPage): Shape {
  const [x, y] = onPage(spotOf(mark));
  const above = spotOf(mark)[1] < -0.2;
  return { shape: "text", x, y: round(above ? y - RADIUS - 5 : y + RADIUS + 12), text: metres(mark.distance), size: 11, weight: "semibold", anchor: "middle" };
}

/** The first mark is black, later ones white, so that they are told apart at a glance. */
function lettered(mark: FloorMark, index: number, onPage: OnPage): Shape[] {
  const [x, y] = onPage(spotOf(mark));
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
