import { printShotLine } from "../print-shot";
import type { Shot } from "../types";
import type { EpisodeWant } from "./types";

/** A want from what is asked for; a sound has a shot without angle and size. */
export function want(fields: Pick<EpisodeWant, "id" | "block" | "what" | "coveredBy"> & Partial<Pick<EpisodeWant, "angles">>, asked: Shot & { readonly seconds: number }): EpisodeWant {
  const { angle, size, need, seconds, on } = asked;
  const best = angle ?? "front";
  return { angles: [best], ...fields, need, on: on ?? "any", seconds, angle: best, size: size ?? "wide", asked, shot: printShotLine(asked) };
}

/** A shot with only what is usual: nothing named, must be had. */
export const shotOf = (fields: Partial<Shot> & { readonly seconds: number; readonly subject: string }): Shot & { readonly seconds: number } =>
  ({ angle: null, size: null, sets: null, on: null, need: "must", ...fields });
