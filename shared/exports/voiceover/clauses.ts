import { guardsIn, isOrder, plainWord } from "./guard-words";
import { weighedWords } from "./emphasis";

/** A word of a sentence as it is typed, stars taken off, and bare for comparing. */
export interface Token {
  readonly text: string;
  readonly word: string;
  readonly strong: boolean;
}

/** Words between two marks of punctuation. */
export interface Clause {
  readonly tokens: readonly Token[];
  readonly isGuarded: boolean;
  readonly afterBreath: boolean;
}

/** Clauses that mean something only together where one of them negates or limits; else any clause by itself. */
export type Unit = readonly Clause[];

export const bare = (word: string): string => word.replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}%°]+$/gu, "");

const CONDITION = /^(?:if|when|whenever|where|while|once|unless|until|till|as|who|which|that|although|though)$/;
const FRESH = /^(?:i|you|he|she|it|we|they|this|these|those|there|let's|because|since|just|rather|please|now|yet|so|then|(?:i|you|he|she|it|we|they|that|there)'(?:m|s|re|ll|d|ve))$/;
const DETERMINER = /^(?:an?|the|my|your|our|his|her|its|their|every|each|some|all|both)$/;
const FINITE = /^(?:is|are|was|were|am|will|would|can|could|should|must|may|might|has|have|had|does|goes|gets)$|'(?:s|re|ll)$/;
const JOINS = /^(?:and|but|so|then)$/;
/** "Nothing but water" is no turn. */
const ALL_BUT = /^(?:nothing|nobody|none|no|all|any|anything|everything|everybody|anywhere|choice)$/;
/** Few enough words to be what a clause behind the comma speaks of: "jumps, not today". */
const SHORT = 3;

const isBreath = (token: Token): boolean => token.text === "/";
const has = (token: Token | undefined, marks: RegExp): boolean => token !== undefined && marks.test(token.text);

/** Whether a turn or an order begins at a word, so that the words before it are another clause even without a comma. */
function turns(tokens: readonly Token[], at: number): boolean {
  const [word, next, after] = [tokens[at]?.word ?? "", tokens[at + 1]?.word ?? "", tokens[at + 2]?.word];
  if (word === "but") return !ALL_BUT.test(tokens[at - 1]?.word ?? "");
  return /^(?:and|or|then)$/.test(word) && (isOrder(next) || (next === "do" && after === "not"));
}

type Joint = "firm" | "colon" | "loose";

/** A sentence in clauses, and how each hangs on the one before it. */
function clausesOf(tokens: readonly Token[]): { readonly clause: Clause; readonly joint: Joint }[] {
  const found: { clause: Clause; joint: Joint }[] = [];
  let open: Token[] = [];
  let [joint, afterBreath]: [Joint, boolean] = ["firm", false];
  const close = (next: Joint, breath = false): void => {
    if (open.length > 0) {
      found.push({ clause: { tokens: open, isGuarded: guardsIn(open.map(({ word }) => word)).length > 0, afterBreath }, joint });
      [open, joint, afterBreath] = [[], next, breath];
    } else if (breath) afterBreath = true;
  };
  tokens.forEach((token, at) => {
    if (isBreath(token)) return close("loose", true);
    if (open.length > 0 && turns(tokens, at)) close("firm");
    if (open.length > 0 && has(token, /^[("“‘[]/)) close("loose");
    if (token.word !== "" || open.length > 0) open.push(token);
    if (has(token, /;["'”’)\]]*$/)) close("firm");
    else if (has(token, /:["'”’)\]]*$/)) close("colon");
    else if (has(token, /[,.!?…–—)"”\]]['’]?$/)) close("loose");
  });
  close("firm");
  return found;
}

const words = (clause: Clause): string[] => clause.tokens.map(({ word }) => word);

/** "If it hurts": what is said behind it holds only then. */
export const isCondition = (clause: Clause | undefined): boolean => CONDITION.test(clause?.tokens[0]?.word ?? "");

/** Whether what one clause says ends before the next: only then may one be quoted without the other. Unsure is no. */
function areApart(before: Clause, clause: Clause, joint: Joint, saysNothing: (clause: Clause) => boolean): boolean {
  if (joint === "firm") return true;
  // "Jumps, never." "Do not, whatever you do, bounce."
  if ([before, clause].some((one) => one.isGuarded && saysNothing(one))) return false;
  if (joint === "colon") return !before.isGuarded;
  const [all, earlier] = [words(clause), words(before)];
  const isJoined = JOINS.test(all[0] ?? "");
  const rest = isJoined ? all.slice(1) : all;
  const [first = "", second = ""] = rest;
  if (clause.isGuarded && (isOrder(first) || (first === "do" && second === "not") || (first === "no" && !/^(?:more|less|fewer)$/.test(second)))) {
    // "If it hurts, leave it out": the condition belongs to the order.
    if (!isJoined && !before.isGuarded && isCondition(before)) return false;
    return isJoined || before.isGuarded || first === "no" || earlier.length > SHORT;
  }
  // "Add five kilos, if it doesn't hurt"; "squat deep, without bouncing".
  if (CONDITION.test(first)) return isJoined || !(before.isGuarded || clause.isGuarded);
  if (guardsIn([first]).length > 0 || /^(?:at|up)$/.test(first)) return isJoined;
  const isFresh = FRESH.test(first) || ((isJoined || DETERMINER.test(first)) && rest.some((word) => FINITE.test(word)));
  return isFresh && (isJoined || !clause.isGuarded || earlier.length > SHORT);
}

/**
 * A sentence in units: where a clause negates, forbids or limits, it stands with every clause that may lean on it, "do not bounce,
 * twist or jerk"; a clause that leans on none is a unit of its own.
 * @param saysNothing - whether a clause's words carry nothing by themselves, as in "not today"
 */
export function unitsOf(sentence: string, saysNothing: (clause: Clause) => boolean): Unit[] {
  const tokens = weighedWords(sentence).map(({ text, strong }): Token => ({ text, word: plainWord(bare(text)), strong }));
  const units: Clause[][] = [];
  for (const { clause, joint } of clausesOf(tokens)) {
    const last = units.at(-1);
    const before = last?.at(-1);
    if (last && before && !areApart({ ...before, isGuarded: last.some(({ isGuarded }) => isGuarded) }, clause, joint, saysNothing)) last.push(clause);
    else units.push([clause]);
  }
  return units.flatMap((unit) => (unit.some(({ isGuarded }) => isGuarded) ? [unit] : unit.map((clause) => [clause])));
}
