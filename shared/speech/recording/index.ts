/** Recordings of a voice: where it speaks and pauses, and the pace that comes out of it. */
export { heardSpeech, type HeardSpeech, type Stretch } from "./heard";
export { hearWav } from "./hear-wav";
export { linesAloud, paceOfRecording, readAloud, type RecordedPace } from "./recorded-pace";
export type { Recording, RecordingFile, RecordingRefused } from "./types";
