import { decode, scoreOf, type RowModel } from "../learning/row-model";
import type { Candidate } from "../order/candidates";
import type { Indexed } from "../order/speech";
import { contextOf } from "./context";
import { featuresAt, frameOf } from "./features";

/** What a named exercise is to the session: nothing, or the next one of it. */
export const START = 1;
export const LABELS = 2;

/** The way from one candidate to the next. */
export function stepBetween(from: Candidate | undefined, to: Candidate): string {
  if (!from) return "";
  const gap = to.span.from - from.span.to;
  return `${from.name.title === to.name.title ? "same " : ""}${gap <= 2 ? "2" : gap <= 8 ? "8" : gap <= 25 ? "25" : gap <= 60 ? "60" : "far"}`;
}

/** Features and steps of all candidates of a speech. */
export function rowOf(speech: Indexed): { readonly features: string[][]; readonly steps: string[] } {
  const frame = frameOf(speech);
  return {
    features: speech.candidates.map((_, at) => featuresAt(speech, frame, at)),
    steps: speech.candidates.map((candidate, at) => stepBetween(speech.candidates[at - 1], candidate)),
  };
}

/** The same, knowing which begin exercises at first sight, and what figures mean. */
export function rowAgain(speech: Indexed, first: ReadonlySet<Candidate>): ReturnType<typeof rowOf> {
  const { features, steps } = rowOf(speech);
  const context = contextOf(speech, first);
  return { features: features.map((names, at) => [...names, ...(context[at] ?? [])]), steps };
}

/** Which candidates begin an exercise of the session. @param row - of the speech */
export function startsIn(speech: Indexed, model: RowModel, row = rowOf(speech)): Set<Candidate> {
  const { features, steps } = row;
  const labels = decode(features.map((names) => scoreOf(model, names)), steps, model);
  return new Set(speech.candidates.filter((_, at) => labels[at] === START));
}
