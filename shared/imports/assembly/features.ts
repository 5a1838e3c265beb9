import { bucket, worded } from "../learning/feature-names";
import { kindOf } from "../owners/scene";
import { hasWork, type Ordered } from "../schemes/compose";
import type { Word } from "../types";

/** What speaks for a figure beginning a set line of its exercise, belonging to the one before, or holding for all of them. */

const CUES = new Set("then last first second third fourth top back off drop dropped heavy heavier light lighter final finally another more after down up finish next each all every between same followed straight strip add start started pyramid set sets times round one plus burnout failure work working real build warm today actually or could if instead".split(" "));

/** The features of each figure of one exercise, in order. */
export function featuresOf(own: readonly Ordered[], words: readonly Word[]): string[][] {
  const kinds = own.map(kindOf);
  const values = own.map(({ says }) => JSON.stringify(says));
  const word = (at: number): string => worded(words[at]?.plain ?? "|");
  return own.map((statement, at) => {
    const kind = kinds[at] ?? "";
    const kindAt = (other: number): string => kinds[other] ?? "|";
    const [last, next] = [own[at - 1], own[at + 1]];
    const gap = last ? bucket(statement.from - last.to, [2, 4, 8, 15, 30, 60]) : "first";
    const ahead = next ? bucket(next.from - statement.to, [2, 4, 8, 15, 30, 60]) : "last";
    const same = kinds.flatMap((other, place) => (other === kind && place !== at ? [place] : []));
    const before = same.filter((place) => place < at);
    const after = same.filter((place) => place > at);
    const twin = before.some((place) => values[place] === values[at]);
    const repeat = `${before.length === 0 ? "new" : twin ? "twin" : "other"}${after.length === 0 ? "" : after.some((place) => values[place] === values[at]) ? " twin" : " other"}`;
    const since = before.length === 0 ? "none" : bucket(at - (before.at(-1) ?? 0), [1, 2, 3, 5]);
    const between = last ? words.slice(last.to + 1, statement.from).flatMap(({ plain }) => (CUES.has(plain) ? [plain] : [])) : [];
    // "Three back-off sets of eight", "then fifty for five": a count, or a weight, that leads to the next work.
    const isWork = (other: Ordered | undefined): boolean => other !== undefined && hasWork(other.says);
    const joint = next ? words.slice(statement.to + 1, next.from).map(({ plain }) => plain).find((plain) => /^(?:of|for|at|with|by|x|do|get)$/.test(plain)) ?? "none" : "last";
    const worked = own.slice(0, at).some(isWork);
    const lineHas = (other: string): boolean => {
      for (let back = at - 1; back >= 0; back -= 1) {
        if (kinds[back] === other) return true;
        if (isWork(own[back]) && isWork(statement) && back < at - 1) return false;
      }
      return false;
    };
    const leads = `${isWork(next)} ${joint} ${worked} ${ahead}`;
    const out = [
      `leads=${kind} ${leads}`, `leads=${kind} ${joint} ${worked} ${repeat}`, `after work=${kind} ${isWork(last)} ${worked}`, `line=${kind} ${lineHas("sets")} ${lineHas("load")} ${worked}`,
      `k=${kind}`, `k-1=${kindAt(at - 1)} ${kind}`, `k-2=${kindAt(at - 2)} ${kindAt(at - 1)} ${kind}`, `k+1=${kind} ${kindAt(at + 1)}`, `k+2=${kind} ${kindAt(at + 1)} ${kindAt(at + 2)}`, `k-1+1=${kindAt(at - 1)} ${kind} ${kindAt(at + 1)}`,
      `rep=${kind} ${repeat}`, `rep=${kind} ${repeat} ${gap}`, `since=${kind} ${since} ${twin}`, `gap=${kind} ${gap}`, `ahead=${kind} ${ahead}`, `gap=${kindAt(at - 1)} ${kind} ${gap}`, `ahead=${kind} ${kindAt(at + 1)} ${ahead}`,
      `rank=${kind} ${bucket(at, [0, 1, 2, 4, 8])}`, `sum=${kind} ${bucket(own.length, [2, 3, 4, 6, 9])}`, `others=${kind} ${bucket(same.length, [0, 1, 2, 4])}`,
      `value=${kind} ${bucket(statement.says.sets ?? statement.says.repsMin ?? 0, [0, 1, 2, 3, 5, 8, 12])}`,
      `w-1=${kind} ${word(statement.from - 1)}`, `w-2=${kind} ${word(statement.from - 2)} ${word(statement.from - 1)}`, `w+1=${kind} ${word(statement.to + 1)}`, `w+2=${kind} ${word(statement.to + 1)} ${word(statement.to + 2)}`,
      `pause=${kind} ${bucket(Math.max(0, ...words.slice((last?.to ?? statement.from) + 1, statement.from + 1).map(({ pause }) => pause)), [0, 1.2, 8])}`,
    ];
    for (const cue of between) out.push(`c=${cue}`, `c=${cue} ${kind}`, `c=${cue} ${kind} ${before.length > 0}`);
    for (let step = 1; step <= 5; step += 1) {
      const [b, a] = [words[statement.from - step]?.plain ?? "", words[statement.to + step]?.plain ?? ""];
      if (CUES.has(b)) out.push(`b=${b} ${kind}`, `b=${b}`);
      if (CUES.has(a)) out.push(`a=${a} ${kind}`, `a=${a}`);
    }
    for (const other of new Set(kinds.slice(0, at))) out.push(`had=${other} ${kind}`);
    for (const other of new Set(kinds.slice(at + 1))) out.push(`will=${other} ${kind}`);
    return out;
  });
}

/** The way from one figure to the next. */
export const stepsOf = (own: readonly Ordered[]): string[] => own.map((statement, at) => {
  const last = own[at - 1];
  return last ? `${kindOf(last)} ${kindOf(statement)}` : "";
});
