import type { BlockKind } from "../../episode";
import type { Example } from "../learning/train";
import type { Lesson } from "../learning/read";
import { headOf } from "../learning/truth";
import type { Indexed } from "../order/speech";
import { rowOf, ZONES } from "./zones";

const MARKED = ["warm-up", "cool-down", "closing"] as const;

/** The parts of a transcript by its marks; none where the head tells of parts that are not marked, or the other way round. */
export function zoneExamples({ file, marked: { turns } }: Lesson, speech: Indexed): Example[] {
  const head = new Map(headOf(file));
  if (!head.has("opening") || MARKED.some((part) => (head.get(part) === "yes") !== turns.some(({ to }) => to === part))) return [];
  const zoneAt = (word: number): BlockKind => {
    const mark = turns.findLast(({ at }) => at <= word);
    if (!mark) return "opening";
    return ZONES.find((zone) => zone === mark.to) ?? "exercise";
  };
  const row = rowOf(speech);
  return [{ ...row, labels: speech.sentences.map(({ from, to }) => ZONES.indexOf(zoneAt(Math.floor((from + to - 1) / 2)))) }];
}
