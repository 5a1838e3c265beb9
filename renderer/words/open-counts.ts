import { LEVELS, RULES, type CheckLevel, type Finding, type LevelCounts, type Moment, type Subject } from "../../shared/checks";
import type { Place } from "../session/types";

/** Where findings of a subject are dealt with. Words are mended where they are written, or where they are spoken. */
const PLACE_OF: Readonly<Record<Exclude<Subject, "words">, Place>> = { structure: "write", dose: "train", film: "shoot", publishing: "publish" };
const PLACE_OF_WORDS: Readonly<Record<Moment, Place>> = { "before filming": "write", "before speaking": "speak", "before publishing": "publish" };
const SUBJECT_OF = new Map(RULES.map(({ meta }) => [meta.id, meta.subject]));

/** The place a finding concerns; each concerns one. */
export function placeOf({ rule, moment }: Pick<Finding, "rule" | "moment">): Place {
  const subject = SUBJECT_OF.get(rule) ?? "words";
  return subject === "words" ? PLACE_OF_WORDS[moment] : PLACE_OF[subject];
}

/** Findings still open, by level. */
export function levelCounts(findings: readonly Finding[]): LevelCounts {
  const counts: Record<CheckLevel, number> = { stop: 0, fix: 0, consider: 0 };
  for (const finding of findings) if (finding.waiver === null) counts[finding.level]++;
  return counts;
}

/** Findings still open, by the place they concern and by level. */
export function openCounts(findings: readonly Finding[]): Readonly<Record<Place, LevelCounts>> {
  const at = (place: Place): LevelCounts => levelCounts(findings.filter((finding) => placeOf(finding) === place));
  return { write: at("write"), train: at("train"), shoot: at("shoot"), speak: at("speak"), publish: at("publish") };
}

/** "1 stop, 4 fix, 7 consider"; levels without any are left out. */
export function countsInWords(counts: LevelCounts): string {
  return LEVELS.filter((level) => counts[level] > 0).map((level) => `${counts[level]} ${level}`).join(", ");
}

/** The gravest level of a place, how many there are of it, and how many lesser ones; null when nothing is open. */
export function gravest(counts: LevelCounts): { level: CheckLevel; count: number; more: number } | null {
  const level = LEVELS.find((each) => counts[each] > 0);
  if (level === undefined) return null;
  return { level, count: counts[level], more: counts.stop + counts.fix + counts.consider - counts[level] };
}
