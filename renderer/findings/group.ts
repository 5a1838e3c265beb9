import { LEVELS, MOMENTS, type Finding, type LevelCounts, type Moment } from "../../shared/checks";
import { pairUp } from "../session/same-findings";
import { levelCounts } from "../words/open-counts";

const HEADINGS: Readonly<Record<Moment, string>> = { "before filming": "Before you film", "before speaking": "Before you speak", "before publishing": "Before you publish" };

export interface FindingGroups {
  /** `counts` are of all that is open, shown or held back. */
  readonly moments: readonly { readonly heading: string; readonly counts: LevelCounts; readonly findings: readonly Finding[] }[];
}

/**
 * Open findings by moment, the gravest first and otherwise in the order they came.
 * @param shown - which of them are listed; all unless given
 */
export function groupFindings(findings: readonly Finding[], shown: ReadonlySet<Finding> = new Set(findings)): FindingGroups {
  const open = findings.filter((finding) => finding.waiver === null);
  const moments = MOMENTS.map((moment) => {
    const here = open.filter((finding) => finding.moment === moment);
    return { heading: HEADINGS[moment], counts: levelCounts(here), findings: here.filter((finding) => shown.has(finding)).sort((a, b) => LEVELS.indexOf(a.level) - LEVELS.indexOf(b.level)) };
  });
  return { moments: moments.filter((group) => group.findings.length > 0) };
}

/** Messages of the stops that stand now and did not before; one whose words were merely changed is not new. */
export function newStops(before: readonly Finding[], findings: readonly Finding[]): string[] {
  const stops = findings.filter((finding) => finding.level === "stop");
  const pairs = pairUp(before.filter((finding) => finding.level === "stop"), stops);
  return stops.filter((finding, i) => finding.waiver === null && pairs[i] === null).map((finding) => finding.message);
}
