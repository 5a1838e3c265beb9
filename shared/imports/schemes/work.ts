import type { Scheme } from "../../training";
import { before, N, number, secondsOf, TIME, type Phrase, type Saying } from "./statement";

/** Sets, reps, times and distances as coaches say them. */

const SETS = String.raw`(?:sets?|rounds?|lots(?= of \d)|rotations?|circuits?|passes|trips|goes|times through|times round(?! \d))`;
const KIND = String.raw`(?: (?:working|work|hard|total|top|back off|backoff|down|drop back|warm up|lighter|light|easy|easier|ramp up|build up|straight|solid|good|heavy|more|full|whole|big|clean|quality|slow|of these|of those|of them|of that|of this))*`;
const RANGE = String.raw`(?<low>${N})(?: (?:to|or|through|up to|till) (?<high>${N}))?`;
/** "Six slow ones per side". */
const KINDLY = String.raw`(?: (?:slow|nice|good|clean|controlled|big|little|easy|perfect|full|ones|of them|of these|of those|reps?))*`;
const SIDE = String.raw`${KINDLY}(?: (?:on|for|to|with|of))?(?: (?:per|each|every|either|both|a|your))+ (?:single )?(?:side|sides|leg|legs|arm|arms|foot|feet|hand|hands|direction|way|knee|hip|shoulder)`;
/** A number with one of these after it counts no reps. */
const NO_REPS = String.raw`(?! (?:kilos?|kgs?|kg|pounds?|lbs?|percent|degrees?|sets?|rounds?|rpe|rir|weeks?|days?|times|months?|years?|exercises?|movements?|moves|more|out of))`;
const UNIT = String.raw`(?: (?<unit>seconds?|secs?|minutes?|mins?|metres|steps|breaths|reps?|repetitions|calories))?`;

/** What a number with its unit says about one set. */
function workOf(groups: Readonly<Record<string, string | undefined>>): Partial<Scheme> | null {
  const { low, high, unit = "" } = groups;
  const from = number(low);
  const to = high === undefined ? from : number(high);
  if (/^(?:sec|min)/.test(unit)) return timeOf(low, unit);
  if (unit === "metres") return { meters: Math.min(from, to) };
  if (unit === "calories" || !Number.isInteger(from) || !Number.isInteger(to) || from < 1 || to > 500 || to < from) return null;
  return { repsMin: from, repsMax: to };
}

const timeOf = (figure: string | undefined, unit: string): Partial<Scheme> | null => {
  const seconds = secondsOf(`${figure} ${unit}`);
  return seconds === null || seconds <= 0 || seconds > 3600 ? null : { seconds };
};

const RANGED_TIME = "A range of working times was said; the shorter one was taken.";
const remarkOf = ({ high, unit = "" }: Readonly<Record<string, string | undefined>>): string | null => (high !== undefined && /^(?:sec|min|met)/.test(unit) ? RANGED_TIME : null);

function whole(sets: string | undefined, groups: Readonly<Record<string, string | undefined>>): Phrase | null {
  const count = number(sets);
  const work = workOf(groups);
  if (work === null || !Number.isInteger(count) || count < 1 || count > 20) return null;
  return { says: { ...work, sets: count }, rank: "whole", remark: remarkOf(groups) };
}

const part = (says: Partial<Scheme> | null, remark: string | null = null): Phrase | null => (says === null ? null : { says, rank: "part", remark });

function intervalOf(on: string | undefined, off: string | undefined): Phrase | null {
  const [seconds, restSeconds] = [secondsOf(on), secondsOf(off)];
  return seconds === null || restSeconds === null || seconds > 600 ? null : part({ seconds, restSeconds });
}

/** A figure up to this may count sets where reps were said before. */
const MOST_SETS = 6;

const LADDER = String.raw`(?<rungs>\d+(?: (?:then |and |and then |down to )?\d+){2,7})`;

/** Reps of each set in turn, if these figures can be that: falling or rising, or a wave, none absurd. */
function rungsOf(text: string | undefined): readonly number[] | null {
  const rungs = (text?.match(/\d+/g) ?? []).map(Number);
  const steps = rungs.slice(1).map((rung, at) => rung - (rungs[at] ?? 0));
  const oneWay = steps.every((step) => step <= 0) || steps.every((step) => step >= 0);
  return rungs.length >= 3 && oneWay && rungs.every((rung) => rung >= 1 && rung <= 50) ? rungs : null;
}

const setsOf = (sets: string | undefined, says: Partial<Scheme>): Phrase | null => {
  const count = number(sets);
  return Number.isInteger(count) && count >= 1 && count <= 20 ? { says: { ...says, sets: count }, rank: "whole" } : null;
};

/** Work and rest in one phrase; looked for before rests alone. */
export const INTERVALS: readonly Saying[] = [
  // "3 rounds of 40 seconds on 20 seconds off"
  { find: new RegExp(String.raw`(?: (?<sets>\d+)${KIND} ${SETS}(?: of| at| with)?)? (?<on>${N})(?: (?<unit>seconds?|secs?|minutes?|mins?))? (?:on|work|of work|working)(?: and| then| with| \|)* (?<off>${N})(?: (?<unit2>seconds?|secs?|minutes?|mins?))? (?:off|rest|of rest|resting)(?: \|)?(?: for(?: a total of)?| times| and| we do| we're doing)*(?: (?<later>\d+)(?: more| total)? (?:${SETS}|times))?`, "g"), read: ({ sets, on, unit, off, unit2, later }) => {
    const seconds = secondsOf(`${on} ${unit ?? unit2 ?? "seconds"}`);
    const rest = secondsOf(`${off} ${unit2 ?? (unit === undefined ? "seconds" : unit)}`);
    if (seconds === null || rest === null || seconds > 600) return null;
    const count = number(sets ?? later);
    return { says: { seconds, restSeconds: rest, ...(Number.isInteger(count) ? { sets: count } : {}) }, rank: Number.isInteger(count) ? "whole" : "part" };
  } },
  { find: new RegExp(String.raw` work(?:ing)?(?: \w+){0,2}? (?:for )?(?<on>${TIME})(?: (?:and|then|you|we|\||of|work|working|so|it's|with|followed|by)){0,5} (?:rest(?:ing)?|off|recover)(?: \w+){0,2}? (?:for )?(?<off>${TIME}|\d+(?= (?:\||and|so|with|for|that|keep)))`, "g"), read: ({ on, off = "" }) => intervalOf(on, / /.test(off) ? off : `${off} seconds`) },
  { find: new RegExp(String.raw` (?<on>${TIME})(?: (?:of|to|at))?(?: (?:work|working|effort|each|per|exercise|station|move))+(?: (?:and|then|you|we|\||so|it's|with|followed|by|have|get|take|a|your)){0,5} (?<off>${TIME})(?: (?:of|to))? (?:rest|off|break|breather|recover|recovery|change|move|swap|switch|transition)`, "g"), read: ({ on, off }) => intervalOf(on, off) },
];

export const WORK: readonly Saying[] = [
  // "10 minute emom of 5 swings", "every minute on the minute for 10 minutes 5 reps"
  { find: new RegExp(String.raw` (?:every minute on the minute|emom)(?: (?:for|of))?(?: (?<minutes>${N}) (?:minutes?|mins?|rounds?))?(?: [\w|]+){0,4}? ${RANGE}(?= (?:reps?|swings?|of|each|per|with|at|on|and|then|while|\||$))`, "g"), read: ({ minutes, ...rest }) => {
    const work = workOf(rest);
    return work && minutes !== undefined ? { says: { ...work, emomMinutes: number(minutes) }, rank: "whole" } : null;
  } },
  { find: new RegExp(String.raw` (?<minutes>${N}) minutes? (?:every minute on the minute|emom)(?: [\w|]+){0,3}? ${RANGE}(?= (?:reps?|swings?|of|each|per|with|at|on|and|then|while|\||$))`, "g"), read: ({ minutes, ...rest }) => {
    const work = workOf(rest);
    return work ? { says: { ...work, emomMinutes: number(minutes) }, rank: "whole" } : null;
  } },
  // "3 sets to failure", "2 sets of as many as you can"
  { find: new RegExp(String.raw` (?<sets>${N})${KIND} ${SETS} (?:of |to |for |until )?(?:as many|max|maximum|amrap|failure|till failure|until failure|whatever)(?: (?:reps?|as|possible|you|can|you've|got|have|good|ones))*`, "g"), read: ({ sets }) => setsOf(sets, { amrap: true }) },
  // "3 sets of 12 10 8"
  { find: new RegExp(String.raw` (?:(?<sets>${N})${KIND} )?sets (?:of|at) ${LADDER}${NO_REPS}`, "g"), read: ({ rungs }) => {
    const reps = rungsOf(rungs);
    return reps ? { says: { reps }, rank: "whole" } : null;
  } },
  { find: new RegExp(String.raw` (?<rungs>\d+(?: (?:and )?(?:then|down to) \d+){2,7})(?! (?:kilos?|pounds?|kg|lbs?|seconds?|minutes?))`, "g"), read: ({ rungs }) => {
    const reps = rungsOf(rungs);
    return reps ? { says: { reps }, rank: "whole" } : null;
  } },
  { find: new RegExp(String.raw` (?:a )?(?:ladder|pyramid)(?: of| going| down| up)* ${LADDER}`, "g"), read: ({ rungs }) => {
    const reps = rungsOf(rungs);
    return reps ? { says: { reps }, rank: "whole" } : null;
  } },
  // "10 reps 3 sets", "8 reps each side for 3 rounds", "40 metres 4 times", "30 seconds 3 times"
  { find: new RegExp(String.raw` ${RANGE}(?: (?<unit>seconds?|secs?|minutes?|mins?|metres|steps|reps?|repetitions)|(?<noun>(?! (?:sets|times|rounds|kilos|kgs|pounds|lbs|others|exercises|movements|moves|years|weeks|days|hours|degrees|is|its|this|was)) [a-z]{3,}s(?= )))?(?:${SIDE}| each| of (?:those|these|them))?(?: \|)?(?: and| it's| for| we| we're| we'll| you| you're| you'll| do| doing| of| that| those| these| it| repeat| go| going| that's| in| total| i| want)*(?: for)? (?<sets>\d+)${KIND} (?:sets?|rounds?|times)(?! (?:a|per|each|every|through) (?:week|day))`, "g"), read: ({ sets, ...rest }, match) => {
    if (/^ \d+ of \d/.test(match[0])) return null;
    const plainReps = rest["unit"] === undefined && rest["noun"] === undefined && !/ (?:each|side|leg|arm|for|of) /.test(match[0]);
    return plainReps ? null : whole(sets, rest);
  } },
  // "12 times, a rest, and another 12"
  { find: new RegExp(String.raw` ${RANGE}(?: times| of those| of them| reps)?(?: [\w|~]+){0,9}? another (?<again>\d+)`, "g"), read: ({ low, high, again }) => (again === (high ?? low) ? whole("2", { low, high }) : null) },
  // "3 sets of 8 to 10 reps", "4 rounds of 30 seconds", "1 set of 20"
  { find: new RegExp(String.raw` (?<sets>${N})${KIND} ${SETS}(?: \|)?(?: and| we're| doing| at| for| of| with| x| by| it's| that's| here)*(?: each)? ${RANGE}${NO_REPS}${UNIT}`, "g"), read: ({ sets, ...rest }) => whole(sets, rest) },
  { find: new RegExp(String.raw` (?:a|another)${KIND} (?:set|round) (?:of|with|at) ${RANGE}${NO_REPS}${UNIT}`, "g"), read: (groups) => whole("1", groups) },
  { find: new RegExp(String.raw` ${RANGE} reps (?:times|by|x) (?<sets>\d+)(?= )`, "g"), read: ({ sets, ...rest }) => whole(sets, rest) },
  // "It's 3 of 12"
  { find: new RegExp(String.raw` (?:do|doing|it's|it is|for|got|have|get|with|hit|hitting|then) (?<sets>[1-6]) of (?<low>\d+)(?: (?:to|or) (?<high>\d+))?(?= (?:\||and|with|at|each|reps|on|here|today|per|then|keep|don't|$))`, "g"), read: ({ sets, ...rest }) => whole(sets, rest) },
  // "4 by 6", "3 x 40 metres", "3 times 10"
  { find: new RegExp(String.raw` (?<sets>${N}) (?:by|x|times|buy|bye|time(?= \d)) ${RANGE}${NO_REPS}${UNIT}`, "g"), read: ({ sets, ...rest }, match) => {
    // "20 times 3" is three sets of twenty.
    const turned = / times /.test(match[0]) && number(sets) >= 8 && number(rest["low"]) <= 6 && rest["high"] === undefined && rest["unit"] === undefined;
    return turned ? whole(rest["low"], { low: sets }) : whole(sets, rest);
  } },
  // "3 tens", "4 triples"
  { find: / (?<sets>[2-9]|10) (?<low>\d+)s(?= )/g, read: ({ sets, low }) => whole(sets, { low }) },
  { find: / (?<sets>[2-9]|10) (?<word>singles|doubles|triples)(?= )/g, read: ({ sets, word }) => whole(sets, { low: word === "singles" ? "1" : word === "doubles" ? "2" : "3" }) },
  // "3 sets 1 minute each": an amount of time with its own words
  { find: new RegExp(String.raw` (?<sets>${N})${KIND} ${SETS}(?: of| at| for)? (?<time>${TIME})`, "g"), read: ({ sets, time }) => {
    const seconds = secondsOf(time);
    return seconds === null ? null : setsOf(sets, { seconds });
  } },
  // Reps alone: "10 reps", "8 each side", "sets of 10"
  { find: new RegExp(String.raw` sets of ${RANGE}${NO_REPS}${UNIT}`, "g"), read: (groups) => part(workOf(groups), remarkOf(groups)) },
  { find: new RegExp(String.raw` ${RANGE} of (?:those|these|them)(?! sets)`, "g"), read: (groups) => {
    const phrase = part(workOf(groups));
    return phrase && { ...phrase, ...((phrase.says.repsMax ?? 99) <= MOST_SETS ? { either: true as const } : {}) };
  } },
  { find: new RegExp(String.raw` ${RANGE}(?: reps?)? (?:on|to|with|for) (?:(?:this|1|the 1|the first|the other|that) (?:side|leg|arm|foot|hand|one)|(?:the|your) (?:left|right)\b)`, "g"), read: (groups) => {
    const work = workOf(groups);
    return work ? part({ ...work, eachSide: true }) : null;
  } },
  { find: new RegExp(String.raw` ${RANGE}(?: (?:good|clean|solid|quality|full|strict|slow|nice|perfect|controlled|proper|hard|easy|big))* (?:reps?|repetitions)(?! (?:in|left|shy|short|of failure))`, "g"), read: (groups) => part(workOf(groups)) },
  { find: new RegExp(String.raw` ${RANGE}(?: (?<unit>seconds?|secs?|minutes?|mins?|metres|steps|breaths))?${SIDE}`, "g"), read: (groups) => part(workOf(groups), remarkOf(groups)) },
  // "Four jumps", "ten rows"
  { find: new RegExp(String.raw` ${RANGE} (?:jumps|hops|rows|swings|curls|presses|squats|lunges|slams|throws|dips|raises|bridges|crunches|kicks|taps|strides|push ups|pull ups|pulls|pushes|thrusts|cleans|snatches)(?= )`, "g"), read: (groups) => (number(groups["low"]) >= 3 ? part(workOf(groups)) : null) },
  { find: / (?:second|third|fourth|last|final)(?: set)? of (?<sets>[2-5])(?= (?:\||and|now|here|$))/g, read: ({ sets }) => part({ sets: number(sets) }) },
  { find: new RegExp(String.raw` ${RANGE}(?: (?:slow|nice|good|clean|controlled|big|little|tiny|easy|perfect|full))+ ones(?= )`, "g"), read: (groups) => part(workOf(groups)) },
  { find: new RegExp(String.raw` (?:give me|let's do|let's get|let's have|going for|go for|aim for|aiming for|looking for|looking at|shoot for|i want|i'd like|we want|we do|we're doing|we'll do|doing|you do) ${RANGE}(?= (?:and|then|here|with|at|\||for|today|in|nice|slow|as|please|this|on|per|so|total|good|because))`, "g"), read: (groups) => part(workOf(groups)) },
  { find: new RegExp(String.raw` (?:hold|holding|held|holds)(?: \w+){0,4}? (?:for )?(?<time>${TIME})(?! (?:at|down|up|pause))`, "g"), read: ({ time }) => part({ seconds: secondsOf(time) ?? 0 }) },
  { find: new RegExp(String.raw` for (?:a )?(?<time>${TIME})(?! (?:rest|between|before|break|off|at|down|up|pause|in|each set|straight))`, "g"), read: ({ time }) => part({ seconds: secondsOf(time) ?? 0 }) },
  { find: new RegExp(String.raw` (?<time>${TIME}) each(?= (?:\||and|for|then|so|with|one|time))`, "g"), read: ({ time }) => part({ seconds: secondsOf(time) ?? 0 }) },
  { find: new RegExp(String.raw` (?<time>${TIME}) (?:holds?|planks?|of work|on the clock|working)`, "g"), read: ({ time }) => part({ seconds: secondsOf(time) ?? 0 }) },
  { find: new RegExp(String.raw` (?<low>${N}) metres(?= )`, "g"), read: ({ low }) => part({ meters: number(low) }) },
  { find: new RegExp(String.raw` (?:as many(?: reps?)? as (?:possible|you can)|to failure|max reps|amrap)(?= )`, "g"), read: () => part({ amrap: true }) },
  { find: new RegExp(String.raw` (?<low>${N}) times(?! (?:through|round|over|a|per|in))`, "g"), read: (groups) => (number(groups["low"]) >= 6 ? part(workOf(groups)) : null) },
  // Sets alone: "3 sets", "same again for 3 rounds", "3 times through"
  { find: new RegExp(String.raw` (?<sets>${N})${KIND} ${SETS}(?! (?:ago|in a row|done|down|complete|left|to go|in the bag))`, "g"), read: ({ sets }, match) => {
    const count = number(sets);
    if (count === 1 && / (?:that's|was|is|that) $/.test(before(match))) return null;
    return Number.isInteger(count) && count >= 1 && count <= 20 ? part({ sets: count }) : null;
  } },
  { find: / (?:lot|thing|it|that|them|these|everything|circuit|round|exercise|move|movement|station|one|each|all|five|four|\d) (?:all )?(?<sets>\d+) times(?= )/g, read: ({ sets }) => part({ sets: number(sets) }) },
  { find: / (?<sets>\d+) of each(?= (?:\||and|then|so|one|exercise|with|$))/g, read: ({ sets }) => (number(sets) <= 6 ? part({ sets: number(sets) }) : null) },
  { find: / (?:repeat|do|doing|repeating)(?: \w+){0,3}? (?<sets>\d+) times(?= )/g, read: ({ sets }) => part({ sets: number(sets) }) },
];
