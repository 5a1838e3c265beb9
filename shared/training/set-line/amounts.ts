import type { Reader } from "./reader";

const SECOND_WORDS = ["s", "sec", "secs", "second", "seconds", '"'];
const MINUTE_WORDS = ["min", "mins", "minute", "minutes", "'"];
const METRE_WORDS = ["metre", "metres", "meter", "meters", "mtr", "mtrs"];
const KILO_WORDS = ["kg", "kgs", "kilo", "kilos", "kilogram", "kilograms", "kilogramme", "kilogrammes"];
const POUND_WORDS = ["lb", "lbs", "pound", "pounds", "#"];
const ABBREVIATIONS = ["sec", "secs", "min", "mins", "kg", "kgs", "lb", "lbs"];
/** Distances that are not metres are not turned into metres behind the coach's back. */
const OTHER_DISTANCES = ["yd", "yds", "yard", "yards", "ft", "feet", "foot", "mile", "miles"];

export interface Duration {
  readonly seconds: number;
  /** How the unit was written: a lone m may be metres, a lone number has no unit. */
  readonly unit: "second" | "minute" | "m" | "clock" | "none";
}

/** A unit may be tied to its number with a hyphen: "90-second". */
function takeUnit(reader: Reader, words: readonly string[]): boolean {
  return reader.attempt(() => {
    if (reader.peek().text === "-" && !reader.peek().spaced && !reader.peek(1).spaced) reader.at++;
    if (!reader.take(...words)) return null;
    // "3 min. rest": the full stop of an abbreviation
    if (ABBREVIATIONS.includes(reader.peek(-1).text) && !reader.peek().spaced) reader.take(".");
    return true;
  }) === true;
}

/** Takes a unit of seconds, tied to its number or not. */
export const takeSecondUnit = (reader: Reader): boolean => takeUnit(reader, SECOND_WORDS);

/** "kg" or "lb" when a unit of weight is next. */
export function takeWeightUnit(reader: Reader): "kg" | "lb" | null {
  if (takeUnit(reader, KILO_WORDS)) return "kg";
  return takeUnit(reader, POUND_WORDS) ? "lb" : null;
}

/** Takes the next token where it is a number; refuses figures that cannot be what they seem, such as 007. */
export function plainNumber(reader: Reader): number | null {
  const token = reader.peek();
  if (token.kind !== "number") return null;
  // 007, and 1.000 that may be a thousand
  if (/^0\d|\.\d{3}/.test(token.text)) reader.refuse(`"${token.text}" is no usual number`);
  reader.at++;
  return token.value;
}

/** The scale after its number, as in "2 RIR"; in "6 RIR 2" the scale has a figure of its own and the six is something else. */
export function takeScale(reader: Reader): boolean {
  return reader.attempt(() => (reader.take("rir", "rpe") && reader.peek().kind !== "number" && reader.peek().text !== ":" ? true : null)) === true;
}

/** Words that begin a statement, so that a number in front of them ends another. */
const BEGINNINGS = ["tempo", "cadence", "bw", "bodyweight", "leaving", "paused", "pausing", "each", "per"];

/** Does nothing that follows the next number make it something else than a number of seconds after minutes? */
function standsAlone(reader: Reader): boolean {
  const next = reader.peek(1);
  if (BEGINNINGS.includes(next.text)) return reader.peek().text.length <= 2;
  if (next.text === "rpe" || next.text === "rir") return reader.sees(() => (reader.at++, !takeScale(reader)));
  return reader.done || next.text === "" || [",", ";", "|", ")", ".", "rest", "recovery", "break", "off", "between", "amrap", "emom", ":", "and", "with", "@", "s"].includes(next.text);
}

/** The seconds after minutes: 1m30, 1'30", 2 min 30, 2 minutes and 30 seconds. */
function secondsAfterMinutes(reader: Reader, from: number): number {
  const found = reader.attempt(() => {
    const joined = reader.take("and");
    const token = reader.peek();
    if (token.kind !== "number" || !Number.isInteger(token.value)) return null;
    const alone = !token.spaced || standsAlone(reader);
    reader.at++;
    const unit = takeSecondUnit(reader);
    // "2 min and 30 s rest" is one duration; a bare number needs to be tight or to end the statement
    if (!unit && (joined || !alone)) return null;
    return { value: token.value };
  });
  if (!found) return 0;
  if (found.value > 59) reader.refuse(`Seconds after minutes go up to 59, not ${found.value}`, from);
  return found.value;
}

function clock(reader: Reader, from: number): Duration {
  const [minutes = "", seconds = ""] = reader.peek().text.split(":");
  reader.at++;
  if (seconds.length !== 2) reader.refuse(`"${reader.since(from)}": the seconds of a clock time have two figures, such as 1:30`, from);
  if (Number(seconds) > 59) reader.refuse(`Clock seconds go up to 59, not ${Number(seconds)}`, from);
  takeUnit(reader, [...MINUTE_WORDS, "m"]);
  return { seconds: Number(minutes) * 60 + Number(seconds), unit: "clock" };
}

/** "a minute", "half a minute", "a minute and a half". */
function minuteInWords(reader: Reader): Duration | null {
  if (reader.phrase("half a? minute|min")) return { seconds: 30, unit: "minute" };
  if (!reader.phrase("a|an minute|min")) return null;
  return { seconds: reader.phrase("and a half") ? 90 : 60, unit: "minute" };
}

/** Whole seconds; a working or resting time of 19.8 s is a slip, or no time at all (the 22.5s). */
function whole(seconds: number, unit: Duration["unit"]): Duration | null {
  const rounded = Math.round(seconds);
  return Math.abs(rounded - seconds) > 1e-6 ? null : { seconds: rounded, unit };
}

/**
 * A length of time, in whole seconds; null when none is next.
 * @param bare - take a number without a unit as this unit
 */
export function takeDuration(reader: Reader, bare: "second" | "minute" | null = null): Duration | null {
  return reader.attempt((): Duration | null => {
    const from = reader.at;
    if (reader.peek().kind === "clock") return clock(reader, from);
    const words = minuteInWords(reader);
    if (words) return words;
    const value = plainNumber(reader);
    if (value === null) return null;
    if (takeSecondUnit(reader)) return whole(value, "second");
    const short = reader.peek().text === "m";
    if (short ? takeUnit(reader, ["m"]) : takeUnit(reader, MINUTE_WORDS)) {
      const extra = secondsAfterMinutes(reader, from);
      if (extra > 0 && !Number.isInteger(value)) reader.refuse(`"${reader.since(from)}" has a fraction of a minute and seconds as well`, from);
      return whole(value * 60 + extra, short && extra === 0 ? "m" : "minute");
    }
    if (bare === null) return null;
    return whole(bare === "second" ? value : value * 60, "none");
  });
}

/**
 * A distance, in metres; null when none is next. Kilometres count a thousand, other units are refused.
 * @param loneM - a lone m means metres here
 */
export function takeDistance(reader: Reader, loneM: boolean): number | null {
  return reader.attempt(() => {
    const from = reader.at;
    const value = plainNumber(reader);
    if (value === null) return null;
    if (takeUnit(reader, OTHER_DISTANCES)) reader.refuse("Distances are read in metres: write the metres", from);
    if (takeUnit(reader, ["km", "kilometre", "kilometres", "kilometer", "kilometers"])) return value * 1000;
    if (takeUnit(reader, METRE_WORDS)) return value;
    // in 1m30 the m is minutes
    const metres = loneM && takeUnit(reader, ["m"]) && !(reader.peek().kind === "number" && !reader.peek().spaced);
    return metres ? value : null;
  });
}

/** Is a unit of weight, time or distance next? Then the number before it counts no reps. */
export function seesUnit(reader: Reader): boolean {
  return reader.sees(() =>
    takeUnit(reader, [...SECOND_WORDS, ...MINUTE_WORDS, "m", "km", ...METRE_WORDS, ...KILO_WORDS, ...POUND_WORDS, ...OTHER_DISTANCES, "%", "percent", "pct", "rm"]) ||
    reader.phrase("per cent"));
}

/** Refuses "20s-30s" and "20 m to 30 m" after the first of the two; a dash set apart on both sides parts two statements. */
export function refuseAmountRange(reader: Reader, from: number): void {
  const [dash, next] = [reader.peek(), reader.peek(1)];
  const parts = dash.text === "-" && dash.spaced && next.spaced;
  if (!["-", "to"].includes(dash.text) || parts || (next.kind !== "number" && next.kind !== "clock")) return;
  reader.at += 2;
  takeUnit(reader, [...SECOND_WORDS, ...MINUTE_WORDS, "m", ...METRE_WORDS]);
  reader.refuse("A range of times or distances cannot be planned: write one", from);
}

/** "-30" with a tight minus in front of it, where a dash would be set apart. */
export function refuseNegative(reader: Reader): void {
  const [dash, next] = [reader.peek(), reader.peek(1)];
  if (dash.text !== "-" || next.kind === "sign" || next.kind === "word" || next.spaced) return;
  const before = reader.tokens[reader.at - 1];
  if (dash.spaced || before === undefined || before.kind === "sign") {
    reader.at += 2;
    reader.refuse(`A negative number makes no sense here: "-${next.text}"`, reader.at - 2);
  }
}

/** Takes a dash that parts or joins, but not a minus sign. */
export function takeDash(reader: Reader): boolean {
  const minus = reader.peek().spaced && !reader.peek(1).spaced;
  return !minus && reader.take("-");
}

/** How many times: a number, "a", "one", "a couple of". */
export function takeCount(reader: Reader): number | null {
  if (reader.phrase("a couple of?")) return 2;
  if (reader.take("a", "an")) return 1;
  return plainNumber(reader);
}
