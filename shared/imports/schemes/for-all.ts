import { NUMBER_VALUES } from "../../speech";
import type { Scheme } from "../../training";
import { homeOf, type Scene } from "../owners/scene";
import { plainIn } from "../source/words";

/** "Ninety seconds after everything": figures that are said once of all exercises, whatever is heard around them. */

/** Said of every exercise there is. */
const ALL = /(?:^| )(?:(?:between|after|of|on|for|with|in) (?:absolutely |pretty much |basically |literally )?everything|every (?:single )?(?:exercise|movement|move|lift)|all the way through all (?:\w+)|across the board|for the whole (?:session|workout))(?: |$)/;
/** Said of those that are still to come. */
const LEFT = /(?:^| )(?:from (?:here|now|this point) on|everything (?:after|that's left|that comes|that's next|from)|for the rest|that comes after)(?: |$)/;
/** Something is left out, or it holds for a while only. */
const BUT = /(?:^| )(?:until|till|except|apart|but|unless|not)(?: |$)/;
/** So many words behind the figure it may be said, so many before it. */
const [BEHIND, BEFORE] = [10, 8];

const FIELDS: readonly (keyof Scheme)[] = ["restSeconds", "sets"];

const isNumber = (plain: string): boolean => /^\d/.test(plain) || NUMBER_VALUES.has(plain);

/** The words behind a figure up to the next one; its own unit may stand between. */
function upToNumber(plain: readonly string[]): string {
  const end = plain.findIndex((word, at) => at > 0 && isNumber(word) && !/^(?:a|all)$/.test(word) && plain[at - 1] !== "all" && plain[at - 1] !== "and");
  return plain.slice(0, end < 0 ? plain.length : end).join(" ");
}

/** The owners of all figures, where rests and sets that are said of everything hold for each exercise that has none of its own. @param owners - of each figure, the exercises it holds for */
export function heldByAll({ exercises, statements, words }: Scene, owners: readonly (readonly number[])[]): (readonly number[])[] {
  const fieldOf = (at: number): keyof Scheme | undefined => FIELDS.find((field) => statements[at]?.says[field] !== undefined && statements[at]?.about === "working");
  return statements.map((statement, at) => {
    const own = owners[at] ?? [];
    const field = fieldOf(at);
    if (field === undefined) return own;
    const behind = upToNumber(plainIn(words, statement.to + 1, statement.to + 1 + BEHIND));
    if (!ALL.test(behind) || BUT.test(behind)) return own;
    const around = `${plainIn(words, statement.from - BEFORE, statement.from).join(" ")} ${behind}`;
    const first = LEFT.test(around) ? homeOf(exercises, statement.from) : 0;
    const isTaken = (place: number): boolean => statements.some((_, other) => other !== at && fieldOf(other) === field && owners[other]?.includes(place) === true);
    return exercises.flatMap((_, place) => (own.includes(place) || (place >= first && !isTaken(place)) ? [place] : []));
  });
}
