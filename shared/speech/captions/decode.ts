import type { CaptionProblem } from "./types";

/** How many bytes tell the encoding of text without a mark. */
const SAMPLE = 4096;

/** Bytes 80 to 9F in windows-1252; the others are the same as in Unicode. @source WHATWG Encoding Standard, index windows-1252 */
const WESTERN = "€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ";
/** By hand: not every machine's own decoder knows the letters from 80 to 9F. */
const western = (bytes: Uint8Array): string => new TextDecoder("iso-8859-1").decode(bytes).replace(/[\u0080-\u009f]/g, (letter) => WESTERN[letter.charCodeAt(0) - 0x80] ?? letter);

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
    return { text: western(bytes), problems: [{ line: 1, sentence }] };
  }
}
