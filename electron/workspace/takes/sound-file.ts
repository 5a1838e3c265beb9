import { constants } from "node:fs";
import { lstat, open, type FileHandle } from "node:fs/promises";
import { MAX_DATA_BYTES, WAV_HEADER_BYTES, rateOf, wavHeader, wavSeconds } from "./wav";

/** A link in a file's place is not followed; Windows has no such flag and no such links for ordinary users. */
const NO_LINK = constants.O_NOFOLLOW ?? 0;

/**
 * Makes a WAV file without samples. Never replaces one that is there.
 * @throws the system's error, EEXIST when the name is taken
 */
export async function makeSoundFile(path: string, rate: number): Promise<void> {
  const file = await open(path, constants.O_WRONLY | constants.O_CREAT | constants.O_EXCL | NO_LINK, 0o666);
  try {
    await file.writeFile(wavHeader(rate, 0));
  } finally {
    await file.close();
  }
}

async function headerOf(file: FileHandle): Promise<{ rate: number; bytes: number }> {
  const header = Buffer.alloc(WAV_HEADER_BYTES);
  await file.read(header, 0, WAV_HEADER_BYTES, 0);
  const rate = rateOf(header);
  if (rate === null) throw new Error("it is no longer the sound file it was");
  return { rate, bytes: (await file.stat()).size - WAV_HEADER_BYTES };
}

/**
 * Adds samples behind the first `after` ones and brings the header up to date, so that the file is whole after each piece
 * and a power cut costs no more than the last one. A piece that came before is written over with itself.
 * @returns samples in the file now
 * @throws the system's error, or a reason when a piece is missing in between or the file is full
 */
export async function appendSamples(path: string, after: number, samples: Buffer): Promise<number> {
  const file = await open(path, constants.O_RDWR | NO_LINK);
  try {
    const { rate, bytes } = await headerOf(file);
    const start = after * 2;
    if (start > bytes) throw new Error("a piece before it is missing");
    const end = Math.max(bytes, start + samples.length);
    if (end > MAX_DATA_BYTES) throw new Error("a sound file holds no more than 4 GB");
    await file.write(samples, 0, samples.length, WAV_HEADER_BYTES + start);
    await file.write(wavHeader(rate, end), 0, WAV_HEADER_BYTES, 0);
    return end / 2;
  } finally {
    await file.close();
  }
}

/** Seconds of sound in a file; null when it is gone or no sound file of ours. */
export async function soundSeconds(path: string): Promise<number | null> {
  try {
    if (!(await lstat(path)).isFile()) return null;
    const file = await open(path, constants.O_RDONLY | NO_LINK);
    try {
      const { rate, bytes } = await headerOf(file);
      return wavSeconds(bytes + WAV_HEADER_BYTES, rate);
    } finally {
      await file.close();
    }
  } catch {
    return null;
  }
}
