import type { Take } from "../../../shared/bridge";
import { linesOf, type Episode } from "../../../shared/episode";
import type { MeasuredLine } from "../../../shared/exports";
import { saidWords, speak, type Pace } from "../../../shared/speech";

/** A tap that ends one take begins the next; the host notes them at most this far apart. Milliseconds. */
const SAME_TAP = 400;

/** Whether the tap that ended `take` began another one, so that the pause before the next line is in its seconds. */
const ranOn = (take: Take, takes: readonly Take[]): boolean =>
  takes.some((next) => next.file === null && next.id !== take.id && next.seconds !== null && Math.abs(Date.parse(next.at) - next.seconds * 1000 - Date.parse(take.at)) <= SAME_TAP);

/** Seconds of a take's words alone: what was heard, or of a tap's seconds the share that is no pause. */
function secondsOfWords(take: Take, seconds: number, takes: readonly Take[], pace: Pace): number {
  if (take.file !== null || !ranOn(take, takes)) return seconds;
  const words = speak(take.text, pace).seconds;
  const pause = saidWords(take.text, pace).at(-1)?.pauseSeconds ?? 0;
  return words > 0 ? (seconds * words) / (words + pause) : seconds;
}

/**
 * How long each say line really took, by its chosen take. Lines whose words changed since, and takes that were broken off, are left out.
 * @param pace - the speaker's, with the series' pronunciations
 */
export function lineSeconds(takes: readonly Take[], episode: Episode, pace: Pace): Map<string, MeasuredLine> {
  const chosen = new Map(takes.filter((take) => take.chosen).map((take) => [take.line, take]));
  const lines = episode.blocks.flatMap((block) => linesOf(block, "say"));
  return new Map(lines.flatMap((line): [string, MeasuredLine][] => {
    const take = chosen.get(line.id);
    if (!take || take.text !== line.text || take.seconds === null || take.seconds <= 0) return [];
    return [[line.id, { seconds: secondsOfWords(take, take.seconds, takes, pace) }]];
  }));
}
