import type { Mention } from "../names/find";
import type { Part } from "../order/speech";
import type { Word } from "../types";
import type { Ordered } from "./compose";
import { isNamed } from "./shares";

/** Figures that are said in one exercise's time and are another's: "ten curls and ten rows", "for the curls I've got thirties". */

/** So many words from a figure its exercise may be named, when "for" or "on" leads to the name. */
const REACH = 6;
/** Exercises further apart than this are not told together. */
const APART = 2;

const plain = (words: readonly Word[], from: number, to: number): string[] => words.slice(from, to).flatMap((word) => (word.plain === "" ? [] : [word.plain]));
const LEADS = /^(?:for|on)$/;
const SOFT = /^(?:the|my|your|those|these|our|a|an)$/;

/** The name that claims a figure, or null. */
function claiming({ from, to }: Ordered, mentions: readonly Mention[], words: readonly Word[]): Mention | null {
  for (const mention of mentions) {
    if (mention.from > to && mention.from - to <= REACH) {
      const between = plain(words, to + 1, mention.from);
      if (between.length === 0) return mention;
      const leads = between.findLastIndex((word) => LEADS.test(word));
      if (leads >= 0 && between.slice(leads + 1).every((word) => SOFT.test(word))) return mention;
    }
    if (mention.to <= from && from - mention.to <= REACH) {
      const lead = plain(words, Math.max(0, mention.from - 2), mention.from).filter((word) => !SOFT.test(word)).at(-1) ?? "";
      if (LEADS.test(lead)) return mention;
    }
  }
  return null;
}

/** The statements, those that another exercise's name claims moved to its sentence. */
export function owned(statements: readonly Ordered[], parts: readonly Part[], mentions: readonly Mention[], words: readonly Word[]): Ordered[] {
  const exercises = parts.filter(({ kind }) => kind === "exercise");
  return statements.map((statement) => {
    if (statement.about === "circuit") return statement;
    const home = exercises.findIndex(({ from, to }) => statement.sentence >= from && statement.sentence < to);
    const near = mentions.filter((mention) => mention.to > statement.from - REACH - 4 && mention.from < statement.to + REACH + 4);
    const mention = home < 0 || near.length === 0 ? null : claiming(statement, near, words);
    if (mention === null) return statement;
    const named = exercises.flatMap((part, at) => (Math.abs(at - home) <= APART && isNamed(mention, part) ? [at] : []));
    const [other] = named;
    return named.length !== 1 || other === undefined || other === home ? statement : { ...statement, sentence: exercises[other]?.from ?? statement.sentence };
  });
}
