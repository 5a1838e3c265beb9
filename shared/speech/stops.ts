import { MEASURED_THINGS, UNIT_PATTERN } from "./units";

/** A short form with a full stop that ends no sentence, as long as what follows shows that it goes on. */
interface ShortStop {
  /** What stands before the full stop, as alternatives of a regular expression; case matters only where `exact` says so. */
  readonly written: string;
  readonly exact?: true;
  /** The words after it when the sentence goes on. */
  readonly goesOn: RegExp;
  /** What is said for the short form and its stop; the letters as they stand when left out. */
  readonly said?: string;
}

const SMALL_LETTER = /^(?!(?:then|now|next|switch|repeat)\b)\p{Ll}/u;
/** What a measure or a count goes on with, in a text that may begin its sentences with small letters. */
const ITS_THING = new RegExp(`^(?:${MEASURED_THINGS}|sides?|legs?|arms?|hands?|or|of|per|each|to|from|in|on|at|with|for|is|are|apart|away)\\b`);
const BODY_PART = /^(?:sides?|legs?|arms?|hands?|foot|feet|knees?|hips?|shoulders?|elbows?|ankles?|heels?|toes?|wrists?|palms?|glutes?|hamstrings?|calf|quads?|lats?)\b/;
const NO_CAPITAL = /^[^\p{Lu}]/u;
const ANYTHING = /^\S/;
const NAME = /^\p{Lu}/u;
/** A number that names one of many; "3 sets" are three. */
const ITS_NUMBER = new RegExp(String.raw`^\d+(?![\d.,]*\s?(?:${UNIT_PATTERN}|sets|reps|rounds|minutes|seconds|weeks|days|exercises)(?![A-Za-z]))`, "i");
/** A capital word inside a sentence, before "St.": a street has its name in front. */
const NAMED = String.raw`[^.!?\s]\s\p{Lu}[\p{L}'’]+\s`;

const SHORT_STOPS: readonly ShortStop[] = [
  { written: String.raw`e\.\s?g|i\.\s?e|vs`, goesOn: ANYTHING },
  { written: String.raw`approx|incl|excl|ca|[ap]\.\s?m`, goesOn: NO_CAPITAL },
  { written: "etc", goesOn: SMALL_LETTER },
  { written: "ea|r(?:n)?ds", goesOn: ITS_THING },
  { written: String.raw`(?<!\d\s?)(?:max|min)`, goesOn: /^[\d\p{Ll}]/u },
  { written: String.raw`(?<=\d[\s-]?)(?:kgs?|lbs?|oz|mins?|secs?|hrs?|wks?|km|cm|mm|m|yds?|ft|in|ml|l|reps?)`, goesOn: ITS_THING },
  { written: "Mr", goesOn: ANYTHING, said: "Mister" },
  { written: "Mrs", goesOn: ANYTHING, said: "Missus" },
  { written: String.raw`(?<!\d\s?)Ms`, goesOn: ANYTHING, said: "Miz" },
  { written: "Dr", goesOn: ANYTHING, said: "Doctor" },
  { written: "Prof", goesOn: ANYTHING, said: "Professor" },
  { exact: true, written: String.raw`(?<=${NAMED})(?:St|Street)`, goesOn: NO_CAPITAL, said: "Street" },
  { exact: true, written: String.raw`(?<!${NAMED})St`, goesOn: NAME, said: "Saint" },
  { written: "no", goesOn: ITS_NUMBER, said: "number" },
  { written: "nos", goesOn: ITS_NUMBER, said: "numbers" },
  { written: "ep", goesOn: ITS_NUMBER, said: "episode" },
  { written: "pt", goesOn: ITS_NUMBER, said: "part" },
  { written: "vol", goesOn: ITS_NUMBER, said: "volume" },
  { written: "ch", goesOn: ITS_NUMBER, said: "chapter" },
  { written: "fig", goesOn: ITS_NUMBER, said: "figure" },
  { written: "ex", goesOn: ITS_NUMBER, said: "exercise" },
  { written: "p", goesOn: ITS_NUMBER, said: "page" },
  { written: "pp", goesOn: ITS_NUMBER, said: "pages" },
  { written: String.raw`(?<!\d\s?)wk`, goesOn: ITS_NUMBER, said: "week" },
  { exact: true, written: "Jan|Feb|Mar|Apr|Jun|Jul|Aug|Sept?|Oct|Nov|Dec", goesOn: /^[\d\p{Ll}\p{Sc}]/u },
  { exact: true, written: "Mon|Tues?|Wed|Thu(?:rs?)?|Fri|Sat|Sun", goesOn: /^(?:\d|(?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec))/ },
  // R. knee
  { exact: true, written: "[LR]", goesOn: BODY_PART },
  // J. R. Hill
  { exact: true, written: String.raw`\p{Lu}`, goesOn: /^\p{Lu}\./u },
  { exact: true, written: String.raw`(?<=(?<!\p{L})\p{Lu}\.\s?)\p{Lu}`, goesOn: /^\p{Lu}\p{Ll}/u },
];

const START = String.raw`(?<![\p{L}\p{N}'’])`;
const flagsOf = ({ exact }: ShortStop): string => (exact ? "u" : "iu");
const ENDINGS = SHORT_STOPS.map((stop) => ({ ending: new RegExp(`${START}(?:${stop.written})$`, flagsOf(stop)), goesOn: stop.goesOn }));
const SAID = SHORT_STOPS.flatMap((stop) =>
  stop.said === undefined ? [] : [{ form: new RegExp(String.raw`${START}(?:${stop.written})\.(?=\s?\S)`, `g${flagsOf(stop)}`), goesOn: stop.goesOn, said: stop.said }]);

/** As much of a text beside a stop as any short form looks at. */
const NEAR = 40;

/** What is heard after a stop: quotes, marks of emphasis and pictures are looked past. */
const heardIn = (after: string): string => after.replace(/^(?:[^\p{L}\p{N}\p{P}\p{S}]|["'“”‘’*_]|\p{Extended_Pictographic})+/u, "").slice(0, NEAR);

/** Whether the full stop right after `before` belongs to a short form and the sentence goes on with `after`. */
const isOpenStop = (before: string, after: string): boolean =>
  after !== "" && ENDINGS.some(({ ending, goesOn }) => goesOn.test(after) && ending.test(before.slice(-NEAR)));

/**
 * Whether a sentence ends where `open` does.
 * @param open - the words so far, with their closing marks
 * @param after - what follows; empty at the end
 */
export function endsSentence(open: string, after: string): boolean {
  return /[.!?…]["'”’)\]]*$/.test(open) && !(open.endsWith(".") && isOpenStop(open.slice(0, -1), heardIn(after)));
}

/** A text in which only those full stops are left that end a sentence; short forms that have words of their own are said with them. */
export function withoutOpenStops(text: string): string {
  if (!/\.\s?\S/.test(text)) return text;
  const after = (whole: string, at: number): string => heardIn(whole.slice(at, at + 2 * NEAR));
  const said = SAID.reduce((open, { form, goesOn, said: words }) =>
    open.replace(form, (found: string, at: number, whole: string) => {
      const end = at + found.length;
      if (!goesOn.test(after(whole, end))) return found;
      return /\s/.test(whole.charAt(end)) ? words : `${words} `;
    }), text);
  return said.replace(/\.(?=\s+\S)/g, (stop, at: number, whole: string) => (isOpenStop(whole.slice(Math.max(0, at - NEAR), at), after(whole, at + 1)) ? "" : stop));
}
