import type { Episode } from "../../shared/episode";
import type { DocumentId, MeasuredLine } from "../../shared/exports";
import { DEFAULT_PACE, paceOf, type Pace } from "../../shared/speech";
import type { Takes } from "./takes";
import { lineSeconds } from "./takes/line-seconds";
import { readVoice } from "./voice";

/** The pace words are counted at in a library. */
export interface LibraryPace {
  readonly pace: Pace;
  /** Whose pace it is, in a sentence. */
  readonly sentence: string;
  /** No pace was kept here, so there is nothing to tell that a reader would not expect. */
  readonly isUsual: boolean;
}

/** How an episode is spoken, as far as its library knows. */
export interface Speaker extends LibraryPace {
  /** Say lines with a take of these very words, by line id. */
  readonly measured: ReadonlyMap<string, MeasuredLine>;
  /** What could not be read of the takes, in sentences. */
  readonly notes: readonly string[];
}

const rate = (pace: Pace): string => `${pace.syllablesPerSecond.toFixed(1)} syllables a second`;

/** The speaker's own pace where one was measured in this library, the usual one elsewhere. */
export async function ownPaceIn(library: string): Promise<LibraryPace> {
  const read = await readVoice(library);
  if (!read.ok) return { pace: DEFAULT_PACE, sentence: read.message, isUsual: false };
  if (read.voice === null) return { pace: DEFAULT_PACE, sentence: `Counted at the usual pace, ${rate(DEFAULT_PACE)}; no pace was measured in the episode's folder.`, isUsual: true };
  const { pace, lines } = read.voice;
  return { pace, sentence: `Counted at your own pace, ${rate(pace)}, measured on ${lines} ${lines === 1 ? "line" : "lines"}.`, isUsual: false };
}

/** Documents that say when something is spoken. */
const IS_SPOKEN = /^(?:captions|voiceover|cue-card)\./;

/**
 * The pace of a library and the takes of one of its episodes. Never throws.
 * @param file - the episode's name in the library; null when it is on no disk yet. A name the library does not take has no takes.
 * @param documents - what is to be made: only what is spoken asks for takes
 */
export async function speakerOf(takes: Takes, file: string | null, episode: Episode, documents: readonly DocumentId[]): Promise<Speaker> {
  const own = await ownPaceIn(takes.library);
  const none = { ...own, measured: new Map<string, MeasuredLine>(), notes: [] };
  if (file === null || !documents.some((id) => IS_SPOKEN.test(id))) return none;
  const list = await takes.list({ file });
  if (list.ok) return { ...none, measured: lineSeconds(list.takes, episode, paceOf(episode, own.pace)) };
  return list.code === "bad-name" ? none : { ...none, notes: [`${list.message} The words are timed at the pace alone.`] };
}
