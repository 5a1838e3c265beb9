import type { Answer, EventPayload, Request } from "../../shared/bridge";
import { writeEpisode, type Episode } from "../../shared/episode";
import { sweepLeftovers, writeAtomic, type Disk } from "./atomic-write";
import { keepState, listStates, readState } from "./history";
import { placeInLibrary } from "./library-paths";
import { LibraryList } from "./list";
import { makeFolder } from "./make-folder";
import { readBytes, readEpisodeFile } from "./read-file";
import { diskProblem, problem } from "./sentences";
import { stampOf } from "./stamp";
import { LibraryWatch } from "./watch";

const STEM_END = ".episode.json";

/** The episodes of one library folder: listed, opened, saved, with their older states. One operation at a time. */
export class Episodes {
  readonly #list = new LibraryList();
  readonly #watch: LibraryWatch;
  /** Which file an episode was last read from or written to, so its papers lie under the same name. */
  readonly #files = new Map<string, string>();
  #queue: Promise<unknown> = Promise.resolve();
  #watching = false;

  constructor(
    readonly library: string,
    private readonly disk: Disk,
    private readonly now: () => Date,
    changed: (change: EventPayload<"library:changed">) => void,
  ) {
    this.#watch = new LibraryWatch(library, changed);
  }

  close(): void {
    this.#watch.close();
  }

  /** The name of the file without its ending; null when this episode has not been on the disk. */
  stemOf(episode: Episode): string | null {
    return this.#files.get(episode.id)?.slice(0, -STEM_END.length) ?? null;
  }

  /** @throws a sentence when the library folder cannot be made or read */
  list(): Promise<Answer<"library:list">> {
    return this.#inTurn(async () => {
      try {
        await this.#ensureFolder();
        return await this.#list.entries(this.library);
      } catch (error) {
        throw new Error(diskProblem(error, `The library ${this.library} could not be read`).message, { cause: error });
      }
    });
  }

  open(file: string): Promise<Answer<"episode:open">> {
    return this.#inTurn(async () => {
      await this.#ensureFolder().catch(() => undefined);
      const place = await placeInLibrary(this.library, file);
      if (!place.ok) return place;
      const read = await readEpisodeFile(place.path, file);
      if (!read.ok) return read;
      this.#watch.note(file, read.stamp);
      this.#files.set(read.episode.id, file);
      return { ok: true, file, episode: read.episode, stamp: read.stamp, migratedFrom: read.migratedFrom };
    });
  }

  /**
   * Writes an episode when the file is still the one its words were read from. What was there before is kept
   * as an older state. Known limit: another program that writes between the comparison and the rename, a
   * matter of milliseconds, is overwritten; its words are then not among the older states.
   */
  save({ file, episode, basedOn }: Request<"episode:save">): Promise<Answer<"episode:save">> {
    return this.#inTurn(async () => {
      try {
        await this.#ensureFolder();
      } catch (error) {
        return diskProblem(error, `"${file}" was not saved, the library ${this.library} could not be made`);
      }
      const place = await placeInLibrary(this.library, file);
      if (!place.ok) return place;
      const bytes = Buffer.from(writeEpisode(episode), "utf8");
      const stamp = stampOf(bytes);
      const before = await readBytes(place.path, file);
      if (!before.ok && before.code === "missing") {
        if (basedOn !== null) return problem("changed-outside", `"${file}" was removed or renamed by another program. Save under a new name to keep these words.`);
      } else if (!before.ok) {
        return problem(basedOn === null ? before.code : "changed-outside", `Not saved over what is there now. ${before.message}`);
      } else if (before.stamp !== stamp && before.stamp !== basedOn) {
        return basedOn === null
          ? problem("name-taken", `"${file}" is already in the library. Choose another name.`)
          : problem("changed-outside", `"${file}" was changed by another program since it was opened. Nothing was overwritten.`);
      }
      try {
        if (!before.ok || before.stamp !== stamp) {
          if (before.ok) await keepState(this.library, file, before.bytes, before.modified, this.disk);
          this.#watch.note(file, stamp);
          await writeAtomic(place.path, bytes, this.disk);
        }
      } catch (error) {
        this.#watch.note(file, before.ok ? before.stamp : null);
        return diskProblem(error, `"${file}" was not saved, what was saved before is untouched`);
      }
      this.#watch.note(file, stamp);
      this.#files.set(episode.id, file);
      return { ok: true, stamp, savedAt: this.now().toISOString() };
    });
  }

  history(file: string): Promise<Answer<"episode:history">> {
    return this.#inTurn(() => listStates(this.library, file));
  }

  older(file: string, state: string): Promise<Answer<"episode:older">> {
    return this.#inTurn(() => readState(this.library, file, state));
  }

  async #ensureFolder(): Promise<void> {
    const made = await makeFolder(this.library, this.disk);
    if (this.#watching && !made) return;
    await sweepLeftovers(this.library, this.now());
    await this.#watch.start();
    this.#watching = true;
  }

  /** Two saves of one file must not interleave; an operation that failed does not stop the next. */
  #inTurn<T>(operation: () => Promise<T>): Promise<T> {
    const turn = this.#queue.then(operation, operation);
    this.#queue = turn.catch(() => undefined);
    return turn;
  }
}
