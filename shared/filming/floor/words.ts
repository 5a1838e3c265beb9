import type { FloorSide } from "../../episode";
import { turned } from "../bearings";
import type { Lens } from "../lens";

/** "2.9 m" */
export const metres = (value: number): string => `${value.toFixed(1)} m`;

/** "a", "a or b", "a, b or c" */
export const either = (items: readonly string[]): string => (items.length < 2 ? items.join("") : `${items.slice(0, -1).join(", ")} or ${items.at(-1) ?? ""}`);

/** Where a side is, in a sentence. */
export const SIDE_WORDS: Readonly<Record<FloorSide, string>> = { ahead: "ahead", behind: "behind", left: "on the left", right: "on the right" };

/** "straight ahead", "45° from ahead on the left" */
export function bearingInWords(bearing: number): string {
  const degrees = Math.round(turned(bearing));
  if (degrees === 0) return "straight ahead";
  return Math.abs(degrees) === 180 ? "straight behind" : `${Math.abs(degrees)}° from ahead on the ${degrees > 0 ? "left" : "right"}`;
}

/** "the ultra-wide lens", "the 35 mm lens" */
export const lensInWords = (lens: Lens): string => `the ${typeof lens === "number" ? `${lens} mm` : lens} lens`;
