import { bucket, worded } from "../learning/feature-names";
import type { Candidate } from "../order/candidates";
import { CLOSING, COOL_DOWN, FAREWELL, GREETING, NO_WARM_UP, NOT_COOL_DOWN, STRETCHES, SURE_CLOSING, WARM_UP, WARM_UP_OVER } from "../order/signals";
import { isMobile, sentenceAt, statementsIn, type Indexed } from "../order/speech";

/** What tells to which part of an episode a sentence belongs. */

const SIGNALS: readonly (readonly [string, (text: string, next: string) => boolean])[] = [
  ["warm", (text) => WARM_UP.test(text)], ["no warm", (text) => NO_WARM_UP.test(text)], ["ready", (text) => WARM_UP_OVER.test(text)], ["cool", (text) => COOL_DOWN.test(text)], ["not cool", (text) => NOT_COOL_DOWN.test(text)],
  ["stretch", (text, next) => STRETCHES.test(`${text} ${next}`)], ["closing", (text) => CLOSING.test(text)], ["sure", (text) => SURE_CLOSING.test(text)], ["farewell", (text) => FAREWELL.test(text)], ["greeting", (text) => GREETING.test(text)],
];

/** The features of each sentence. */
export function featuresOf(speech: Indexed): string[][] {
  const { said, candidates, begun, silences } = speech;
  const turned = begun.map(({ turn }) => sentenceAt(speech, turn)).sort((a, b) => a - b);
  const starts = new Set(begun.map(({ candidate }) => candidate.span.from));
  const [first, last] = [turned[0] ?? Infinity, turned.at(-1) ?? -1];
  const words = said.map((text) => text.split(" ").filter((word) => word !== "").map(worded));
  const signals = said.map((text, at) => SIGNALS.filter(([, is]) => is(text, said[at + 1] ?? "")).map(([name]) => name));
  const names = new Map<number, Candidate[]>();
  for (const candidate of candidates) if (candidate.isThing && !candidate.passing) names.set(candidate.sentence, [...(names.get(candidate.sentence) ?? []), candidate]);
  return said.map((_, at) => {
    const zone = at < first ? "before" : at > last ? "after" : turned.includes(at) ? "turn" : "among";
    const here = names.get(at) ?? [];
    const [easy, beginning] = [here.filter(isMobile).length, here.filter((candidate) => starts.has(candidate.span.from)).length];
    const own = words[at] ?? [];
    const out = [
      `zone=${zone}`, `from=${zone} ${bucket(at, [0, 1, 2, 4, 8])}`, `to=${zone} ${bucket(said.length - 1 - at, [0, 1, 2, 4, 8])}`, `until=${zone} ${at < first ? bucket(first - at, [1, 2, 3, 5, 9]) : bucket(at - last, [0, 1, 2, 4, 8])}`,
      `easy=${zone} ${bucket(easy, [0, 1, 2])}`, `begun=${zone} ${beginning > 0}`, `names=${zone} ${bucket(here.length, [0, 1, 3])}`, `figures=${zone} ${bucket(statementsIn(speech, at, at + 1).length, [0, 1, 3])}`,
      `silent=${zone} ${bucket(silences[at] ?? 0, [0, 2, 8, 20])}`, `was silent=${zone} ${bucket(silences[at - 1] ?? 0, [0, 2, 8, 20])}`, `length=${zone} ${bucket(own.length, [3, 8, 20])}`,
      `lead=${zone} ${own[0] ?? ""}`, `lead2=${own[0] ?? ""} ${own[1] ?? ""}`,
    ];
    for (const word of new Set(own)) out.push(`u=${word}`, `zu=${zone} ${word}`);
    own.forEach((word, place) => { if (place > 0) out.push(`b=${own[place - 1]} ${word}`); });
    for (const signal of signals[at] ?? []) out.push(`s=${signal}`, `zs=${zone} ${signal}`);
    for (const signal of signals[at - 1] ?? []) out.push(`s-1=${zone} ${signal}`);
    for (const signal of signals[at + 1] ?? []) out.push(`s+1=${zone} ${signal}`);
    for (const word of new Set((words[at + 1] ?? []).slice(0, 6))) out.push(`n=${zone} ${word}`);
    for (const word of new Set((words[at - 1] ?? []).slice(-6))) out.push(`p=${zone} ${word}`);
    return out;
  });
}
