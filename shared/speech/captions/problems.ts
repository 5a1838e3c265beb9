import type { CaptionProblem } from "./types";

/** Said in full so often; the rest is counted, so that a broken file of hours is told in a page. */
const IN_FULL = 5;

/** Collects problems by kind. */
export class Problems {
  private readonly told: CaptionProblem[] = [];
  private readonly counts = new Map<string, number>();

  /** @param kind - names the trouble in the plural, as in "12 more captions ..." */
  add(kind: string, line: number, sentence: string): void {
    const count = (this.counts.get(kind) ?? 0) + 1;
    this.counts.set(kind, count);
    if (count <= IN_FULL) this.told.push({ line, sentence });
  }

  /** In the order of the file, then one sentence for each kind that was cut short. */
  list(): CaptionProblem[] {
    const inOrder = [...this.told].sort((a, b) => a.line - b.line);
    const last = inOrder.at(-1)?.line ?? 1;
    const more = [...this.counts].filter(([, count]) => count > IN_FULL).map(([kind, count]) => ({ line: last, sentence: `${(count - IN_FULL).toLocaleString("en")} more ${kind}.` }));
    return [...inOrder, ...more];
  }
}
