import { idMaker } from "../../shared/episode";
import { importBytes, tooBig, type ImportResult } from "../../shared/imports";

/** Reads foreign words in a thread of its own, so that the screens go on meanwhile and a reading can be stopped. */

/** A file, or pasted words with no name. `bytes` is null for a file that is too big to be loaded. */
export interface ReadRequest {
  readonly name: string;
  readonly size: number;
  readonly bytes: Uint8Array | null;
}

const read = ({ name, size, bytes }: ReadRequest): ImportResult => (bytes === null ? tooBig(size) : importBytes(bytes, name, idMaker(Math.random)));

addEventListener("message", ({ data }: MessageEvent<ReadRequest>) => postMessage(read(data)));
