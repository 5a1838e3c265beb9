/** Words that turn what stands with them into its opposite, forbid it, or say how far it may go. */
const GUARDS: ReadonlySet<string> = new Set(`not never no nor neither none nobody nothing nowhere cannot without unless except
only less fewer maximum max minimum limit limits limited hardly barely scarcely rarely seldom instead off
avoid avoids avoided avoiding skip skips skipped skipping omit omits omitted omitting stop stops stopped stopping quit refuse refuses
forget prevent prevents refrain resist beware wrong bad worse worst mistake mistakes forbidden banned prohibited dangerous unsafe risky harmful`.split(/\s+/));

/** Say how far only with a figure behind them: "under 40 kg", "up to 10"; elsewhere they are places. */
const BOUNDS: ReadonlySet<string> = new Set(["under", "below", "beneath", "over", "above", "beyond", "past", "within", "to", "until", "till", "just", "before", "after"]);
const LEAVES: ReadonlySet<string> = new Set(["leave", "leaves", "leaving", "left"]);

/** "don't", also typed "dont"; "a no-no". */
const NOT = /n't(?:s|'ve)?$|^(?:do|does|did|ca|wo|is|are|was|were|should|would|could|must|has|have|had|need)nt$|^no-/;

const isFigure = (word: string | undefined): boolean => word !== undefined && /^\d/.test(word);

function isGuard(words: readonly string[], at: number): boolean {
  const word = words[at] ?? "";
  const [before, after] = [words[at - 1], words[at + 1]];
  if (word === "least" || word === "most") return before === "at";
  if (GUARDS.has(word) || NOT.test(word) || word === "w/o") return true;
  if (word === "than") return isFigure(after) || words.slice(0, at).includes("rather");
  if (word === "to") return before === "up" && isFigure(after);
  if (BOUNDS.has(word)) return isFigure(after);
  if (word === "away") return after === "from";
  if (word === "out") return after === "of" && words[at + 2] === "the";
  // "too heavy", not "you too"; "keep the knee from caving in"; "leave the plank out".
  if (word === "too") return after !== undefined;
  if (word === "from") return after !== undefined && after.endsWith("ing");
  return LEAVES.has(word) && words.slice(at + 1).some((one) => one === "out" || one === "off");
}

/**
 * Places of the words that negate, forbid or limit, among the words of a clause.
 * @param words - as `plainWord` gives them, without punctuation
 */
export const guardsIn = (words: readonly string[]): number[] => words.flatMap((_, at) => (isGuard(words, at) ? [at] : []));

/** Guards that say by themselves what to do. */
const ORDERS = /^(?:avoid|skip|stop|leav|omit|quit|refus|forget|prevent|refrain|resist|beware|left$)/;
export const isOrder = (word: string): boolean => ORDERS.test(word) || /^(?:don't|dont|never)$/.test(word);
export const isOrderAlone = (word: string): boolean => ORDERS.test(word);

/** Case and a typographic apostrophe do not matter. */
export const plainWord = (word: string): string => word.toLowerCase().replace(/[‘’ʼ]/g, "'");
