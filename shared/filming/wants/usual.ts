import type { Block, BlockKind } from "../../episode";
import { printShotLine } from "../print-shot";
import type { Shot } from "../types";
import { shotOf } from "./want";

/** The one shot a block of a kind should not go without. Common practice, no source. */
const USUAL: Readonly<Record<Exclude<BlockKind, "talk">, Shot & { readonly seconds: number }>> = {
  opening: shotOf({ angle: "three-quarter", size: "medium", seconds: 10, subject: "to camera, where the session begins" }),
  "warm-up": shotOf({ angle: "front", size: "full", seconds: 15, subject: "the circles, one joint after the other" }),
  exercise: shotOf({ angle: "side", size: "full", sets: [1], seconds: 15, subject: "the whole movement" }),
  "cool-down": shotOf({ angle: "side", size: "wide", seconds: 12, subject: "walking, then lying down" }),
  closing: shotOf({ angle: "front", size: "medium", seconds: 12, subject: "to camera, goodbye" }),
};

/** The one shot a kind of block should not go without; null for a talk, which may run over other pictures. */
export const usualShotOf = (kind: BlockKind): (Shot & { readonly seconds: number }) | null => (kind === "talk" ? null : USUAL[kind]);

/** The same as a shot line. */
export function usualShot({ kind }: Pick<Block, "kind">): string {
  const shot = usualShotOf(kind);
  return shot ? printShotLine(shot) : "";
}
