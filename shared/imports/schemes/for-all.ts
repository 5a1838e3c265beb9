import { isNumberWord } from "../../speech";
import type { Scheme } from "../../training";
import type { Mention } from "../names/find";
import { homeOf, type Scene } from "../owners/scene";
import { isNamed } from "../owners/turned";
import { plainIn } from "../source/words";

/** "Ninety seconds after everything": figures that are said once of several exercises, whatever is heard around them. */

/** Said of every exercise there is, behind the figure. */
const ALL = /(?:^| )(?:(?:between|after|of|on|for|with|in) (?:absolutely |pretty much |basically |literally )?everything|every (?:single )?(?:exercise|movement|move|lift)|all the way through all (?:\w+)|across the board|for the whole (?:session|workout|thing)|the whole way(?: through)?|(?:for|on) all of (?:it|them|these)|for the next ones)(?: |$)/;
/** Said of all of them, or of all that are left, in front of it. */
const ALL_BEFORE = /(?:^| )(?:the rest of (?:it|them|it's|these)|everything(?: else)?)(?: is| are| gets| has|'s)?(?: all)?(?: on| at| with| for)?$/;
/** Said of those that are still to come. */
const LEFT = /(?:^| )(?:from (?:here|now|this point) on|everything (?:after|that's left|that comes|that's next|from|else)|for the rest|the rest of (?:it|them|it's|these)|that comes after|for the next ones)(?: |$)/;
/** Said of the exercise that comes next, or of the last. */
const NEXT = /(?:^| )(?:on|for|with) the next (?:one|exercise|movement|move)(?: |$)/;
const LAST = /(?:^| )(?:on|for|with) the last (?:one|exercise|movement|move)(?: |$)/;
/** Something is left out, or it holds for a while only. */
const BUT = /(?:^| )(?:until|till|except|apart|but|unless|not)(?: |$)/;
const EXCEPT = /^(?:except|apart|but)$/;
/** A name that is left out ends so far behind the words that are looked at. */
const EXCEPT_REACH = 3;
/** So many words behind the figure it may be said, so many before it. */
const [BEHIND, BEFORE] = [12, 8];

const FIELDS: readonly (keyof Scheme)[] = ["restSeconds", "sets"];

/** "The next one" is no number. */
const isPronoun = (before: string | undefined): boolean => /^(?:next|last|first|this|that|each|every|other|same|all|and)$/.test(before ?? "");

/** The words behind a figure up to the next one; its own unit may stand between. */
function upToNumber(plain: readonly string[]): string[] {
  const end = plain.findIndex((word, at) => at > 0 && isNumberWord(word) && !/^(?:a|all)$/.test(word) && !isPronoun(plain[at - 1]));
  return plain.slice(0, end < 0 ? plain.length : end);
}

/** The exercises that are left out: those named after "except", or the last; null where nobody can tell which. */
function leftOut({ exercises, words }: Scene, from: number, behind: readonly string[], mentions: readonly Mention[]): readonly number[] | null {
  if (!BUT.test(behind.join(" "))) return [];
  const at = behind.findIndex((word) => EXCEPT.test(word));
  if (at < 0) return null;
  const to = from + BEHIND + EXCEPT_REACH;
  if (/^(?:(?:from|for|on) )*the last\b/.test(behind.slice(at + 1).join(" "))) return [exercises.length - 1];
  const named = mentions.filter((mention) => mention.from >= from + at && mention.to <= Math.min(to, words.length));
  const out = exercises.flatMap((exercise, place) => (named.some((mention) => isNamed(mention, exercise)) ? [place] : []));
  return out.length > 0 ? out : null;
}

/** For which exercises a figure holds by the words around it; null where they do not tell. */
function saidFor(scene: Scene, from: number, to: number, mentions: readonly Mention[]): readonly number[] | null {
  const { exercises, words } = scene;
  const behind = upToNumber(plainIn(words, to + 1, to + 1 + BEHIND));
  const before = plainIn(words, from - BEFORE, from).join(" ");
  const [said, around] = [behind.join(" "), `${before} ${behind.join(" ")}`];
  const home = homeOf(exercises, from);
  if (ALL.test(said) || ALL_BEFORE.test(before)) {
    const out = leftOut(scene, to + 1, behind, mentions);
    const first = LEFT.test(around) ? home : 0;
    return out && exercises.flatMap((_, place) => (place >= first && !out.includes(place) ? [place] : []));
  }
  if (BUT.test(said)) return null;
  const one = NEXT.test(said) ? home + 1 : LAST.test(said) ? exercises.length - 1 : -1;
  return one > home && one < exercises.length ? [one] : null;
}

/**
 * The owners of all figures, where rests and sets that are said of several exercises hold for each of them that has none of its own.
 * @param owners - of each figure, the exercises it holds for
 */
export function heldByAll(scene: Scene, owners: readonly (readonly number[])[], mentions: readonly Mention[]): (readonly number[])[] {
  const { exercises, statements } = scene;
  const fieldOf = (at: number): keyof Scheme | undefined => FIELDS.find((field) => statements[at]?.says[field] !== undefined && statements[at]?.about === "working");
  return statements.map((statement, at) => {
    const own = owners[at] ?? [];
    const field = fieldOf(at);
    const all = field === undefined ? null : saidFor(scene, statement.from, statement.to, mentions);
    if (field === undefined || all === null) return own;
    const isTaken = (place: number): boolean => statements.some((_, other) => other !== at && fieldOf(other) === field && owners[other]?.includes(place) === true);
    return exercises.flatMap((_, place) => (own.includes(place) || (all.includes(place) && !isTaken(place)) ? [place] : []));
  });
}
