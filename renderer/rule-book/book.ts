import { CUE_LABELS, LEVELS, SUBJECTS, type Rule, type RuleMeta, type Subject } from "../../shared/checks";

export const SUBJECT_NAMES: Readonly<Record<Subject, string>> = {
  structure: "Running order", dose: "Sets, loads and rests", words: "Words", film: "Filming", publishing: "Publishing",
};

/** What the language reader looks for on behalf of a rule. */
export interface SoughtWords {
  readonly name: string;
  /** What such words do: "bounces or heaves". */
  readonly does: string;
}

export interface Entry {
  readonly meta: RuleMeta;
  readonly isLeftOut: boolean;
  readonly sought: readonly SoughtWords[];
  /** The reason is shown: it holds words that were looked for and that the sentence does not. */
  readonly isMatchInside: boolean;
}

export interface Chapter {
  readonly subject: Subject;
  readonly name: string;
  readonly entries: readonly Entry[];
}

/** The labels of the language reader among a rule's messages, each with the first sentence of what it says of the words. */
export function soughtWords(meta: Pick<RuleMeta, "messages">): SoughtWords[] {
  return CUE_LABELS.flatMap((label) => {
    const message = meta.messages[label];
    if (message === undefined) return [];
    const [does = ""] = message.replace(/^.*\{words\}"?\s*/, "").split(/\.(?:\s|$)/);
    return [{ name: label.replaceAll("-", " "), does }];
  });
}

/** "Title, at" of where a rule comes from. */
export function sourceLine({ title, at }: RuleMeta["source"]): string {
  return at ? `${title}, ${at}` : title;
}

const holds = (text: string, words: readonly string[]): boolean => words.every((word) => text.includes(word));

/**
 * The rules by subject, the gravest first: those that hold every word of `typed` anywhere in what they say of themselves.
 * @param quiet - ids that the series leaves out
 */
export function ruleBook(rules: readonly Rule[], typed: string, quiet: readonly string[]): Chapter[] {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  const chapters = SUBJECTS.map((subject): Chapter => ({
    subject, name: SUBJECT_NAMES[subject],
    entries: rules.filter(({ meta }) => meta.subject === subject).sort((a, b) => LEVELS.indexOf(a.meta.level) - LEVELS.indexOf(b.meta.level)).flatMap(({ meta }): Entry[] => {
      const isLeftOut = quiet.includes(meta.id);
      const sought = soughtWords(meta);
      const outside = [meta.summary, meta.level, meta.moment, SUBJECT_NAMES[subject], isLeftOut ? "left out" : ""].join(" ").toLowerCase();
      const inside = [meta.id, meta.why, sourceLine(meta.source), ...sought.map(({ name, does }) => `${name} ${does}`)].join(" ").toLowerCase();
      return holds(`${outside} ${inside}`, words) ? [{ meta, isLeftOut, sought, isMatchInside: !holds(outside, words) }] : [];
    }),
  }));
  return chapters.filter(({ entries }) => entries.length > 0);
}
