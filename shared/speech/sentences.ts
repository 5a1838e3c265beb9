/** Short forms whose full stop ends no sentence. */
const NOT_AN_END = /(?:^|[\s(])(?:e\.\s?g|i\.\s?e|etc|vs|approx|max|min|no|dr|mr|mrs|ms|st)\.$/i;

/**
 * The sentences of a text with their closing marks, trimmed, in order. A full stop ends a sentence when a space or the end follows
 * and it closes no known short form ("e.g.").
 */
export function sentencesOf(text: string): string[] {
  const sentences: string[] = [];
  let open = "";
  for (const piece of text.split(/(?<=[.!?…]['"’”)\]]*)\s+/)) {
    open = open ? `${open} ${piece}` : piece;
    if (/[.!?…]['"’”)\]]*$/.test(open) && !NOT_AN_END.test(open)) {
      sentences.push(open.trim());
      open = "";
    }
  }
  if (open.trim()) sentences.push(open.trim());
  return sentences;
}

/** The stretches of a text between marked breaths ( / with spaces on both sides). */
export const stretchesOf = (text: string): string[] => text.split(/(?<=^|\s)\/(?=\s|$)/);
