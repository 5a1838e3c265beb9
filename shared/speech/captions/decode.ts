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

/** Places that may be broken in a file that is still UTF-8: so many, or this share of its characters. */
const FEW_BROKEN = 3;
const SHARE_BROKEN = 0.02;
/** Lines named in full; the others are counted. */
const LINES_NAMED = 5;

/**
 * UTF-8 with a few broken bytes, each read as "\ufffd"; null when the file is more likely in another encoding. Letters of several bytes
 * seldom come about by chance, so the file is UTF-8 when it has more of them than of broken places.
 */
function brokenUtf8(bytes: Uint8Array): { readonly text: string; readonly problem: CaptionProblem } | null {
  const text = new TextDecoder("utf-8").decode(bytes);
  const broken = text.match(/\ufffd/g)?.length ?? 0;
  const wide = text.match(/[^\u0000-\u007f\ufffd]/gu)?.length ?? 0;
  if (wide <= broken || broken > Math.max(FEW_BROKEN, text.length * SHARE_BROKEN)) return null;
  const lines = text.split(/\r\n|\n|\r/).flatMap((line, at) => (line.includes("\ufffd") ? [at + 1] : []));
  const named = lines.slice(0, LINES_NAMED).map(String);
  const rest = lines.length - named.length;
  const where = lines.length === 1 ? `line ${named[0] ?? ""}` : `lines ${rest > 0 ? `${named.join(", ")} and ${rest} more` : `${named.slice(0, -1).join(", ")} and ${named.at(-1) ?? ""}`}`;
  const sentence = broken === 1
    ? `The file is in UTF-8 but for one place, in ${where}; what could not be read there stands as "\ufffd". Check that word.`
    : `The file is in UTF-8 but for ${broken} places, in ${where}; what could not be read there stands as "\ufffd". Check these words.`;
  return { text, problem: { line: lines[0] ?? 1, sentence } };
}

/**
 * The text of a file's bytes: UTF-8, UTF-16 with or without its mark, UTF-8 with a few broken bytes, else the Western one-byte letters
 * (windows-1252). The last two are said as a problem: something is lost, or it is a guess.
 * The mark at the start (BOM) is taken off. Never throws; what is no text at all is told by `readCaptions`.
 */
export function decodeText(bytes: Uint8Array): { readonly text: string; readonly problems: readonly CaptionProblem[] } {
  const wide = bytes[0] === 0xff && bytes[1] === 0xfe ? "utf-16le" : bytes[0] === 0xfe && bytes[1] === 0xff ? "utf-16be" : utf16Without(bytes);
  if (wide) return { text: new TextDecoder(wide).decode(bytes), problems: [] };
  try {
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(bytes), problems: [] };
  } catch {
    const broken = brokenUtf8(bytes);
    if (broken) return { text: broken.text, problems: [broken.problem] };
    const sentence = "The file is not in UTF-8; its letters were read as Western European ones. Check names and accents.";
    return { text: western(bytes), problems: [{ line: 1, sentence }] };
  }
}
