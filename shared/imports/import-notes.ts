import type { NewId } from "../episode";
import { episodeOf, missingFrom } from "./draft";
import { readNotes } from "./notes/read-notes";
import { readSource, type Source } from "./source/read-source";
import type { Imported } from "./types";

/** The draft of typed notes. @param title - taken where the notes have none of their own */
export function draftOfNotes({ words, problems }: Source, title: string, newId: NewId): Imported {
  const notes = readNotes(words, newId);
  const { episode, over } = episodeOf(notes.blocks, notes.title ?? title, notes.units, null, newId);
  return { ok: true, episode, format: "notes", words: words.length, sentences: notes.lines, pace: null, missing: missingFrom(episode.blocks), notUnderstood: [...notes.notUnderstood, ...over], problems };
}

/** The same for text that may be something else: null where it is no notes. Needs nothing that was learned. */
export function importNotes(text: string, newId: NewId): Imported | null {
  const source = readSource(text);
  return source.ok && source.format === "notes" ? draftOfNotes(source, "", newId) : null;
}
