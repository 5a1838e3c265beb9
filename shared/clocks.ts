import type { Episode } from "./episode";
import { shotSeconds } from "./filming";
import { moveSecondsOf } from "./shoot-plan";
import { DEFAULT_PACE, paceOf, screenClock, type MeasuredSeconds, type Pace, type ScreenClock } from "./speech";
import { gymClock, type GymClock } from "./training";

/** Both clocks of an episode. */
export interface EpisodeClocks {
  readonly gym: GymClock;
  readonly screen: ScreenClock;
}

/**
 * Joins the three engines that know about time: training (sets and rests), filming (moves and shots), speech (words).
 * @param pace - the speaker's own, or the default; the series' pronunciations go with it
 * @param measured - say lines that were read and timed
 */
export function episodeClocks(episode: Episode, pace: Pace = DEFAULT_PACE, measured?: MeasuredSeconds): EpisodeClocks {
  return { gym: gymClock(episode, moveSecondsOf(episode)), screen: screenClock(episode, shotSeconds, paceOf(episode, pace), measured) };
}
