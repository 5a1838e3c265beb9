import type { Finding } from "../../shared/checks";

type About = Pick<Finding, "key" | "rule" | "block" | "line">;
const stem = ({ rule, block, line }: About): string => `${rule}|${block ?? ""}|${line ?? ""}`;

/**
 * Which finding of the last list each of the new list goes on from: the one about the same words, else one of the same
 * rule at the same place, for the words at fault change with every letter typed.
 * @returns for each of `after` its index in `before`, or null when it is new
 */
export function pairUp(before: readonly About[], after: readonly About[]): (number | null)[] {
  const byKey = new Map(before.map(({ key }, i) => [key, i]));
  const pairs = after.map(({ key }) => {
    const index = byKey.get(key) ?? null;
    byKey.delete(key);
    return index;
  });
  const spare = new Map<string, number[]>();
  for (const i of byKey.values()) {
    const finding = before[i];
    if (finding) spare.set(stem(finding), [...(spare.get(stem(finding)) ?? []), i]);
  }
  return after.map((finding, i) => pairs[i] ?? spare.get(stem(finding))?.shift() ?? null);
}

export interface Named<F> {
  readonly finding: F;
  /** Stays with a finding while it stands, whatever becomes of its words. */
  readonly name: string;
}

/** The new list, each finding under the name it had in the last one; a new one gets a name nobody has. */
export function carryNames<F extends About>(before: readonly Named<F>[], after: readonly F[]): Named<F>[] {
  const pairs = pairUp(before.map(({ finding }) => finding), after);
  const taken = new Set(pairs.flatMap((at) => (at === null ? [] : [before[at]?.name])));
  return after.map((finding, i) => {
    const at = pairs[i] ?? null;
    const kept = at === null ? undefined : before[at];
    if (kept) return { finding, name: kept.name };
    let name = finding.key;
    for (let times = 2; taken.has(name); times++) name = `${finding.key} ${times}`;
    taken.add(name);
    return { finding, name };
  });
}
