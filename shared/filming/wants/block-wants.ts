import { blockName, memoOn, type Block, type BlockKind } from "../../episode";
import { exerciseInBlock, type Exercise } from "../../exercises";
import { shotsOf, type LineShot } from "../shots";
import { cueWantsOf } from "./cues";
import type { EpisodeWant } from "./types";
import { usualShotOf } from "./usual";
import { shotOf, want } from "./want";

const isDetail = ({ shot }: LineShot): boolean => shot.angle === "insert" || shot.size === "insert";
const isWhole = ({ shot }: LineShot): boolean => shot.size === null || shot.size === "full" || shot.size === "wide";
/** Lines that say something. */
export const plannedIn = (block: Block): LineShot[] => shotsOf(block).filter(({ line }) => line.text.trim() !== "");

/** Nothing in the hands, under load or to hold on to. */
const UNLOADED = new Set(["bodyweight", "mat", "wall", "foam roller", "treadmill", "bike"]);
const isLoaded = ({ equipment, family }: Exercise): boolean => family !== "mobility-warmup" && family !== "cooldown-stretch" && equipment.some((item) => !UNLOADED.has(item));

const WHAT: Readonly<Record<Exclude<BlockKind, "talk" | "exercise">, string>> = {
  opening: "the opening, to camera", "warm-up": "the warm-up", "cool-down": "the cool-down", closing: "the closing, to camera",
};

function usualWant(block: Block): EpisodeWant[] {
  const asked = usualShotOf(block.kind);
  if (!asked || block.kind === "talk") return [];
  const planned = plannedIn(block).filter((item) => !isDetail(item));
  const cover = block.kind === "exercise" ? planned.find(isWhole) : planned[0];
  return [want({
    id: `${block.kind}:${block.id}`, block: block.id, what: block.kind === "exercise" ? `the whole movement of ${blockName(block)}` : WHAT[block.kind], coveredBy: cover?.line.id ?? null,
  }, { ...asked, need: block.kind === "cool-down" ? "nice" : asked.need })];
}

/** Shown once without load, and its hands or feet close up. */
function exerciseWants(block: Block): EpisodeWant[] {
  const exercise = exerciseInBlock(block);
  if (block.kind !== "exercise" || !exercise || !isLoaded(exercise)) return [];
  const planned = plannedIn(block);
  const detail = exercise.cues.find(({ seenFrom }) => seenFrom.includes("insert"))?.text;
  return [
    want({ id: `demonstration:${block.id}`, block: block.id, what: `a slow demonstration of ${blockName(block)} with little load`, coveredBy: planned.find(({ shot }) => shot.on === "demonstration")?.line.id ?? null },
      shotOf({ angle: "three-quarter", size: "full", on: "demonstration", seconds: 10, need: "nice", subject: "two slow repetitions with little load" })),
    want({ id: `insert:${block.id}`, block: block.id, what: `hands or feet of ${blockName(block)}, close up`, coveredBy: planned.find(isDetail)?.line.id ?? null },
      shotOf({ angle: "insert", size: "insert", seconds: 6, need: "nice", subject: detail ?? "hands and feet" })),
  ];
}

/** What one block needs: its usual shot, a demonstration and an insert where something is lifted, its cues and faults. */
export const blockWantsOf = memoOn((block: Block): readonly EpisodeWant[] => [...usualWant(block), ...exerciseWants(block), ...cueWantsOf(block)]);
