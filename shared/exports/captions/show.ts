import { charactersIn, type CaptionLimits, type Cue } from "../../speech";
import type { Piece } from "./cut";

/** How long a caption stays after its last word where nothing follows soon; seconds. Not more than 1.5: BBC Subtitle Guidelines, 5.2. */
const LINGER = 0.5;

const toMillis = (seconds: number): number => Math.round(seconds * 1000) / 1000;

/**
 * When each caption is shown: from its first word, until it is read and its words are said; a gap too short to be seen as one is
 * closed, or made longer where a caption may not be shown so long.
 * @param end - of the picture; seconds
 */
export function showCaptions(pieces: readonly Piece[], end: number, limits: CaptionLimits): Cue[] {
  return pieces.map((piece, at): Cue => {
    const next = pieces[at + 1]?.from;
    const text = piece.lines.join("\n");
    const wanted = Math.max(piece.to + LINGER, piece.from + limits.minSeconds, piece.from + charactersIn(text) / limits.charactersPerSecond);
    const latest = next === undefined ? Math.max(end, piece.to) : next - limits.gapSeconds;
    const chained = next !== undefined && next - wanted < limits.flickerSeconds ? latest : wanted;
    const until = Math.min(chained, latest, piece.from + limits.maxSeconds);
    const gap = next === undefined ? Infinity : next - until;
    const sooner = (next ?? 0) - limits.flickerSeconds;
    // A thousandth either way is rounding.
    const isFlicker = gap > limits.gapSeconds + 0.001 && gap < limits.flickerSeconds - 0.001;
    const shown = isFlicker && piece.to <= sooner ? sooner : until;
    return { start: toMillis(piece.from), end: toMillis(Math.max(shown, piece.from + 0.001)), text };
  });
}
