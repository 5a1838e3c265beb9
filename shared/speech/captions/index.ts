/** Captions: files read and written, what they may be, and where they break that. */
export type { CaptionAside, CaptionProblem, CaptionsRead, Cue } from "./types";
export { decodeText } from "./decode";
export { readCaptions } from "./read";
export { writeSubrip, writeWebvtt } from "./write";
export { CAPTION_LIMITS, UPRIGHT_LIMITS, charactersIn, type CaptionLimits } from "./limits";
export { captionFaults, type CaptionFault } from "./faults";
