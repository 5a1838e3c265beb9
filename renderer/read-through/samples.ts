/** Sound from -1 to 1 as 16-bit samples; what is louder is cut off at the edge. */
export function toSamples(sound: Float32Array): Int16Array {
  const samples = new Int16Array(sound.length);
  for (let i = 0; i < sound.length; i++) samples[i] = Math.max(-32768, Math.min(32767, Math.round((sound[i] ?? 0) * 32767)));
  return samples;
}

/** Pieces one behind the other. */
export function joined(pieces: readonly Int16Array[]): Int16Array {
  const all = new Int16Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return all;
}

/** Samples as base64, lowest byte first whatever this computer's own order is. */
export function base64Of(samples: Int16Array): string {
  const bytes = new Uint8Array(samples.length * 2);
  const view = new DataView(bytes.buffer);
  for (let i = 0; i < samples.length; i++) view.setInt16(i * 2, samples[i] ?? 0, true);
  let text = "";
  for (let i = 0; i < bytes.length; i += 8192) text += String.fromCharCode(...bytes.subarray(i, i + 8192));
  return btoa(text);
}

/** Loudness of a piece: the root of the mean square, and the highest peak; both 0 to 1. */
export function loudness(sound: Float32Array): { readonly rms: number; readonly peak: number } {
  let [sum, peak] = [0, 0];
  for (const sample of sound) {
    sum += sample * sample;
    peak = Math.max(peak, Math.abs(sample));
  }
  return { rms: sound.length > 0 ? Math.sqrt(sum / sound.length) : 0, peak };
}
