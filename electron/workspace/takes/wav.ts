/** Bytes before the samples in the files written here. */
export const WAV_HEADER_BYTES = 44;
const BYTES_PER_SAMPLE = 2;

/** Most samples bytes one file can hold: its sizes are 32-bit numbers. */
export const MAX_DATA_BYTES = 0xffff_ffff - WAV_HEADER_BYTES;

/**
 * The header of a mono 16-bit PCM WAV file.
 * @param rate - samples a second
 * @param dataBytes - bytes of samples that follow
 * @source RIFF WAVE, Multimedia Programming Interface and Data Specifications 1.0 (IBM and Microsoft, 1991), "WAVE form", WAVE_FORMAT_PCM
 */
export function wavHeader(rate: number, dataBytes: number): Buffer {
  const header = Buffer.alloc(WAV_HEADER_BYTES);
  header.write("RIFF", 0, "latin1");
  header.writeUInt32LE(WAV_HEADER_BYTES - 8 + dataBytes, 4);
  header.write("WAVEfmt ", 8, "latin1");
  header.writeUInt32LE(16, 16);
  header.writeUInt16LE(1, 20);
  header.writeUInt16LE(1, 22);
  header.writeUInt32LE(rate, 24);
  header.writeUInt32LE(rate * BYTES_PER_SAMPLE, 28);
  header.writeUInt16LE(BYTES_PER_SAMPLE, 32);
  header.writeUInt16LE(8 * BYTES_PER_SAMPLE, 34);
  header.write("data", 36, "latin1");
  header.writeUInt32LE(dataBytes, 40);
  return header;
}

/** Seconds of sound in a file of this size; 0 for one without samples. */
export function wavSeconds(fileBytes: number, rate: number): number {
  return Math.max(0, fileBytes - WAV_HEADER_BYTES) / BYTES_PER_SAMPLE / rate;
}

/** Samples a second of a file written here, or null when it is no such file. */
export function rateOf(header: Buffer): number | null {
  const isOurs = header.length >= WAV_HEADER_BYTES && header.toString("latin1", 0, 4) === "RIFF" && header.toString("latin1", 8, 16) === "WAVEfmt " && header.toString("latin1", 36, 40) === "data";
  const rate = isOurs ? header.readUInt32LE(24) : 0;
  return rate > 0 ? rate : null;
}
