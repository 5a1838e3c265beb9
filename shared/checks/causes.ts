import type { RawFinding, Rule, RuleMeta } from "./define-rule";
import { overlap } from "./ranges";
import type { CheckLevel } from "./types";

/** Gravest first. */
export const LEVELS: readonly CheckLevel[] = ["stop", "fix", "consider"];

const isGraver = (a: RawFinding, b: RawFinding): boolean => LEVELS.indexOf(a.level) < LEVELS.indexOf(b.level);

/** Do two findings point at one place, as far as both say where? Of a block and a line in it the block decides, of a line and some of its words the line. */
function atOnePlace(a: RawFinding, b: RawFinding, reach: RuleMeta["reach"]): boolean {
  if (a.block === null || b.block === null) return true;
  if (a.block !== b.block) return false;
  if (reach === "block") return true;
  if (a.line === null || b.line === null) return true;
  return a.line === b.line && (a.range === null || b.range === null || overlap(a.range, b.range));
}

/** Blame the same words of a line: exactly the same, or one rule's findings that overlap. */
function sameWords(a: RawFinding, b: RawFinding): boolean {
  if (a.line === null || a.line !== b.line || a.range === null || b.range === null) return false;
  return (a.range.start === b.range.start && a.range.end === b.range.end) || (a.rule === b.rule && overlap(a.range, b.range));
}

/** The gravest of two speaks, and the other lends it remedies; one that reads or does the same is not offered twice. */
function merged(a: RawFinding, b: RawFinding): RawFinding {
  const [winner, other] = isGraver(b, a) ? [b, a] : [a, b];
  const known = new Set(winner.remedies.flatMap(({ label, edits }) => [label, JSON.stringify(edits)]));
  const lent = other.remedies.filter(({ label, edits }) => !known.has(label) && !known.has(JSON.stringify(edits)));
  return lent.length === 0 ? winner : { ...winner, remedies: [...winner.remedies, ...lent] };
}

/**
 * One cause, one finding.
 *
 * A finding falls silent where a rule that its own rule yields to (`meta.yieldsTo`) finds something at the same place that is at least
 * as grave; that rule falling silent itself changes nothing, for then its own cause is named. What is left and blames the same words
 * becomes one finding.
 */
export function oneForEachCause(findings: readonly RawFinding[], rules: readonly Rule[]): RawFinding[] {
  const causes = new Map(rules.flatMap(({ meta }) => (meta.yieldsTo ? [[meta.id, meta.yieldsTo] as const] : [])));
  const reaches = new Map(rules.map(({ meta }) => [meta.id, meta.reach]));
  const byRule = new Map<string, RawFinding[]>();
  for (const finding of findings) byRule.set(finding.rule, [...(byRule.get(finding.rule) ?? []), finding]);
  const isExplained = (finding: RawFinding): boolean =>
    (causes.get(finding.rule) ?? []).some((id) => byRule.get(id)?.some((cause) => !isGraver(finding, cause) && atOnePlace(finding, cause, reaches.get(id))));

  const left: RawFinding[] = [];
  const onLine = new Map<string, number[]>();
  for (const finding of findings) {
    if (isExplained(finding)) continue;
    const others = finding.line === null ? [] : onLine.get(finding.line) ?? [];
    const same = others.find((index) => { const other = left[index]; return other !== undefined && sameWords(other, finding); });
    const before = same === undefined ? undefined : left[same];
    if (same !== undefined && before) { left[same] = merged(before, finding); continue; }
    if (finding.line !== null) onLine.set(finding.line, [...others, left.length]);
    left.push(finding);
  }
  return left;
}
