import { sentencesOf } from "../../speech";
import { bare, isCondition, unitsOf, type Clause, type Token, type Unit } from "./clauses";
import { guardsIn, isOrderAlone } from "./guard-words";
import { isSmallWord } from "./small-words";

export interface Phrase {
  /** Ways to print it, longest first; none may be cut. One that must be whole has its negation or its limit in each of them. */
  readonly forms: readonly string[];
  /** May be cut with dots where nothing else fits. */
  readonly canBeCut: boolean;
  /** Its words of weight. */
  readonly words: readonly string[];
  readonly sentence: number;
  /** In the order it is said. */
  readonly place: number;
  readonly strong: boolean;
}

/** Longest phrase, in words; longer runs are two. Figures may go on. */
const LONGEST = 4;
const JOINS_FIGURES = /^(?:of|to|at|x|by)$/i;

const printed = (words: readonly string[]): string => words.join(" ").replace(/(\d) (?=\p{L})/gu, "$1\u00a0");
/** Said before a clause and no part of what it says. */
const OPENERS: ReadonlySet<string> = new Set(`and or so then but also now well please yes ok okay you we i it he she they this that these those there is are was
were am be it's that's there's you're we're they're i'm i'd i'll you'll we'll they'll let's here here's`.split(/\s+/));
/** Left out of what is quoted; "a" stays, as in "not a race". */
const LEFT_OUT: ReadonlySet<string> = new Set(["the", "your", "my", "our", "his", "her", "its", "their"]);

/** With a guard and nothing else they say nothing: "not today", "you can't", "no more". */
const FILLERS: ReadonlySet<string> = new Set(`${[...OPENERS].join(" ")} today tonight yet ever again at all for of to it them me us him her one do does did can could will would should
must may might have has had been much many more way sure thank thanks`.split(/\s+/));
const isTelling = ({ word }: Token): boolean => isOrderAlone(word) || (word !== "" && !FILLERS.has(word) && guardsIn([word]).length === 0);
const saysNothing = ({ tokens }: Clause): boolean => !tokens.some(isTelling);

/** Clauses as they are said, without the words nobody misses. */
function quoted(clauses: readonly Clause[]): string {
  const all = clauses.flatMap(({ tokens }) => tokens);
  const from = all.findIndex(({ word }) => !OPENERS.has(word));
  const said = all.slice(Math.max(0, from)).filter(({ word }, at, line) => at === line.length - 1 || !LEFT_OUT.has(word) || /^(?:all|of)$/.test(line[at - 1]?.word ?? ""));
  // No line ends between "no" and what it denies.
  const held = said.map(({ text, word }, at) => text.replace(/["“”]/g, "") + (at < said.length - 1 ? (/^(?:no|not|never|without|less)$|n't$/.test(word) ? "\u00a0" : " ") : "")).join("");
  const text = printed([held]).replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}%°]+$/gu, "");
  // What opens a sentence has a capital for that alone; names are not among these words.
  const [first] = said;
  return first && first.word !== "i" && (isSmallWord(first.word) || guardsIn([first.word]).length > 0) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}

/** From "not" on where it says what something is not: "stretching is not a contest", "not a contest". */
function predicate(clause: Clause): Clause[] {
  const at = clause.tokens.findIndex(({ word }, i) => /^(?:isn|aren|wasn|weren)'t$/.test(word) || (word === "not" && /^(?:is|are|was|were)$/.test(clause.tokens[i - 1]?.word ?? "")));
  const rest = clause.tokens.slice(at);
  return at > 0 && rest.some(isTelling) ? [{ ...clause, tokens: rest }] : [];
}

type Found = Omit<Phrase, "sentence" | "place">;

/** A unit with a negation or limit in it is one phrase; what is cut from it, is cut from all of the card. */
function guardedPhrase(unit: Unit): Found[] {
  if (unit.every(saysNothing)) return [];
  const tokens = unit.flatMap((clause) => clause.tokens);
  const [first, last] = [unit.findIndex(({ isGuarded }) => isGuarded), unit.findLastIndex(({ isGuarded }) => isGuarded)];
  const core = unit.slice(first, last + 1);
  const [only] = core;
  const choices: Unit[] = [unit, ...(isCondition(unit[0]) && first > 0 ? [unit.slice(0, last + 1)] : [unit.slice(first), core]), ...(only && core.length === 1 && !isCondition(only) ? [predicate(only)] : [])];
  const forms = choices.filter((part) => !part.every(saysNothing)).map(quoted).filter((form) => form !== "");
  return [{ forms: [...new Set(forms)], canBeCut: false, words: tokens.filter(isTelling).map(({ word }) => word), strong: tokens.some(({ strong }) => strong) }];
}

/** A phrase of figures may end before what joins them: "3 x 8 at 40 kg", "3 x 8". */
function figureForms(run: readonly string[]): string[] {
  const joins = run.flatMap((word, at) => (at > 0 && /^at$/i.test(word) ? [at] : []));
  return [run, ...joins.reverse().map((at) => run.slice(0, at))].map(printed);
}

/** Runs of words between small words. */
function plainPhrases(tokens: readonly Token[]): Found[] {
  const phrases: Found[] = [];
  let run: { readonly word: string; readonly strong: boolean }[] = [];
  const close = (): void => {
    const words = run.map(({ word }) => word);
    const figures = words.some((word) => /\d/.test(word));
    if (words.some((word) => /\p{L}/u.test(word))) phrases.push({ forms: figures ? figureForms(words) : [printed(words)], canBeCut: !figures, words: words.map((word) => word.toLowerCase()), strong: run.some(({ strong }) => strong) });
    run = [];
  };
  for (const [at, { text, strong }] of tokens.entries()) {
    const word = bare(text);
    // "3 sets of 8 to 10 at 22 kg" is one phrase.
    const closesUp = run.at(-1)?.strong === true && /^(?:an?|the)$/i.test(word);
    const joins = closesUp || JOINS_FIGURES.test(word) && run.some((one) => /\d/.test(one.word)) && /^\d/.test(tokens[at + 1]?.text ?? "");
    const isSmall = isSmallWord(word) && !strong && !joins;
    if (word === "" || isSmall || (run.length >= LONGEST && !joins && !/^\d|^(?:kg|lb|m|s)$/.test(word))) close();
    if (word !== "" && !isSmall) run.push({ word, strong });
  }
  close();
  return phrases;
}

const isGuarded = (unit: Unit): boolean => unit.some((clause) => clause.isGuarded);
/**
 * The phrases of some lines, sentence by sentence. A clause that negates, forbids or limits is one phrase with its "not", "only",
 * "less than" in it, or none at all: half of it would say the opposite. Other clauses are runs of words between small words.
 */
export function phrasesOf(lines: readonly string[]): Phrase[] {
  const sentences = lines.flatMap(sentencesOf).map((text) => ({ text, units: unitsOf(text, saysNothing) }));
  let [sentence, place] = [-1, 0];
  return sentences.flatMap(({ text, units }, at) => {
    sentence += 1;
    const next = sentences[at + 1]?.units ?? [];
    // "Jumps? Not today." "Bounce it. Never!"
    const isAnswered = next.some((unit) => isGuarded(unit) && (/\?["'”’)]*$/.test(text) || (next.length === 1 && unit.every(saysNothing))));
    return units.flatMap((unit) => {
      if (unit[0]?.afterBreath) sentence += 1;
      const found = isGuarded(unit) ? guardedPhrase(unit) : isAnswered ? [] : unit.flatMap(({ tokens }) => plainPhrases(tokens));
      return found.map((phrase): Phrase => ({ ...phrase, sentence, place: place++ }));
    });
  });
}
