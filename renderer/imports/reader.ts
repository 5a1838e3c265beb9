import { idMaker } from "../../shared/episode";
import { importBytes, MAX_IMPORT_BYTES, tooBig, type ImportResult } from "../../shared/imports";

/** Reads foreign words in a thread of its own, so that the screens go on meanwhile and a reading can be stopped. */

/** A file, or pasted words with no name. */
export interface ReadRequest {
  readonly name: string;
  readonly words: Blob;
}

/** What comes back: now and then how far the reading is, from 0 to 1, and in the end what was read. */
export type ReadAnswer = { readonly progress: number } | { readonly result: ImportResult };

const tell = (answer: ReadAnswer): void => postMessage(answer);

async function read({ name, words }: ReadRequest): Promise<ImportResult> {
  if (words.size > MAX_IMPORT_BYTES) return tooBig(words.size);
  return importBytes(new Uint8Array(await words.arrayBuffer()), name, idMaker(Math.random), (progress) => tell({ progress }));
}

addEventListener("message", ({ data }: MessageEvent<ReadRequest>) => void read(data).then((result) => tell({ result }), reportError));
