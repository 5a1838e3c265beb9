import type { Span, Word } from "../types";
import { wordClasses } from "./word-classes";

/**
 * Where sentences end in speech that was written down without signs.
 *
 * Each gap between two words is given points for and against an end: silence, words that open a sentence, a clause that is
 * complete, words that cannot stand last or first. The longer a sentence has run, the fewer points end it.
 */

/** A text with at least one closing sign to so many words carries its own sentences. */
const WORDS_A_SIGN = 30;
/** A signed sentence longer than this is cut like unsigned speech. */
const LONGEST_SIGNED = 45;

const CLOSES = /[.!?…]["'”’)\]]*$/;
const NOT_AN_END = /^(?:e\.?g|i\.?e|etc|vs|approx|max|min|no|dr|mr|mrs|ms|st|reps?|secs?|lbs?|kgs?)\.$|^\p{Lu}\.$|^\d+\.$/iu;

const isSigned = (words: readonly Word[]): boolean => words.filter(({ text }) => CLOSES.test(text)).length >= words.length / WORDS_A_SIGN;

/** Phrases that open a sentence wherever they stand; points for an end before them. */
const OPENERS: readonly (readonly [RegExp, number])[] = [
  [/^(?:okay|ok|alright|all right|anyway|anyways|right so|right then|right now then|right let's|moving on|so first up|so next up|so first off|so number one|so exercise one|next up|up next|next exercise|next one|next we|first up|first exercise|second exercise|third exercise|last exercise|final exercise|last but not least|last one|number (?:one|two|three|four|five|six)|exercise (?:number )?(?:one|two|three|four|five|six|\d)|and then we|and next|then we|by the way|(?:and |so |okay )*that's (?:it|all|us|everything|the lot) (?:for|done|today|folks|from|everyone|everybody|guys)|to warm up|for (?:the|our|your) warm up|warm up (?:is|first|time)|to finish|to start)\b/, 2.4],
  [/^(?:so (?:we|i|you|the|this|that|let's|what|today|first|next|now|for|here|there|just|it|if|when|go|get|grab)|now (?:we|i|you|the|this|that|let's|what|for|if|when|it|here|go|get|grab|remember)|and (?:that's|this is|remember|again|don't|make sure|we're|we'll|you're|you'll|you want|i want|if you|it's)|but (?:we|i|you|don't|if|it|that|this|just|remember)|because (?:we|i|you|it|this|that))\b/, 1.3],
  [/^(?:let's|let me|remember|make sure|don't forget|welcome|hello|hi|hey|thanks|thank you|see you|well done|good job|great job|great work|good work|nice work|that's it|that's all|here we go|off we go|there we go|there you go|as always|today (?:we|i|it|the|you|is (?:a|all|going)|i'm|we're|it's)\b|three two one|in this (?:video|session|episode|workout))\b/, 1.5],
  [/^(?:don't (?:let|lean|round|rush|swing|bounce|lock|drop|arch|shrug|hold|push|pull|force|flare|lift|yank|jerk|twist|curl|roll|squat|go|come|stand|kick|hunch|tip|wobble|crank|bang|dip|cave)|do not|never|if (?:your|you|that|it)\b|if (?:this|there's)|make sure)\b/, 1.35],
  [/^(?:don't|avoid|keep|think about|imagine|try|try to|set up|grab|take|sit|stand|lie|start|squeeze|drive|brace|breathe|push|pull|lower|pause|hold|rest|drop|lift|bring|put|get|go|step|check|watch|focus|feel|stay|reach|tuck|lean|find|pick|walk|come|turn|use|place|press|hinge|rotate|repeat|switch|swap)\b/, 0.9],
  [/^(?:we're|we've|we'll|we are|we have|you're|you've|you'll|you want|you should|you can|you might|i'm|i've|i'll|i want|i like|i think|i know|i always|i usually|i did|i was|i had|it's|it is|it should|that's|that is|this is|this one|there's|there are|they're|these are|what (?:i|we|you)|if (?:you|that|it|your)|when you|one (?:thing|more)|some people|a lot of people|most people|people|your|same)\b/, 0.8],
  [/^(?:so|now|then|next|first|second|finally|again|and|but|also|plus|or|because|cause)\b/, 0.35],
];

/** A sentence rarely ends with these. */
const NOT_LAST = new Set(
  ("a an the my your our their his her its this these of in on at for from with by to into onto as than and or but so because cause if when while that which who whose where i we you're i'm we're they're it's that's there's he she they is are was were am be been being do does did don't doesn't "
  + "have has had can could will would should shall may might must not very really just too gonna going want wanna gotta let's about like between under over against towards toward every each some any no more most much many both your you'll we'll i'll we've you've i've what's don't keep make get let lets sure never always actually lead okay ok alright next first um uh er").split(" "),
);
/** Words that may stand last all the same when silence follows. */
const SOMETIMES_LAST = /^(?:this|these|that|it's|is|are|was|do|did|have|had|can|will|not|too|more|much|both|each|about|under|over|like|so|on|in|off|okay|ok|alright|sure|next|first|going|keep)$/;
const NOT_FIRST = new Set("of than or into onto until till too either'".split(" "));
const NUMBER = /^(?:\d[\d.,:x-]*|zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|half|couple)(?:-\w+)?$/;
const MEASURED = /^(?:sets?|reps?|rounds?|seconds?|secs?|minutes?|mins?|kilos?|kgs?|kg|pounds?|lbs?|percent|meters?|metres?|steps?|times|each|per|by|point|and|to|or|down|up|on|off|of|rest|rpe|in|at|hundred|left|out|more|breaths?)$/;

/** Points for the length a sentence would have. */
const lengthPoints = (length: number): number => (length < 2 ? -3 : length < 4 ? -0.9 : length < 7 ? -0.1 : length < 14 ? 0 : length < 20 ? 0.35 : length < 28 ? 0.8 : length < 40 ? 1.4 : 2.2);

const ALSO_ADVERB = /^(?:before|after|up|down|out|off|over|around|through|back|that)$/;

const ENOUGH = 1.15;

interface Reading {
  readonly words: readonly Word[];
  readonly classes: readonly string[];
  readonly inside: ReadonlySet<number>;
  readonly ends: ReadonlySet<number>;
}

/** Points for a sentence ending before word `at`, having begun at `from`. */
function pointsFor({ words, classes, ends }: Reading, from: number, at: number): number {
  const [before, word] = [words[at - 1] as Word, words[at] as Word];
  const previous = before.plain;
  let points = lengthPoints(at - from);
  if (word.pause >= 1.2) points += 3;
  else if (word.pause >= 0.45) points += 1.6;
  else if (word.pause >= 0.25) points += 0.7;
  if (word.edge === "cue") points += 0.2;
  if (word.edge === "line") points += 0.5;
  if (word.edge === "paragraph") points += 4;
  if (/[;:]$/.test(before.text)) points += 1;
  if (/,$/.test(before.text)) points += 0.3;
  const rest = words.slice(at, at + 4).map(({ plain }) => plain).join(" ");
  for (const [opener, worth] of OPENERS) {
    if (!opener.test(rest)) continue;
    points += worth;
    break;
  }
  // "Cave in, if": what follows cannot be what the small word leads to, so it belongs to the verb before.
  const particle = /^(?:in|on|over|through|by|under|around)$/.test(previous) && /^(?:if|when|and|so|but|don't|keep|make|then|we|i|you|okay|alright|that's|three|four|five|two|rest|hold|squeeze|push|pull|drive|breathe|remember|because|never|try)$/.test(word.plain);
  // "Three rounds of that": the small word is all there is.
  const pointed = /^(?:that|this|those|these|it)$/.test(previous) && /^(?:of|for|like|do|did|doing|with)$/.test(words[at - 2]?.plain ?? "");
  if (NOT_LAST.has(previous) && !particle && !pointed) points -= SOMETIMES_LAST.test(previous) && word.pause >= 0.45 ? 0.5 : 2;
  if (NOT_FIRST.has(word.plain)) points -= 2;
  // Numbers hold together with what they count, and with each other: "eight to ten", "three sets of eight at forty kilos".
  if (NUMBER.test(previous) && (MEASURED.test(word.plain) || NUMBER.test(word.plain))) points -= 1.5;
  if (/^(?:seconds?|minutes?|secs?|mins?)$/.test(previous) && /^(?:rest|recovery|break|down|up|hold|pause|on|off|between)$/.test(word.plain)) points -= 2;
  if (MEASURED.test(previous) && NUMBER.test(word.plain)) points -= 0.8;
  if (ends.has(at) && !NUMBER.test(word.plain)) points += /^(?:so|hold|grab|and|we|we're|you|your|feet|hands|elbows|one|this|same|set|over|use|take|sit|lie|stand|get)$/.test(word.plain) ? 0.8 : 0.3;
  // "Reverse lunges next": the turn may stand after the name.
  if (ends.has(at) && word.plain === "next" && word.pause < 0.45 && !/^(?:we|up|is|exercise|one|i|you|it|on|comes|we've|we're|it's|i've|movement|move|set)$/.test(words[at + 1]?.plain ?? "we")) points -= 3;
  if (ends.has(at) && /^(?:at|for|with|on|times)$/.test(word.plain) && word.pause < 0.45) points -= 1.5;
  if (ends.has(at) && /^to (?:finish|start|begin|close|end)\b/.test(rest) && word.pause < 0.45) points -= 4;
  if (/^and a (?:half|quarter)\b/.test(rest)) points -= 4;
  // "Exercise number one", "and then to finish": one turn, however many words open it.
  if (/^(?:exercise|movement|station)$/.test(previous) && word.plain === "number") points -= 4;
  if (previous === "then" && /^(?:and|so|okay)$/.test(words[at - 2]?.plain ?? "") && word.pause < 0.45) points -= 2;
  // "All right" and "you know" are not torn apart.
  if (previous === "all" && word.plain === "right") points -= 3;
  if (previous === "you" && word.plain === "know") points -= 2;
  const verb = classes.slice(from, at).some((kind) => kind === "VERB" || kind === "AUX");
  const [last, first] = [classes[at - 1] ?? "X", classes[at] ?? "X"];
  if (verb && ["NOUN", "PROPN", "ADV", "NUM"].includes(last) && ["PRON", "AUX"].includes(first)) points += 0.3;
  if (!verb && at - from < 6) points -= 0.4;
  if (["DET", "ADP", "CCONJ", "SCONJ"].includes(last) && word.pause < 0.45 && !ALSO_ADVERB.test(previous) && !particle) points -= 0.8;
  if (last === "VERB" && /^(?:your|the|a|an|it|them|that|those|these|its|my|our)$/.test(word.plain) && word.pause < 0.45) points -= 1.4;
  if (last === "ADJ" && first === "NOUN") points -= 0.8;
  return points;
}

/** Ends by points, from left to right; an end that a better one soon follows is passed over. */
function cut(reading: Reading, span: Span): Span[] {
  const sentences: Span[] = [];
  let from = span.from;
  let at = from + 1;
  while (at < span.to) {
    if (!reading.inside.has(at)) {
      const points = pointsFor(reading, from, at);
      if (points >= ENOUGH) {
        const next = at + 1 < span.to && !reading.inside.has(at + 1) ? pointsFor(reading, from, at + 1) : -9;
        if (next <= points + 0.4) {
          sentences.push({ from, to: at });
          from = at;
        }
      }
    }
    at += 1;
  }
  sentences.push({ from, to: span.to });
  return sentences;
}

/** The stretches between signs or edges that end a sentence for certain. */
function stretches(words: readonly Word[], signed: boolean, lines: boolean): Span[] {
  const spans: Span[] = [];
  let from = 0;
  for (let at = 1; at <= words.length; at += 1) {
    const before = words[at - 1] as Word;
    const closed = signed && CLOSES.test(before.text) && !NOT_AN_END.test(before.text);
    const edge = words[at]?.edge;
    if (at < words.length && !closed && edge !== "paragraph" && !(lines && edge === "line")) continue;
    spans.push({ from, to: at });
    from = at;
  }
  return spans;
}

/**
 * The sentences of the words; together they hold every word.
 * @param names - where exercises are named: no sentence begins inside, and one often ends after
 * @param lines - every line of the source is a sentence of its own, as in notes
 */
export function sentencesIn(words: readonly Word[], names: readonly Span[], lines: boolean): Span[] {
  if (words.length === 0) return [];
  const signed = isSigned(words);
  const classes = lines ? [] : wordClasses(words);
  const inside = new Set(names.flatMap(({ from, to }) => Array.from({ length: to - from - 1 }, (_, at) => from + 1 + at)));
  const reading: Reading = { words, classes, inside, ends: new Set(names.map(({ to }) => to)) };
  return stretches(words, signed || lines, lines).flatMap((span) => (lines || (signed && span.to - span.from <= LONGEST_SIGNED) ? [span] : cut(reading, span)));
}
