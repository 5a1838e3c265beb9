import type { Ordered } from "../../../shared/imports/schemes/compose";
import { wordsOfText } from "../../../shared/imports/source/words";
import type { Scheme } from "../../../shared/training";

/** What a marked figure says: "70k" is a weight, "8r" reps, "3s" sets, "55t" seconds, "90p" a pause between sets, "0m" as many as possible. */
const SAYS: Readonly<Record<string, (value: number) => Partial<Scheme>>> = {
  k: (value) => ({ load: { value, unit: "kg" } }),
  r: (value) => ({ repsMin: value, repsMax: value }),
  s: (sets) => ({ sets }),
  t: (seconds) => ({ seconds }),
  p: (restSeconds) => ({ restSeconds }),
  m: () => ({ amrap: true }),
};

/** Words, and the figures among them. */
export function marked(said: string): { readonly words: ReturnType<typeof wordsOfText>; readonly own: Ordered[] } {
  const pieces = said.split(" ").map((piece) => /^(\d+)([krstpm])$/.exec(piece) ?? piece);
  const words = wordsOfText(pieces.map((piece) => (typeof piece === "string" ? piece : piece[1])).join(" "));
  const own = pieces.flatMap((piece, at): Ordered[] =>
    typeof piece === "string" ? [] : [{ says: SAYS[piece[2] ?? ""]?.(Number(piece[1])) ?? {}, rank: "part", about: "working", either: false, remark: null, from: at, to: at, sentence: 0 }]);
  return { words, own };
}
export const valuesOf = (own: readonly Ordered[]): number[] => own.map(({ says }) => says.load?.value ?? says.repsMin ?? says.sets ?? says.seconds ?? says.restSeconds ?? 0);
