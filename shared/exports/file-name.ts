import { episodeName, type Episode } from "../episode";
import { DOCUMENT_IDS, type DocumentId } from "./types";

/** Longest file name, in characters: short enough for every file system, sync service and mail program. */
export const MAX_FILE_NAME = 80;

/** Room for the longest ending, so that the documents of one episode are cut alike and stand together in a folder. */
const MAX_STEM = MAX_FILE_NAME - Math.max(...DOCUMENT_IDS.map((id) => id.length + 1));

/** Letters that do not fall apart into a plain letter and an accent. */
const FOLDED: Readonly<Record<string, string>> = { ß: "ss", æ: "ae", œ: "oe", ø: "o", ł: "l", đ: "d", ð: "d", þ: "th", ı: "i", "½": "half" };

/** Lower-case words of plain ASCII letters and digits, joined by hyphens. "Łódź: Rows & presses" gives "lodz-rows-presses". */
function slug(text: string): string {
  const lower = text.toLowerCase().replace(/\P{ASCII}/gu, (char) => FOLDED[char] ?? char);
  return lower.normalize("NFKD").replace(/['’\p{M}]/gu, "").replace(/[^a-z0-9]+/g, "-").replace(/^-+|-+$/g, "");
}

/**
 * A safe file name for a document: series and number, or the title where there is no series; only a-z, 0-9, - and the
 * one full stop of the extension. "strong-for-the-trail-7-shot-list.pdf". At most 80 characters.
 */
export function fileNameFor(episode: Pick<Episode, "title" | "series">, id: DocumentId): string {
  const series = slug(episode.series.name);
  const parts = [series || slug(episodeName(episode)), episode.series.number === null ? "" : String(episode.series.number)];
  const withTitle = series && episode.series.number === null ? [...parts, slug(episode.title)] : parts;
  const end = `-${id}`;
  const number = episode.series.number === null ? "" : `-${episode.series.number}`;
  const name = withTitle.filter(Boolean).join("-") || "episode";
  if (name.length <= MAX_STEM) return name + end;
  // The number tells episodes apart, so it stays when the words are cut.
  const words = name.slice(0, MAX_STEM - number.length).replace(/-[^-]*$/, "") || name.slice(0, MAX_STEM - number.length);
  return words.replace(/-+$/, "") + number + end;
}
