import { MAX_LINES, MAX_TEXT, newLine, type Block, type Episode, type NewId } from "../../shared/episode";
import type { Imported, NotUnderstood } from "../../shared/imports";
import { clock } from "../words/clock";

/** A piece as a note: when it was said, its words, and what is the matter with them. */
const noteOf = ({ at, text, sentence }: NotUnderstood): string => `${at === null ? "" : `${clock(at)} `}"${text}": ${sentence}`.slice(0, MAX_TEXT);

/** What of a draft was not understood and belongs to a block. A line that is a note already says it itself. */
export function piecesToKeep({ episode, notUnderstood }: Pick<Imported, "episode" | "notUnderstood">): NotUnderstood[] {
  const blocks = new Map(episode.blocks.map((block) => [block.id, block]));
  return notUnderstood.filter(({ block, text }) => {
    const its = block === null ? undefined : blocks.get(block);
    return its !== undefined && !its.lines.some((line) => line.kind === "note" && line.text === text);
  });
}

/** The draft with these pieces as notes at the end of their blocks, so that they stand where they are worked on. */
export function withNotes(episode: Episode, pieces: readonly NotUnderstood[], newId: NewId): Episode {
  const withIts = (block: Block): Block => {
    const notes = pieces.filter((piece) => piece.block === block.id).slice(0, MAX_LINES - block.lines.length);
    return notes.length === 0 ? block : { ...block, lines: [...block.lines, ...notes.map((piece) => newLine(newId, "note", noteOf(piece)))] };
  };
  return { ...episode, blocks: episode.blocks.map(withIts) };
}
