import type { Token } from "./figures";

/** What speakers say when they take back what they just said. */
const MARKERS: readonly (readonly string[])[] = [
  "no sorry i mean", "no wait sorry", "sorry no i mean", "no i mean", "no sorry", "no wait", "sorry no", "wait no", "i mean", "oh sorry", "sorry i meant", "i meant", "sorry", "scratch that", "strike that", "correction",
  "actually make that", "actually make it", "actually let's make it", "actually let's make that", "actually let's do", "actually let's say", "actually let's go", "no let's say", "no let's do", "no let's make it", "no make it", "no make that", "make that", "let's make it", "make it",
  "or rather", "rather", "no actually", "actually no", "actually", "no not", "no", "wait", "hang on", "oops", "let me correct that", "my mistake", "my bad", "i tell a lie", "i lie", "well no",
].map((marker) => marker.split(" ")).sort((a, b) => b.length - a.length);

const FOLLOW = new Set(["it's", "its", "that's", "it", "is", "be", "should", "let's", "say", "make", "that", "do", "we're", "doing", "go", "for", "we'll", "i", "mean", "meant", "no", "sorry", "wait", "on", "hang", "so", "well", "to", "with", "at", "not"]);

/** How far back the words taken back may stand, in tokens. */
const REACH = 14;

const KINDS: readonly (readonly [string, RegExp])[] = [
  ["sets", /^(?:sets?|rounds?)$/], ["reps", /^(?:reps?|repetitions?)$/], ["weight", /^(?:kilos?|kgs?|kilograms?|pounds?|lbs?)$/], ["time", /^(?:seconds?|secs?|minutes?|mins?)$/], ["distance", /^metres$/], ["percent", /^percent$/],
];
const kindOf = (text: string | undefined): string | null => KINDS.find(([, word]) => word.test(text ?? ""))?.[0] ?? null;

interface Amount {
  readonly from: number;
  readonly to: number;
  readonly kind: string | null;
  readonly shape: "one" | "range" | "by";
}

const isNumber = (token: Token | undefined): boolean => token !== undefined && token.value !== null;

/** The amount that begins at a token: "8", "8 to 10 reps", "4 by 6", "2 minutes". */
function amountAt(tokens: readonly Token[], at: number): Amount | null {
  if (!isNumber(tokens[at])) return null;
  const joint = tokens[at + 1]?.text ?? "";
  const second = isNumber(tokens[at + 2]);
  const shape = second && /^(?:to|or)$/.test(joint) ? "range" : second && /^(?:by|x)$/.test(joint) ? "by" : "one";
  const end = shape === "one" ? at + 1 : at + 3;
  const kind = kindOf(tokens[end]?.text);
  return { from: at, to: kind === null ? end : end + 1, kind, shape };
}

function markerAt(tokens: readonly Token[], at: number): number {
  const found = MARKERS.find((marker) => marker.every((word, place) => tokens[at + place]?.text === word));
  if (!found) return 0;
  let length = found.length;
  while (FOLLOW.has(tokens[at + length]?.text ?? "") && length < 7) length += 1;
  return length;
}

/** Is something taken back in these tokens? @param to - the first that is not looked at */
export const takesBack = (tokens: readonly Token[], from: number, to: number): boolean => tokens.slice(from, to).some((_, at) => markerAt(tokens, from + at) > 0);

/** What takes back a whole phrase; "no" alone may be "no rest". */
const SURELY = /(?:^| )(?:no sorry|sorry no|sorry|no wait|wait no|i mean|i meant|i tell a lie|i lie|scratch that|correction|make that|my mistake|hang on)(?: |$)/;

/** Is something taken back in these tokens, beyond doubt? @param to - the first that is not looked at */
export const takesAllBack = (tokens: readonly Token[], from: number, to: number): boolean => SURELY.test(tokens.slice(from, to).map(({ text }) => text).join(" "));

/** The last amount before `before` that the new one can stand for. */
function takenBack(tokens: readonly Token[], before: number, amount: Amount): Amount | null {
  const candidates: Amount[] = [];
  for (let at = Math.max(0, before - REACH); at < before;) {
    const earlier = amountAt(tokens, at);
    if (earlier && earlier.to <= before) candidates.push(earlier);
    at = earlier && earlier.to <= before ? earlier.to : at + 1;
  }
  const last = candidates.at(-1) ?? null;
  if (amount.shape === "by") return candidates.findLast(({ shape }) => shape === "by") ?? null;
  const alike = candidates.findLast(({ kind }) => kind === amount.kind);
  if (amount.kind !== null) return alike ?? (last?.kind === null || last?.kind === undefined ? last : null);
  return last;
}

/** "Three sets of three, three minutes' rest" says two things. */
const isRest = (tokens: readonly Token[], at: number): boolean => kindOf(tokens[at]?.text) === "time" && /^(?:of|rest|break|off|between|recovery)$/.test(tokens[at + 1]?.text ?? "");

/** "Eight, uh, eight to ten": the same figure twice, the second time with what belongs to it. */
const isRestart = (tokens: readonly Token[], token: Token, at: number): boolean =>
  token.value !== null && tokens[at + 1]?.value === token.value && (/^(?:to|or|by|x)$/.test(tokens[at + 2]?.text ?? "") || (kindOf(tokens[at + 2]?.text) !== null && !isRest(tokens, at + 2)));

/**
 * The tokens with what was taken back replaced by what was said instead: "3 sets of 8 no sorry 10" becomes "3 sets of 10".
 * A unit said once counts for both. Tokens keep their places in the source.
 */
export function corrected(tokens: readonly Token[]): Token[] {
  const out = tokens.filter((token, at) => !isRestart(tokens, token, at));
  for (let at = 1; at < out.length; at += 1) {
    const length = markerAt(out, at);
    if (length === 0) continue;
    const amount = amountAt(out, at + length);
    if (!amount) continue;
    const old = takenBack(out, at, amount);
    if (!old) continue;
    const keepUnit = amount.kind === null && old.kind !== null ? out.slice(old.to - 1, old.to) : [];
    const fresh = [...out.slice(amount.from, amount.to), ...keepUnit].map((token) => ({ ...token, stop: false }));
    const between = out.slice(old.to, at);
    // "8 to 10, no, 12": only the upper end was wrong.
    const lower = out[old.from];
    if (old.shape === "range" && amount.shape === "one" && (lower?.value ?? 0) < (out[amount.from]?.value ?? 0)) fresh.unshift(...out.slice(old.from, old.from + 2));
    // "3 sets no sorry 4 sets of 8": what stands between belongs to the amount and stays.
    out.splice(old.from, amount.to - old.from, ...fresh, ...between);
    at = old.from + fresh.length + between.length;
  }
  return out;
}
