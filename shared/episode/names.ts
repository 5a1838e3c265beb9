import type { Block, BlockKind, Episode, LineKind } from "./schema";

/** What a block of each kind is called when the coach gave it no title. */
export const BLOCK_KIND_NAMES: Readonly<Record<BlockKind, string>> = {
  opening: "Opening", "warm-up": "Warm-up", exercise: "Exercise", talk: "Talk", "cool-down": "Cool-down", closing: "Closing",
};

/** One phrase of help for each kind of line. */
export const LINE_KIND_HELP: Readonly<Record<LineKind, string>> = {
  cue: "what to do", avoid: "the fault", caution: "safety note", say: "voiceover words", shot: "what to film", note: "for you alone",
};

/** The block's title, or its kind when it has none. */
export function blockName(block: Pick<Block, "title" | "kind">): string {
  return block.title.trim() || BLOCK_KIND_NAMES[block.kind];
}

/** "Strong for the Trail, episode 7", or what of it is known. */
export function seriesName(episode: Pick<Episode, "series">): string {
  const { name, number } = episode.series;
  return [name.trim(), number === null ? "" : `episode ${number}`].filter(Boolean).join(", ");
}

/** The episode's title, or a plain stand-in. */
export function episodeName(episode: Pick<Episode, "title">): string {
  return episode.title.trim() || "Untitled episode";
}
