import type { Episode } from "./episode";
import { cameraMoves, shotSeconds } from "./filming";
import { paceOf, screenClock, type Pace, type ScreenClock } from "./speech";
import { gymClock, type GymClock } from "./training";

/** Both clocks of an episode. */
export interface EpisodeClocks {
  readonly gym: GymClock;
  readonly screen: ScreenClock;
}

/**
 * Joins the three engines that know about time: training (sets and rests), filming (moves and shots), speech (words).
 * @param pace - the speaker's own, or what the series knows of it
 */
export function episodeClocks(episode: Episode, pace: Pace = paceOf(episode)): EpisodeClocks {
  return { gym: gymClock(episode, cameraMoves), screen: screenClock(episode, shotSeconds, pace) };
}
