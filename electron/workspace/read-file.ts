import { isUtf8 } from "node:buffer";
import { open, stat } from "node:fs/promises";
import { MAX_FILE_BYTES, readEpisode, type Episode } from "../../shared/episode";
import { diskProblem, problem, type Problem } from "./sentences";
import { stampOf } from "./stamp";

export interface FileBytes {
  readonly ok: true;
  readonly bytes: Buffer;
  readonly stamp: string;
  readonly modified: Date;
}

export interface EpisodeFile {
  readonly ok: true;
  readonly episode: Episode;
  readonly stamp: string;
  readonly modified: Date;
  readonly migratedFrom: number | null;
}

const megabytes = (bytes: number): string => `${(bytes / 1024 / 1024).toFixed(1)} MB`;

/**
 * A whole file, its size checked before a byte is read. Never throws.
 * @param name - what people call the file, for the sentence when it fails
 */
export async function readBytes(path: string, name: string): Promise<FileBytes | Problem> {
  try {
    // Asked before opening: opening a named pipe would wait for its other end.
    if (!(await stat(path)).isFile()) return problem("not-a-file", `"${name}" is not an ordinary file.`);
    const handle = await open(path, "r");
    try {
      const facts = await handle.stat();
      if (facts.size > MAX_FILE_BYTES) {
        return problem("too-big", `"${name}" is ${megabytes(facts.size)}; an episode is at most ${megabytes(MAX_FILE_BYTES)}.`);
      }
      const bytes = await handle.readFile();
      return { ok: true, bytes, stamp: stampOf(bytes), modified: facts.mtime };
    } finally {
      await handle.close();
    }
  } catch (error) {
    return diskProblem(error, `"${name}" could not be read`);
  }
}

/** The number of the first line, from 1, that is not UTF-8. */
function firstBadLine(bytes: Buffer): number {
  let line = 1;
  for (let start = 0; start < bytes.length; line++) {
    const end = bytes.indexOf(0x0a, start);
    const stop = end === -1 ? bytes.length : end;
    if (!isUtf8(bytes.subarray(start, stop))) return line;
    start = stop + 1;
  }
  return line;
}

/** The episode in some bytes. What is wrong comes back as a sentence with the place in the file. */
export function episodeFrom(bytes: Buffer, name: string): { ok: true; episode: Episode; migratedFrom: number | null } | Problem {
  if (!isUtf8(bytes)) return problem("not-text", `"${name}" is not UTF-8 text: line ${firstBadLine(bytes)} holds other bytes. Save it as UTF-8 and open it again.`);
  const read = readEpisode(bytes.toString("utf8"));
  return read.ok ? read : problem(read.code, `"${name}" was not opened and is left as it is. ${read.message}`);
}

/** Reads and checks an episode file; the file is never changed. */
export async function readEpisodeFile(path: string, name: string): Promise<EpisodeFile | Problem> {
  const file = await readBytes(path, name);
  if (!file.ok) return file;
  const read = episodeFrom(file.bytes, name);
  return read.ok ? { ...read, stamp: file.stamp, modified: file.modified } : read;
}
