/**
 * What surrounds a match decides whether the text asks for it: prohibitions, warnings, stop rules, quotes, and
 * permissions that turn a negation round ("don't worry if ...").
 */
import { PHRASES, type PhraseKind } from "./phrases";
import { around, firstOf, hasTurn, inside, joined, lastOf, type Around } from "./scope";
import { compile, find, type Span, type Template, type Tokenised } from "./template";

export interface Reading extends Tokenised {
  /** Where each kind of surrounding phrase shows; filled when asked for. */
  readonly phrases: Map<PhraseKind, readonly Span[]>;
}

const compiled = new Map<PhraseKind, readonly Template[]>(
  (Object.keys(PHRASES) as PhraseKind[]).map((kind) => [kind, PHRASES[kind].map(compile)]),
);

/** Where a kind of phrase shows in a text. */
export function phrasesIn(text: Reading, kind: PhraseKind): readonly Span[] {
  const known = text.phrases.get(kind);
  if (known) return known;
  const spans = (compiled.get(kind) ?? []).flatMap((template) => find(template, text));
  text.phrases.set(kind, spans);
  return spans;
}

const has = (text: Reading, kind: PhraseKind, where: Span): boolean => phrasesIn(text, kind).some((span) => inside(span, where));
/** One that begins inside, however far it runs. */
const begins = (text: Reading, kind: PhraseKind, where: Span): boolean => phrasesIn(text, kind).some(({ from }) => from >= where.from && from < where.to);

/** A permission in front of the place that is not itself denied ("don't let"). */
function isGranted(text: Reading, where: Span): boolean {
  if (has(text, "permit", where)) return true;
  return phrasesIn(text, "grant").some((grant) => inside(grant, where) && !phrasesIn(text, "negator").some((no) => no.to <= grant.from && grant.from - no.to <= 2 && text.tokens[no.to]?.gap === 0));
}

/** Within a breath after the words in question. */
const BREATH = 9;

/** Reported speech: another's words, habit or an old belief, unless the text takes it up after all. */
function isReported(text: Reading, { before, after, later, previous }: Around, place: Span): boolean {
  const quoted = text.tokens[place.from]?.quoted === true && text.tokens[place.to - 1]?.quoted === true;
  if (quoted && has(text, "speech", { from: 0, to: text.tokens.length }) && !has(text, "endorsed", { from: place.to, to: later.to })) return true;
  const told = begins(text, "report", before) || (begins(text, "report", previous) && has(text, "rejected", joined(after, later)));
  return told && !has(text, "endorsed", { from: place.to, to: later.to });
}

const PRONOUN = /^(?:you|they|people|we|i)$/;

/** Is the safe habit at this place put down, before or after? */
export function isDismissed(text: Reading, place: Span): boolean {
  const where = around(text, place);
  // What is dropped stands close by: "forget the clock and keep a flat back" drops the clock.
  let reach = lastOf(where.clause, 7);
  for (let i = reach.from; i < reach.to; i += 1) if (text.tokens[i]?.word === "and") reach = { from: i, to: reach.to };
  const near = reach;
  const negated = phrasesIn(text, "negator").some((span) => inside(span, { from: where.clause.from, to: place.from }));
  if (isReported(text, where, place)) return false;
  // "Quit tucking the ribs": right in front of the habit only, for "stop the set and brace" drops nothing.
  const ceased = text.tokens[place.from - 1];
  if (ceased && place.from > where.sentence.from && /^(?:stop|quit|cease|enough)$/.test(ceased.word) && text.tokens[place.from]?.word.endsWith("ing")) return true;
  const dropped = phrasesIn(text, "drop").filter((span) => inside(span, near) || (span.from >= near.from && span.from < place.from && span.to <= place.to));
  // "You skip the brace" tells what happens; "skip the brace" asks for it.
  const first = dropped.find(({ from }) => !(PRONOUN.test(text.tokens[from - 1]?.word ?? "") && text.tokens[from]?.pos === "VERB" && !(text.tokens[from]?.word ?? "").includes("'")));
  if (first) return !phrasesIn(text, "negator").some((span) => span.to <= first.from && first.from - span.to <= 2 && inside(span, where.before));
  if (has(text, "permit", near)) return true;
  if (negated) return false;
  if (has(text, "belittled", firstOf(where.after, 12))) return true;
  return where.after.to - where.after.from <= 2 && has(text, "belittled", firstOf(where.later, 6));
}

/** Is a safe habit at this place kept only for a start and then let go? */
export function isAbandoned(text: Reading, place: Span): boolean {
  const where = around(text, place);
  if (isReported(text, where, place)) return false;
  return phrasesIn(text, "abandoned").some((gone) => gone.from >= place.to && hasTurn(text, place.to, gone.from));
}

/** Does somebody say that what stands at this place is fine, or to carry on with it? */
export function isPermitted(text: Reading, place: Span): boolean {
  const where = around(text, place);
  const { before, clause, after, later } = where;
  if (isReported(text, where, place)) return false;
  const beyond = after.to - after.from <= 3 ? joined(after, firstOf(later, 8)) : after;
  if (has(text, "rejected", firstOf(after, 14))) return false;
  if (isGranted(text, lastOf(before, 14))) return true;
  const negated = has(text, "negator", clause);
  if (negated) return false;
  if (has(text, "waved", firstOf(beyond, BREATH + 3))) return true;
  if (begins(text, "condition", before)) return has(text, "carryOn", beyond) && !has(text, "stopRule", after);
  return false;
}

/** Does the text reject, forbid, quote or warn of what stands at this place? */
export function isSilenced(text: Reading, place: Span, as: "fault" | "flat"): boolean {
  const where = around(text, place);
  const { before, clause, after, later } = where;
  if (isReported(text, where, place)) return true;
  const waved = has(text, "waved", firstOf(after, BREATH));
  if (has(text, "rejected", firstOf(after, 12)) && !waved) return true;
  const word = text.tokens[later.from]?.word;
  if (word !== undefined && /^(?:no|nope|don't|never|stop|wrong|not|please)$/.test(word) && !/^(?:stop|wait|matter|problem|worries|excuse|rest|need)$/.test(text.tokens[later.from + 1]?.word ?? "")) return true;
  const negated = has(text, "negator", { from: clause.from, to: place.from });
  const permitted = isGranted(text, lastOf(before, 12));
  if (as === "flat") return negated && !permitted && !has(text, "drop", clause);
  if (permitted) return false;
  if (negated || (begins(text, "condition", before) && has(text, "stopRule", joined(after, firstOf(later, 14))))) return true;
  if (has(text, "denial", place)) return true;
  if (waved) return false;
  if (isSubject(text, where, place)) return !isPermitted(text, place);
  // A condition governs its own clause: "if your knees cave in, rest", but not "if that was easy, double it".
  return begins(text, "condition", clause) && !has(text, "carryOn", joined(after, later));
}

/** "Bouncing at the bottom tires the knees", "a stiff landing costs you": such a sentence tells what a fault does and asks nobody to do it. */
function isSubject(text: Reading, { sentence }: Around, place: Span): boolean {
  const [first, next] = [text.tokens[place.from], text.tokens[place.to]];
  if (!first || sentence.to <= place.to) return false;
  if (place.from === sentence.from && first.word.length > 5 && first.word.endsWith("ing") && !first.word.endsWith("thing")) return true;
  const opens = place.from === sentence.from || (place.from === sentence.from + 1 && text.tokens[sentence.from]?.pos === "DET");
  // "Swing your body": an order, though the library takes the verb for a noun.
  const ordered = /^(?:DET|PRON)$/.test(text.tokens[place.from + 1]?.pos ?? "");
  return opens && !ordered && /^(?:NOUN|ADJ|DET)$/.test(first.pos) && next !== undefined && next.gap === 0 && /^(?:VERB|AUX)$/.test(next.pos);
}

const JOKES = ["just|only|i'm ~1 kidding|joking", "who_am_i_kidding|scratch_that"].map(compile);

/** Where the text lands: what was said as a joke and taken back comes before this token. */
export function landing(text: Tokenised): number {
  for (const joke of JOKES) for (const { to } of find(joke, text)) if (text.tokens.length - to >= 2) return to;
  return 0;
}
