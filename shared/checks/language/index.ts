/**
 * The language reader: what a piece of coaching text asks, praises or claims that it should not.
 *
 * Two readers behind one door. `grammar` explains itself and reads what is said plainly; `likeness` is trained on judged
 * lines and reads pictures and paraphrase. Knows nothing of episodes.
 */
export { readCue } from "./read";
export { nearestLines } from "./likeness";
export { CUE_LABELS } from "./types";
export type { CueAudience, CueInput, CueLabel, CueLabelName, CueSlot } from "./types";
