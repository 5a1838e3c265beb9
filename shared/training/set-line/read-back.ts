import type { Scheme, Tempo } from "../types";
import { numberInWords } from "./number-words";

/** Whole numbers in words; others with their decimals: "two and a half", "seven point two". */
function inWords(value: number): string {
  const whole = Math.trunc(value);
  if (Number.isInteger(value)) return numberInWords(value);
  if (value - whole === 0.5) return whole === 0 ? "half" : `${numberInWords(whole)} and a half`;
  const decimals = String(value).split(".")[1] ?? "";
  return `${numberInWords(whole)} point ${[...decimals].map((figure) => numberInWords(Number(figure))).join(" ")}`;
}

const many = (value: number, one: string, more = `${one}s`): string => `${inWords(value)} ${value === 1 ? one : more}`;

/** "ninety seconds", "two minutes", "two minutes thirty". */
function lengthInWords(seconds: number): string {
  if (seconds < 120 && seconds !== 60) return many(seconds, "second");
  const minutes = many(Math.floor(seconds / 60), "minute");
  return seconds % 60 === 0 ? minutes : `${minutes} ${inWords(seconds % 60)}`;
}

const rangeInWords = (min: number, max: number): string => (min === max ? inWords(min) : `${inWords(min)} to ${inWords(max)}`);

function workInWords(scheme: Scheme): string {
  const { sets, repsMin, repsMax, reps, seconds, meters, amrap, emomMinutes } = scheme;
  const last = amrap ? ", as many as possible in the last set" : "";
  if (emomMinutes !== undefined) {
    const work = repsMin !== undefined ? `${rangeInWords(repsMin, repsMax ?? repsMin)} ${repsMax === 1 ? "rep" : "reps"}` : lengthInWords(seconds ?? 0);
    return `${work} every minute for ${many(emomMinutes, "minute")}`;
  }
  const count = sets === undefined ? "" : many(sets, "set");
  if (reps) return `${count === "" ? many(reps.length, "set") : count}: ${reps.map(inWords).join(", ")}${last}`;
  if (repsMin !== undefined) return `${count === "" ? "" : `${count} of `}${rangeInWords(repsMin, repsMax ?? repsMin)}${last}`;
  const work = meters !== undefined ? many(meters, "metre") : amrap ? `as many as possible${seconds === undefined ? "" : ` in ${lengthInWords(seconds)}`}` : lengthInWords(seconds ?? 0);
  return count === "" ? work : `${count} of ${work}`;
}

/** Loads stay in figures: a coach reads them off the bell. */
function loadInWords(load: NonNullable<Scheme["load"]>): string {
  const { value, unit } = load;
  if (unit === "band") return "with a band";
  if (unit === "bodyweight" || value === null) return "bodyweight";
  if (unit === "%1RM") return `${value} percent of the one-rep max`;
  const name = (unit.endsWith("kg") ? "kilo" : "pound") + (Math.abs(value) === 1 ? "" : "s");
  if (unit === "bodyweight+kg" || unit === "bodyweight+lb") return value < 0 ? `bodyweight less ${-value} ${name}` : `bodyweight plus ${value} ${name}`;
  return `${value} ${name}${load.perHand ? " in each hand" : ""}`;
}

function tempoInWords(tempo: Tempo): string[] {
  const [lower, bottom, lift, top] = tempo;
  const pause = (seconds: number, where: string): string => `${inWords(seconds)}-second pause${where}`;
  // a pause of no length is the absence of one, and silence says that; a phase in seconds is always said
  return [
    lower === null ? "" : `${many(lower, "second")} down`,
    bottom === null || bottom === 0 ? "" : pause(bottom, top === null || top === 0 ? "" : " at the bottom"),
    lift === null ? "" : lift === "X" ? "up as fast as control allows" : `${many(lift, "second")} up`,
    top === null || top === 0 ? "" : pause(top, " at the top"),
  ];
}

/**
 * The scheme in words, as a coach says it: "three sets of eight to ten, 22 kilos in each hand, three seconds down,
 * one-second pause, one second up, rest ninety seconds, two reps in reserve".
 */
export function readBack(scheme: Scheme): string {
  const { group, eachSide, load, tempo, restSeconds, rpe, rir, dropSets } = scheme;
  const parts = [
    group === undefined ? "" : group,
    `${workInWords(scheme)}${eachSide ? " each side" : ""}`,
    load ? loadInWords(load) : "",
    ...(tempo ? tempoInWords(tempo) : []),
    dropSets === undefined ? "" : `then ${many(dropSets, "drop set")}`,
    restSeconds === undefined ? "" : restSeconds === 0 ? "no rest" : `rest ${lengthInWords(restSeconds)}`,
    rpe === undefined ? "" : `effort ${inWords(rpe)} of ten`,
    rir === undefined ? "" : rir === 0 ? "nothing in reserve" : `${many(rir, "rep")} in reserve`,
  ];
  return parts.filter(Boolean).join(", ");
}
