import { memoOn, type Episode } from "../episode";
import type { Pace } from "./types";

/**
 * A calm coaching voice over moves: ordinary coaching text comes out near 145 words a minute, pauses included.
 *
 * Pauses: 0.6 s between sentences is what listeners judge most natural (Liu et al., Frontiers in Psychology 13:778018, 2022);
 * comma and breath: common practice, no source.
 */
export const DEFAULT_PACE: Pace = { syllablesPerSecond: 3.6, commaSeconds: 0.3, sentenceSeconds: 0.6, breathSeconds: 0.4 };

const withSeries = memoOn((base: Pace) =>
  memoOn((series: Episode["series"]): Pace => {
    const { pronunciations } = series;
    return base.pronunciations || !pronunciations || pronunciations.length === 0 ? base : { ...base, pronunciations };
  }));

/**
 * The pace an episode is spoken at: the speaker's, with the series' pronunciations.
 * The same object while both stay the same, so that answers remembered by it stay.
 */
export const paceOf = (episode: Episode, base: Pace = DEFAULT_PACE): Pace => withSeries(base)(episode.series);
