import { decode, scoreOf, type RowModel } from "../learning/row-model";
import type { Candidate } from "../order/candidates";
import type { Indexed } from "../order/speech";
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

/** Which candidates begin an exercise of the session. */
export function startsIn(speech: Indexed, model: RowModel): Set<Candidate> {
  const { features, steps } = rowOf(speech);
  const labels = decode(features.map((names) => scoreOf(model, names)), steps, model);
  return new Set(speech.candidates.filter((_, at) => labels[at] === START));
}
