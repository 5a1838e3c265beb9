import type { Take } from "../../../shared/bridge";
import { linesOf, type Episode } from "../../../shared/episode";
import type { MeasuredLine } from "../../../shared/exports";
import { ranOn, saidWords, speak, type Pace } from "../../../shared/speech";

/** Seconds of a take's words alone: what was heard, or of a tap's seconds the share that is no pause. */
function secondsOfWords(take: Take, seconds: number, takes: readonly Take[], pace: Pace): number {
  if (!ranOn(take, takes)) return seconds;
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
