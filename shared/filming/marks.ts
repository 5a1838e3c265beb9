import type { Block, Episode } from "../episode";
import { exerciseInBlock, type Angle } from "../exercises";
import { shotsOf, type LineShot } from "./shots";
import { standFor, USUAL_SETUP, type FilmingSetup } from "./stand";
import type { Shot, ShotSize, Stand } from "./types";

/** A place the camera stands, and what it films from there. */
export interface Mark {
  /** A, B, C in order of first use, as it is taped to the floor. */
  readonly letter: string;
  /** `markKey` of its shots. */
  readonly key: string;
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

const positive = (value: number): boolean => value > 0 && Number.isFinite(value);

/** Aspect, lens and stature from the episode, what is done from the block; as usual where nothing, or nothing sound, is written. */
export function setupOf(episode: Pick<Episode, "video"> & { readonly session?: Pick<Episode["session"], "filming"> }, block: Block, own: Partial<Pick<FilmingSetup, "lens" | "stature">> = {}): FilmingSetup {
  const exercise = exerciseInBlock(block) ?? undefined;
  const { lens, stature } = { ...USUAL_SETUP, ...episode.session?.filming, ...own };
  return {
    aspect: episode.video.aspect,
    lens: typeof lens === "number" && !positive(lens) ? USUAL_SETUP.lens : lens,
    stature: positive(stature) ? stature : USUAL_SETUP.stature,
    position: exercise?.position ?? USUAL_SETUP.position,
    ...(exercise ? { exercise } : {}),
  };
}

/** The block's distinct camera marks, each angle and size once, lettered in order of first use. */
export function marksOf(block: Block, setup: FilmingSetup = USUAL_SETUP): Mark[] {
  const groups = new Map<string, LineShot[]>();
  for (const item of shotsOf(block)) {
    const key = markKey(item.shot);
    groups.set(key, [...(groups.get(key) ?? []), item]);
  }
  return [...groups].map(([key, shots], index) => {
    const { angle = null, size = null } = shots[0]?.shot ?? {};
    return { letter: markLetter(index), key, angle, size, shots, stand: standFor({ ...setup, angle, size }) };
  });
}
