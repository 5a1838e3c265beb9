import { execFileSync } from "node:child_process";
import { heardSpeech } from "../../shared/speech";

/** The voices and rates (words a minute, as the synthesiser counts them) our seconds are held against. */
export const VOICES = [
  { voice: "en-gb", rate: 140 },
  { voice: "en-gb", rate: 175 },
  { voice: "en-us", rate: 140 },
  { voice: "en-us", rate: 175 },
] as const;

/** One channel of sound, -1 to 1. */
export interface Sound {
  readonly samples: Float64Array;
  readonly sampleRate: number;
}

/** A WAV file of 16-bit samples in one channel, written to a pipe: its lengths cannot be trusted, so the sound runs to the end. */
function readWav(bytes: Buffer): Sound {
  const start = bytes.indexOf("data", 12, "latin1") + 8;
  const samples = new Float64Array(Math.floor((bytes.length - start) / 2));
  samples.forEach((_zero, at) => (samples[at] = bytes.readInt16LE(start + 2 * at) / 32768));
  return { samples, sampleRate: bytes.readUInt32LE(24) };
}

/** A text spoken by espeak-ng; null where there is none. */
export function spokenAloud(text: string, { voice, rate }: { readonly voice: string; readonly rate: number }): Sound | null {
  try {
    return readWav(execFileSync("espeak-ng", ["-v", voice, "-s", String(rate), "--stdout", text], { stdio: ["ignore", "pipe", "ignore"], maxBuffer: 2 ** 26 }));
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "ENOENT") return null;
    throw error;
  }
}

/** Seconds from the first sound to the last. */
export function secondsHeard({ samples, sampleRate }: Sound): number {
  const { from, to } = heardSpeech(samples, sampleRate);
  return to - from;
}
