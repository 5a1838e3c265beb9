import type { Scheme, Tempo } from "../../training";
import { before, N, number, secondsOf, TIME, type Phrase, type Saying } from "./statement";

/** Loads, rests, tempo, effort and sides as coaches say them. */

const extra = (says: Partial<Scheme>, remark: string | null = null): Phrase => ({ says, rank: "extra", remark });

export const UNIT_NOT_SAID = "The unit of the load was not said; the episode's own was taken.";
const WEIGHT = String.raw`(?:kilos?|kgs?|kilograms?|pounds?|lbs?)`;
const HAND = String.raw`(?: (?:in|per|for|on))?(?: each| either| per| a| both| every)+ (?:hand|hands|arm|dumbbell|bell|kettlebell|side)|(?: (?:dumbbells|kettlebells|bells))(?: (?:in|per|each) \w+(?: hand)?)?| each| apiece`;
const unitOf = (text: string): "kg" | "lb" => (/^(?:p|l)/.test(text) ? "lb" : "kg");

/** Said about other weights than today's: steps, the bar, records. */
const OTHER_WEIGHT = / (?:add|adding|added|extra|another|more|up by|go up|plus|bar is|bar weighs|weighs|lose|lost|gained|i weigh|body) $/;

/** Numbers with one of these after them are no weight. */
const NOT_A_LOAD = String.raw`(?! (?:${WEIGHT}|seconds?|secs?|minutes?|mins?|degrees?|percent|reps?|sets?|rounds?|rpe|rir|of|out|to|or|in|left|metres|times|past|years?|each|per|a)\b)`;
export const PLATES = "A load in plates was heard; what the plates and the bar weigh was not said.";
/** Smaller figures without a unit are reps, efforts, or numbers of something. */
const LEAST_BARE = 15;
const bare = (value: string | undefined): Phrase | null => (number(value) >= LEAST_BARE ? extra({ load: { value: number(value), unit: "kg" } }, UNIT_NOT_SAID) : null);

const LOADS: readonly Saying[] = [
  { find: new RegExp(String.raw` (?:(?<two>2|pair of|double) )?(?<value>${N})(?: (?:to|or) (?<more>${N}))? (?<unit>${WEIGHT})(?<hand>${HAND})?`, "g"), read: ({ two, value, more, unit = "kg", hand }, match) => {
    const plus = / bodyweight (?:plus|and) $/.test(before(match));
    if ((OTHER_WEIGHT.test(before(match)) && !plus) || /^ (?:off|more|less|lighter|heavier)(?! (?:the|on|than last)) /.test(match.input.slice(match.index + match[0].length, match.index + match[0].length + 14))) return null;
    const each = (two !== undefined || (hand !== undefined && !/ side$/.test(hand))) && !/ (?:1 of|1 of the|a single|just 1) $/.test(before(match));
    const load = { value: number(value), unit: unitOf(unit), ...(each ? { perHand: true as const } : {}) };
    return extra({ load: plus ? { value: load.value, unit: `bodyweight+${load.unit}` } : load }, more === undefined ? null : "A range of loads was said; the lighter one was taken.");
  } },
  { find: new RegExp(String.raw` (?<value>${N}) percent(?: of(?: your| the| my)? (?:max|1rm|1 rep max|one rep max|best))?`, "g"), read: ({ value }) => {
    const figure = number(value);
    return figure >= 30 && figure <= 110 ? extra({ load: { value: figure, unit: "%1RM" } }) : null;
  } },
  // "Go up to seventy", "forty on the bar", "same again at sixty"
  { find: new RegExp(String.raw` (?:(?:go|going|goes|went|move|moving|jump|jumping|load|get|are|we're|climb) (?:it |the bar )?(?:up |back |down )?to|(?:up|back|down) to) (?<value>\d{2,3}(?:\.\d+)?)${NOT_A_LOAD}`, "g"), read: ({ value }) => bare(value) },
  { find: new RegExp(String.raw` (?:weight|load|bar)(?: (?:which|that|today|here|for|me|this|on|the|one))* (?:is|at|of|was) (?<value>\d{2,3}(?:\.\d+)?)${NOT_A_LOAD}(?= )`, "g"), read: ({ value }, match) => (/ bar .*(?:is|was) /.test(match[0]) ? null : bare(value)) },
  { find: / (?<value>\d{2,3}(?:\.\d+)?) on (?:it|the bar|here|there)(?= )/g, read: ({ value }) => bare(value) },
  { find: new RegExp(String.raw` at (?<value>\d{2,3}(?:\.\d+)?)${NOT_A_LOAD}(?= (?:\||and|for|so|but|with|rest|keep|don't|today|this|then|same|my|$))`, "g"), read: ({ value }) => bare(value) },
  // "A pair of twenty-twos, twenty-two each hand"
  { find: / (?<value>\d+)s (?:\S+ ){0,5}?\k<value> (?:in )?(?:each|per|either) hand(?= )/g, read: ({ value }) => extra({ load: { value: number(value), unit: "kg", perHand: true } }, UNIT_NOT_SAID) },
  { find: new RegExp(String.raw` (?<value>\d+(?:\.\d+)?) in (?:each|either|both) hands?(?= )`, "g"), read: ({ value }) => extra({ load: { value: number(value), unit: "kg", perHand: true } }, UNIT_NOT_SAID) },
  // Plates say nothing without the bar's weight and theirs.
  { find: / (?:a|\d+|few|couple of)(?: big| small| red| blue)? plates?(?: \w+)?(?: on)? (?:a|each|per|either|every) (?:side|end)(?= )/g, read: () => extra({}, PLATES) },
  { find: / (?:just |only |with )?(?:your |own )?bodyweight(?: only| for this| today)?(?= )/g, read: () => extra({ load: { value: null, unit: "bodyweight" } }) },
  { find: / (?:with|using|grab|take) (?:a|the|your)(?: \w+)? (?:band|resistance band)(?= )/g, read: (_, match) => / (?:if|or|otherwise) /.test(match.input.slice(Math.max(0, match.index - 60), match.index + 1)) ? null : extra({ load: { value: null, unit: "band" } }) },
];

/** A weight without its unit, right after the work: "3 sets of 5 at 100". */
export const BARE_LOAD = new RegExp(String.raw`^(?: (?:again|but|and|today|here|reps?|each|now|this time|just))* (?:at|with|on|using) (?<value>${N})(?! (?:${WEIGHT}|seconds?|secs?|minutes?|mins?|degrees?|percent|reps?|sets?|rpe|rir|of|out|to|in|left|metres))(?= )`);

/** Bells named by their weight alone: "with the sixteen", "two twenty-fours", "the twelves". */
const BELLS: readonly Saying[] = [
  { find: / (?:1|one) of (?:your|my|the|those|these) (?<value>\d+)s(?= )/g, read: ({ value }) => extra({ load: { value: number(value), unit: "kg" } }, UNIT_NOT_SAID) },
  { find: new RegExp(String.raw` (?:with|take|taking|grab|grabbing|using|use|hold|holding|got|on) (?:the same|the|a|my|that) (?<value>\d+)(?! (?:${WEIGHT}|seconds?|secs?|minutes?|mins?|minute|degrees?|percent|reps?|sets?|rounds?|of|out|percent|left|metres|times|past|years?|steps?|breaths|ones|things|moves|exercises|each|inch|centimet\w+|step|rep|set|round|people|days?|weeks?)\b)(?= )`, "g"), read: ({ value }) => (number(value) >= 4 ? extra({ load: { value: number(value), unit: "kg" } }, UNIT_NOT_SAID) : null) },
  { find: / (?:(?:with|take|taking|grab|using|use|hold|holding|got|on|and|the|2|two|both|pair of|mine are|are) )+(?<value>\d+)s(?= )/g, read: ({ value }, match) => / in $/.test(before(match)) ? null : extra({ load: { value: number(value), unit: "kg", perHand: true } }, UNIT_NOT_SAID) },
];

const BREAK = String.raw`(?:rest|rests|break|breaks|breather|recovery|recover|off|resting)`;

/** A rest, or the shorter end of a range of rests: "two to three minutes". */
const ranged = ({ low, time = "" }: Readonly<Record<string, string | undefined>>): Phrase =>
  low === undefined ? extra({ restSeconds: secondsOf(time) ?? 0 }) : extra({ restSeconds: secondsOf(`${low} ${time.split(" ")[1]}`) ?? 0 }, "A range of rests was said; the shorter one was taken.");

const RESTS: readonly Saying[] = [
  { find: new RegExp(String.raw` (?<low>${N}) (?:to|or) (?<time>${TIME})(?: of| off| in)?(?: ${BREAK}| between)`, "g"), read: (groups) => ranged(groups) },
  { find: new RegExp(String.raw` (?:rest|resting|rests|recover|break|recovery)(?: (?:for|is|of|period|periods|time|will|be|it's|here|today|between|sets|each|every|the|set|rounds|then|a|your|take|we're|taking|with|on|this))* (?:(?<low>${N}) (?:to|or) )?(?<time>${TIME})`, "g"), read: (groups) => ranged(groups) },
  { find: new RegExp(String.raw` (?<time>${TIME})(?: of| off| for| as| is| in| to)?(?: a| your| our| the| full)? (?:${BREAK}|between)(?! (?:(?:the )?(?:warm|exercises)|(?:you|we) go|the (?:floor|ground|rack|bench)))`, "g"), read: ({ time }) => extra({ restSeconds: secondsOf(time) ?? 0 }) },
  { find: new RegExp(String.raw` (?:take|taking|have|having|get|getting|give yourself|allow|allowing)(?: a| yourself)? (?<value>\d+) (?:(?:full|whole|good) )?(?<unit>seconds?|minutes?)(?= (?:\||and|before|off|because|here|then|this|today|now|$))`, "g"), read: ({ value, unit }) => {
    const seconds = secondsOf(`${value} ${unit}`);
    return seconds === null || seconds < 20 ? null : extra({ restSeconds: seconds });
  } },
  { find: new RegExp(String.raw` (?:and|with|still|so) (?<time>${TIME}) (?:again|as before|as well)(?= )`, "g"), read: ({ time }) => extra({ restSeconds: secondsOf(time) ?? 0 }) },
  { find: / then you (?:get|have|take) (?<value>\d+) (?<unit>seconds?|minutes?)(?! (?:of|to|on))/g, read: ({ value, unit }) => extra({ restSeconds: secondsOf(`${value} ${unit}`) ?? 0 }) },
  { find: / (?:no rest|no break|without (?:a )?rest|without any rest)(?! between (?:the )?(?:legs|sides|arms|hands|exercises|moves|those|these|them))(?= )/g, read: (_, match) => (/ (?:then|straight|go|goes|over|into|on) $/.test(before(match)) ? null : extra({ restSeconds: 0 })) },
];

const figuresOf = (text: string): number[] => text.split(" ").flatMap((part) => (/^\d{2,4}$/.test(part) && (part.length > 2 || text.split(" ").length === 2) ? [...part].map(Number) : part === "oh" ? [0] : part === "x" ? [-1] : /^\d+$/.test(part) ? [Number(part)] : []));

function tempoOf(text: string): Tempo | null {
  const figures = figuresOf(text);
  if (figures.length < 3 || figures.length > 4 || figures.some((figure, at) => figure > 20 || (figure < 0 && at !== 2))) return null;
  const [down = 0, low = 0, up = 0, top = 0] = figures;
  return down + low + up + top <= 0 ? null : [down, low, up < 0 ? "X" : up, top];
}

const FIGURES = String.raw`(?<figures>(?:\d{3,4}|\d\d \d\d(?! (?:kilos?|pounds?|seconds?|reps?))|(?:\d|oh|x)(?: (?:by )?(?:\d+|oh|x)){2,3}))`;
const TEMPOS: readonly Saying[] = [
  { find: new RegExp(String.raw` tempo(?: (?:of|is|will|be|on|this|here|for|these|today|at|it's|a|that's|one|we're|using|going|with|the|are|stays|still))* ${FIGURES}(?= )`, "g"), read: ({ figures = "" }) => {
    const tempo = tempoOf(figures.replace(/ by/g, ""));
    return tempo ? extra({ tempo }) : null;
  } },
  { find: new RegExp(String.raw` ${FIGURES} tempo`, "g"), read: ({ figures = "" }) => {
    const tempo = tempoOf(figures.replace(/ by/g, ""));
    return tempo ? extra({ tempo }) : null;
  } },
  // "A tempo of two seconds down, one second at the bottom, one second up and one second at the top"; "no pause there"
  { find: / (?:tempo|slow one|count)(?<told>(?: [a-z'|]+){0,8}? \d{1,2} seconds?(?: (?!rest |sets? |reps? |kilos )[a-z'|]+| \d{1,2} seconds?(?! (?:rest|of rest|between|break)))+)/g, read: ({ told = "" }) => {
    const counts = [...told.matchAll(/ (\d{1,2}) seconds?| (no) (?:pause|hold|stop)/g)].slice(0, 4).map((match) => (match[2] === undefined ? Number(match[1]) : 0));
    const [lower, low, up, top = 0] = counts;
    return counts.length < 3 || lower === undefined || low === undefined || up === undefined || counts.some((seconds) => seconds > 10) ? null : extra({ tempo: [lower, low, up, top] });
  } },
  // "3 seconds down 1 second pause 1 second up", "lower for 3 seconds pause for 1 and up for 1"
  { find: new RegExp(String.raw` (?:(?<down>\d+)(?: (?:seconds?|secs?|count))? (?:on the way |to |on the )?(?:down|lower|lowering|eccentric|negative)|(?:lower|lowering|down)(?: \w+){0,2}? (?:for|over|in|take|taking) (?:a )?(?<down2>\d+)(?: (?:seconds?|secs?|count))?)(?=(?<rest>(?: [a-z\d|]+){0,16}))`, "g"), read: ({ down, down2, rest = "" }, match) => {
    const lower = number(down ?? down2);
    if (lower < 1 || lower > 20 || / to go /.test(rest.slice(0, 14)) || (down !== undefined && lower === 1 && !/ (?:seconds?|secs?|count) /.test(match[0]))) return null;
    const tail = `${rest.split(/ (?:reps?|sets?|kilos?|minutes?) /)[0] ?? ""} `;
    const pause = / (\d+)(?: (?:seconds?|secs?|count))? (?:pause|hold|stop)| (?:pause|hold|stop)(?: \w+){0,2}? (?:for|of) (?:a )?(\d+)/.exec(tail);
    const up = / (\d+)(?: (?:seconds?|secs?|count))? (?:on the way |on the )?up| up(?: \w+){0,1}? (?:for|over|in) (\d+)/.exec(tail);
    const fast = up === null && / (?:explode|explosive|explosively|fast)(?: on the way)? up| (?:explode|drive) up/.test(tail);
    const atTop = pause !== null && / at the top/.test(tail.slice(pause.index, pause.index + pause[0].length + 14));
    const still = pause === null ? null : number(pause[1] ?? pause[2]);
    // Down and up without a pause is a whole tempo; down alone leaves the rest open.
    const upSeconds = up ? number(up[1] ?? up[2]) : fast ? ("X" as const) : null;
    if (upSeconds !== null) return extra({ tempo: [lower, atTop ? 0 : (still ?? 0), upSeconds, atTop ? still : 0] });
    return extra({ tempo: [lower, atTop ? null : still, null, atTop ? still : null] });
  } },
];

const HIGHER = "A range of reps in reserve was said; the easier figure was taken.";
const EFFORTS: readonly Saying[] = [
  { find: new RegExp(String.raw` rpe(?: (?:of|is|at|a|an|around|it's|here|should|be|will))* (?<value>${N})(?: (?:to|or) (?<more>${N}))?`, "g"), read: ({ value, more }) => (number(value) >= 1 && number(value) <= 10 ? extra({ rpe: number(value) }, more === undefined ? null : "A range of efforts was said; the easier figure was taken.") : null) },
  { find: new RegExp(String.raw` (?<value>${N}) (?:rpe(?! \d)|out of 10|on the effort scale)(?: effort)?`, "g"), read: ({ value }) => (number(value) >= 3 && number(value) <= 10 ? extra({ rpe: number(value) }) : null) },
  { find: new RegExp(String.raw` effort(?: (?:is|at|of|a|an|should|be|level|here|feels|like))* (?<value>\d\.?5?|10)(?! (?:reps?|sets?|kilos?|pounds?|percent|seconds?|minutes?|to))(?= )`, "g"), read: ({ value }) => (number(value) >= 4 && number(value) <= 10 ? extra({ rpe: number(value) }) : null) },
  { find: new RegExp(String.raw` rir(?: (?:of|is|at))? (?<value>${N})(?: (?:to|or) (?<more>${N}))?`, "g"), read: ({ value, more }) => extra({ rir: number(more ?? value) }, more === undefined ? null : HIGHER) },
  { find: new RegExp(String.raw`(?: (?<low>${N}) (?:to|or))? (?<value>${N})(?: (?:more|good|clean|solid))*(?: reps?| repetitions)? (?:rir|(?:left |still )?in (?:the )?(?:tank|reserve)|in you|short of failure|shy of failure|left(?= |\|)(?! (?:leg|arm|side|hand|foot|knee|of)))`, "g"), read: ({ low, value }, match) => (number(value) <= 6 && !(/ left$/.test(match[0]) && / (?:last|second|third|next|other|and|again|this|to go) $/.test(before(match))) ? extra({ rir: number(value) }, low === undefined ? null : HIGHER) : null) },
  { find: new RegExp(String.raw` (?:leave|leaving|keep|keeping|save|saving)(?: yourself)? (?:(?<low>${N}) (?:to|or) )?(?<value>${N})(?: (?:more|good|clean|in the|solid))*(?: reps?| tank| reserve)`, "g"), read: ({ low, value }) => (number(value) <= 6 ? extra({ rir: number(value) }, low === undefined ? null : HIGHER) : null) },
  { find: / nothing (?:left )?in the tank| all the way to failure| go to failure/g, read: () => extra({ rir: 0 }) },
];

const SIDES: readonly Saying[] = [
  { find: / (?:on |for |to )?(?:each|per|every|either|both|a) (?:side|sides|leg|legs|arm|arms|foot|hip|knee|direction|way|shoulder)(?= )/g, read: (_, match) => (/ (?:kilos?|kgs?|kg|pounds?|lbs?|plates?) $/.test(before(match)) || / (?:on a|to a|a) /.test(match[0]) && !/\d (?:\w+ |slow ones )?$/.test(before(match)) ? null : extra({ eachSide: true })) },
  { find: / (?:then|and) (?:we )?(?:swap|switch|change) (?:sides|legs|arms|hands)(?= )/g, read: () => extra({ eachSide: true }) },
  { find: new RegExp(String.raw` (?<count>\d+) drop sets?(?= )`, "g"), read: ({ count }) => extra({ dropSets: number(count) }) },
];

/** In the order they are looked for: what one takes, the next does not see. */
export const BEFORE_WORK: readonly Saying[] = [...RESTS, ...TEMPOS, ...EFFORTS, ...LOADS, ...BELLS];
/** These share their words with the work: "10 each side". */
export const BESIDE_WORK: readonly Saying[] = SIDES;
