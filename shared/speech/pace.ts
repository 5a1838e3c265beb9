import { memoOn, type Episode } from "../episode";
import type { Pace } from "./types";

/**
 * A calm coaching voice over moves: ordinary coaching text comes out near 145 words a minute, pauses included.
 *
 * Pauses: 0.6 s between sentences is what listeners judge most natural (Liu et al., Frontiers in Psychology 13:778018, 2022);
 * comma and breath: common practice, no source.
 */
export const DEFAULT_PACE: Pace = { syllablesPerSecond: 3.6, commaSeconds: 0.3, sentenceSeconds: 0.6, breathSeconds: 0.4 };

const paceOfSeries = memoOn((series: Episode["series"]): Pace => {
  const pace = series.pace ?? DEFAULT_PACE;
  return series.pronunciations && series.pronunciations.length > 0 ? { ...pace, pronunciations: series.pronunciations } : pace;
});

/** The pace an episode is spoken at: the series' own with its pronunciations, else the default. The same object while the series is the same. */
export const paceOf = (episode: Episode): Pace => paceOfSeries(episode.series);
