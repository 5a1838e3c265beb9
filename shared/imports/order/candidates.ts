import type { Mention } from "../names/find";
import { JOINING } from "../names/find";
import { NAME_WORDS, nameWord, singular, type Name } from "../names/lexicon";
import { plainIn } from "../source/words";
import type { Span, Word } from "../types";
import { introduction, isInPassing } from "./signals";

/** A name in its sentence, with what speaks for it beginning a block. */
export interface Candidate {
  readonly name: Name;
  readonly span: Span;
  readonly sentence: number;
  readonly sure: number;
  readonly strength: 0 | 1 | 2;
  readonly passing: boolean;
  readonly isThing: boolean;
  /** One of several in a plain list: "rows, presses and a carry". */
  readonly listed: boolean;
  /** One of several that are done in turn: "curls and push-downs, twelve each". */
  readonly paired: boolean;
  /** Taken back straight away: "front squats, sorry, goblet squats". */
  readonly takenBack: boolean;
}

/** A turn that no name tells stands for itself. */
export const unnamed = (at: number): Omit<Candidate, "name"> => ({ span: { from: at, to: at + 1 }, sentence: 0, sure: 1, strength: 2, passing: false, isThing: true, listed: false, paired: false, takenBack: false });

const text = (words: readonly Word[], from: number, to: number): string => plainIn(words, from, to).join(" ");

/** Words that tell how an exercise is done and do not make another of it. */
const NEUTRAL = new Set("time times school superset top pair tri finisher second third last next ladder righto alright yeah okay ones rest exercise exercises movement move station number block round thing today morning evening more mean heavy light lighter slow paused pause tempo basic regular standard normal classic simple plain good proper deep full quick controlled strict nice big clean easy hard beautiful lovely favourite favorite famous trusty actual main working same other loaded weighted few little great solid perfect amazing fun tough nasty old usual horrible dreaded wonderful".split(" "));

/** Things an exercise is done with or on; with one of them before it, it is another exercise. */
const THINGS = new Set("bench box band cable dumbbell kettlebell barbell plate ring wall floor chair ball bar machine sandbag landmine strap sofa step".split(" "));

/** Nouns that name movements; with another word before them they are an exercise, known or not. */
const HEADS = new Set("sandbag squat deadlift lunge press row curl raise carry plank bridge swing extension fly stretch jump hop hold twist crunch kickback thrust pulldown pushdown rollout dip slam rotation snatch clean jerk crawl march circle rock pose climber kick tap drill pushup pullup chinup stepup situp thruster complex".split(" "));

/** Heads that coaches say alone for an exercise they have in mind: "then we go to the row", "over to the cables for a fly". */
const BARE = new Set("row fly press raise carry pulldown extension lunge curl crunch hinge thrust sandbag calf chin clam hang march kickback pullover rotation kick twist plank bridge".split(" "));
/** "Then we're rowing", "benching first". */
export const DOING: Readonly<Record<string, string>> = { rowing: "row", pressing: "press", curling: "curl", carrying: "carry", hanging: "hang", marching: "march", hinging: "hinge", lunging: "lunge", benching: "bench", deadlifting: "deadlift", squatting: "squat", swinging: "swing" };

const TAKES_BACK = /^(?:(?:um|uh|no|oh|well) )*(?:sorry|no sorry|i mean|no wait|wait no|i meant|scratch that|actually|rather|or rather|no not|not)\b/;

/** "Today's deadlifts" are deadlifts. */
const OF_WHOM = /(?:day|night|week|one|body)'s$/;

/** "pistol squats" is no back squat: a modifier nobody knows makes it another exercise. */
function withModifier(words: readonly Word[], classes: readonly string[], mention: Mention, floor: number): { readonly name: Name; readonly span: Span } {
  const plain = { name: mention.name, span: { from: mention.from, to: mention.to } };
  const at = mention.from - 1;
  const word = words[at];
  if (mention.name.words.length > 1 || at < floor || !word || /[,.;:!?]$/.test(word.text) || !HEADS.has(mention.name.letters)) return plain;
  const modifier = nameWord(word.plain);
  if (JOINING.has(word.plain) || NEUTRAL.has(word.plain) || /\d/.test(word.plain) || !(THINGS.has(modifier) || ["NOUN", "PROPN", "ADJ"].includes(classes[at] ?? "")) || modifier.length < 3 || /(?:ing|ly)$/.test(modifier) || OF_WHOM.test(word.plain)) return plain;
  return { name: unknownName(text(words, at, mention.to)), span: { from: at, to: mention.to } };
}

/** A name that no list holds, as it was said, but for the plural. */
export function unknownName(said: string): Name {
  const words = said.split(" ").map((word) => DOING[word] ?? nameWord(word));
  const one = said.replace(/\S+$/, (head) => singular(head));
  const title = one.charAt(0).toUpperCase() + one.slice(1);
  return { title: title.slice(0, 120), exercise: null, words, letters: words.join(""), sound: "", everyday: false };
}

/** Names no list holds: introduced, one to three words, and a movement at their end. "Next up a sissy lunge". */
function unlisted(words: readonly Word[], sentence: Span, taken: ReadonlySet<number>): Span[] {
  const spans: Span[] = [];
  for (let at = sentence.from; at < sentence.to; at += 1) {
    const plain = words[at]?.plain ?? "";
    const head = DOING[plain] ?? nameWord(plain);
    if (!(HEADS.has(head) || BARE.has(head) || plain in DOING) || taken.has(at)) continue;
    let from = at;
    while (from > sentence.from && at - from < 3 && !taken.has(from - 1) && !JOINING.has(words[from - 1]?.plain ?? "") && !NEUTRAL.has(words[from - 1]?.plain ?? "") && /^[a-z'-]{3,}$/.test(words[from - 1]?.plain ?? "") && !/[,.;:!?]$/.test(words[from - 1]?.text ?? "")) from -= 1;
    const governs = /^(?:your|the|it|them|that|this|through|down|up|back|in|into|away|over|off|out|and hold)$/.test(words[at + 1]?.plain ?? "");
    // A bare word may be anything; whether it begins an exercise is told by what stands around it.
    if (from === at ? !(BARE.has(head) || plain in DOING) : governs || introduction(text(words, sentence.from, from)) < 2) continue;
    spans.push({ from, to: at + 1 });
  }
  return spans;
}

const JOINS_LIST = /^(?:(?:and|or|plus|some|a|an|the|with|few|bit|of|little|then a|our|as well as)(?: |$))*$/;
/** Two and more done in turn are one list, and each of them begins: "curls and push-downs, twelve each". */
const PAIRED_BEFORE = /\b(?:super ?sets?|super setting|pair\w*|back to back|together|alternat\w+|circuit|giant set|tri ?set|one after the other|combination|combo)\b/;
const PAIRED_AFTER = /^(?:[\w']+ ){0,4}?(?:\d+|\w+) (?:reps |sets )?(?:of )?(?:each|both|apiece)(?! (?:side|leg|arm|hand|way|foot|direction|knee|hip|round|set|time))\b/;
const PAIRED_BEHIND = /^(?:[\w']+ ){0,3}?(?:back to back|together|one after the other|in turn|alternat\w+|super ?set\w*)\b/;
const IN_TURN = /\b(?:then|into|followed by|after that|next|straight|finally|before we|superset\w*|pair\w*|with)\b/;

/** The whole list that a name stands in: from its first name to its last. */
function chainOf(words: readonly Word[], here: readonly { readonly span: Span }[], place: number): Span {
  let [first, last] = [place, place];
  const joins = (at: number): boolean => JOINS_LIST.test(text(words, here[at]?.span.to ?? 0, here[at + 1]?.span.from ?? 0));
  while (first > 0 && joins(first - 1)) first -= 1;
  while (last + 1 < here.length && joins(last)) last += 1;
  return { from: here[first]?.span.from ?? 0, to: here[last]?.span.to ?? 0 };
}

/**
 * Every name in the sentences with what speaks for and against it.
 * @param classes - parts of speech, one per word; empty for notes
 */
export function candidatesIn(words: readonly Word[], sentences: readonly Span[], mentions: readonly Mention[], classes: readonly string[]): Candidate[] {
  const candidates: Candidate[] = [];
  let next = 0;
  sentences.forEach((sentence, number) => {
    const here: { name: Name; span: Span; sure: number; isThing: boolean }[] = [];
    const taken = new Set<number>();
    let floor = sentence.from;
    for (; next < mentions.length && (mentions[next]?.from ?? Infinity) < sentence.to; next += 1) {
      const mention = mentions[next] as Mention;
      // "Bench dips": a word that is no exercise here is what the next one is done on.
      const last = here.at(-1);
      if (last && !last.isThing && last.span.to === mention.from && last.span.to - last.span.from === 1) {
        here.pop();
        floor = last.span.from;
      }
      const { name, span } = withModifier(words, classes, mention, floor);
      floor = span.to;
      for (let at = span.from; at < span.to; at += 1) taken.add(at);
      here.push({ name, span, sure: mention.sure, isThing: mention.isThing });
    }
    if (classes.length > 0) for (const span of unlisted(words, sentence, taken)) here.push({ name: unknownName(text(words, span.from, span.to)), span, sure: 0.8, isThing: true });
    here.sort((a, b) => a.span.from - b.span.from);
    here.forEach(({ name, span, sure, isThing }, place) => {
      const before = text(words, sentence.from, span.from);
      const after = text(words, span.to, sentence.to);
      const strength = introduction(before.replace(/\b(?!let)(\w+)'s\b/g, "$1 is"), after);
      const neighbours = [here[place - 1], here[place + 1]].map((other) => {
        if (!other) return null;
        const between = other.span.to <= span.from ? text(words, other.span.to, span.from) : text(words, span.to, other.span.from);
        return { between, other };
      });
      const right = neighbours[1];
      const joined = neighbours.some((side) => side !== null && side.other.isThing && (side.between !== "" || words[Math.max(span.from, side.other.span.from) - 1]?.text.endsWith(",") === true) && JOINS_LIST.test(side.between) && !IN_TURN.test(side.between) && side.other.name.title !== name.title);
      const chain = joined && isThing ? chainOf(words, here, place) : null;
      const paired = chain !== null && !isInPassing(before, after, 0) && (PAIRED_BEFORE.test(text(words, Math.max(0, sentence.from - 12), chain.from)) || [PAIRED_AFTER, PAIRED_BEHIND].some((after) => after.test(text(words, chain.to, chain.to + 10))));
      const leads = paired ? Math.max(1, strength, introduction(text(words, sentence.from, chain.from))) : strength;
      candidates.push({
        name, span, sentence: number, sure, isThing, strength: leads >= 2 ? 2 : leads === 1 ? 1 : 0,
        passing: isInPassing(before, after, strength),
        listed: joined && !paired,
        paired,
        takenBack: right !== null && right !== undefined && right.other.isThing && right.between.split(" ").length <= 5 && TAKES_BACK.test(right.between),
      });
    });
  });
  return candidates.filter(({ name }) => name.words.some((word) => NAME_WORDS.has(word) || word.length > 2));
}
