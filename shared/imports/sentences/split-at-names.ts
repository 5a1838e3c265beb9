import { JOINING, type Mention } from "../names/find";
import { introduction, isInPassing } from "../order/signals";
import { plainIn } from "../source/words";
import type { Span, Word } from "../types";

const TURN = /^(?:then|next|after|followed|straight|finally|into|okay|alright|onto|superset|superseted|followed)$/;
const LEAD = /^(?:and|so|right|now|we|just)$/;
/** How many words may stand between the turn and the name. */
const NEAR = 6;

/** How many words may introduce it. */
const INTRODUCED = 9;

const NUMBER = String.raw`(?:\d[\d.x-]*|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|twenty|thirty|forty|sixty|ninety|hundred|dozen)`;
/** Sets, or reps of a kind, a few words after a name. */
const COUNTED = new RegExp(String.raw`^(?:[\w'.]+ ){0,14}?${NUMBER}(?: (?:good|working|more|of those|of these|total|straight))* (?:sets?|rounds?|by|x|reps?|repetitions|times|of (?:those|these|them)|tens|fives|eights|twelves|triples|(?:on |to |per |for )?(?:each|per|a) (?:side|leg|arm))\b`);
/** So many words after a name are looked at. */
const AHEAD = 20;
/** Silence that ends what is said of a name. Seconds. */
const RESTING = 1.2;
/** Words before a name that only lead to it: "and the", "so for our". */
const BEFORE = /^(?:and|so|then|next|now|okay|ok|right|the|a|an|some|my|your|our|for|it's|is|we|we've|we're|got|have|do|doing|these|this|are|just|um|uh|last|first|with|on|to|of|that's|by|going|go|i'm)$/;

/** "Take twelve kilos in each hand for the row": the weight that leads to a name, and how its clause begins. */
const TO_NAME = new RegExp(String.raw` (?:kilos?|kgs?|kg|pounds?|lbs?|dumbbells?|kettlebells?|bells?)(?: (?:in|per) (?:each|one|either) hand| each)? for(?: (?:the|a|our|some|these|your))? $`);
const CLAUSE = /^(?:then|now|next|okay|right|so|and|grab|take|pick|pick|use|using|get|stand)$/;
const CLAUSE_REACH = 16;

const plainOf = (words: readonly Word[], from: number, to: number): string => plainIn(words, from, to).join(" ");

/** Where a sentence may be cut before a name that turns to another exercise: before the words that lead to it. */
function turnBefore(words: readonly Word[], mention: Mention, floor: number): number | null {
  for (let at = mention.from - 1; at >= floor && at >= mention.from - NEAR; at -= 1) {
    if (!TURN.test(words[at]?.plain ?? "")) continue;
    while (at - 1 >= floor && (LEAD.test(words[at - 1]?.plain ?? "") || TURN.test(words[at - 1]?.plain ?? ""))) at -= 1;
    return at;
  }
  return null;
}

/** The fewest words before a name that introduce it for certain: "and the next one on the list is a". */
function introductionBefore(words: readonly Word[], name: number, floor: number): number | null {
  for (let at = name - 1; at >= floor && at >= name - INTRODUCED; at -= 1) {
    if (introduction(plainOf(words, at, name)) === 2) return at;
  }
  return null;
}

/** The words before that only lead to what comes. */
function leadBefore(words: readonly Word[], place: number, floor: number): number {
  let at = place;
  while (at - 1 >= floor && BEFORE.test(words[at - 1]?.plain ?? "")) at -= 1;
  return at;
}

/** Cuts sentences before names that turned out to begin a part of their own. */
export function splitBefore(words: readonly Word[], sentences: readonly Span[], names: readonly number[]): Span[] {
  let next = 0;
  return sentences.flatMap(({ from, to }) => {
    const edges = [from];
    for (; next < names.length && (names[next] ?? Infinity) < to; next += 1) {
      const name = names[next] ?? 0;
      const at = leadBefore(words, introductionBefore(words, name, from) ?? name, from);
      if (at > (edges.at(-1) ?? from)) edges.push(at);
    }
    return edges.map((edge, place) => ({ from: edge, to: edges[place + 1] ?? to }));
  });
}

/** Cuts sentences at words. @param places - in order */
export function cutAt(sentences: readonly Span[], places: readonly number[]): Span[] {
  return sentences.flatMap(({ from, to }) => {
    const edges = [from, ...new Set(places.filter((place) => place > from && place < to))];
    return edges.map((edge, at) => ({ from: edge, to: edges[at + 1] ?? to }));
  });
}

/** A name without the words that lead to it; "bench" or "zottman" right before a name is part of it. */
function bareName(words: readonly Word[], mention: Mention, last: Mention | null, floor: number): number {
  if (last !== null && !last.isThing && last.to === mention.from) return last.from;
  const before = words[mention.from - 1];
  const isModifier = mention.name.words.length === 1 && mention.from - 1 >= floor && before !== undefined && before.plain !== "" && !JOINING.has(before.plain) && !BEFORE.test(before.plain) && (words[mention.from]?.pause ?? 0) < 0.4;
  return isModifier ? mention.from - 1 : mention.from;
}

/** The beginning of the clause that brings the weight and then the name, or null. */
function clauseBefore(words: readonly Word[], mention: Mention, floor: number): number | null {
  if (!TO_NAME.test(` ${plainOf(words, Math.max(floor, mention.from - CLAUSE_REACH), mention.from)} `)) return null;
  for (let at = mention.from - 4, seen: number | null = null; at >= Math.max(floor, mention.from - CLAUSE_REACH); at -= 1) {
    if (CLAUSE.test(words[at]?.plain ?? "")) seen = at;
    else if (seen !== null) return seen;
    if (at === floor) return floor;
  }
  return null;
}

/** "Then over on the cable" leads to a name wherever it stands. */
const TO_PLACE = /(?:^| )(?:then|next|after that)(?: (?:over|on|at|to|the|a|an|our|it's|we|do|go|have|come|into|get|cables?|machine|rack|floor|bench|mat|bar|down|back))+ $/;
const ledTo = (words: readonly Word[], mention: Mention, floor: number): boolean => mention.isThing && TO_PLACE.test(`${plainOf(words, Math.max(floor, mention.from - NEAR), mention.from)} `);

/** Is it told how often it is done, right after its name? */
function isCounted(words: readonly Word[], mention: Mention, next: Mention | undefined, span: Span): boolean {
  if (!mention.isThing) return false;
  // A sentence may have been ended too early, but never by a silence or a sign.
  const most = Math.min(words.length, mention.to + AHEAD, next?.from ?? Infinity);
  let end = mention.to;
  while (end < most && (words[end]?.pause ?? 0) < RESTING && !/[.!?]["')]*$/.test(words[end - 1]?.text ?? "")) end += 1;
  const ahead = plainOf(words, mention.to, end);
  return COUNTED.test(ahead) && !isInPassing(plainOf(words, span.from, mention.from), ahead, 0);
}

const JOINS = /^(?:and|plus|with|the|a|some|our|your|um|uh)$/;

/** Names joined to one: "curls and push-downs, twelve each". */
const isJoined = (words: readonly Word[], last: Mention, mention: Mention): boolean =>
  last.isThing && mention.from > last.to && mention.from - last.to <= 3 && words.slice(last.to, mention.from).every(({ plain }) => JOINS.test(plain));

/** The names, those that are joined as one: no sentence ends between "curls" and "and push-downs". */
export function inOneBreath(words: readonly Word[], mentions: readonly Mention[]): Span[] {
  const spans: Span[] = [];
  mentions.forEach((mention, at) => {
    const last = mentions[at - 1];
    const open = spans.at(-1);
    if (last && open && mention.isThing && isJoined(words, last, mention) && (words[mention.from]?.pause ?? 0) < 0.4) spans[spans.length - 1] = { from: open.from, to: mention.to };
    else spans.push({ from: mention.from, to: mention.to });
  });
  return spans;
}

/**
 * Cuts a sentence where it turns to another exercise: "squats for ten | then straight into push ups", and where a name is
 * counted straight away: "keep breathing | and dead bugs two sets of eight".
 */
export function splitAtNames(words: readonly Word[], sentences: readonly Span[], mentions: readonly Mention[]): Span[] {
  let next = 0;
  return sentences.flatMap((span) => {
    const { from, to } = span;
    const cuts: number[] = [];
    let last: Mention | null = null;
    for (; next < mentions.length && (mentions[next]?.from ?? Infinity) < to; next += 1) {
      const mention = mentions[next] as Mention;
      const floor = Math.max(from, last?.to ?? 0);
      const turn = last !== null || ledTo(words, mention, floor) ? turnBefore(words, mention, floor) : null;
      let at = turn;
      if (at === null && isCounted(words, mention, mentions[next + 1], { from: cuts.at(-1) ?? from, to }) && !(last && (isJoined(words, last, mention) || (last.isThing && last.to === mention.from)))) {
        const clause = clauseBefore(words, mention, floor);
        at = clause ?? introductionBefore(words, mention.from, floor) ?? turnBefore(words, mention, floor) ?? bareName(words, mention, last, floor);
        if (clause === null) at = leadBefore(words, at, floor);
      }
      if (at !== null && at > from && at > (cuts.at(-1) ?? from)) cuts.push(at);
      last = mention;
    }
    const edges = [from, ...cuts, to];
    return edges.slice(1).map((edge, place) => ({ from: edges[place] ?? from, to: edge }));
  });
}
