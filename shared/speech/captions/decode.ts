import type { CaptionProblem } from "./types";

/** How many bytes tell the encoding of text without a mark. */
const SAMPLE = 4096;

/** Zeros at every other place, as plain letters have in UTF-16. */
function utf16Without(bytes: Uint8Array): "utf-16le" | "utf-16be" | null {
  const sample = bytes.subarray(0, SAMPLE);
  const zeros: [number, number] = [0, 0];
  sample.forEach((byte, at) => {
    if (byte === 0) zeros[at % 2 === 0 ? 0 : 1] += 1;
  });
  const pairs = sample.length / 2;
  if (pairs < 2) return null;
  if (zeros[1] > pairs * 0.7 && zeros[0] < pairs * 0.1) return "utf-16le";
  return zeros[0] > pairs * 0.7 && zeros[1] < pairs * 0.1 ? "utf-16be" : null;
}

/**
 * The text of a file's bytes: UTF-8, UTF-16 with or without its mark, else the Western one-byte letters (windows-1252),
 * which is then said as a problem, for it is a guess.
 * The mark at the start (BOM) is taken off. Never throws; what is no text at all is told by `readCaptions`.
 */
export function decodeText(bytes: Uint8Array): { readonly text: string; readonly problems: readonly CaptionProblem[] } {
  const wide = bytes[0] === 0xff && bytes[1] === 0xfe ? "utf-16le" : bytes[0] === 0xfe && bytes[1] === 0xff ? "utf-16be" : utf16Without(bytes);
  if (wide) return { text: new TextDecoder(wide).decode(bytes), problems: [] };
  try {
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(bytes), problems: [] };
  } catch {
    const sentence = "The file is not in UTF-8; its letters were read as Western European ones. Check names and accents.";
    return { text: new TextDecoder("windows-1252").decode(bytes), problems: [{ line: 1, sentence }] };
  }
}
