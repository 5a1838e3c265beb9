import { isFunctionWord } from "../function-words";
import { VERB_AHEAD, standsAlone } from "./instruction";

/** One kind of padding: what is cut is all that the pattern matches but `keep`, which is put back. */
interface Padding {
  readonly written: RegExp;
  readonly keep: (match: readonly string[]) => string;
}

const pattern = (source: string): RegExp => new RegExp(source.replace(/~/g, String.raw`\s+`), "giu");
const kept = (match: readonly string[]): string => match[1] ?? "";

/** How a sentence may begin before its padding. */
const OPENER = String.raw`^((?:(?:and|so|now|then|okay|next|first|again),?\s+)?)`;
const EDGE = String.raw`(?<![\p{L}'-])`;
const REMARK = "you know|I mean|as I said|to be honest|honestly|obviously|of course|basically|actually|literally";
/** After a remark that a comma closes comes a clause of its own; "you know, deep down, that ..." is no remark. */
const CLAUSE_AHEAD = String.raw`(?=(?:I|we|you|he|she|it|they|this|these|those|the|a|an|your|my|our|most|some|there|let)(?![\p{L}-])|${VERB_AHEAD})(?!.*,\s+(?:that|what|how|why|where|whether)\b)`;
const HEDGED_ADJECTIVE = "awkward|boring|deep|easy|fast|funny|hard|heavy|high|light|long|low|narrow|nice|odd|short|simple|slow|strange|tight|tiring|tough|tricky|warm|weird|wide";

/**
 * Words that take time and say nothing; common practice, no source. Not among them: what tells how much ("a little bit", "very",
 * "just below the knee"), what asks for less than doing it ("try to"), and a time of day ("at the end of the day").
 */
const PADDING: readonly Padding[] = [
  { written: pattern(`${OPENER}(?:what~)?I~(?:(?:really|just|simply)~){0,2}want~you~to~(?:do~(?:here~)?is~(?:to~)?)?${VERB_AHEAD}`), keep: kept },
  { written: pattern(`${OPENER}I(?:'d|’d|~would)~(?:(?:really|just)~){0,2}like~you~to~${VERB_AHEAD}`), keep: kept },
  { written: pattern(`${OPENER}make~sure~(?:that~)?you~${VERB_AHEAD}`), keep: kept },
  { written: pattern(`${OPENER}(?:just~)?go~ahead~and~${VERB_AHEAD}`), keep: kept },
  { written: pattern(`${OPENER}(?:just|simply)~${VERB_AHEAD}`), keep: kept },
  // "we are going to push" says what "we push" says; who does it must stay, or what will happen becomes an order
  { written: pattern(`${EDGE}(we|you|they)~are~going~to~${VERB_AHEAD}`), keep: (m) => `${kept(m)} ` },
  { written: pattern(`${EDGE}(I|we|you|they)~(?:basically|actually|sort~of|kind~of)~${VERB_AHEAD}`), keep: (m) => `${kept(m)} ` },
  // not inside a sentence, where "just" is "only": "if you just lower it halfway"
  { written: pattern(`${OPENER}(I|we|you|they)~(?:just|simply|literally)~${VERB_AHEAD}`), keep: (m) => `${kept(m)}${m[2] ?? ""} ` },
  { written: pattern(String.raw`(?<=(?:${EDGE}(?:is|are|was|were|feels?|looks?|seems?|gets?)|['’](?:s|re))\s+)(?:sort|kind)~of~(?=(?:${HEDGED_ADJECTIVE})(?![\p{L}-]))`), keep: () => "" },
  { written: pattern(String.raw`^(?:${REMARK}),\s*${CLAUSE_AHEAD}`), keep: () => "" },
  // between commas: both go inside a phrase ("it is, you know, the hip"), one stays where a clause goes on
  { written: pattern(String.raw`(?<![\p{L}'-])([\p{L}'’]+),\s*(?:${REMARK}),\s*(?=(and|but|then|so|it|you|we|I|they|(?<=^(?:when|if|once|as|while|after|before|because|since|until)\s.*)(?:the|a|an|your|my|our))(?![\p{L}-])|\p{L})`),
    keep: (m) => (isFunctionWord(kept(m).toLowerCase()) ? `${kept(m)} ` : m[2] ? `${kept(m)}, ` : m[0] ?? "") },
  { written: pattern(String.raw`(?<=^(?!.*\b(?:put|sort|arrange|stack)\b).*)${EDGE}in~order~(?=to\s+\p{L})`), keep: () => "" },
];

/** What is left must still be a sentence. */
const LEAST_LEFT = 2;
const LEAST_HEAD = 4;

const capital = (text: string): string => text.replace(/^\p{Ll}/u, (letter) => letter.toUpperCase());
const countWords = (text: string): number => text.match(/\p{L}+/gu)?.length ?? 0;

/** The sentence without its padding: whole words of it, in their order. The same when there is none. */
export function withoutFillers(sentence: string): string {
  const left = PADDING.reduce((open, { written, keep }) => open.replace(written, (...match: string[]) => keep(match)), sentence);
  if (left === sentence || countWords(left) < LEAST_LEFT) return sentence;
  return left[0] === sentence[0] ? left : capital(left);
}

/** A reason or a remark at the end. Steps ("and then"), limits ("but") and settings ("so that the bar ...") are no such thing. */
const TAIL = /(?:,?\s+because|,\s+which|,\s+so that)\s/gi;
/** More than the reason: what follows these belongs to the sentence, or may. */
const GOES_ON = /[,;:–—]|(?<![\p{L}'])(?:and|or|but|then|so|that|if|when|while|until)(?![\p{L}'])/iu;

/** The sentence without the reason or remark at its end, where it can end before it; null where it cannot. */
export function withoutTail(sentence: string): string | null {
  const end = /[.!?…]+['"’”)]*$/.exec(sentence)?.[0] ?? "";
  const tail = [...sentence.matchAll(TAIL)].at(-1);
  if (tail === undefined || end.includes("?") || GOES_ON.test(sentence.slice(tail.index + tail[0].length))) return null;
  const left = sentence.slice(0, tail.index).trim();
  return countWords(left) >= LEAST_HEAD && standsAlone(left) ? `${left.replace(/[,;:]$/, "")}${end || "."}` : null;
}
