/** What a caption may be, so that it can be read. */
export interface CaptionLimits {
  /** Characters of a line, spaces and punctuation counted. */
  readonly lineCharacters: number;
  readonly lines: number;
  /** Seconds one caption is shown, at least and at most. */
  readonly minSeconds: number;
  readonly maxSeconds: number;
  /** Reading speed: characters a second, the line break not counted. */
  readonly charactersPerSecond: number;
  /** Shorter gaps than this between two captions flicker, so they are closed to `gapSeconds`. Seconds. */
  readonly flickerSeconds: number;
  /** Seconds between two captions that follow each other: two frames, so that the eye sees the change. */
  readonly gapSeconds: number;
}

/**
 * Limits for a wide picture.
 *
 * Two lines of at most 42 characters, shown 1 to 7 seconds, broken after punctuation and before conjunctions and prepositions.
 * Speed: 160 to 180 words a minute; at six characters a word with its space that is 16 to 18 characters a second, and 17 lies between.
 * No gap, or one of at least a second. Two frames between captions: at 30 frames a second, from memory.
 * @source BBC Subtitle Guidelines, "Line breaks", "Timing" and "Gaps" (speed, gaps, two lines); university captioning guide of the
 * Enhancing Audio Description project (42 characters, 1 and 7 seconds, where to break)
 */
export const CAPTION_LIMITS: CaptionLimits = {
  lineCharacters: 42, lines: 2, minSeconds: 1, maxSeconds: 7, charactersPerSecond: 17, flickerSeconds: 1, gapSeconds: 2 / 30,
};

/** For an upright picture, where about 25 characters fit a line. @source BBC Subtitle Guidelines, vertical video, second-hand */
export const UPRIGHT_LIMITS: CaptionLimits = { ...CAPTION_LIMITS, lineCharacters: 25 };

/** Characters as people count them: an accent or an emoji is part of the one it stands with. */
const clusters = new Intl.Segmenter("en", { granularity: "grapheme" });
const isPlain = (text: string): boolean => /^[\u0020-\u007e\n]*$/.test(text);

/** How many characters are read; line breaks are not. */
export function charactersIn(text: string): number {
  const read = text.replace(/\n/g, "");
  return isPlain(read) ? read.length : Array.from(clusters.segment(read)).length;
}
