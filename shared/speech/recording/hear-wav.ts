import { heardIn } from "./heard";
import { loudnessMeter } from "./loudness";
import { refused, type Recording, type RecordingFile, type RecordingRefused } from "./types";
import { readWavFormat } from "./wav-format";
import { wavSamples } from "./wav-samples";

/** Bytes read at a time; a whole episode at a studio's quality is hundreds of times as much. */
const PIECE = 2 ** 20;
/** As long as a take may be; seconds. */
const LONGEST = 7200;

/**
 * Hears a recording of one voice in a WAV file: plain samples of 8, 16, 24 or 32 bits or floating-point ones, in one channel or
 * more, at any rate. Only one piece of it is in memory at a time.
 * @param onProgress - called after each piece with the share that was heard
 * @throws what `file.read` throws
 */
export async function hearWav(file: RecordingFile, onProgress: (share: number) => void = () => undefined): Promise<Recording | RecordingRefused> {
  const format = await readWavFormat(file);
  if (!format.ok) return format;
  const block = format.bytesPerSample * format.channels;
  const seconds = format.bytes / block / format.rate;
  if (seconds === 0) return refused("empty", "The WAV file holds no sound.");
  if (seconds > LONGEST) return refused("too-long", `The recording is ${(seconds / 3600).toFixed(1)} hours long; at most ${LONGEST / 3600} hours are measured. Save the part with your voice as a WAV file of its own.`);
  const meter = loudnessMeter(format.rate, format.channels);
  const piece = Math.max(1, Math.floor(PIECE / block)) * block;
  for (let done = 0; done < format.bytes; done += piece) {
    const wanted = Math.min(piece, format.bytes - done);
    const bytes = await file.read(format.start + done, wanted);
    if (bytes.length < wanted) return refused("cut-short", "The WAV file became shorter while it was read. Choose it again.");
    meter.add(wavSamples(bytes, format));
    onProgress((done + wanted) / format.bytes);
  }
  const heard = heardIn(meter.levels, meter.frameSeconds);
  if (heard.voicedSeconds === 0) return refused("no-voice", `No voice is heard in the recording, ${seconds.toFixed(1)} s of it. Is it the right file, and was the microphone on?`);
  return { ok: true, seconds, heard };
}
