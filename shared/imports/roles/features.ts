import type { Token } from "../schemes/figures";
import type { Statement } from "../schemes/statement";
import { figureOf, isFigure, NAME, STOP } from "./stream";

/** What the tagger looks at around a figure. */

/** Words so far away still count, whatever their order. */
const NEAR = 7;
/** Words about other days and other people reach further. */
const FAR = 16;
const ELSEWHERE = new Set("last week month year ago yesterday used when beginner beginners if instead could husband wife friend mate he she they people someone next time next planned record best degrees old warm light lighter empty bar start starting build working real proper actual work top circuit rounds round altogether total everything all".split(" "));

const sizeOf = (value: number): string =>
  !Number.isInteger(value) ? "part" : value <= 5 ? String(value) : value <= 8 ? "6-8" : value <= 12 ? "9-12" : value <= 16 ? "13-16" : value <= 20 ? "17-20" : value <= 30 ? "21-30" : value <= 45 ? "31-45" : value <= 60 ? "46-60" : value <= 90 ? "61-90" : value <= 150 ? "91-150" : "151-";

/** The token as its neighbours see it. */
const seen = (token: Token | undefined): string => (token === undefined ? STOP : isFigure(token) ? (token.value === null ? "#s" : "#") : token.text);

const distance = (steps: number): string => (steps <= 2 ? String(steps) : steps <= 5 ? "3-5" : steps <= 10 ? "6-10" : steps <= 25 ? "11-25" : steps <= 60 ? "26-60" : "far");

/** Steps to the nearest token of a kind; 999 where there is none. */
function stepsTo(tokens: readonly Token[], at: number, step: 1 | -1, is: (token: Token) => boolean): number {
  for (let away = 1; away <= 80; away += 1) {
    const token = tokens[at + away * step];
    if (token === undefined) return 999;
    if (is(token)) return away;
  }
  return 999;
}

/** What the phrase reader makes of a figure: the field it would fill, and of which sets. */
function fieldsOf({ says, about, rank }: Statement, value: number): string[] {
  const is = (figure: number | null | undefined): boolean => figure === value || figure === value * 60;
  const fields: string[] = [];
  if (says.sets === value) fields.push("sets");
  if (says.repsMin === value) fields.push("reps");
  if (says.repsMax === value && says.repsMin !== value) fields.push("reps-high");
  if (says.reps?.includes(value)) fields.push("rungs");
  if (is(says.seconds)) fields.push("seconds");
  if (says.meters === value) fields.push("meters");
  if (is(says.load?.value)) fields.push(says.load?.perHand ? "load-hand" : "load");
  if (is(says.restSeconds)) fields.push("rest");
  if (says.tempo?.includes(value)) fields.push("tempo");
  if (says.rpe === value || says.rir === value) fields.push("effort");
  if (says.emomMinutes === value) fields.push("emom");
  return fields.map((field) => `${field} ${about} ${rank === "whole" ? "whole" : ""}`);
}

/** The fields that a figure fills, or a word such as "each", by what the phrase reader found around it. */
export const phrasedFields = (token: Token, read: readonly Statement[]): string[] =>
  isFigure(token) ? read.flatMap((statement) => fieldsOf(statement, figureOf(token))) : read.flatMap(({ says }) => Object.keys(says).filter((field) => ["eachSide", "load", "amrap"].includes(field)));

/**
 * The names of all features of the token at a place.
 * @param read - what the phrase reader found around it
 * @param classes - parts of speech of the words
 */
export function featuresAt(tokens: readonly Token[], at: number, read: readonly Statement[], classes: readonly string[]): string[] {
  const token = tokens[at] as Token;
  const own = isFigure(token) ? (token.value === null ? "#s" : "#") : token.text;
  const value = figureOf(token);
  const size = isFigure(token) ? sizeOf(value) : "";
  const near = (offset: number): string => seen(tokens[at + offset]);
  const stops = (offset: number): string => (tokens[at + offset]?.stop === true ? STOP : "");
  const [b1, b2, b3, a1, a2, a3] = [near(-1), near(-2), near(-3), near(1), near(2), near(3)];
  const out = [
    `o=${own}`, `v=${own}${size}`, `x=${token.text}`,
    `-1=${b1}`, `-2=${b2}`, `-3=${b3}`, `+1=${a1}`, `+2=${a2}`, `+3=${a3}`,
    `-1+1=${b1} ${a1}`, `-21=${b2} ${b1}`, `+12=${a1} ${a2}`, `-321=${b3} ${b2} ${b1}`, `+123=${a1} ${a2} ${a3}`, `-21+1=${b2} ${b1} ${a1}`, `-1+12=${b1} ${a1} ${a2}`,
    `v-1=${own}${size} ${b1}`, `v+1=${own}${size} ${a1}`, `v-1+1=${own}${size} ${b1} ${a1}`, `o-1=${own} ${b1}`, `o+1=${own} ${a1}`, `v+12=${size} ${a1} ${a2}`, `v-21=${size} ${b2} ${b1}`, `stop=${stops(0)}${stops(1)}`,
  ];
  const part = (offset: number): string => {
    const other = tokens[at + offset];
    return other === undefined ? STOP : other.text === NAME ? "N" : isFigure(other) ? "#" : (classes[other.at] ?? "?");
  };
  const [p1, p2, p3, q1, q2, q3] = [part(-1), part(-2), part(-3), part(1), part(2), part(3)];
  out.push(`q-1=${p1}`, `q+1=${q1}`, `q-21=${p2} ${p1}`, `q+12=${q1} ${q2}`, `q-1+1=${p1} ${q1}`, `q-321=${p3} ${p2} ${p1}`, `q+123=${q1} ${q2} ${q3}`, `q-2+2=${p2} ${p1} ${q1} ${q2}`);
  for (let away = 1; away <= NEAR; away += 1) {
    const [before, after] = [tokens[at - away], tokens[at + away]];
    if (before) out.push(`b=${seen(before)}`);
    if (after) out.push(`a=${seen(after)}`);
    if (before && away <= 4) out.push(`ob=${own} ${seen(before)}`);
    if (after && away <= 4) out.push(`oa=${own} ${seen(after)}`);
  }
  for (let away = 1; away <= FAR; away += 1) {
    const word = tokens[at - away]?.text ?? "";
    if (ELSEWHERE.has(word)) out.push(`f=${word}`);
    const later = tokens[at + away]?.text ?? "";
    if (ELSEWHERE.has(later)) out.push(`g=${later}`);
  }
  const [back, ahead] = [stepsTo(tokens, at, -1, ({ text }) => text === NAME), stepsTo(tokens, at, 1, ({ text }) => text === NAME)];
  out.push(`n-=${distance(back)}`, `n+=${distance(ahead)}`);
  const fields = phrasedFields(token, read);
  for (const field of fields) out.push(`r=${field}`, `r+1=${field} ${a1}`, `r-1=${field} ${b1}`);
  if (fields.length === 0) out.push(read.length > 0 ? "r=other" : "r=-", `r- ${own}${size} ${a1}`);
  if (isFigure(token)) {
    const [last, next] = [stepsTo(tokens, at, -1, isFigure), stepsTo(tokens, at, 1, isFigure)];
    const [lastSize, nextSize] = [tokens[at - last], tokens[at + next]].map((other) => (other ? sizeOf(figureOf(other)) : ""));
    out.push(`l=${distance(last)} ${lastSize}`, `m=${distance(next)} ${nextSize}`, `lv=${size} ${distance(last)} ${lastSize}`, `mv=${size} ${distance(next)} ${nextSize}`);
    const twin = stepsTo(tokens, at, -1, (other) => isFigure(other) && figureOf(other) === value);
    if (twin <= 30) out.push(`twin=${distance(twin)}`);
  }
  return out;
}
