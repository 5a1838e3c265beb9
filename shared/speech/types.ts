/** A word the coach says in a way of their own: how it is written, and how it sounds in ordinary spelling ("psoas", "so-as"). */
export interface Pronunciation {
  readonly written: string;
  readonly said: string;
}

/** A speaker's pace. */
export interface Pace {
  /** Syllables of average length per second while speaking, pauses left out. */
  readonly syllablesPerSecond: number;
  /** Seconds of silence at a comma, a sentence's end, and a marked breath ( / in the text). */
  readonly commaSeconds: number;
  readonly sentenceSeconds: number;
  readonly breathSeconds: number;
  /** The speaker's own way of saying some words; none when left out. */
  readonly pronunciations?: readonly Pronunciation[];
}

/** How long some words take. */
export interface Spoken {
  readonly seconds: number;
  readonly words: number;
  readonly syllables: number;
}

/** Lines whose seconds are known from takes and need not be counted, by line id. */
export type MeasuredSeconds = ReadonlyMap<string, { readonly seconds: number }>;

/** One block's finished video. */
export interface BlockScreenClock {
  readonly block: string;
  /** Seconds of finished video this block takes. */
  readonly seconds: number;
  /** Where the figure comes from. */
  readonly from: "clip" | "words" | "shots" | "nothing";
  readonly spoken: Spoken;
  readonly shotSeconds: number;
  readonly clipSeconds: number | null;
  /** Spoken seconds beyond the clip; 0 when they fit or no clip is set. */
  readonly overSeconds: number;
  /** How many words to cut so that they fit; 0 when they do. */
  readonly wordsToCut: number;
}

/** An episode's finished video against its target. Seconds. */
export interface ScreenClock {
  readonly seconds: number;
  readonly targetSeconds: number;
  readonly blocks: readonly BlockScreenClock[];
}

/** What is said in one breath. */
export interface Segment {
  /** The words as written, without breath marks. */
  readonly text: string;
  /** Seconds of speech, inner comma pauses included, the breath after it not. */
  readonly seconds: number;
  /** Why a breath follows: marked by the coach, a sentence's end, suggested here; null after the last. */
  readonly breathAfter: "marked" | "sentence" | "suggested" | null;
}

/** What the reading formulas count. */
export interface ReadingCounts {
  readonly sentences: number;
  readonly words: number;
  readonly syllables: number;
}

/** Ease: 90 and more very easy, 60 to 70 plain, below 30 very difficult; may leave 0 to 100. Grade: years of school. */
export interface Readability {
  readonly ease: number;
  readonly grade: number;
}
