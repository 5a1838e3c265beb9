import { open, stat, type FileHandle } from "node:fs/promises";
import { dirname } from "node:path";
import { DEFAULT_PACE, decodeText, hearWav, linesAloud, paceOf, paceOfRecording, readAloud, type Pace, type RecordingFile } from "../../shared/speech";
import { diskProblem } from "../workspace/sentences";
import { ownPaceIn } from "../workspace/speaker";
import { readArgument } from "./read-argument";
import { CommandFailed, type ExitCode, type Terminal } from "./terminal";
import { clockTime, count } from "./words";

/** A text to read aloud is far smaller; bytes. */
const MOST_WORDS = 1_000_000;

/** Runs `use` on a file that is open only as long. @throws CommandFailed when the system refuses the file, or it is none */
async function withFile<T>(path: string, use: (file: RecordingFile) => Promise<T>): Promise<T> {
  let handle: FileHandle | null = null;
  try {
    // Asked before it is opened: a pipe would wait for somebody to write to it.
    const facts = await stat(path);
    if (!facts.isFile()) throw new CommandFailed(`"${path}" is not an ordinary file.`);
    handle = await open(path, "r");
    return await use({ size: facts.size, read: readerOf(handle) });
  } catch (error) {
    if (error instanceof CommandFailed) throw error;
    throw new CommandFailed(diskProblem(error, `"${path}" could not be read`).message);
  } finally {
    await handle?.close();
  }
}

const readerOf = (handle: FileHandle): RecordingFile["read"] => async (at, length) => {
  const { buffer, bytesRead } = await handle.read(Buffer.alloc(length), 0, length, at);
  return buffer.subarray(0, bytesRead);
};

/** What was read aloud, and how the words are counted: usually, and as the lines were planned. */
interface WordsRead {
  readonly lines: readonly string[];
  readonly usual: Pace;
  readonly planned: Pace;
  /** Whose pace the planned one is. */
  readonly sentence: string;
}

/** The say lines of an episode, planned at its folder's pace; else the lines of a text. */
async function wordsIn(path: string): Promise<WordsRead> {
  if (path.toLowerCase().endsWith(".json")) {
    const episode = await readArgument(path);
    const { pace, sentence } = await ownPaceIn(dirname(path));
    return { lines: linesAloud(episode), usual: paceOf(episode), planned: paceOf(episode, pace), sentence };
  }
  const bytes = await withFile(path, ({ size, read }) => {
    if (size > MOST_WORDS) throw new CommandFailed(`"${path}" was not read: a text of more than ${MOST_WORDS / 1_000_000} MB is not what was read aloud.`);
    return read(0, size);
  });
  const { text } = decodeText(bytes);
  if (text.includes("\u0000")) throw new CommandFailed(`"${path}" was not read: it is no text. Name the words that were read, an episode or a text file.`);
  return { lines: text.split(/\r\n|\r|\n/), usual: DEFAULT_PACE, planned: DEFAULT_PACE, sentence: "Planned at the usual pace." };
}

/** Seconds as people compare them: "0.8 s longer (2 %)". */
function difference(measured: number, planned: number): string {
  const by = Math.abs(measured - planned);
  if (by < 0.05) return "as planned";
  return `${by.toFixed(1)} s ${measured > planned ? "longer" : "shorter"} (${((100 * by) / planned).toFixed(0)} %)`;
}

/**
 * The speaker's own pace from a recording of words being read, and their seconds, measured against planned.
 * @param words - path of an episode, or of a text with a line to each line
 * @throws CommandFailed when nothing could be measured
 */
export async function sayRecording(terminal: Terminal, words: string, recording: string, { json }: { readonly json?: boolean }): Promise<ExitCode> {
  const { lines, usual, planned: plan, sentence } = await wordsIn(words);
  const read = await withFile(recording, (file) => hearWav(file));
  if (!read.ok) throw new CommandFailed(`"${recording}" was not measured. ${read.message}`);
  const learned = paceOfRecording(lines, read, usual);
  if (!learned.ok) throw new CommandFailed(`"${recording}" was not measured. ${learned.message}`);
  const planned = readAloud(lines, plan);
  const { syllablesPerSecond, commaSeconds, sentenceSeconds, breathSeconds } = learned.pace;
  if (json) {
    const answer = {
      recordingSeconds: read.seconds, speechSeconds: learned.speechSeconds, silentSeconds: learned.silentSeconds,
      plannedSeconds: planned.seconds, words: planned.words, syllables: planned.syllables,
      pace: { syllablesPerSecond, commaSeconds, sentenceSeconds, breathSeconds },
    };
    await terminal.out(`${JSON.stringify(answer, null, 2)}\n`);
    return 0;
  }
  await terminal.out(`Heard: ${learned.speechSeconds.toFixed(1)} s of speech in ${clockTime(read.seconds)} of sound; ${learned.silentSeconds.toFixed(1)} s of silence left out.\n`);
  await terminal.out(`Planned: ${planned.seconds.toFixed(1)} s for ${count(planned.words, "word")}. Measured: ${learned.speechSeconds.toFixed(1)} s, ${difference(learned.speechSeconds, planned.seconds)}.\n`);
  await terminal.out(`Pace learned: ${syllablesPerSecond.toFixed(2)} syllables a second; ${commaSeconds.toFixed(2)} s of silence at a comma, ${sentenceSeconds.toFixed(2)} s at a sentence's end, ${breathSeconds.toFixed(2)} s at a breath.\n`);
  await terminal.out(`${sentence}\n`);
  return 0;
}
