import { join } from "node:path";
import type { BridgeEvent, EventPayload, Handlers } from "../../shared/bridge";
import type { Episode } from "../../shared/episode";
import type { DocumentId, FontFiles } from "../../shared/exports";
import { nodeDisk, type Disk } from "./atomic-write";
import { Episodes } from "./episodes";
import { readFonts } from "./fonts";
import { exportOptions, renderPaper, writePapers, type PaperParts } from "./papers";
import { pageFor } from "./phone-page";
import { problem } from "./sentences";
import { speakerOf, type Speaker } from "./speaker";
import { STEM_END, Takes } from "./takes";
import { keepVoice, readVoice } from "./voice";

export { libraryFolder } from "./folder";

export interface WorkspaceSetup {
  /** Absolute path of the library; made when first needed. */
  readonly library: string;
  /** The app's own fonts folder. */
  readonly fonts: string;
  /** Where the phone sheet's script and style lie; beside the fonts unless said otherwise. */
  readonly phoneSheet?: string;
  readonly version: string;
  readonly window: "electron" | "browser";
  /** What the screens open first. */
  readonly start: "demo" | "last" | null;
  readonly now?: () => Date;
  readonly disk?: Disk;
}

/** One event towards the screens. */
export type BridgeMessage = { readonly [E in BridgeEvent]: { readonly event: E; readonly payload: EventPayload<E> } }[BridgeEvent];

/** Everything the screens may ask of this computer. It touches the library folder and nothing else. */
export interface Workspace {
  readonly library: string;
  readonly handlers: Handlers;
  /** @returns a function that stops listening */
  readonly listen: (listener: (message: BridgeMessage) => void) => () => void;
  readonly close: () => void;
}

const PAPERS_FOLDER = "papers";

/** "Rows, presses, carries" as a folder name, for an episode that has not been saved yet. */
export function folderNameFor(episode: Pick<Episode, "title" | "series">): string {
  const words = [episode.series.name, episode.series.number ?? "", episode.title].join(" ");
  return words.normalize("NFC").toLowerCase().replace(/[^\p{L}\p{N}]+/gu, "-").replace(/^-+|-+$/g, "").slice(0, 80) || "untitled-episode";
}

/** Opens the service that stands behind both windows. Reads and writes nothing until it is asked. */
export function openWorkspace(setup: WorkspaceSetup): Workspace {
  const { library, disk = nodeDisk, now = () => new Date() } = setup;
  const listeners = new Set<(message: BridgeMessage) => void>();
  const tell = (message: BridgeMessage): void => listeners.forEach((listener) => listener(message));
  const episodes = new Episodes(library, disk, now, (payload) => tell({ event: "library:changed", payload }));
  const takes = new Takes(library, disk, now);
  const jobs = new Map<string, { cancelled: boolean }>();
  let fonts: Promise<FontFiles> | null = null;
  const loadFonts = (): Promise<FontFiles> => {
    fonts ??= readFonts(setup.fonts).catch((error: unknown) => {
      fonts = null;
      throw error;
    });
    return fonts;
  };
  const phoneSheet = setup.phoneSheet ?? join(setup.fonts, "..", "phone-sheet");
  const partsFor = async (documents: readonly DocumentId[]): Promise<PaperParts> => ({ fonts: await loadFonts(), page: await pageFor(documents, phoneSheet) });

  const speakerFor = (episode: Episode, documents: readonly DocumentId[]): Promise<Speaker> => {
    const stem = episodes.stemOf(episode);
    return speakerOf(takes, stem === null ? null : `${stem}${STEM_END}`, episode, documents);
  };

  const handlers: Handlers = {
    "app:about": async () => ({ version: setup.version, window: setup.window, library, start: setup.start }),
    "library:list": () => episodes.list(),
    "episode:open": ({ file }) => episodes.open(file),
    "episode:save": async (request) => {
      const before = episodes.stemOf(request.episode);
      const answer = await episodes.save(request);
      // The same episode in a new file, as after another program changed the old one.
      if (answer.ok && request.basedOn === null && before !== null) await takes.carryOver(`${before}${STEM_END}`, request.file);
      return answer;
    },
    "episode:history": ({ file }) => episodes.history(file),
    "episode:older": ({ file, state }) => episodes.older(file, state),
    "papers:export": async ({ job, episode, documents, paper, units }) => {
      if (jobs.has(job)) return problem("job-running", "These papers are already being made.");
      const state = { cancelled: false };
      jobs.set(job, state);
      try {
        const speaker = await speakerFor(episode, documents);
        return await writePapers({
          episode,
          documents,
          options: exportOptions(episode, { paper, units }, await partsFor(documents), speaker),
          notes: speaker.notes,
          folder: join(library, PAPERS_FOLDER, episodes.stemOf(episode) ?? folderNameFor(episode)),
          within: library,
          disk,
          progress: (done, document) => tell({ event: "papers:progress", payload: { job, done, total: new Set(documents).size, document } }),
          isCancelled: () => state.cancelled,
        });
      } finally {
        jobs.delete(job);
      }
    },
    "papers:cancel": async ({ job }) => {
      const state = jobs.get(job);
      if (state) state.cancelled = true;
      return { cancelled: state !== undefined };
    },
    "papers:render": async ({ episode, document, paper, units }) => {
      const speaker = await speakerFor(episode, [document]);
      const rendered = await renderPaper(episode, document, exportOptions(episode, { paper, units }, await partsFor([document]), speaker));
      return rendered.ok ? { ok: true, base64: Buffer.from(rendered.bytes).toString("base64"), notes: [...rendered.notes, ...speaker.notes] } : rendered;
    },
    "takes:list": (request) => takes.list(request),
    "takes:begin": (request) => takes.begin(request),
    "takes:append": (request) => takes.append(request),
    "takes:end": (request) => takes.end(request),
    "takes:tap": (request) => takes.tap(request),
    "takes:choose": (request) => takes.choose(request),
    "takes:sound": (request) => takes.sound(request),
    "voice:read": () => readVoice(library),
    "voice:keep": ({ voice }) => keepVoice(library, voice, disk),
  };

  return {
    library,
    handlers,
    listen: (listener) => {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
    close: () => {
      episodes.close();
      jobs.forEach((state) => (state.cancelled = true));
    },
  };
}
