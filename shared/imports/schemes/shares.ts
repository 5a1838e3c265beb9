import type { Mention } from "../names/find";
import { nameWord } from "../names/lexicon";
import type { Part } from "../order/speech";
import type { Word } from "../types";
import { hasWork, type Ordered } from "./compose";

/** Two exercises told in one breath: what is said of both, and what of one. */

/** "Ten kilos for the curls": so many words after a figure its exercise may be named. */
const AFTER = 5;

/** Is it this exercise that is named, in short or in full? */
export const isNamed = (mention: Mention, part: Part): boolean => {
  if (mention.name.exercise !== null && mention.name.exercise.id === part.exercise?.id) return true;
  const own = new Set([...(part.exercise?.name ?? part.title).split(/[^A-Za-z]+/), ...part.said.split(" ")].map((word) => nameWord(word.toLowerCase())));
  return mention.name.words.every((word) => own.has(word));
};

/** The parts that were begun together with this one, itself among them. */
export const pairOf = (part: Part, parts: readonly Part[]): Part[] => (part.pair === null ? [part] : parts.filter(({ pair }) => pair === part.pair));

/** Only counts, or goes with, the work: said once it is meant for each. */
const isForEach = ({ says, rank }: Ordered): boolean => !hasWork(says) && (says.sets !== undefined || (rank === "extra" && says.load === undefined));

/**
 * The statements of a pair that are about one of its parts: those said right after its name, or with "for the curls" after
 * them, and those that are about all.
 */
export function shareOf(part: Part, pair: readonly Part[], statements: readonly Ordered[], mentions: readonly Mention[], words: readonly Word[]): Ordered[] {
  const named = mentions.flatMap((mention) => {
    const members = pair.filter((member) => isNamed(mention, member));
    return members.length === 1 && members[0] ? [{ mention, member: members[0] }] : [];
  });
  // Where all of them are named the first time, nobody's turn has come.
  const listEnd = Math.max(...pair.map((member) => named.find((each) => each.member === member)?.mention.to ?? 0));
  // "Do ten rows": the last word of a name, where no other of them has it.
  const heads = pair.map((member) => nameWord((member.exercise?.name ?? member.title).toLowerCase().split(/[^a-z]+/).at(-1) ?? ""));
  return statements.filter((statement) => {
    if (isForEach(statement)) return true;
    const inside = words.slice(statement.from, statement.to + 2).map(({ plain }) => nameWord(plain));
    const meant = pair.filter((_, at) => inside.includes(heads[at] ?? "") && heads.indexOf(heads[at] ?? "") === heads.lastIndexOf(heads[at] ?? ""));
    if (meant.length === 1) return meant[0] === part;
    const after = named.find(({ mention }) => mention.from > statement.to && mention.from <= statement.to + AFTER);
    const leads = after !== undefined && words.slice(statement.to + 1, after.mention.from).some(({ plain }) => plain === "for" || plain === "on");
    const last = named.findLast(({ mention }) => mention.from < statement.from);
    const owner = leads ? after.member : last && last.mention.to > listEnd ? last.member : null;
    return owner === null || owner === part;
  });
}
