/** Words and time: what written text sounds like, how long it takes to say, where the breath goes, how easy it reads. */
export type { BlockScreenClock, MeasuredSeconds, Pace, Pronunciation, Readability, ReadingCounts, ScreenClock, Segment, Spoken } from "./types";
export { DEFAULT_PACE, paceOf } from "./pace";
export { ownPace } from "./own-pace";
export { fitPace, slowedPace, type PaceFit, type PaceSample } from "./fit-pace";
export * from "./recording";
export { saidDifferently } from "./said-differently";
export { spokenForm } from "./spoken-form";
export { NUMBER_VALUES, decimalWords, numberWords, ordinalWords } from "./numbers";
export { syllablesOf } from "./syllables";
export { saidWords, type SaidWord } from "./said-words";
export { speak } from "./speak";
export { sentencesOf } from "./sentences";
export { breaths } from "./breaths";
export { HANDLE_SECONDS, screenClock } from "./screen-clock";
export { spokenLines, spokenSeconds, type SpokenLine } from "./spoken-lines";
export { blockFit, breathEdits, editsToFit, quietIn, withBreathMarks, type BlockFit, type CutReason, type CutSuggestion, type QuietPlace } from "./fit";
export { readability, readabilityOf, readingCounts } from "./readability";
export * from "./captions";
