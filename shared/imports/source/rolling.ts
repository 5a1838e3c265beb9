import type { Cue } from "../../speech";

/** From this many repeats, and this share of all captions, they roll on purpose. */
const FEWEST = 3;
const SHARE = 0.3;

/** How many lines at the start of `cue` repeat the end of `before`. */
function repeated(before: Cue | undefined, cue: Cue): number {
  if (!before || cue.start > before.end + 0.25) return 0;
  const above = before.text.split("\n");
  const lines = cue.text.split("\n");
  for (let count = Math.min(above.length, lines.length); count > 0; count -= 1) {
    if (lines.slice(0, count).join("\n") === above.slice(-count).join("\n")) return count;
  }
  return 0;
}

/**
 * Captions that roll show each line twice: new below, then old above the next. Each line is kept once, where it was new.
 * @returns the captions, and how many lines were shown twice; as they came when they do not roll
 */
export function unroll(cues: readonly Cue[]): { readonly cues: readonly Cue[]; readonly repeats: number } {
  const repeats = cues.map((cue, at) => repeated(cues[at - 1], cue));
  const rolling = repeats.filter((count) => count > 0).length;
  if (rolling < FEWEST || rolling < cues.length * SHARE) return { cues, repeats: 0 };
  const kept = cues.flatMap((cue, at): Cue[] => {
    const text = cue.text.split("\n").slice(repeats[at]).join("\n");
    return text === "" ? [] : [{ ...cue, text }];
  });
  return { cues: kept, repeats: repeats.reduce((sum, count) => sum + count, 0) };
}
