import type { HeardSpeech } from "./heard";

/** A sound file, read piece by piece so that a long recording never lies in memory. */
export interface RecordingFile {
  /** Bytes. */
  readonly size: number;
  /** The bytes from `at` on: `length` of them, or as many as there are. */
  readonly read: (at: number, length: number) => Promise<Uint8Array>;
}

/** Why nothing was measured: a code for the program, a sentence for people. */
export interface RecordingRefused {
  readonly ok: false;
  readonly code: "empty" | "not-wav" | "compressed" | "damaged" | "cut-short" | "too-long" | "no-voice" | "no-words" | "too-little" | "too-much";
  readonly message: string;
}

/** What is heard in a recording, and how long all of it is. */
export interface Recording {
  readonly ok: true;
  readonly seconds: number;
  readonly heard: HeardSpeech;
}

export const refused = (code: RecordingRefused["code"], message: string): RecordingRefused => ({ ok: false, code, message });
