import { refused, type RecordingFile, type RecordingRefused } from "./types";

/** How the samples of a WAV file are written. */
export interface WavFormat {
  readonly ok: true;
  readonly kind: "integer" | "float";
  readonly bytesPerSample: number;
  readonly channels: number;
  /** Samples a second in each channel. */
  readonly rate: number;
  /** Where the samples are in the file; whole moments of all channels only. Bytes. */
  readonly start: number;
  readonly bytes: number;
}

/** Format numbers. @source RFC 2361 and mmreg.h: WAVE_FORMAT_PCM, WAVE_FORMAT_IEEE_FLOAT, WAVE_FORMAT_EXTENSIBLE */
const PCM = 1;
const FLOAT = 3;
const EXTENSIBLE = 0xfffe;
/** Bytes of a format chunk without and with its extension, and where the extension names the format of the samples. */
const PLAIN_BYTES = 16;
const EXTENDED_BYTES = 40;
const SUBFORMAT_AT = 24;

/** Programs that write to a pipe cannot know the length: they leave 0, or about the most that 31 or 32 bits hold. */
const LEAST_UNKNOWN = 0x7fff_f000;
/** More parts before the sound than any program writes. */
const MOST_CHUNKS = 1000;

const NOT_WAV = "This is no WAV file. Save the recording as WAV, with plain PCM samples.";
const damaged = (what: string): RecordingRefused => refused("damaged", `The WAV file is damaged: ${what}.`);

const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
const letters = (bytes: Uint8Array, at: number): string => String.fromCharCode(...bytes.subarray(at, at + 4));

type Samples = Pick<WavFormat, "kind" | "bytesPerSample" | "channels" | "rate">;

/** The format chunk, as far as samples can be measured. @source Multimedia Programming Interface and Data Specifications 1.0 (IBM and Microsoft, 1991), "WAVE form" */
function samplesIn(chunk: Uint8Array): ({ readonly ok: true } & Samples) | RecordingRefused {
  if (chunk.length < PLAIN_BYTES) return damaged("it does not say how its samples are written");
  const view = viewOf(chunk);
  const named = view.getUint16(0, true);
  const codec = named === EXTENSIBLE && chunk.length >= EXTENDED_BYTES ? view.getUint16(SUBFORMAT_AT, true) : named;
  if (codec !== PCM && codec !== FLOAT) {
    return refused("compressed", `The WAV file is compressed, with codec number ${codec}; only plain samples can be measured. Save the recording as WAV with PCM samples.`);
  }
  const [channels, rate, block, bits] = [view.getUint16(2, true), view.getUint32(4, true), view.getUint16(12, true), view.getUint16(14, true)];
  const bytesPerSample = Math.ceil(bits / 8);
  if (channels === 0 || rate === 0) return damaged("it says it has no channels, or no samples a second");
  const isKnown = codec === PCM ? bytesPerSample >= 1 && bytesPerSample <= 4 : bits === 32 || bits === 64;
  if (!isKnown) return damaged(`${bits} bits a sample are not known for ${codec === PCM ? "PCM" : "floating-point"} samples`);
  if (block !== bytesPerSample * channels) return damaged(`${channels} × ${bits} bits do not take ${block} bytes`);
  return { ok: true, kind: codec === PCM ? "integer" : "float", bytesPerSample, channels, rate };
}

/** Where the samples lie: to the file's end where the length was not known when it was written. */
function placed(samples: Samples, start: number, said: number, size: number): WavFormat | RecordingRefused {
  const there = size - start;
  const isUnknown = said === 0 || said >= LEAST_UNKNOWN;
  const block = samples.bytesPerSample * samples.channels;
  const secondsIn = (bytes: number): string => (bytes / block / samples.rate).toFixed(1);
  if (!isUnknown && said > there) return refused("cut-short", `The WAV file is cut short: it should hold ${secondsIn(said)} s of sound, and ${secondsIn(there)} s are there. Copy it again, or save it anew.`);
  const bytes = isUnknown ? Math.min(there, said || there) : said;
  return { ok: true, ...samples, start, bytes: Math.floor(bytes / block) * block };
}

/** Reads what a WAV file says of its samples, and finds them; the samples themselves are not read. */
export async function readWavFormat(file: RecordingFile): Promise<WavFormat | RecordingRefused> {
  if (file.size === 0) return refused("empty", "The file is empty.");
  const head = await file.read(0, 12);
  if (head.length >= 4 && letters(head, 0) === "RF64") return refused("too-long", "The WAV file is one of more than 4 GB (RF64). Save the part with your voice as a WAV file of its own.");
  if (head.length < 12 || letters(head, 0) !== "RIFF" || letters(head, 8) !== "WAVE") return refused("not-wav", NOT_WAV);
  let samples: ReturnType<typeof samplesIn> | null = null;
  let at = 12;
  for (let chunks = 0; chunks < MOST_CHUNKS && at + 8 <= file.size; chunks += 1) {
    const name = await file.read(at, 8);
    if (name.length < 8) break;
    const said = viewOf(name).getUint32(4, true);
    if (letters(name, 0) === "data") return samples ? (samples.ok ? placed(samples, at + 8, said, file.size) : samples) : damaged("its samples come before it says how they are written");
    if (at + 8 + said > file.size) break;
    if (letters(name, 0) === "fmt ") samples = samplesIn(await file.read(at + 8, Math.min(said, EXTENDED_BYTES)));
    // A chunk of odd length is followed by one byte of nothing.
    at += 8 + said + (said % 2);
  }
  return samples && !samples.ok ? samples : refused("cut-short", "The WAV file is cut short: it ends before its sound begins. Copy it again, or save it anew.");
}
