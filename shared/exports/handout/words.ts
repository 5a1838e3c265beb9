import type { Units } from "../../episode";
import type { Scheme, Tempo } from "../../training";
import { convertLoad } from "../loads";

const sized = (n: number): string => String(Math.round(n * 100) / 100);
const many = (n: number, one: string, more = `${one}s`): string => `${sized(n)} ${n === 1 ? one : more}`;

/** "90 s", "2 min", "2 min 30 s". */
export function timeInWords(seconds: number): string {
  if (seconds < 120) return `${sized(seconds)} s`;
  const minutes = Math.floor(seconds / 60);
  const rest = seconds - minutes * 60;
  return rest === 0 ? `${minutes} min` : `${minutes} min ${sized(rest)} s`;
}

/** "3 s down, 1 s pause, 1 s up": parts that take no time or are not stated are left out. */
export function tempoInWords([down, low, up, high]: Tempo): string {
  const parts = [
    down ? `${sized(down)} s down` : "",
    low ? `${sized(low)} s pause` : "",
    up === "X" ? "up as fast as you control" : up ? `${sized(up)} s up` : "",
    high ? `${sized(high)} s pause at the top` : "",
  ];
  return parts.filter(Boolean).join(", ");
}

/** "8 to 10 reps", "30 s", "40 m"; empty when the line states no work. */
function workInWords(scheme: Scheme): string {
  const { repsMin, repsMax, seconds, meters } = scheme;
  if (meters !== undefined) return `${sized(meters)} m`;
  if (seconds !== undefined) return timeInWords(seconds);
  if (repsMin === undefined) return "";
  return repsMax !== undefined && repsMax !== repsMin ? `${repsMin} to ${repsMax}` : many(repsMin, "rep");
}

const side = (scheme: Scheme): string => (scheme.eachSide ? " each side" : "");

/** What to do, as a viewer reads it: "3 sets of 8 to 10 each side". */
export function doseInWords(scheme: Scheme): string {
  const { sets, reps, amrap, emomMinutes, dropSets, seconds } = scheme;
  const work = workInWords(scheme);
  const drop = dropSets ? `, then ${many(dropSets, "lighter set")} without a rest` : "";
  const last = amrap ? ", in the last one as many good reps as you can" : "";
  if (emomMinutes !== undefined) return `each minute for ${many(emomMinutes, "minute")}: ${work || "the reps shown"}${side(scheme)}${drop}`;
  if (reps !== undefined) return `${many(sets ?? reps.length, "set")}: ${reps.join(", ")} reps${side(scheme)}${last}${drop}`;
  const counted = sets === undefined ? "" : many(sets, "set");
  if (amrap && scheme.repsMin === undefined) {
    const open = `as many good reps as you can${seconds === undefined ? "" : ` in ${timeInWords(seconds)}`}${side(scheme)}`;
    return `${counted ? `${counted}, ` : ""}${open}${drop}`;
  }
  const plainReps = scheme.seconds === undefined && scheme.meters === undefined ? work.replace(/ reps?$/, "") : work;
  const all = counted ? `${counted}${work ? ` of ${plainReps}` : ""}` : work;
  return `${all}${side(scheme)}${last}${drop}`;
}

/** A load in the unit asked for; "about" shows that it was converted. */
function weight(value: number, from: Units, to: Units): string {
  if (from === to) return `${sized(value)} ${to}`;
  return `about ${sized(convertLoad(value, to))} ${to}`;
}

/** What was on the bar in the video: "22 kg each hand". Empty when the line states none or only a share of a maximum. */
export function loadInWords(load: Scheme["load"], units: Units): string {
  if (!load) return "";
  const { value, unit } = load;
  const hand = load.perHand ? " each hand" : "";
  switch (unit) {
    case "kg":
    case "lb":
      return value === null ? "" : `${weight(value, unit, units)}${hand}`;
    case "bodyweight": return "bodyweight";
    case "bodyweight+kg":
    case "bodyweight+lb":
      if (value === null) return "bodyweight plus a weight";
      // Less than bodyweight: a band or a machine helps.
      return `bodyweight ${value < 0 ? "less" : "plus"} ${weight(Math.abs(value), unit === "bodyweight+kg" ? "kg" : "lb", units)}${hand}`;
    case "band": return "a band";
    case "%1RM": return "";
  }
}

/** How it should go: tempo, effort and share of a maximum. */
export function mannerInWords(scheme: Scheme): string {
  const { tempo, rir, rpe, load } = scheme;
  const parts = [
    load?.unit === "%1RM" && load.value !== null ? `${sized(load.value)} % of your own one-rep maximum` : "",
    tempo ? tempoInWords(tempo) : "",
    rir === undefined ? "" : rir === 0 ? "no reps in reserve" : `${many(rir, "rep")} in reserve`,
    rpe === undefined ? "" : `effort ${sized(rpe)} of 10`,
  ];
  return parts.filter(Boolean).join("; ");
}
