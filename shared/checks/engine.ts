import type { Episode, Waiver } from "../episode";
import { LEVELS, oneForEachCause } from "./causes";
import type { RawFinding, Rule } from "./define-rule";
import { RULES } from "./registry";
import type { CheckContext, CheckLevel, Finding, Moment } from "./types";

export { LEVELS };
/** In the order they come up. */
export const MOMENTS: readonly Moment[] = ["before filming", "before speaking", "before publishing"];

/** Places of blocks and lines in the running order, for sorting. */
function orderOf(episode: Episode): (id: string | null) => number {
  const order = new Map<string, number>();
  let next = 0;
  for (const block of episode.blocks) {
    for (const item of [block, ...block.sets, ...block.lines, ...block.alternates]) order.set(item.id, next++);
  }
  return (id) => (id === null ? -1 : order.get(id) ?? next);
}

type Graded = Pick<Finding, "moment" | "level">;
const grade = (a: Graded, b: Graded): number => MOMENTS.indexOf(a.moment) - MOMENTS.indexOf(b.moment) || LEVELS.indexOf(a.level) - LEVELS.indexOf(b.level);

const waives = (waiver: Waiver, finding: Omit<RawFinding, "messageKey">): boolean =>
  waiver.rule === finding.rule && waiver.ruleVersion === finding.ruleVersion && waiver.block === finding.block && waiver.line === finding.line && waiver.text === finding.words;

/**
 * Runs every rule over an episode.
 *
 * Sorted by moment, then level, then place in the running order; the same episode always gives the same list.
 * One cause gives one finding (see causes.ts). What the series leaves out (`series.quiet`) is not listed when it is a `consider`; graver findings always are.
 * A finding that a waiver covers (same rule and version, same block, line and words) stays listed with its waiver.
 * Rules that look at one block at a time are not run again on blocks that kept their identity,
 * as long as `context.newId` is the same function.
 *
 * @param rules - for tests; the registry otherwise
 */
export function checkEpisode(context: CheckContext, rules: readonly Rule[] = RULES): Finding[] {
  const order = orderOf(context.episode);
  const quiet = new Set(context.episode.series.quiet);
  const raw = rules.flatMap((rule) => rule.inspect(context)).filter((finding) => finding.level !== "consider" || !quiet.has(finding.rule));
  const sorted = oneForEachCause(raw, rules).sort(
    (a, b) => grade(a, b) || order(a.block) - order(b.block) || order(a.line) - order(b.line) || (a.range?.start ?? -1) - (b.range?.start ?? -1) || (a.rule < b.rule ? -1 : a.rule > b.rule ? 1 : 0),
  );
  const used = new Map<string, number>();
  return sorted.map(({ messageKey: _key, ...finding }) => {
    const base = [finding.rule, finding.block ?? "", finding.line ?? "", finding.words].join("|");
    const count = (used.get(base) ?? 0) + 1;
    used.set(base, count);
    const waiver = context.episode.waivers.find((each) => waives(each, finding)) ?? null;
    return { ...finding, key: count === 1 ? base : `${base}|${count}`, waiver };
  });
}

/**
 * The findings of a list that a person can act on: at most `most` a block, gravest first, stops always.
 * @returns what to show, in the given order, and how many of each block are held back
 */
export function actionable<F extends Pick<Finding, "block" | "level">>(findings: readonly F[], most = 5): { shown: F[]; heldBack: ReadonlyMap<string, number> } {
  const taken = new Map<string, number>();
  const heldBack = new Map<string, number>();
  const keep = new Set<F>();
  for (const level of LEVELS) {
    for (const finding of findings) {
      if (finding.level !== level) continue;
      const count = finding.block === null ? 0 : taken.get(finding.block) ?? 0;
      if (level !== "stop" && count >= most) heldBack.set(finding.block ?? "", (heldBack.get(finding.block ?? "") ?? 0) + 1);
      else keep.add(finding);
      if (finding.block !== null) taken.set(finding.block, count + 1);
    }
  }
  return { shown: findings.filter((finding) => keep.has(finding)), heldBack };
}

/** The findings nobody has set aside. */
export function openFindings(findings: readonly Finding[]): Finding[] {
  return findings.filter((finding) => finding.waiver === null);
}

/** The waiver that sets this finding aside, to be added to the episode's facts. */
export function waiverFor(finding: Finding, id: string, reason: string): Waiver {
  return { id, rule: finding.rule, ruleVersion: finding.ruleVersion, block: finding.block, line: finding.line, text: finding.words, reason };
}

export type LevelCounts = Readonly<Record<CheckLevel, number>>;

/** "Stop, before filming: Bench press: ... (Common practice, no source)"; a waived one says why it was set aside. */
export function findingSentence(finding: Finding): string {
  const level = finding.level.charAt(0).toUpperCase() + finding.level.slice(1);
  const source = [finding.source.title, finding.source.at].filter(Boolean).join(", ");
  const waived = finding.waiver ? ` Set aside: ${finding.waiver.reason}` : "";
  return `${level}, ${finding.moment}: ${finding.message} (${source})${waived}`;
}
