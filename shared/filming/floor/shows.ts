import { seenFrom, bodiesOf, type FilmingSetup, type View } from "../stand";
import { metres } from "./words";

/** What the frame holds at a distance. Metres, to the hundredth. */
export interface FrameView {
  readonly wide: number;
  readonly tall: number;
  /** "head to toe with 0.2 m above" */
  readonly shows: string;
}

/** Shares of a standing body at which a frame may end below, and how the trade says so. Terms from memory, shares @source Drillis & Contini 1966. */
const CUTS: readonly (readonly [share: number, shows: string, cut: string])[] = [
  [0.2, "shins up", "the feet"], [0.44, "knees up", "the feet"], [0.62, "waist up", "the feet"], [0.78, "chest up", "the hips and legs"], [1.1, "head and shoulders", "the body below"],
];
/** A margin that is worth a word; less is no more than rounding. Metres. */
const SLIVER = 0.06;

const hundredth = (value: number): number => Math.round(value * 100) / 100;

/** "waist up; the feet are cut" */
function upright(bottom: number, top: number, tall: number, person: number): string {
  if (top < person - SLIVER) return bottom <= SLIVER ? "the head is cut" : "the body without head and feet";
  const room = top - tall;
  if (bottom <= SLIVER) {
    if (room < -SLIVER) return "head to toe; what is above the head is cut";
    return `head to toe${room >= SLIVER ? ` with ${metres(room)} above` : ""}`;
  }
  const [, shows, cut] = CUTS.find(([share]) => bottom < share * person) ?? ["", "head and shoulders", "the body below"];
  return `${shows}; ${cut} ${cut.endsWith("below") ? "is" : "are"} cut`;
}

/** One plain phrase for what a frame shows of the body. */
function phrase(setup: FilmingSetup, view: View, distance: number): string {
  const { seen, subject, size, angle } = seenFrom(setup, view, distance);
  if (size === "insert") return `a detail, ${metres(Math.max(0.1, seen.wide))} across`;
  if (size === "close-up") {
    const short = seen.wide < subject.wide - SLIVER || seen.tall < subject.tall - SLIVER;
    return `head or one joint, ${metres(Math.max(0.1, seen.wide))} across${short ? "; tighter than planned" : ""}`;
  }
  const { body, person } = bodiesOf(setup);
  const lies = person.long > person.tall;
  const top = seen.bottom + seen.tall;
  // What has to be seen across for the whole movement, whatever the size asks for.
  const across = seenFrom(setup, { angle, size: "full" }, distance).subject.wide;
  const beside = (seen.wide - across) / 2;
  if (lies) {
    const height = top < body.tall - SLIVER ? "; the top of the movement is cut" : "";
    if (beside >= -SLIVER / 2) return `the whole body${beside >= SLIVER ? ` with ${metres(beside)} at each side` : ""}${height}`;
    return `${metres(seen.wide)} of ${metres(across)} across; ${angle === "side" ? "head or feet are" : "the edges are"} cut${height}`;
  }
  const cutBeside = beside < -SLIVER / 2 && size !== "medium";
  const ends = setup.exercise?.equipment.includes("barbell") && angle !== "side" ? "the ends of the bar" : body.travel > 0 && (angle === "side" || angle === "low") ? "both ends of the walk" : "the sides";
  return `${upright(seen.bottom, top, body.tall, person.tall)}${cutBeside ? `; ${ends} are cut` : ""}`;
}

/**
 * What the frame shows when the camera of a view stands at a distance; its height and tilt follow the distance.
 * @param distance - metres along the floor from the middle of the subject; for an insert from the detail
 */
export function frameAt(setup: FilmingSetup, angle: View["angle"], size: View["size"], distance: number): FrameView {
  const away = distance > 0 && Number.isFinite(distance) ? distance : 0.1;
  const { seen } = seenFrom(setup, { angle, size }, away);
  return { wide: hundredth(seen.wide), tall: hundredth(seen.tall), shows: phrase(setup, { angle, size }, away) };
}
