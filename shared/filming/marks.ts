import type { Block, Episode } from "../episode";
import { exerciseById, type Angle } from "../exercises";
import { shotsOf, type LineShot } from "./shots";
import { standFor, USUAL_SETUP, type FilmingSetup } from "./stand";
import type { Shot, ShotSize, Stand } from "./types";

/** A place the camera stands, and what it films from there. */
export interface Mark {
  /** A, B, C in order of first use, as it is taped to the floor. */
  readonly letter: string;
  readonly angle: Angle | null;
  readonly size: ShotSize | null;
  readonly shots: readonly LineShot[];
  readonly stand: Stand;
}

const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

/** 0 is A, 25 is Z, 26 is AA. */
function markLetter(index: number): string {
  const before = index >= LETTERS.length ? markLetter(Math.floor(index / LETTERS.length) - 1) : "";
  return before + LETTERS.charAt(index % LETTERS.length);
}

/** Shots with the same key are filmed from the same mark. */
export const markKey = (shot: Shot): string => `${shot.angle ?? "any"} ${shot.size ?? "any"}`;

/** Aspect from the episode, position from the block's exercise; lens and stature as usual unless given. */
export function setupOf(episode: Pick<Episode, "video">, block: Block, own: Partial<Pick<FilmingSetup, "lens" | "stature">> = {}): FilmingSetup {
  const position = block.exercise === null ? undefined : exerciseById(block.exercise)?.position;
  return { ...USUAL_SETUP, aspect: episode.video.aspect, ...(position ? { position } : {}), ...own };
}

/** The block's distinct camera marks, each angle and size once, lettered in order of first use. */
export function marksOf(block: Block, setup: FilmingSetup = USUAL_SETUP): Mark[] {
  const groups = new Map<string, LineShot[]>();
  for (const item of shotsOf(block)) {
    const key = markKey(item.shot);
    groups.set(key, [...(groups.get(key) ?? []), item]);
  }
  return [...groups.values()].map((shots, index) => {
    const { angle = null, size = null } = shots[0]?.shot ?? {};
    return { letter: markLetter(index), angle, size, shots, stand: standFor({ ...setup, angle, size }) };
  });
}
