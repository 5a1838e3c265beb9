import { bucket } from "../learning/feature-names";
import type { Candidate } from "../order/candidates";
import { refersTo } from "../order/points";
import type { Indexed } from "../order/speech";
import { hasWork } from "../schemes/compose";

/** What is known of a name once it is known, at first sight, which names begin exercises and what the figures mean. */

/** What the figures between two words tell: work, sets, weight, rest. */
function toldIn({ statements }: Indexed, from: number, to: number): string {
  const here = statements.filter((statement) => statement.from >= from && statement.from < to);
  const has = (is: (statement: (typeof here)[number]) => boolean): string => (here.some(is) ? "y" : "n");
  return [
    has(({ says, about }) => about === "working" && hasWork(says)),
    has(({ says, about }) => about === "working" && says.sets !== undefined),
    has(({ says }) => says.load !== undefined),
    has(({ about }) => about === "circuit"),
  ].join("");
}

/** Further features of each candidate. @param first - those that begin exercises, at first sight */
export function contextOf(speech: Indexed, first: ReadonlySet<Candidate>): string[][] {
  const { candidates, words } = speech;
  const begun = candidates.filter((candidate) => first.has(candidate));
  return candidates.map((candidate, at) => {
    const own = first.has(candidate);
    const from = candidate.span.from;
    const before = begun.findLast((other) => other.span.from < from);
    const after = begun.find((other) => other.span.from > from);
    const label = (offset: number): string => {
      const other = candidates[at + offset];
      return other === undefined ? "|" : `${first.has(other) ? 1 : 0}${other.name.title === candidate.name.title ? "=" : ""}`;
    };
    const twins = begun.filter((other) => other !== candidate && other.name.title === candidate.name.title);
    const twin = twins.length === 0 ? "none" : twins.some((other) => other.span.from < from) ? "before" : "after";
    const mine = toldIn(speech, from, after?.span.from ?? words.length);
    const theirs = toldIn(speech, before?.span.from ?? 0, from);
    const near = toldIn(speech, from, Math.min(after?.span.from ?? words.length, from + 40));
    const since = before ? bucket(from - before.span.from, [5, 12, 25, 50, 100]) : "first";
    const until = after ? bucket(after.span.from - from, [5, 12, 25, 50, 100]) : "last";
    const narrower = after !== undefined && refersTo(candidate, after) ? "part of next" : before !== undefined && refersTo(candidate, before) ? "part of last" : "own";
    return [
      `p=${own}`, `p-1=${own} ${label(-1)}`, `p+1=${own} ${label(1)}`, `p-1+1=${own} ${label(-1)} ${label(1)}`, `p-2=${own} ${label(-2)} ${label(-1)}`, `p+2=${own} ${label(1)} ${label(2)}`,
      `twin=${own} ${twin}`, `mine=${own} ${mine}`, `theirs=${own} ${theirs}`, `both=${own} ${theirs} ${mine}`, `near=${own} ${near}`, `since=${own} ${since}`, `until=${own} ${until}`, `gap=${own} ${since} ${until}`,
      `narrow=${own} ${narrower}`, `narrow=${own} ${narrower} ${since} ${until}`, `mine=${own} ${mine} ${until}`, `theirs=${own} ${theirs} ${since}`, `known=${own} ${candidate.name.exercise !== null} ${mine}`,
    ];
  });
}
