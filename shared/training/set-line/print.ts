import type { Scheme, Tempo } from "../types";

/** "8" or "8-10". */
const range = (min: number, max: number): string => (min === max ? String(min) : `${min}-${max}`);

/** "90 s", "2 min", "150 s". */
function lengthOf(seconds: number): string {
  return seconds >= 120 && seconds % 60 === 0 ? `${seconds / 60} min` : `${seconds} s`;
}

/** The load in shorthand, without the @: "22 kg each hand", "BW + 10 kg", "80%". */
export function printLoad(load: NonNullable<Scheme["load"]>): string {
  const { value, unit } = load;
  if (unit === "band") return "band";
  if (unit === "bodyweight" || value === null) return "BW";
  if (unit === "%1RM") return `${value}%`;
  if (unit === "bodyweight+kg" || unit === "bodyweight+lb") return `BW ${value < 0 ? "-" : "+"} ${Math.abs(value)} ${unit.slice(-2)}`;
  return `${value} ${unit}${load.perHand ? " each hand" : ""}`;
}

function printTempo(tempo: Tempo): string {
  const [lower, bottom, lift, top] = tempo;
  if (!tempo.includes(null)) return `tempo ${tempo.join("-")}`;
  const phases = [
    lower === null ? "" : `${lower} s down`,
    bottom === null ? "" : `${bottom} s pause at the bottom`,
    lift === null ? "" : lift === "X" ? "explosive up" : `${lift} s up`,
    top === null ? "" : `${top} s pause at the top`,
  ];
  return phases.filter(Boolean).join(", ");
}

/** What one set consists of: "8-10", "40 s", "AMRAP". */
function printWork(scheme: Scheme): string {
  const { repsMin, repsMax, reps, seconds, meters, amrap } = scheme;
  const atLeast = amrap ? "+" : "";
  if (reps) return `${reps.length < 3 ? "ladder " : ""}${reps.join("/")}${atLeast}`;
  if (repsMin !== undefined) return `${range(repsMin, repsMax ?? repsMin)}${atLeast}`;
  if (meters !== undefined) return `${meters} m`;
  if (amrap) return seconds === undefined ? "AMRAP" : `AMRAP in ${lengthOf(seconds)}`;
  return lengthOf(seconds ?? 0);
}

function printScheme(scheme: Scheme): string {
  const { sets, reps, emomMinutes, seconds } = scheme;
  const work = printWork(scheme);
  if (emomMinutes !== undefined) return `EMOM ${emomMinutes} min: ${work}${scheme.repsMin === undefined ? "" : scheme.repsMax === 1 ? " rep" : " reps"}`;
  if (sets !== undefined && !reps) return `${sets} x ${work}`;
  // a bout without sets is written as a clock unless it is whole minutes
  if (sets === undefined && !reps && !scheme.amrap && seconds !== undefined) {
    return seconds % 60 === 0 ? `${seconds / 60} min` : `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`;
  }
  return work;
}

/**
 * The scheme in canonical shorthand: `3 x 8-10 @ 40 kg, tempo 3-1-1-0, rest 90 s, RIR 2`.
 *
 * Reading the printed line with `parseSetLine` gives the same scheme again.
 */
export function printSetLine(scheme: Scheme): string {
  const { group, eachSide, load, tempo, restSeconds, rpe, rir, dropSets } = scheme;
  const head = [group === undefined ? "" : `${group}:`, printScheme(scheme), eachSide ? "each side" : "", load ? `@ ${printLoad(load)}` : ""];
  const tail = [
    tempo ? printTempo(tempo) : "",
    dropSets === undefined ? "" : `then ${dropSets} drop ${dropSets === 1 ? "set" : "sets"}`,
    restSeconds === undefined ? "" : `rest ${lengthOf(restSeconds)}`,
    rpe === undefined ? "" : `RPE ${rpe}`,
    rir === undefined ? "" : `RIR ${rir}`,
  ];
  return [head.filter(Boolean).join(" "), ...tail.filter(Boolean)].join(", ");
}
