import type { Api } from "../../shared/bridge";
import type { Episode } from "../../shared/episode";
import { freeFileName } from "./file-name";
import { createStore, type Store } from "./store";
import type { FileState } from "./types";

/** Quiet time after the last change before the words go to disk. Milliseconds. */
const AUTOSAVE_AFTER = 1200;
/** Who writes on without a pause has the words on disk at the latest so long after the first of them. Milliseconds. */
const LONGEST_WAIT = 5000;

const UNSAVED: FileState = { name: null, status: "unsaved", savedAt: null, message: null };

/**
 * Keeps the words on disk: saves after a pause, and now and then while there is none, never over another program's change, one save at a time.
 * A failed save leaves the words in the window and says so; the next change tries again.
 */
export interface FileKeeper {
  readonly state: Store<FileState>;
  /** Whether the window holds words that its file does not. */
  readonly hasUnsaved: () => boolean;
  /** A different episode is in the window now. */
  readonly opened: (file: string | null, stamp: string | null, episode: Episode) => void;
  /** The words changed. */
  readonly changed: (episode: Episode) => void;
  readonly saveNow: () => Promise<void>;
  /** Before another episode takes the window: what was changed goes to disk first. */
  readonly saveNowIfChanged: () => Promise<void>;
  readonly saveAsNew: () => Promise<void>;
  /** Another program changed a file of the library. */
  readonly changedOutside: (file: string, stamp: string | null) => void;
}

export function createFileKeeper(api: Api): FileKeeper {
  const state = createStore<FileState>(UNSAVED);
  let stamp: string | null = null;
  let words: Episode | null = null;
  let onDisk: Episode | null = null;
  let timer: ReturnType<typeof setTimeout> | null = null;
  /** When the oldest words that wait for the disk were written. */
  let waitingSince: number | null = null;
  let running: Promise<void> = Promise.resolve();
  const patch = (change: Partial<FileState>): void => state.set({ ...state.get(), ...change });

  const save = async (): Promise<void> => {
    const episode = words;
    if (!episode || episode === onDisk || state.get().status === "changed-outside") return;
    patch({ status: "saving", message: null });
    try {
      const file = state.get().name ?? freeFileName(episode, (await api["library:list"]({})).map((entry) => entry.file));
      const answer = await api["episode:save"]({ file, episode, basedOn: stamp });
      if (!answer.ok) {
        patch({ status: answer.code === "changed-outside" ? "changed-outside" : "failed", message: answer.message });
        return;
      }
      if (words !== null && state.get().name !== file) patch({ name: file });
      stamp = answer.stamp;
      onDisk = episode;
      patch({ status: words === episode ? "saved" : "unsaved", savedAt: answer.savedAt, message: null });
      if (words !== episode) later();
    } catch (error) {
      patch({ status: "failed", message: error instanceof Error ? error.message : String(error) });
    }
  };

  const waitNoMore = (): void => {
    if (timer) clearTimeout(timer);
    timer = null;
    waitingSince = null;
  };

  const saveNow = (): Promise<void> => {
    waitNoMore();
    running = running.then(save);
    return running;
  };

  const later = (): void => {
    if (timer) clearTimeout(timer);
    const now = Date.now();
    waitingSince ??= now;
    timer = setTimeout(() => void saveNow(), Math.max(0, Math.min(AUTOSAVE_AFTER, waitingSince + LONGEST_WAIT - now)));
  };

  return {
    state,
    hasUnsaved: () => words !== onDisk || state.get().status === "changed-outside",
    opened: (file, newStamp, episode) => {
      waitNoMore();
      stamp = newStamp;
      words = onDisk = episode;
      state.set({ name: file, status: file === null ? "unsaved" : "saved", savedAt: null, message: null });
    },
    changed: (episode) => {
      if (episode === words) return;
      words = episode;
      if (state.get().status !== "changed-outside") patch({ status: "unsaved" });
      later();
    },
    saveNow: async () => {
      // An untouched demo or empty page is saved when the coach asks for it.
      if (state.get().name === null) onDisk = null;
      await saveNow();
    },
    saveNowIfChanged: saveNow,
    saveAsNew: async () => {
      stamp = null;
      onDisk = null;
      state.set({ ...UNSAVED });
      await saveNow();
    },
    changedOutside: (file, newStamp) => {
      if (file !== state.get().name || newStamp === stamp) return;
      patch({ status: "changed-outside", message: newStamp === null ? `${file} was removed by another program.` : `${file} was changed by another program.` });
    },
  };
}
