import { isNumberWord } from "../../speech";
import type { Scheme } from "../../training";
import type { Word } from "../types";
import { WORK_FIELDS } from "./compose";

/** "Same again", "same rest as the squats", "the rest is the same": what an exercise takes over from another one. */

const SCHEME = ["sets", ...WORK_FIELDS, "emomMinutes"] as const;

/** What is the same, by the noun it is said of. */
const NOUNS: readonly (readonly [RegExp, readonly (keyof Scheme)[]])[] = [
  [/^(?:sets|rounds)$/, ["sets"]],
  [/^(?:reps|repetitions|count)$/, WORK_FIELDS],
  [/^(?:numbers|scheme|format|protocol|amount|plan|recipe|prescription)$/, SCHEME],
  [/^(?:again|deal|drill|story|job)$/, [...SCHEME, "restSeconds"]],
  [/^(?:rest|rests|break|breaks|breather|minutes?|seconds?|recovery)$/, ["restSeconds"]],
  [/^(?:weights?|load|loads|bells?|dumbbells?|kettlebells?|kilos|pounds|plates|pair|barbell)$/, ["load"]],
  [/^(?:tempo|speed)$/, ["tempo"]],
  [/^(?:effort|rpe|tank|rir)$/, ["rpe", "rir"]],
];
/** Said of how it is done and not of the plan: "at the same time", "the same muscles". */
const HOLLOW = /^(?:time|way|muscles?|idea|principle|place|position|line|reason|spot|setup|bench|bar|machine|stance|grip|movement|motion|cues?|hand|arm|leg|story)$/;
/** Words between "same" and what is. */
const SOFT = /^(?:number|amount|of|and|the|same|my|your|a|an|two|here|so|on|for|these|this|those|that|thing|exact|exactly|same|old|as|before|last|with|like|both|in|is|it|little|short|long|big|whole|good|easy|light|heavy|to|too|also|then|again)$/;
const FIRM = /^(?:number|amount)$/;
/** "Rest is the same", "sets and rest stay the same": so many words before "same" the noun may stand. */
const [AHEAD, BEHIND] = [9, 6];
const IS = /^(?:is|are|stays?|stay|remains?|the|all|also|still|exactly|just|it's|and|sets|reps|rest|weight|tempo|too)$/;
/** "Same as before", "same for these" with no noun at all. */
const BEFORE = /^(?:before|last|previous|first|above|these|this|those|here|again)$/;

/** "Same as on the leg press". */
const AS = /^(?:as|on|for|the|with)$/;
const OTHER_SIDE = 7;

/** What is taken over at one "same"; null when it is said of something else. @param at - of the word "same" */
function takenAt(words: readonly Word[], at: number, until: number): { readonly fields: readonly (keyof Scheme)[]; readonly to: number } | null {
  const plain = (place: number): string => words[place]?.plain ?? "";
  const found: (keyof Scheme)[] = [];
  // "Same again on the other side" goes on with this exercise.
  if (words.slice(at + 1, at + OTHER_SIDE).some(({ plain: word }) => /^(?:side|left|right)$/.test(word))) return null;
  let isCount = false;
  let place = at + 1;
  let refers = false;
  for (; place < Math.min(until, at + AHEAD) && (words[place]?.pause ?? 0) < 2; place += 1) {
    const word = plain(place);
    if (HOLLOW.test(word) && found.length === 0 && !AS.test(plain(place - 1)) && !AS.test(plain(place - 2))) return null;
    if (FIRM.test(word) && plain(place + 1) === "of") {
      isCount = true;
      continue;
    }
    const noun = NOUNS.find(([is]) => is.test(word));
    if (noun) found.push(...noun[1]);
    else if (!(SOFT.test(word) || isNumberWord(word)) || (word === "thing" && !/^(?:again|here|for|with|on)$/.test(plain(place + 1)))) break;
    if (BEFORE.test(word)) refers = true;
  }
  if (isCount || found.length > 0) return { fields: found, to: place };
  for (let back = at - 1; back >= at - BEHIND && back >= 0; back -= 1) {
    const noun = NOUNS.find(([is]) => is.test(plain(back)));
    if (noun && plain(back) !== "again") found.push(...noun[1]);
    if (!IS.test(plain(back))) break;
  }
  if (found.length > 0) return { fields: found, to: place };
  return refers ? { fields: [...SCHEME, "restSeconds"], to: place } : null;
}

/** One reference to another exercise. */
export interface Taken {
  readonly fields: readonly (keyof Scheme)[];
  /** The words in which the other exercise may be named: "same rest as the squats". */
  readonly from: number;
  readonly to: number;
}

/** So many words after "same" the other exercise may be named. */
const NAMED = 8;

/** Every "same" among some words that says something about sets. */
export function sameIn(words: readonly Word[], from: number, until: number): Taken[] {
  const out: Taken[] = [];
  for (let at = from; at < until; at += 1) {
    if (words[at]?.plain !== "same" || words[at - 1]?.plain === "not") continue;
    const taken = takenAt(words, at, until);
    if (taken === null) continue;
    out.push({ fields: taken.fields, from: at + 1, to: Math.min(until, taken.to + NAMED) });
    at = Math.max(at, taken.to - 1);
  }
  return out;
}

/** The fields of a scheme, where it has them. */
export const pick = (scheme: Scheme, fields: readonly (keyof Scheme)[]): Partial<Scheme> => Object.fromEntries([...new Set(fields)].filter((field) => scheme[field] !== undefined).map((field) => [field, scheme[field]]));
