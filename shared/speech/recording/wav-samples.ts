import type { WavFormat } from "./wav-format";

type Reader = (view: DataView, at: number) => number;

/** One sample, -1 to 1: bytes count from 128, wider whole numbers from 0. */
const INTEGER: Readonly<Record<number, Reader>> = {
  1: (view, at) => (view.getUint8(at) - 128) / 2 ** 7,
  2: (view, at) => view.getInt16(at, true) / 2 ** 15,
  3: (view, at) => (view.getInt16(at + 1, true) * 2 ** 8 + view.getUint8(at)) / 2 ** 23,
  4: (view, at) => view.getInt32(at, true) / 2 ** 31,
};
/** A sample that is no number is silence. */
const FLOAT: Readonly<Record<number, Reader>> = {
  4: (view, at) => finite(view.getFloat32(at, true)),
  8: (view, at) => finite(view.getFloat64(at, true)),
};
const finite = (value: number): number => (Number.isFinite(value) ? value : 0);

/**
 * The samples in a piece of a WAV file, -1 to 1, the channels of each moment side by side. Bytes of a sample that is not whole are left.
 * @throws {RangeError} for a width of samples that `readWavFormat` does not give
 */
export function wavSamples(bytes: Uint8Array, { kind, bytesPerSample }: Pick<WavFormat, "kind" | "bytesPerSample">): Float32Array {
  const read = (kind === "integer" ? INTEGER : FLOAT)[bytesPerSample];
  if (!read) throw new RangeError(`wavSamples: no ${kind} samples of ${bytesPerSample} bytes`);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const samples = new Float32Array(Math.floor(bytes.length / bytesPerSample));
  for (let i = 0; i < samples.length; i += 1) samples[i] = read(view, i * bytesPerSample);
  return samples;
}
