import { ANGLE_NAMES, SIZE_NAMES } from "./shot-words";
import type { Shot } from "./types";

/** "from the side, head to toe" */
export const markWords = ({ angle, size }: Pick<Shot, "angle" | "size">): string =>
  [angle === null ? "any angle" : ANGLE_NAMES[angle], size === null || size === angle ? "" : SIZE_NAMES[size]].filter(Boolean).join(", ");

/** Walking steps to the half: "4 steps", "2½ steps", "1 step", "½ step". */
export function stepsInWords(steps: number): string {
  const whole = Math.floor(steps);
  const half = steps - whole >= 0.5 ? "½" : "";
  return `${whole === 0 && half ? "" : whole}${half} ${steps <= 1 ? "step" : "steps"}`;
}

/** How far the phone leans: "level", "12° down". @param tilt - degrees, down is negative */
export const tiltInWords = (tilt: number): string => (tilt === 0 ? "level" : `${Math.abs(tilt)}° ${tilt < 0 ? "down" : "up"}`);
