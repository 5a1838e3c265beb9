import type { RecordingFile } from "../../../../shared/speech";

/** How a test's WAV file is written. */
export interface WavKind {
  readonly kind: "integer" | "float";
  readonly bits: number;
  readonly channels: number;
  readonly rate: number;
  /** With the longer format chunk that names its format by an identifier. */
  readonly isExtensible?: boolean;
}

export const PLAIN: WavKind = { kind: "integer", bits: 16, channels: 1, rate: 16_000 };

export const chunk = (name: string, body: Buffer, said = body.length): Buffer => {
  const head = Buffer.alloc(8);
  head.write(name, 0, "latin1");
  head.writeUInt32LE(said, 4);
  return Buffer.concat([head, body, Buffer.alloc(body.length % 2)]);
};

export const riff = (...chunks: readonly Buffer[]): Buffer => {
  const body = Buffer.concat([Buffer.from("WAVE", "latin1"), ...chunks]);
  return chunk("RIFF", body);
};

/** A format chunk; `codec` names another than the kind's own. */
export function formatChunk({ kind, bits, channels, rate, isExtensible = false }: WavKind, codec = kind === "integer" ? 1 : 3): Buffer {
  const body = Buffer.alloc(isExtensible ? 40 : 16);
  body.writeUInt16LE(isExtensible ? 0xfffe : codec, 0);
  body.writeUInt16LE(channels, 2);
  body.writeUInt32LE(rate, 4);
  body.writeUInt32LE((rate * channels * bits) / 8, 8);
  body.writeUInt16LE((channels * bits) / 8, 12);
  body.writeUInt16LE(bits, 14);
  if (isExtensible) {
    body.writeUInt16LE(22, 16);
    body.writeUInt16LE(bits, 18);
    body.writeUInt16LE(codec, 24);
    body.write("000000001000800000aa00389b71", 26, "hex");
  }
  return chunk("fmt ", body);
}

/** Samples from -1 to 1 as a file holds them, each in every channel. */
export function sampleBytes(samples: ArrayLike<number>, { kind, bits, channels }: WavKind): Buffer {
  const width = bits / 8;
  const bytes = Buffer.alloc(samples.length * channels * width);
  const most = 2 ** (bits - 1) - 1;
  for (let i = 0; i < samples.length; i += 1) {
    for (let c = 0; c < channels; c += 1) {
      const at = (i * channels + c) * width;
      const value = samples[i] ?? 0;
      if (kind === "float" && bits === 32) bytes.writeFloatLE(value, at);
      else if (kind === "float") bytes.writeDoubleLE(value, at);
      else if (bits === 8) bytes.writeUInt8(Math.round(value * most) + 128, at);
      else bytes.writeIntLE(Math.round(value * most), at, width);
    }
  }
  return bytes;
}

export const wav = (samples: ArrayLike<number>, kind: WavKind = PLAIN): Buffer => riff(formatChunk(kind), chunk("data", sampleBytes(samples, kind)));

/** Bytes as a file, and how many of them were asked for at once at most. */
export function fileOf(bytes: Buffer): RecordingFile & { readonly asked: () => number } {
  let most = 0;
  return {
    size: bytes.length,
    asked: () => most,
    read: (at, length) => {
      most = Math.max(most, length);
      return Promise.resolve(bytes.subarray(at, at + length));
    },
  };
}

/** Bursts of a buzz with silences between, over a room's noise. */
export function buzz(parts: readonly { readonly seconds: number; readonly loud: number }[], rate = PLAIN.rate, noise = 0.001): Float32Array {
  const samples = new Float32Array(Math.round(parts.reduce((sum, { seconds }) => sum + seconds, 0) * rate));
  let [at, seed, end] = [0, 12345, 0];
  for (const { seconds, loud } of parts) {
    end += seconds * rate;
    for (; at < Math.min(samples.length, Math.round(end)); at += 1) {
      seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648;
      samples[at] = loud * Math.sin((2 * Math.PI * 140 * at) / rate) + noise * (seed / 1_073_741_824 - 1);
    }
  }
  return samples;
}
