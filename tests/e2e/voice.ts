import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Somebody reading sentences aloud, as a sound file a browser takes for its microphone. */
export interface Voice {
  readonly path: string;
  /** From the first sound of each sentence to its last; seconds. */
  readonly seconds: readonly number[];
  /** What spoke: an open speech synthesiser where it is installed, else tones in its place. */
  readonly by: "espeak-ng" | "tones";
}

const RATE = 22_050;
/** Silence before the first sentence, while the test presses its buttons, and between two; seconds. */
const LEAD = 4;
const PAUSE = 2;

/** One sentence by the synthesiser; null where it is not installed. */
function spoken(text: string): Int16Array | null {
  const result = spawnSync("espeak-ng", ["-v", "en", "-s", "150", "--stdout", text], { maxBuffer: 1 << 26 });
  if (result.status !== 0) return null;
  const bytes = result.stdout;
  const at = bytes.indexOf("data") + 8;
  const rate = bytes.readUInt32LE(24);
  if (rate !== RATE) throw new Error(`espeak-ng speaks at ${rate} samples a second, expected ${RATE}`);
  return Int16Array.from({ length: Math.floor((bytes.length - at) / 2) }, (_, i) => bytes.readInt16LE(at + 2 * i));
}

/** A tone for every word, with short gaps, about as long as the words take. */
function tones(text: string): Int16Array {
  const words = text.split(/\s+/).map((word) => 0.12 + 0.045 * word.length);
  return Int16Array.from(words.flatMap((length) => Array.from({ length: Math.round((length + 0.04) * RATE) }, (_, i) => (i < length * RATE ? 9000 * Math.sin((2 * Math.PI * 180 * i) / RATE) : 0))));
}

/** Without the silence at both ends; quieter than a hundredth of full scale is silence. */
function trimmed(samples: Int16Array): Int16Array {
  const isLoud = (sample: number): boolean => Math.abs(sample) > 330;
  return samples.slice(samples.findIndex(isLoud), samples.findLastIndex(isLoud) + 1);
}

const silence = (seconds: number): Int16Array => new Int16Array(Math.round(seconds * RATE));

/** Makes the sound file. */
export function makeVoice(sentences: readonly string[]): Voice {
  const byVoice = sentences.map(spoken);
  const isSpoken = byVoice.every((one) => one !== null);
  const said = sentences.map((text, i) => trimmed(isSpoken ? (byVoice[i] ?? tones(text)) : tones(text)));
  const parts = [silence(LEAD), ...said.flatMap((one) => [one, silence(PAUSE)]), silence(20)];
  const samples = Buffer.concat(parts.map((part) => Buffer.from(part.buffer, part.byteOffset, part.byteLength)));
  const header = Buffer.alloc(44);
  header.write("RIFF", 0);
  header.writeUInt32LE(36 + samples.length, 4);
  header.write("WAVEfmt ", 8);
  header.writeUInt32LE(16, 16);
  header.writeUInt16LE(1, 20);
  header.writeUInt16LE(1, 22);
  header.writeUInt32LE(RATE, 24);
  header.writeUInt32LE(RATE * 2, 28);
  header.writeUInt16LE(2, 32);
  header.writeUInt16LE(16, 34);
  header.write("data", 36);
  header.writeUInt32LE(samples.length, 40);
  const path = join(mkdtempSync(join(tmpdir(), "repwright-voice-")), "voice.wav");
  writeFileSync(path, Buffer.concat([header, samples]));
  return { path, seconds: said.map(({ length }) => length / RATE), by: isSpoken ? "espeak-ng" : "tones" };
}

/** The samples of a sound file a take was written to, and its rate; throws when it is no plain 16-bit mono WAV. */
export function readWav(path: string): { readonly rate: number; readonly samples: Int16Array } {
  const bytes = readFileSync(path);
  const facts = [bytes.toString("latin1", 0, 4), bytes.readUInt32LE(4), bytes.toString("latin1", 8, 16), bytes.readUInt16LE(20), bytes.readUInt16LE(22), bytes.readUInt16LE(34), bytes.toString("latin1", 36, 40), bytes.readUInt32LE(40)];
  const wanted = ["RIFF", bytes.length - 8, "WAVEfmt ", 1, 1, 16, "data", bytes.length - 44];
  if (JSON.stringify(facts) !== JSON.stringify(wanted)) throw new Error(`${path}: expected ${JSON.stringify(wanted)}, got ${JSON.stringify(facts)}`);
  return { rate: bytes.readUInt32LE(24), samples: Int16Array.from({ length: (bytes.length - 44) / 2 }, (_, i) => bytes.readInt16LE(44 + 2 * i)) };
}
