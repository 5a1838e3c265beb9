import { watch, type FSWatcher } from "node:fs";
import { episodeFileName, type EventPayload } from "../../shared/bridge";
import { placeInLibrary } from "./library-paths";
import { episodeFiles } from "./list";
import { readBytes } from "./read-file";

/** Programs save in several steps; what happens within this time is one change. */
const SETTLE_MS = 150;

/** What a file holds now: its stamp, null when it is gone, a stand-in for one too big or unreadable. */
async function stampNow(library: string, file: string): Promise<string | null> {
  const place = await placeInLibrary(library, file);
  if (!place.ok) return place.code;
  const read = await readBytes(place.path, file);
  if (read.ok) return read.stamp;
  return read.code === "missing" ? null : read.code;
}

/**
 * Tells when another program changed a file of the library. What this program reads and writes is noted
 * with `note`, so its own saves are no event.
 *
 * Known limit: some network folders report no changes; there, saving still compares stamps.
 */
export class LibraryWatch {
  readonly #stamps = new Map<string, string | null>();
  readonly #waiting = new Map<string, NodeJS.Timeout>();
  #watcher: FSWatcher | null = null;
  #closed = false;

  constructor(
    private readonly library: string,
    private readonly changed: (change: EventPayload<"library:changed">) => void,
  ) {}

  /** Begins watching; again after the folder was made anew. Resolves when the present state is known. */
  async start(): Promise<void> {
    this.#watcher?.close();
    this.#watcher = null;
    for (const file of await episodeFiles(this.library)) {
      if (!this.#stamps.has(file)) this.#stamps.set(file, await stampNow(this.library, file));
    }
    if (this.#closed) return;
    try {
      this.#watcher = watch(this.library, { persistent: false }, (_kind, name) => {
        if (name === null) for (const file of this.#stamps.keys()) this.#soon(file);
        else if (episodeFileName.safeParse(name).success) this.#soon(name);
      });
      this.#watcher.on("error", () => this.#watcher?.close());
    } catch {
      // No watching on this disk; saving still compares stamps.
      this.#watcher = null;
    }
  }

  /** What this program just read from or wrote to a file. */
  note(file: string, stamp: string | null): void {
    this.#stamps.set(file, stamp);
  }

  close(): void {
    this.#closed = true;
    this.#watcher?.close();
    for (const timer of this.#waiting.values()) clearTimeout(timer);
    this.#waiting.clear();
  }

  #soon(file: string): void {
    clearTimeout(this.#waiting.get(file));
    this.#waiting.set(file, setTimeout(() => void this.#compare(file), SETTLE_MS));
  }

  async #compare(file: string): Promise<void> {
    this.#waiting.delete(file);
    const before = this.#stamps.get(file) ?? null;
    const stamp = await stampNow(this.library, file);
    // A save of our own may have been noted while the file was read.
    if (this.#closed || (this.#stamps.get(file) ?? null) !== before || stamp === before) return;
    this.#stamps.set(file, stamp);
    this.changed({ file, stamp });
  }
}
