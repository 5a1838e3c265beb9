/**
 * Foreign text to the draft of an episode: captions of an earlier one, a transcript, notes.
 *
 * May use the document, the catalogue, training, speech and the door of the checks. Nothing of the core may use it.
 */
export type { Imported, ImportResult, MeasuredPace, NotUnderstood, Reason, Refused } from "./types";
export { importNotes } from "./import-notes";
export { importBytes, importText, titleFrom } from "./import-text";
export { MAX_IMPORT_BYTES, MAX_IMPORT_WORDS, tooBig } from "./source/read-source";
