export type { CaptionAside, CaptionProblem, CaptionsRead, Cue } from "./types";
export { decodeText } from "./decode";
export { readCaptions } from "./read";
