/** Words that take time and say nothing; common practice, no source. */
const FILLERS: readonly (readonly [RegExp, string])[] = [
  [/\b(?:what )?I (?:just )?want you to (?:do (?:here )?is )?(?=[a-z])/gi, ""],
  [/\bI(?:'d| would) like you to (?=[a-z])/gi, ""],
  [/\b(?:we're|we are|you're|you are) going to (?=[a-z])/gi, ""],
  [/\b(?:go ahead and|make sure (?:that )?you|try to|you know,?|I mean,?|sort of|kind of|a little bit|at the end of the day,?|as I said,?|to be honest,?|honestly,?)\s*/gi, ""],
  [/\bin order to\b/gi, "to"],
  [/\b(?:just|really|very|actually|basically|simply|literally|obviously|definitely|quite|of course),?\s+/gi, ""],
];

/** Where the tail of a sentence begins that may be left out. */
const TAIL = /,?\s+(?:because|which|so that|although|and then|but)\s/gi;
/** What stays must still be a sentence. */
const LEAST_WORDS = 4;

const capital = (text: string): string => text.replace(/^\p{Ll}/u, (letter) => letter.toUpperCase());

/** The sentence without its padding; the same when there is none, or nothing but padding. */
export function withoutFillers(sentence: string): string {
  const left = FILLERS.reduce((open, [padding, instead]) => open.replace(padding, instead), sentence).replace(/\s+/g, " ").replace(/\s(?=[,.!?])/g, "").replace(/^[\s,]+/, "");
  const words = left.match(/\p{L}+/gu)?.length ?? 0;
  return words >= 2 && left !== sentence ? capital(left) : sentence;
}

/** The sentence without its last clause, where it can end before it; null where it cannot. */
export function withoutTail(sentence: string): string | null {
  const end = /[.!?…]+['"’”)]*$/.exec(sentence)?.[0] ?? "";
  const at = [...sentence.matchAll(TAIL)].at(-1)?.index;
  const left = at === undefined ? "" : sentence.slice(0, at).trim();
  return left.split(/\s+/).length >= LEAST_WORDS ? `${left.replace(/[,;:]$/, "")}${end || "."}` : null;
}
