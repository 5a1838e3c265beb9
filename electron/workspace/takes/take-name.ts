import { errorCode } from "../sentences";

/** Most bytes of a name's start, as UTF-8: disks count bytes, and some leave only 143 for a whole name. */
const MOST_BYTES = 90;
/** The number of the line, at the end of what a take is of; it tells one line's files from another's. */
const LINE_NUMBER = /-line-\d+$/;

/** The first characters of a text that fit, no character torn. */
function withinBytes(text: string, bytes: number): string {
  let [left, length] = [bytes, 0];
  for (const character of text) {
    left -= Buffer.byteLength(character);
    if (left < 0) break;
    length += character.length;
  }
  return text.slice(0, length);
}

/** What a take is of as the start of a file's name: letters, digits and hyphens. A long name is shortened before the line's number. */
export function takeStem(name: string): string {
  const words = name.normalize("NFC").toLowerCase().replace(/[^\p{L}\p{N}]+/gu, "-").replace(/^-+|-+$/g, "");
  const number = LINE_NUMBER.exec(words)?.[0] ?? "";
  const block = withinBytes(words.slice(0, words.length - number.length), MOST_BYTES - number.length).replace(/-+$/, "");
  return `${block}${number}` || "line";
}

/** Names tried before giving up on finding a free one. */
const MAX_TRIES = 1000;

/**
 * Makes a sound file under the first name that is free: "03-goblet-squat-line-1-take-2.wav".
 * @param make - makes it; EEXIST says that the name is taken
 * @returns the name
 */
export async function underFreeName(stem: string, make: (name: string) => Promise<void>): Promise<string> {
  for (let number = 1; number <= MAX_TRIES; number++) {
    const name = `${stem}-take-${number}.wav`;
    try {
      await make(name);
      return name;
    } catch (error) {
      if (errorCode(error) !== "EEXIST") throw error;
    }
  }
  throw new Error("there are a thousand takes of this line already");
}
