import type { CheckLevel, Finding, Moment } from "../../shared/checks";

export const MOMENTS: readonly { readonly moment: Moment; readonly heading: string }[] = [
  { moment: "before filming", heading: "Before you film" },
  { moment: "before speaking", heading: "Before you speak" },
  { moment: "before publishing", heading: "Before you publish" },
];

const WEIGHT: Readonly<Record<CheckLevel, number>> = { stop: 0, fix: 1, consider: 2 };

export interface FindingGroups {
  readonly moments: readonly { readonly heading: string; readonly findings: readonly Finding[] }[];
  readonly waived: readonly Finding[];
  readonly open: number;
}

/** Open findings by moment, the gravest first and otherwise in the order they came; waived ones apart. */
export function groupFindings(findings: readonly Finding[]): FindingGroups {
  const open = findings.filter((finding) => finding.waiver === null);
  const moments = MOMENTS.map(({ moment, heading }) => ({
    heading,
    findings: open.filter((finding) => finding.moment === moment).sort((a, b) => WEIGHT[a.level] - WEIGHT[b.level]),
  }));
  return { moments: moments.filter((group) => group.findings.length > 0), waived: findings.filter((finding) => finding.waiver !== null), open: open.length };
}

/** Keys that a list can use even when one rule reports the same words twice. */
export function listKeys(findings: readonly Finding[]): string[] {
  const seen = new Map<string, number>();
  return findings.map(({ key }) => {
    const times = (seen.get(key) ?? 0) + 1;
    seen.set(key, times);
    return times === 1 ? key : `${key} ${times}`;
  });
}

/** Messages of the stops that stand now and did not before. */
export function newStops(before: ReadonlySet<string>, findings: readonly Finding[]): string[] {
  return findings.filter((finding) => finding.level === "stop" && finding.waiver === null && !before.has(finding.key)).map((finding) => finding.message);
}
