/** Reads coaching text: what it asks people to do or believe that it should not. The only way in is `readCue`. */
export { readCue } from "./read";
export { CUE_LABELS } from "./types";
export type { CueAudience, CueInput, CueLabel, CueLabelName, CueSlot } from "./types";
