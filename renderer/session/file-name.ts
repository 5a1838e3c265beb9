import { seriesName, type Episode } from "../../shared/episode";

const FALLBACK = "untitled";

/** "strong-for-the-trail-episode-7.episode.json": letters, digits and hyphens only, and not one of `taken`. */
export function freeFileName(episode: Episode, taken: readonly string[]): string {
  const name = seriesName(episode) || episode.title;
  const stem = name.normalize("NFKD").replace(/[\u0300-\u036f]/g, "").toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "").slice(0, 60) || FALLBACK;
  const used = new Set(taken.map((file) => file.toLowerCase()));
  for (let n = 1; ; n++) {
    const file = `${stem}${n === 1 ? "" : `-${n}`}.episode.json`;
    if (!used.has(file)) return file;
  }
}
