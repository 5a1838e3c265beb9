import { bearingInWords, metres, stepsInWords, tiltInWords, type BlockFloor, type Snapped } from "../../../shared/filming";

/** "4 steps", "2½ steps", "half a step" */
export const stepsSaid = (steps: number): string => (steps === 0.5 ? "half a step" : stepsInWords(steps));

/** Where a mark stands and what its frame shows, as one says it: "2.0 m away, ahead on the left, lens 0.7 m high, level: head to toe". */
export function placeInWords({ bearing, distance, shows, stand }: Snapped): string {
  return `${metres(distance)} away, ${bearingInWords(bearing)}, lens ${metres(stand.height)} high, ${tiltInWords(stand.tilt)}: ${shows}`;
}

/** What the dotted line is for: on which side of it cameras keep left and right. Empty when nothing but details is filmed. */
export function lineInWords({ line, marks }: BlockFloor): string {
  return marks.every(({ size }) => size === "insert") ? "" : `Dotted: the 180° line. Cameras on it or to its ${line.side} keep left and right in every cut.`;
}
