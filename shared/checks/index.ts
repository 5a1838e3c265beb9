/**
 * Checks: what an episode lacks, gets wrong or says that could hurt somebody.
 *
 * May read the document, the catalogue and the engines; may not change anything: a remedy is a list of edits for others to apply.
 */
export type { CheckContext, CheckLevel, Finding, Moment, PlacedLine, Remedy, RuleSource } from "./types";
export { checkEpisode, findingSentence, LEVELS, MOMENTS, actionable, openFindings, waiverFor, type LevelCounts } from "./engine";
export { SUBJECTS, type Rule, type RuleMeta, type Subject } from "./define-rule";
export { RULES } from "./registry";
export { CUE_LABELS, readCue, type CueAudience, type CueInput, type CueLabel, type CueLabelName, type CueSlot } from "./language";
