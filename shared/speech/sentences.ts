import { endsSentence } from "./stops";

/**
 * The sentences of a text with their closing marks, trimmed, in order. A full stop ends a sentence when a space or the end follows
 * and it closes no short form that goes on ("e.g.", "Mr. Hill", "12 kg. bell").
 */
export function sentencesOf(text: string): string[] {
  const sentences: string[] = [];
  let open = "";
  const pieces = text.split(/(?<=[.!?…]['"’”)\]]*)\s+/);
  for (const [at, piece] of pieces.entries()) {
    open = open ? `${open} ${piece}` : piece;
    if (endsSentence(open, pieces[at + 1] ?? "")) {
      sentences.push(open.trim());
      open = "";
    }
  }
  if (open.trim()) sentences.push(open.trim());
  return sentences;
}

/** The stretches of a text between marked breaths ( / with spaces on both sides). */
export const stretchesOf = (text: string): string[] => text.split(/(?<=^|\s)\/(?=\s|$)/);
