import { z } from "zod";
import { episodeSchema } from "./episode";

/**
 * The one bridge between the screens and what runs on Node. Every channel with its request and its answer;
 * nothing else names a channel. Preload and loopback host both map over `bridge` and `bridgeEvents`.
 *
 * What it may not do: carry file system calls. Channels name intents; paths are file names inside the library.
 */
const call = <Q extends z.ZodType, A extends z.ZodType>(request: Q, answer: A) => ({ request, answer });

/** A file inside the library: a plain name, no folders, so nothing outside can be named. */
export const episodeFileName = z.string().max(160).regex(/^[^/\\:*?"<>|\u0000-\u001f]+\.episode\.json$/, "expected a file name ending in .episode.json").refine((name) => !name.startsWith("."), "a file name cannot start with a dot")
  // Names that are devices on Windows, whatever follows the dot.
  .refine((name) => !/^(?:con|prn|aux|nul|com\d|lpt\d)\./i.test(name), "this name belongs to a device on some computers");

export const documentId = z.enum(["shot-list.pdf", "shot-list.docx", "voiceover.pdf", "voiceover.docx", "handout.pdf"]);
const paperSize = z.enum(["a4", "letter"]);
const units = z.enum(["kg", "lb"]);

/** Fingerprint of a file's bytes as last read or written here. */
const stamp = z.string().max(128);
/** A failure the screens act on: one sentence for people. */
const problem = z.object({ ok: z.literal(false), code: z.string(), message: z.string() });

const openedEpisode = z.object({ ok: z.literal(true), file: episodeFileName, episode: episodeSchema, stamp, migratedFrom: z.number().nullable() });
const libraryEntry = z.object({
  file: episodeFileName,
  /** Null when the file could not be read; `problem` says why. */
  title: z.string().nullable(),
  series: z.string().nullable(),
  savedAt: z.string(),
  problem: z.string().nullable(),
});

export const bridge = {
  /** What the app runs on. `start` is the file to open first, when the start-up named one. */
  "app:about": call(z.object({}), z.object({ version: z.string(), window: z.enum(["electron", "browser"]), library: z.string(), start: z.enum(["demo", "last"]).nullable() })),
  /** Episodes in the library, newest first. */
  "library:list": call(z.object({}), z.array(libraryEntry)),
  "episode:open": call(z.object({ file: episodeFileName }), z.union([openedEpisode, problem])),
  /** `basedOn` is the stamp the words were read from, null for a new file; a file changed by another program is never overwritten. */
  "episode:save": call(
    z.object({ file: episodeFileName, episode: episodeSchema, basedOn: stamp.nullable() }),
    z.union([z.object({ ok: z.literal(true), stamp, savedAt: z.string() }), problem]),
  ),
  /** Older states kept of a file, newest first. */
  "episode:history": call(z.object({ file: episodeFileName }), z.array(z.object({ state: z.string(), savedAt: z.string(), blocks: z.number() }))),
  "episode:older": call(z.object({ file: episodeFileName, state: z.string().max(64) }), z.union([z.object({ ok: z.literal(true), episode: episodeSchema }), problem])),
  /** Writes documents into a folder beside the library; progress comes as events under `job`. */
  "papers:export": call(
    z.object({ job: z.string().max(64), episode: episodeSchema, documents: z.array(documentId).min(1), paper: paperSize, units }),
    z.union([z.object({ ok: z.literal(true), folder: z.string(), files: z.array(z.string()), notes: z.array(z.string()) }), problem]),
  ),
  "papers:cancel": call(z.object({ job: z.string().max(64) }), z.object({ cancelled: z.boolean() })),
  /** One document as base64, for the preview. */
  "papers:render": call(z.object({ episode: episodeSchema, document: documentId, paper: paperSize, units }), z.union([z.object({ ok: z.literal(true), base64: z.string(), notes: z.array(z.string()) }), problem])),
};

export const bridgeEvents = {
  /** Another program changed, replaced or removed a file of the library. */
  "library:changed": z.object({ file: episodeFileName, stamp: stamp.nullable() }),
  "papers:progress": z.object({ job: z.string(), done: z.number(), total: z.number(), document: documentId.nullable() }),
  /** A menu item of the desktop window. */
  "menu:chosen": z.object({ item: z.enum(["new", "open", "save", "undo", "redo", "make-papers", "checks"]) }),
};

export type Channel = keyof typeof bridge;
export type Request<C extends Channel> = z.output<(typeof bridge)[C]["request"]>;
export type Answer<C extends Channel> = z.output<(typeof bridge)[C]["answer"]>;
export type BridgeEvent = keyof typeof bridgeEvents;
export type EventPayload<E extends BridgeEvent> = z.output<(typeof bridgeEvents)[E]>;

/** The host side: one handler per channel, so a missing one does not compile. */
export type Handlers = { readonly [C in Channel]: (request: Request<C>) => Promise<Answer<C>> };

/** The screens' side. `on` returns a function that stops listening. */
export type Api = Handlers & { readonly on: <E extends BridgeEvent>(event: E, listener: (payload: EventPayload<E>) => void) => () => void };
