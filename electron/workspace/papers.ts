import { realpath } from "node:fs/promises";
import { join } from "node:path";
import { setImmediate as breathe } from "node:timers/promises";
import type { Request } from "../../shared/bridge";
import type { Episode } from "../../shared/episode";
import { exporterFor, fileNameFor, type DocumentId, type ExportOptions, type FontFiles, type PhonePage } from "../../shared/exports";
import { paceOf } from "../../shared/speech";
import { nodeDisk, writeAtomic, type Disk } from "./atomic-write";
import { isInside } from "./library-paths";
import { makeFolder } from "./make-folder";
import { diskProblem, problem, type Problem } from "./sentences";
import type { Speaker } from "./speaker";

/** Stands in for the date of an episode that has none, so that the same episode always gives the same bytes. */
const UNDATED = "2000-01-01";

/**
 * The date written into a document: of the session, else of publishing, else a fixed one. Never today's:
 * the same episode gives the same bytes whenever it is printed.
 */
export function paperDate(episode: Pick<Episode, "session" | "publish">): string {
  return episode.session.date ?? episode.publish?.date ?? UNDATED;
}

export type PaperChoice = Pick<Request<"papers:export">, "paper" | "units">;

/** What every paper is made from beside the episode; read once. `page` is null where it is not needed. */
export interface PaperParts {
  readonly fonts: FontFiles;
  readonly page: PhonePage | null;
}

/**
 * What a document is made with; words are said as the series says them.
 * @param speaker - whose pace is counted at, and what is known of their lines
 */
export function exportOptions(episode: Episode, choice: PaperChoice, { fonts, page }: PaperParts, { pace, measured }: Pick<Speaker, "pace" | "measured">): ExportOptions {
  return { paper: choice.paper, units: choice.units, fonts, pace: paceOf(episode, pace), measured, date: paperDate(episode), ...(page === null ? {} : { page }) };
}

/** One document as bytes, or the sentence why not. */
export async function renderPaper(episode: Episode, document: DocumentId, options: ExportOptions): Promise<{ ok: true; bytes: Uint8Array; notes: readonly string[] } | Problem> {
  try {
    return { ok: true, ...(await exporterFor(document).render(episode, options)) };
  } catch (error) {
    return problem("not-rendered", `The ${document} could not be made: ${error instanceof Error ? error.message : String(error)}`);
  }
}

export interface PapersJob {
  readonly episode: Episode;
  readonly documents: readonly DocumentId[];
  readonly options: ExportOptions;
  readonly folder: string;
  /** What to tell beside the documents' own notes, after them. */
  readonly notes?: readonly string[];
  /** The folder must really lie in this one, links followed; for papers of the library. */
  readonly within?: string;
  readonly disk?: Disk;
  readonly progress?: (done: number, document: DocumentId | null) => void;
  readonly isCancelled?: () => boolean;
}

/**
 * Writes documents into a folder, which is made when missing. Each file is whole or not there;
 * between two documents the job can be stopped, and those already written stay.
 */
export async function writePapers(job: PapersJob): Promise<{ ok: true; folder: string; files: string[]; notes: string[] } | Problem> {
  const { episode, options, folder, disk = nodeDisk, progress = () => undefined, isCancelled = () => false } = job;
  const documents = [...new Set(job.documents)];
  const files: string[] = [];
  const notes: string[] = [];
  try {
    await makeFolder(folder, disk);
    if (job.within !== undefined && !isInside(await realpath(job.within), await realpath(folder))) {
      return problem("outside", `The folder ${folder} is a link to a place outside the library; nothing was written.`);
    }
  } catch (error) {
    return diskProblem(error, `The folder ${folder} could not be made`);
  }
  for (const document of documents) {
    progress(files.length, document);
    // Lets a cancel, and everything else waiting, have its turn before the next document is drawn.
    await breathe();
    if (isCancelled()) return problem("cancelled", `Stopped after ${files.length} of ${documents.length} documents; those are in ${folder}.`);
    const rendered = await renderPaper(episode, document, options);
    if (!rendered.ok) return rendered;
    const file = fileNameFor(episode, document);
    try {
      await writeAtomic(join(folder, file), rendered.bytes, disk);
    } catch (error) {
      return diskProblem(error, `"${file}" was not written`);
    }
    files.push(file);
    for (const note of rendered.notes) if (!notes.includes(note)) notes.push(note);
  }
  progress(files.length, null);
  return { ok: true, folder, files, notes: [...notes, ...(job.notes ?? [])] };
}

