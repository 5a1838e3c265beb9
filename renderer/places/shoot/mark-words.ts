import { ANGLE_NAMES, bearingInWords, SIZE_NAMES, type BlockFloor, type Mark, type Snapped } from "../../../shared/filming";

/** "from the side, head to toe" */
export function markWords(mark: Pick<Mark, "angle" | "size">): string {
  const words = [mark.angle === null ? "any angle" : ANGLE_NAMES[mark.angle], mark.size === null || mark.size === mark.angle ? "" : SIZE_NAMES[mark.size]];
  return words.filter(Boolean).join(", ").toLowerCase();
}

/** "4 steps", "2½ steps", "half a step" */
export function stepsInWords(steps: number): string {
  if (steps === 0.5) return "half a step";
  const whole = Math.floor(steps);
  return `${whole}${steps > whole ? "½" : ""} ${steps === 1 ? "step" : "steps"}`;
}

/** "level", "12° down" */
export const tiltInWords = (tilt: number): string => (tilt === 0 ? "level" : `${Math.abs(tilt)}° ${tilt < 0 ? "down" : "up"}`);

/** Where a mark stands and what its frame shows, as one says it: "2.0 m away, ahead on the left, lens 0.7 m high, level: head to toe". */
export function placeInWords({ bearing, distance, shows, stand }: Snapped): string {
  return `${distance.toFixed(1)} m away, ${bearingInWords(bearing)}, lens ${stand.height.toFixed(1)} m high, ${tiltInWords(stand.tilt)}: ${shows}`;
}

/** What the dotted line is for: on which side of it cameras keep left and right. Empty when nothing but details is filmed. */
export function lineInWords({ line, marks }: BlockFloor): string {
  return marks.every(({ size }) => size === "insert") ? "" : `Dotted: the 180° line. Cameras on it or to its ${line.side} keep left and right in every cut.`;
}
