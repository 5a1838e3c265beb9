import type { Token } from "./figures";
import { BARE_LOAD, BEFORE_WORK, BESIDE_WORK, UNIT_NOT_SAID } from "./extras";
import { heardFrom, secondsOf, TIME, type Heard, type Phrase, type Saying, type Statement } from "./statement";
import { stepsIn } from "./steps";
import { INTERVALS, WORK } from "./work";

/** Where today's plan takes over again after talk about other days and other people. */
const BACK_TO_TODAY = / (?:\||so|but|today|now|this week|this time|we're|we are|we'll|let's|otherwise|everyone else|for us) /g;
/** Said about other days, other people, or what not to do. */
const ELSEWHERE = new RegExp(String.raw` (?:${[
  String.raw`last (?:week|time|month|year|video|episode|session|one i did)|yesterday|the other day|used to`,
  String.raw`i (?:did|was doing|had|started|lifted|hit|managed|once)|when i (?:was|started|did|first)|(?:years|months|weeks) ago`,
  String.raw`if you're (?:a|new|just|more|advanced|brand|feeling|already|strong|stronger|returning|short)`,
  String.raw`if you are (?:a|new|just|more|advanced)|if this is your first|if it's your first|beginners?|new to (?:this|it)`,
  String.raw`some people|most people|somebody|someone|people (?:do|will|say|go)|instead of|rather than|next (?:week|time|month)`,
  "eventually",
  String.raw`my (?:best|record|max|pb)`,
  String.raw`i could|could do|i'd (?:planned|written|said)|i planned|don't do|don't need|never do`,
  String.raw`more advanced`,
].join("|")}) `);
/** Said of others or of later, a few words back. */
const OTHERS = / (?:my (?:wife|husband|brother|sister|friend|coach|mate|clients?|dad|mum|mom|neighbour|boss|son|daughter)|a (?:friend|client|guy|lady|woman|man|mate)|he's|she's|he|she|work(?:ing)? (?:your way )?up to|build(?:ing)? up to) (?:\S+ ){0,5}$/;
const TOP_SET = /^ a (?:\w+ )?(?:top|heavy|hard|work|working) /;
const AFTERWARDS = /^(?: (?!and |but |so |\|)\S+){0,3} (?:last (?:week|time|month|year)(?! (?:i|we|it|he|she|my|was)\b)|yesterday(?! i\b)|next (?:week|time)(?! (?:i|we|you)\b)|ago|back then|when i|was (?:in|on|the plan|what|my))\b/;
/** "Three sets of six this time". */
const TODAY_AFTER = /^(?: \|)?(?: \S+)? (?:this time|today|this week)\b/;
const WHOLE_CIRCUIT = new RegExp(String.raw`(?:each|every) (?:${[
  String.raw`exercise|move|movement|station|one of (?:these|them)`,
].join("|")})|(?:do|repeat|through|of) everything|of each (?:exercise|one)|everything (?:again|\d)|all of (?:them|these|it)|all (?:five|four|three|six|\d) |(?:whole|full|entire) (?:thing|circuit|round|lot|set|list)|circuit|through (?:the|this|it|them|that|everything)|all the way through|(?:go|going|goes|run|do) (?:a?round )?(?:them|these|those|it all)(?: all)? \d|round (?:the|this|it|them|that|these)|go again|go round|rounds? (?:in )?total|total of \d+ rounds|of the (?:lot|whole)|same again`);
/** The break after a whole round of the circuit is no rest between sets. */
const AFTER_ROUND = new RegExp(String.raw` (?:${[
  String.raw`(?:end of|after|between) (?:each|every|the|all|a|full)? ?(?:full |whole )?rounds?|between (?:the )?(?:rounds|circuits)`,
  String.raw`once you've done (?:all|them)|(?:whole thing|whole lot|everything) (?:\w+ )?(?:again|\d|more)`,
  String.raw`(?:whole thing|it all|do it|go|start|start it|lot|round|circuit|that) again|next round|repeat`,
].join("|")})`);
const THEN_ALL_AGAIN = / (?:whole thing|(?:whole|the) lot|whole circuit|everything|all of it) (?:\w+ )?(?:again|\d|more)/;
const isAfterRound = (text: string): boolean => AFTER_ROUND.test(` ${text.split(" | ")[0]} `) || THEN_ALL_AGAIN.test(text);
const RAMP_UP = / (?:warm up|lighter|light|ramp up|build up|feeder|easier|prep) (?:set|sets|round|one|ones) | (?:warm up|ramp up|build up) (?:with|to) /;

/** How far back a clause is looked at, in characters. */
const CLAUSE = 160;
const clauseBefore = (text: string, place: number): string => {
  const near = text.slice(Math.max(0, place - CLAUSE), place + 1);
  let from = 0;
  for (const match of near.matchAll(BACK_TO_TODAY)) from = match.index;
  return near.slice(from);
};
const sentenceAround = (text: string, from: number, to: number): string => text.slice(text.lastIndexOf(" | ", from) + 1, (text.indexOf(" | ", to) + 1 || text.length) + 1);

function isElsewhere(text: string, from: number, to: number, isRest = false): boolean {
  // "Work up to ten" is for later; "work up to a top set of five" is done now.
  const clause = TOP_SET.test(text.slice(from, to)) ? clauseBefore(text, from).replace(/ (?:work|build)(?:ing)? (?:your way )?up to $/, " ") : clauseBefore(text, from);
  if (TODAY_AFTER.test(text.slice(to, to + 30))) return false;
  return ELSEWHERE.test(`${clause} `) || (!isRest && OTHERS.test(`${clause} `.replace(/ +$/, " "))) || AFTERWARDS.test(text.slice(to, to + 80)) || / (?:not|isn't|than|wasn't) $/.test(text.slice(Math.max(0, from - 12), from + 1));
}

function statementOf({ says, rank, remark = null, either }: Phrase, heard: Heard, start: number, end: number): Statement | null {
  const [first, last] = [heard.tokenAt(start + 1), heard.tokenAt(end - 1)];
  if (!first || !last) return null;
  const sentence = sentenceAround(heard.text, start, end);
  const said = heard.text.slice(Math.max(0, start - 18), end + 1);
  const circuit = says.sets !== undefined && rank === "part" && (WHOLE_CIRCUIT.test(sentence) || / rounds?\b/.test(said)) || (says.seconds !== undefined && WHOLE_CIRCUIT.test(sentence)) || (says.restSeconds !== undefined && / of everything /.test(sentence));
  return { says, rank, remark, either: either === true, from: first.at, to: last.at, about: RAMP_UP.test(heard.text.slice(Math.max(0, start - 30, heard.text.lastIndexOf(" then ", start) + 1), end + 1)) && rank !== "extra" ? "ramp-up" : circuit ? "circuit" : "working" };
}

/** A weight without its unit, right after the work. Smaller figures are efforts or reps. */
const LEAST_BARE = 12;
const BARE_REST = new RegExp(String.raw`^(?: (?:again|but|only|and|with|at|reps|here|today)){0,4} (?<time>${TIME})(?= (?:\||so|between)|$)`);
function bareLoad(text: string, end: number, whole: Statement, heard: Heard): Statement | null {
  const match = BARE_LOAD.exec(text.slice(end, end + 40));
  const value = Number(match?.groups?.["value"]);
  if (!match || !(value >= LEAST_BARE)) return null;
  const last = heard.tokenAt(end + match[0].length - 1);
  return { ...whole, rank: "extra", says: { load: { value, unit: "kg" } }, from: whole.to, to: last?.at ?? whole.to, remark: UNIT_NOT_SAID };
}

/** "The push-downs at twenty": a weight right after the name. */
function namedLoads(text: string, places: readonly number[], heard: Heard): Statement[] {
  return places.flatMap((place) => {
    const match = BARE_LOAD.exec(text.slice(place, place + 40));
    const value = Number(match?.groups?.["value"]);
    const [first, last] = [heard.tokenAt(place + 1), heard.tokenAt(place + (match?.[0].length ?? 0) - 1)];
    if (!match || !(value >= LEAST_BARE) || !first || !last || isElsewhere(heard.text, place, place + match[0].length)) return [];
    return [{ says: { load: { value, unit: "kg" } }, rank: "extra", about: "working", either: false, remark: UNIT_NOT_SAID, from: first.at, to: last.at }];
  });
}

/** "Five sets of five, but only two minutes": a length of time at the end can only be the rest. */
function bareRest(text: string, end: number, whole: Statement, heard: Heard): Statement | null {
  const match = BARE_REST.exec(text.slice(end, end + 60));
  const seconds = secondsOf(match?.groups?.["time"] ?? match?.groups?.["next"]);
  if (!match || seconds === null || seconds < 20 || seconds > 300) return null;
  return { ...whole, rank: "extra", says: { restSeconds: seconds }, from: whole.to, to: heard.tokenAt(end + match[0].length - 1)?.at ?? whole.to, remark: null };
}

/** Where in the text the words stand that come next after a name. */
function placesOf({ placeOf }: Heard, tokens: readonly Token[], names: readonly number[]): number[] {
  let next = 0;
  return names.flatMap((name) => {
    while (next < tokens.length && (tokens[next]?.at ?? Infinity) < name) next += 1;
    return next < tokens.length ? [placeOf(next)] : [];
  });
}

/** Does a name stand within the stretch? */
function crosses(places: readonly number[], start: number, end: number): boolean {
  let [low, high] = [0, places.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((places[middle] ?? 0) <= start) low = middle + 1;
    else high = middle;
  }
  return (places[low] ?? Infinity) < end - 1;
}

/** The text with some stretches made unreadable, their outer blanks kept. */
function masked(text: string, taken: readonly (readonly [number, number])[]): string {
  let out = "";
  let at = 0;
  for (const [start, end] of taken) {
    out += text.slice(at, start + 1) + "~".repeat(Math.max(0, end - start - 1));
    at = end;
  }
  return out + text.slice(at);
}

/**
 * Every statement about a scheme in the tokens of one stretch of speech, in order; phrases do not overlap but for sides.
 * @param names - words at which an exercise is named, in order
 */
export function statementsIn(tokens: readonly Token[], names: readonly number[] = []): Statement[] {
  const heard = heardFrom(tokens);
  const places = placesOf(heard, tokens, names);
  const steps = stepsIn(heard, places, (from, to) => isElsewhere(heard.text, from, to));
  let open = masked(heard.text, [...steps.taken].sort((a, b) => a[0] - b[0]));
  const found: Statement[] = [...steps.statements];
  const look = (sayings: readonly Saying[], takes: boolean): void => {
    for (const { find, read } of sayings) {
      const text = takes ? open : heard.text;
      const taken: [number, number][] = [];
      find.lastIndex = 0;
      for (let match = find.exec(text); match !== null; match = find.exec(text)) {
        const [start, end] = [match.index, match.index + match[0].length];
        // Neighbours share the blank between them.
        find.lastIndex = Math.max(start + 1, end);
        const phrase = read(match.groups ?? {}, match);
        if (!phrase || isElsewhere(heard.text, start, end, phrase.rank === "extra" && phrase.says.restSeconds !== undefined)) continue;
        // "Three times incline push-ups fifteen": the times are not this exercise's.
        if (phrase.rank === "whole" && / times /.test(match[0]) && crosses(places, start, end)) continue;
        const statement = statementOf(phrase, heard, start, end);
        if (!statement || (phrase.says.restSeconds !== undefined && phrase.says.seconds === undefined && isAfterRound(heard.text.slice(start, end + 48)))) continue;
        found.push(statement);
        taken.push([start, end]);
        const bare = phrase.rank === "whole" ? bareLoad(text, end, statement, heard) : null;
        if (bare) found.push(bare);
        const rest = phrase.rank === "whole" && phrase.says.repsMin !== undefined ? bareRest(text, end, statement, heard) : null;
        if (rest) found.push(rest);
      }
      if (takes && taken.length > 0) open = masked(open, taken);
    }
  };
  look(INTERVALS, true);
  look(BEFORE_WORK, true);
  look(WORK, true);
  look(BESIDE_WORK, false);
  found.push(...namedLoads(open, places, heard));
  return withoutDropped(found.sort((a, b) => a.from - b.from || a.to - b.to), tokens, names);
}

/** "Three sets of five, no, hang on, I changed it": a scheme that is dropped for the next one. */
const DROPPED = / (?:no (?:hang|wait|sorry|i|it's|let's|make|actually|not)|hang on|changed (?:it|that|my mind)|actually|not happening|scratch|i mean|wait|wrong|instead) /;
/** So many words may stand between a scheme and the one that takes its place. */
const DROP_REACH = 24;

function withoutDropped(statements: readonly Statement[], tokens: readonly Token[], names: readonly number[]): Statement[] {
  let [next, name] = [0, 0];
  return statements.filter((statement, at) => {
    if (statement.rank !== "whole" || statement.about !== "working") return true;
    const other = statements.slice(at + 1, at + 8).find(({ rank, about }) => rank === "whole" && about === "working");
    if (!other || other.from - statement.to > DROP_REACH || other.from <= statement.to) return true;
    while (name < names.length && (names[name] ?? Infinity) <= statement.to) name += 1;
    if ((names[name] ?? Infinity) < other.from) return true;
    while (next < tokens.length && (tokens[next]?.at ?? Infinity) <= statement.to) next += 1;
    const between: string[] = [];
    for (let token = next; token < tokens.length && (tokens[token]?.at ?? Infinity) < other.from; token += 1) between.push(tokens[token]?.text ?? "");
    return !DROPPED.test(` ${between.join(" ")} `);
  });
}
