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

export const documentId = z.enum(["shot-list.pdf", "shot-list.docx", "pocket-list.pdf", "voiceover.pdf", "voiceover.docx", "voiceover.txt", "cue-card.pdf", "cue-card.docx", "captions.vtt", "captions.srt", "handout.pdf", "phone-sheet.html"]);
const paperSize = z.enum(["a4", "letter"]);
const units = z.enum(["kg", "lb"]);

/** Fingerprint of a file's bytes as last read or written here. */
const stamp = z.string().max(128);
/** A failure the screens act on: one sentence for people. */
const problem = z.object({ ok: z.literal(false), code: z.string(), message: z.string() });

/** A take's sound file: a plain name in the episode's own folder of takes, so nothing outside can be named. */
export const takeFileName = z.string().max(160).regex(/^[\p{L}\p{N}][\p{L}\p{N}\p{M} _-]*\.wav$/u, "expected a plain name ending in .wav");
const lineId = z.string().regex(/^[A-Za-z0-9_-]{1,64}$/);
const takeId = z.string().regex(/^[A-Za-z0-9_-]{1,64}$/);
const takeSeconds = z.number().min(0).max(7200);

/** One reading of one say line. */
export const takeSchema = z.object({
  id: takeId,
  line: lineId,
  /** The words as they stood when they were read; other words want another take. */
  text: z.string().max(4000),
  /** Null for a take that was only tapped. */
  file: takeFileName.nullable(),
  /** From the first sound to the last, or from tap to tap; null when it was broken off. */
  seconds: takeSeconds.nullable(),
  /** Length of the sound file; null for a tapped take. */
  recorded: takeSeconds.nullable(),
  /** Seconds the engine had counted for the words. */
  planned: takeSeconds,
  at: z.iso.datetime(),
  /** The take of its line that counts; the newest that was read to its end unless another was chosen. */
  chosen: z.boolean(),
});
export type Take = z.output<typeof takeSchema>;

/** What a take is of. `name` becomes the start of its file's name: a block, whose title may have 200 characters, and "line 2". */
const takeOf = z.object({ file: episodeFileName, line: lineId, text: z.string().max(4000), name: z.string().max(300), planned: takeSeconds });
const takesAnswer = z.union([z.object({ ok: z.literal(true), folder: z.string(), takes: z.array(takeSchema) }), problem]);
const takeAnswer = z.union([z.object({ ok: z.literal(true), take: takeSchema }), problem]);

/** How somebody speaks, as far as it was measured. */
export const voiceSchema = z.object({
  pace: z.object({
    syllablesPerSecond: z.number().min(0.5).max(15),
    commaSeconds: z.number().min(0).max(10),
    sentenceSeconds: z.number().min(0).max(10),
    breathSeconds: z.number().min(0).max(10),
  }),
  /** What it was measured on. */
  lines: z.int().min(1),
  seconds: z.number().min(0),
  at: z.iso.datetime(),
});
export type Voice = z.output<typeof voiceSchema>;

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
  /** Every take of an episode's lines, in the order they were read. */
  "takes:list": call(z.object({ file: episodeFileName }), takesAnswer),
  /** Opens a sound file for a take, 16-bit mono; it is a whole WAV file after every piece that follows. */
  "takes:begin": call(takeOf.extend({ rate: z.int().min(8000).max(192_000) }), takeAnswer),
  /** Samples as base64, little-endian, `after` as many as were sent before; a piece that came twice is taken once. */
  "takes:append": call(z.object({ file: episodeFileName, take: takeId, after: z.int().min(0), samples: z.base64().max(4_000_000) }), z.union([z.object({ ok: z.literal(true), samples: z.int() }), problem])),
  "takes:end": call(z.object({ file: episodeFileName, take: takeId, seconds: takeSeconds.nullable() }), takeAnswer),
  /** A take without sound: from tap to tap. */
  "takes:tap": call(takeOf.extend({ seconds: takeSeconds }), takeAnswer),
  /** Which take of its line counts. */
  "takes:choose": call(z.object({ file: episodeFileName, take: takeId }), takesAnswer),
  /** A take's sound file as base64, to listen to. */
  "takes:sound": call(z.object({ file: episodeFileName, take: takeId }), z.union([z.object({ ok: z.literal(true), base64: z.string() }), problem])),
  /** The speaker's own pace; null until it was measured. */
  "voice:read": call(z.object({}), z.union([z.object({ ok: z.literal(true), voice: voiceSchema.nullable() }), problem])),
  "voice:keep": call(z.object({ voice: voiceSchema.nullable() }), z.union([z.object({ ok: z.literal(true) }), problem])),
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
