import { NUMBER } from "./numbers";
import { UNIT_PATTERN } from "./units";

const RANGE = new RegExp(String.raw`(?<!\d)(${NUMBER})(\s?(?:${UNIT_PATTERN}))?(-|\s?[–—]\s?|\s-\s)(?=(?:${NUMBER})(?!-\d))`, "gi");

/** One of a row, named by its number: what follows the dash is something else. */
const LABEL = /\b(?:set|week|day|round|phase|block|station|part|step|level|stage|exercise|circuit|minute|movement|drill|session)\s$/i;
/** Reps, or a measure, of a set: "3 x 8 – 20 kg" is a load, "3 x 30 – 45 s" a range. */
const OF_SETS = /\b(?:(?:sets?|rounds?) of|times)\s$/i;
const LOAD = new RegExp(String.raw`^(?:${NUMBER})(?:\s?(?:kgs?|lbs?|%|RM|RIR|W\/kg)(?![A-Za-z])|\s?(?:${UNIT_PATTERN})\s(?:rests?|breaks?|recovery|between)\b|\s(?:RIR|reps in reserve)\b)`, "i");
/** A number with what it counts: a unit, a noun, or what it is done at. */
const COUNTED = /^[\d.,]+\s?(?:%|(?!(?:is|are|was|were|of|to|and|or|in|on|for|with|the)\b)[A-Za-z])/;

/** As much of a text before a dash as shows what the number is. */
const NEAR = 24;

/** Whether a dash with spaces parts two things rather than the ends of a range. @param before - the text before its first number, `after` from the second on */
function isPause(before: string, after: string): boolean {
  const isBetweenRanges = /\d[-–]$/.test(before) || new RegExp(`^(?:${NUMBER})[-–](?:${NUMBER})(?!-)`).test(after);
  return isBetweenRanges || (LABEL.test(before) && COUNTED.test(after)) || (OF_SETS.test(before) && LOAD.test(after));
}

/** A dash between numbers as "to"; one that parts a scheme from its load, or a set from its reps, as a pause. */
export function sayRanges(text: string): string {
  return text.replace(RANGE, (written: string, figures: string, unit: string | undefined, dash: string, at: number, whole: string) => {
    const isSpaced = unit === undefined && /^\s.+\s$/.test(dash);
    const isParting = isSpaced && isPause(whole.slice(Math.max(0, at - NEAR), at), whole.slice(at + written.length, at + written.length + NEAR));
    return `${figures}${unit ?? ""}${isParting ? ", " : " to "}`;
  });
}
