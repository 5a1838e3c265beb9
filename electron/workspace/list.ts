import { readdir, stat } from "node:fs/promises";
import { episodeFileName, type Answer } from "../../shared/bridge";
import { episodeName, seriesName } from "../../shared/episode";
import { placeInLibrary } from "./library-paths";
import { readEpisodeFile } from "./read-file";
import { diskProblem } from "./sentences";

type Entry = Answer<"library:list">[number];

/** Names of the episode files in a folder; everything else lying there is ignored. */
export async function episodeFiles(library: string): Promise<string[]> {
  return (await readdir(library)).filter((name) => episodeFileName.safeParse(name).success);
}

/** Lists a library, reading a file again only when its size or time changed. */
export class LibraryList {
  readonly #known = new Map<string, { readonly mark: string; readonly entry: Entry }>();

  /** Newest first; equal times by name. A file that cannot be read is listed with the reason. */
  async entries(library: string): Promise<Entry[]> {
    const entries: Entry[] = [];
    for (const file of await episodeFiles(library)) {
      const entry = await this.#entry(library, file);
      if (entry) entries.push(entry);
    }
    return entries.sort((a, b) => b.savedAt.localeCompare(a.savedAt) || a.file.localeCompare(b.file));
  }

  async #entry(library: string, file: string): Promise<Entry | null> {
    const refused = (message: string, savedAt: string): Entry => ({ file, title: null, series: null, savedAt, problem: message });
    const place = await placeInLibrary(library, file);
    if (!place.ok) return refused(place.message, new Date(0).toISOString());
    try {
      const facts = await stat(place.path);
      const mark = `${facts.ino}/${facts.size}/${facts.mtimeMs}`;
      const known = this.#known.get(file);
      if (known?.mark === mark) return known.entry;
      const read = await readEpisodeFile(place.path, file);
      const savedAt = facts.mtime.toISOString();
      const entry = read.ok
        ? { file, title: episodeName(read.episode), series: seriesName(read.episode) || null, savedAt, problem: null }
        : refused(read.message, savedAt);
      this.#known.set(file, { mark, entry });
      return entry;
    } catch (error) {
      const failed = diskProblem(error, `"${file}" could not be read`);
      // Gone between reading the folder and asking for the file: no longer part of the library.
      return failed.code === "missing" ? null : refused(failed.message, new Date(0).toISOString());
    }
  }
}
