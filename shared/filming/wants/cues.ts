import { linesOf, memoOn, type Block, type Line } from "../../episode";
import { exerciseInBlock, type Angle } from "../../exercises";
import { shotsOf } from "../shots";
import type { EpisodeWant } from "./types";
import { shotOf, want } from "./want";

const SMALL_WORDS = new Set(["the", "and", "with", "your", "from", "over", "under", "into", "then", "that", "while", "when", "only", "keep", "both", "way", "stay"]);
const contentWords = (text: string): Set<string> => new Set(text.toLowerCase().match(/[a-z]{3,}/g)?.map((word) => word.replace(/s$/, "")).filter((word) => !SMALL_WORDS.has(word)));

/** Do two lines say much the same? Most content words of the shorter one stand in the other. */
function alike(a: string, b: string): boolean {
  const [one, other] = [contentWords(a), contentWords(b)];
  const shared = [...one].filter((word) => other.has(word)).length;
  return shared >= 2 && shared / Math.min(one.size, other.size) >= 0.75;
}

/** Seconds a cue is looked at. Common practice, no source. */
const SECONDS = { body: 10, insert: 6 } as const;

function seen(block: Block, line: Line, angles: readonly Angle[]): EpisodeWant {
  // A shot that names no angle may be taken from any.
  const cover = shotsOf(block).find(({ line: { text }, shot }) => text.trim() !== "" && (shot.angle === null || angles.includes(shot.angle)));
  const angle = angles[0] ?? "side";
  const insert = angle === "insert";
  const need = line.kind === "cue" && !cover ? "must" : "nice";
  return want(
    { id: `${line.kind}:${line.id}`, block: block.id, what: `${line.kind === "cue" ? "the cue" : "the fault"} "${line.text.trim()}"`, angles, coveredBy: cover?.line.id ?? null },
    shotOf({ angle, size: insert ? "insert" : "full", seconds: insert ? SECONDS.insert : SECONDS.body, need, subject: line.text.trim() }),
  );
}

/**
 * What the block's own cue and fault lines need to be seen: those that the catalogue knows, from the angles it names.
 * A cue that no planned shot shows is a must; faults, and what is shown already, are nice to have.
 */
export const cueWantsOf = memoOn((block: Block): readonly EpisodeWant[] => {
  const exercise = exerciseInBlock(block);
  if (!exercise) return [];
  return (["cue", "avoid"] as const).flatMap((kind) => linesOf(block, kind).flatMap((line) => {
    const known = line.text.trim() === "" ? undefined : (kind === "cue" ? exercise.cues : exercise.avoid).find(({ text }) => alike(text, line.text));
    return known && known.seenFrom.length > 0 ? [seen(block, line, known.seenFrom)] : [];
  }));
});
