import type { Scheme, SetLineParse } from "../types";
import { refuseNegative } from "./amounts";
import { amrap, lastSet } from "./amrap";
import { Draft } from "./draft";
import { effort, effortsAgree } from "./effort";
import { emom } from "./emom";
import { drops, eachSide } from "./extras";
import { load } from "./load";
import { looseAmount } from "./loose-amount";
import { Reader, Refusal } from "./reader";
import { rest } from "./rest";
import { tempoFigures } from "./tempo-figures";
import { phase } from "./tempo-phases";
import { normalise, tokenise } from "./tokens";
import { work } from "./work";

/** A line longer than this is prose. */
const LONGEST = 300;

/** Statements in the order they are tried: the ones with their own words before the ones made of numbers. */
const STATEMENTS: readonly ((reader: Reader, draft: Draft) => boolean)[] = [
  tempoFigures, rest, emom, lastSet, drops, effort, phase, amrap, eachSide, load, work, looseAmount,
];

/** Signs and words that only join; these promise that something follows. */
const JOINERS = ["@", "at", "with", "using", "and", "&", "+", "plus", "then", "for"];
const BREAKS = [",", ";", "|", "(", ")", "[", "]", ".", ":"];
/** Signs that open something: a line cannot end with one. */
const OPENERS = ["-", "(", "[", ":"];

/** A label in front: "A1:", "A2)", "B1.", "[C2]", a bare "D1". Letters alone need their sign. */
const GROUP = /^\s*(?:[[(]([a-wyz])(\d{1,2})?[\])]|([a-wyz])([1-9]\d?)?\s*[:.)](?!\w\.)|([a-wyz])([1-9]\d?)(?=\s|$))(?:\s*[-:.,])?/;

/** Takes the label off the front, leaving spaces, so that "A1.4x6" holds no 1.4. */
function takeGroup(norm: string, draft: Draft): string {
  const found = GROUP.exec(norm);
  if (!found) return norm;
  const letter = found[1] ?? found[3] ?? found[5] ?? "";
  const figure = found[2] ?? found[4] ?? found[6] ?? "";
  // "t: 3010" and "r: 60" are tempo and rest
  if (figure === "" && (letter === "t" || letter === "r")) return norm;
  draft.scheme.group = `${letter.toUpperCase()}${figure}`;
  return " ".repeat(found[0].length) + norm.slice(found[0].length);
}

/** Skips what joins and parts; remembers a joiner, because it promises something. */
function skipJoiners(reader: Reader): number | null {
  let promised: number | null = null;
  reader.lead = "";
  while (!reader.done) {
    refuseNegative(reader);
    const token = reader.peek();
    const withSlash = token.text === "w" && reader.peek(1).text === "/";
    // "/side" and "/leg" belong together, " / " parts
    const apart = token.text === "-" || (token.text === "/" && token.spaced && reader.peek(1).spaced);
    if (JOINERS.includes(token.text) || withSlash) {
      if (reader.sees(() => statementAt(reader))) break;
      promised = reader.at;
      reader.lead = withSlash ? "with" : token.text;
      reader.at += withSlash ? 2 : 1;
    } else if (BREAKS.includes(token.text) || apart) {
      if (promised !== null && !["(", "[", ":"].includes(token.text)) reader.refuse(`Something is missing after "${reader.since(promised)}"`, promised);
      if (token.text === "-" && reader.peek(1).kind === "sign" && BREAKS.includes(reader.peek(1).text)) reader.refuse('Something is missing after "-"');
      reader.at++;
    } else break;
  }
  const last = reader.tokens[reader.at - 1];
  return promised ?? (reader.done && last && OPENERS.includes(last.text) ? reader.at - 1 : null);
}

/** "at the bottom", "for 3 sets", "on the last set": statements that begin with a joining word. */
function statementAt(reader: Reader): boolean {
  return reader.phrase("at the? bottom|top");
}

/** Everything that only shows once the line is read: what is missing and what contradicts. */
function finish(reader: Reader, draft: Draft): Scheme {
  const { scheme } = draft;
  const whole = (message: string): never => reader.refuse(message, 0);
  if (draft.emom) whole("An EMOM needs its minutes, such as EMOM 10 min");
  if (scheme.emomMinutes !== undefined) {
    if (scheme.sets !== undefined) whole("An EMOM has reps a minute and no sets");
    if (!draft.hasReps && scheme.seconds === undefined) whole("The reps of each minute are missing");
    if ((scheme.seconds ?? 0) > 60) whole("The work of each minute is longer than the minute");
    if (draft.amrap !== null) whole("An EMOM needs a number of reps");
    if (scheme.restSeconds !== undefined) whole("The rest of an EMOM is what is left of each minute");
  }
  if (!draft.hasWork) {
    if (scheme.sets !== undefined) whole(`Rep count missing after the ${scheme.sets} sets`);
    whole(scheme.group !== undefined && Object.keys(scheme).length === 1 ? "Only a label: the work is missing" : "No sets and reps in this line");
  }
  if (draft.amrap === "last" && !draft.hasReps) whole("Reps are missing for the sets before the last");
  if ((draft.amrap === "open" || draft.amrap === "failure") && (draft.hasReps || scheme.meters !== undefined)) {
    whole("A number of reps and as many as possible contradict each other; for the last set only, write 8+");
  }
  const counted = scheme.sets !== undefined || scheme.emomMinutes !== undefined || (draft.amrap !== null && scheme.seconds !== undefined) || draft.bout;
  if (!counted) whole("Set count missing");
  if (draft.amrap !== null) scheme.amrap = true;
  if (draft.perHand) {
    const { load: stated } = scheme;
    if (!stated || (stated.unit !== "kg" && stated.unit !== "lb")) whole("A weight is missing for each hand");
    else scheme.load = { ...stated, perHand: true };
  }
  if (draft.amrap === "failure" && ((scheme.rir ?? 0) > 0 || (scheme.rpe ?? 10) < 10)) whole("To failure leaves no reps in reserve");
  if (scheme.rpe !== undefined && scheme.rir !== undefined && !effortsAgree(scheme.rpe, scheme.rir)) {
    whole(`RPE ${scheme.rpe} and ${scheme.rir} reps in reserve disagree`);
  }
  return scheme;
}

function readLine(text: string): Scheme {
  if (text.length > LONGEST) throw new Refusal(`A set line has at most ${LONGEST} characters`, LONGEST, text.length - LONGEST);
  const draft = new Draft();
  const norm = takeGroup(normalise(text), draft);
  const reader = new Reader(text, norm, tokenise(norm));
  for (;;) {
    const promised = skipJoiners(reader);
    if (reader.done) {
      if (promised !== null) reader.refuse(`Something is missing after "${reader.since(promised)}"`, promised);
      break;
    }
    const from = reader.at;
    if (STATEMENTS.some((statement) => {
      reader.at = from;
      return statement(reader, draft);
    })) continue;
    reader.at = from + 1;
    reader.refuse(`"${reader.since(from)}" is not understood here`, from);
  }
  return finish(reader, draft);
}

/**
 * Reads one set line, such as `3 x 8-10 @ 40 kg, tempo 3-1-1-0, rest 90 s, RIR 2`.
 *
 * Nothing is guessed and nothing dropped: a word that is not understood, a part that is impossible or two parts that
 * contradict each other refuse the whole line, with a sentence and the characters to blame. Never throws.
 */
export function parseSetLine(text: string): SetLineParse {
  try {
    return { ok: true, scheme: readLine(text) };
  } catch (error) {
    if (error instanceof Refusal) return { ok: false, error: error.message, at: error.at, length: error.length };
    throw error;
  }
}
