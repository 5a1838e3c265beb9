import { linesOf, type Block } from "../../episode";
import { charactersIn } from "../../speech";
import { spelledForReader } from "../captions";
import { phrasesOf, type Phrase } from "./phrases";

/** The dot stays with the phrase before it, so that no line begins with one. */
export const BETWEEN = "\u00a0· ";

const saying = (block: Block): string[] => linesOf(block, "say").map(({ text }) => spelledForReader(text.replace(/\*/g, "\u2217")).replace(/\u2217/g, "*"));

/** Best first: stressed words before all others, figures before plain words, then words that stand with others. */
function ranked(phrases: readonly Phrase[]): Phrase[] {
  const count = new Map<string, number>();
  const company = new Map<string, number>();
  for (const { words } of phrases) {
    for (const word of words) {
      count.set(word, (count.get(word) ?? 0) + 1);
      company.set(word, (company.get(word) ?? 0) + words.length);
    }
  }
  const score = ({ words, strong, forms }: Phrase): number =>
    words.reduce((sum, word) => sum + (company.get(word) ?? 0) / (count.get(word) ?? 1), 0) + (strong ? 100 : 0) + (/\d/.test(forms[0] ?? "") ? 2 : 0);
  return [...phrases].sort((a, b) => score(b) - score(a) || a.place - b.place);
}

/**
 * The key words of what a block says, in the order they are said, within a number of characters. First the best phrase of every
 * sentence, so that each is remembered; then the next best. What negates or limits a phrase is printed with it.
 * @returns empty when nothing is said or nothing fits; a single plain phrase may be longer than the room and is then cut
 * @source Rose, Engel, Cramer & Cowley, "Automatic keyword extraction from individual documents", in Text Mining, 2010: phrases
 * between small words, scored by how often their words stand with others
 */
export function keyWords(block: Block, room: number): string {
  const all = ranked(phrasesOf(saying(block)));
  const firsts = new Set<number>();
  const best = all.filter(({ sentence }) => !firsts.has(sentence) && firsts.add(sentence));
  const chosen: { readonly text: string; readonly place: number }[] = [];
  let left = room;
  for (const phrase of [...best, ...all.filter((one) => !best.includes(one))]) {
    const between = chosen.length > 0 ? BETWEEN.length : 0;
    const fits = phrase.forms.find((form) => charactersIn(form) + between <= left);
    if (fits === undefined || chosen.some(({ text }) => text.toLowerCase() === fits.toLowerCase())) continue;
    chosen.push({ text: fits, place: phrase.place });
    left -= charactersIn(fits) + between;
  }
  if (chosen.length === 0) return shortened(all.find(({ canBeCut }) => canBeCut)?.forms[0] ?? "", room);
  return chosen.sort((a, b) => a.place - b.place).map(({ text }) => text).join(BETWEEN);
}

/** Cut with dots when it is longer than the room: at a word where that loses little, else inside it. */
export function shortened(text: string, room: number): string {
  const letters = Array.from(text);
  if (letters.length <= room) return text;
  const cut = letters.slice(0, Math.max(1, room - 1)).join("");
  const atWord = cut.replace(/\s+\S*$/, "");
  return `${(atWord.length >= room * 0.7 ? atWord : cut).replace(/[\s,;:·-]+$/, "")}…`;
}
