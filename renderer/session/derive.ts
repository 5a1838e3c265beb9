import { checkEpisode, type Finding } from "../../shared/checks";
import { episodeClocks, type EpisodeClocks } from "../../shared/clocks";
import type { Episode, NewId } from "../../shared/episode";
import type { Pace } from "../../shared/speech";

export interface Derived {
  readonly episode: Episode;
  readonly clocks: EpisodeClocks;
  readonly findings: readonly Finding[];
}

/** Everything computed from an episode. Each engine remembers blocks that did not change. */
export function derive(episode: Episode, pace: Pace, newId: NewId): Derived {
  const clocks = episodeClocks(episode, pace);
  return { episode, clocks, findings: checkEpisode({ episode, clocks, now: new Date().toISOString(), newId }) };
}

type Idle = (run: () => void) => void;
const idle: Idle = "requestIdleCallback" in window ? (run) => window.requestIdleCallback(run, { timeout: 400 }) : (run) => void setTimeout(run, 0);

/**
 * Runs `compute` for the latest value off the typing path: after a short pause, in idle time, never twice at once.
 * @param pause - quiet milliseconds to wait for
 */
export function whenIdle<T>(pause: number, compute: (latest: T) => void): (value: T) => void {
  let latest: { value: T } | null = null;
  let timer: ReturnType<typeof setTimeout> | null = null;
  return (value) => {
    latest = { value };
    if (timer) clearTimeout(timer);
    timer = setTimeout(() => {
      timer = null;
      idle(() => {
        const job = latest;
        latest = null;
        if (job) compute(job.value);
      });
    }, pause);
  };
}
