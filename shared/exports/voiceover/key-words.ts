import { linesOf, type Block } from "../../episode";
import { charactersIn, sentencesOf } from "../../speech";
import { spelledForReader } from "../captions";
import { weighedWords } from "./emphasis";
import { isSmallWord } from "./small-words";

interface Phrase {
  readonly text: string;
  readonly words: readonly string[];
  readonly sentence: number;
  /** In the order it is said. */
  readonly place: number;
  readonly strong: boolean;
}

/** Longest phrase, in words; longer runs are two. Figures may go on. */
const LONGEST = 4;
const JOINS_FIGURES = /^(?:of|to|at|x|by)$/i;
/** The dot stays with the phrase before it, so that no line begins with one. */
export const BETWEEN = "\u00a0· ";

const bare = (word: string): string => word.replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}%°]+$/gu, "");

/** Runs of words between small words and punctuation, sentence by sentence. */
function phrasesOf(texts: readonly string[]): Phrase[] {
  const phrases: Phrase[] = [];
  let sentence = 0;
  for (const text of texts.flatMap((line) => line.split(/(?<=^|\s)\/(?=\s|$)/)).flatMap(sentencesOf)) {
    let run: { readonly word: string; readonly strong: boolean }[] = [];
    const close = (): void => {
      const words = run.map(({ word }) => word);
      if (words.some((word) => /\p{L}/u.test(word))) phrases.push({ text: words.join(" ").replace(/(\d) (?=\p{L})/gu, "$1\u00a0"), words: words.map((word) => word.toLowerCase()), sentence, place: phrases.length, strong: run.some(({ strong }) => strong) });
      run = [];
    };
    const words = weighedWords(text);
    for (const [at, { text: raw, strong }] of words.entries()) {
      const word = bare(raw);
      // "3 sets of 8 to 10 at 22 kg" is one phrase.
      const closesUp = run.at(-1)?.strong === true && /^(?:an?|the)$/i.test(word);
      const joins = closesUp || JOINS_FIGURES.test(word) && run.some((one) => /\d/.test(one.word)) && /^\d/.test(words[at + 1]?.text ?? "");
      const isSmall = isSmallWord(word) && !strong && !joins;
      if (word === "" || isSmall || (run.length >= LONGEST && !joins && !/^\d|^(?:kg|lb|m|s)$/.test(word))) close();
      if (word !== "" && !isSmall) run.push({ word, strong });
      if (/[,;:.!?…–—)]["'”’]*$/.test(raw)) close();
    }
    close();
    sentence += 1;
  }
  return phrases;
}

/**
 * The key words of what a block says, in the order they are said, within a number of characters. First the best phrase of every
 * sentence, so that each is remembered; then the next best. Stressed words come before all others, figures before plain words.
 * @returns empty when nothing is said; a single phrase may be longer than the room and is then cut
 * @source Rose, Engel, Cramer & Cowley, "Automatic keyword extraction from individual documents", in Text Mining, 2010: phrases
 * between small words, scored by how often their words stand with others
 */
export function keyWords(block: Block, room: number): string {
  const phrases = phrasesOf(linesOf(block, "say").map(({ text }) => spelledForReader(text.replace(/\*/g, "\u2217")).replace(/\u2217/g, "*")));
  const count = new Map<string, number>();
  const company = new Map<string, number>();
  for (const { words } of phrases) {
    for (const word of words) {
      count.set(word, (count.get(word) ?? 0) + 1);
      company.set(word, (company.get(word) ?? 0) + words.length);
    }
  }
  const score = ({ words, strong, text }: Phrase): number =>
    words.reduce((sum, word) => sum + (company.get(word) ?? 0) / (count.get(word) ?? 1), 0) + (strong ? 100 : 0) + (/\d/.test(text) ? 2 : 0);
  const ranked = [...phrases].sort((a, b) => score(b) - score(a) || a.place - b.place);
  const firsts = new Set<number>();
  const best = ranked.filter(({ sentence }) => !firsts.has(sentence) && firsts.add(sentence));
  const rest = ranked.filter((phrase) => !best.includes(phrase));
  const chosen: Phrase[] = [];
  let left = room;
  for (const phrase of [...best, ...rest]) {
    const cost = charactersIn(phrase.text) + (chosen.length > 0 ? BETWEEN.length : 0);
    const isKnown = chosen.some(({ text }) => text.toLowerCase() === phrase.text.toLowerCase());
    if (isKnown || (cost > left && chosen.length > 0)) continue;
    chosen.push(phrase);
    left -= cost;
    if (left <= 0) break;
  }
  const text = chosen.sort((a, b) => a.place - b.place).map((phrase) => phrase.text).join(BETWEEN);
  return shortened(text, room);
}

/** Cut with dots when it is longer than the room: at a word where that loses little, else inside it. */
export function shortened(text: string, room: number): string {
  const letters = Array.from(text);
  if (letters.length <= room) return text;
  const cut = letters.slice(0, Math.max(1, room - 1)).join("");
  const atWord = cut.replace(/\s+\S*$/, "");
  return `${(atWord.length >= room * 0.7 ? atWord : cut).replace(/[\s,;:·-]+$/, "")}…`;
}
