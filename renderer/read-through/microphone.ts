import captureAddress from "./capture-worklet?worker&url";

/** An open microphone. */
export interface Microphone {
  /** As the system calls it. */
  readonly name: string;
  /** Samples a second. */
  readonly rate: number;
  readonly close: () => void;
}

export interface Listener {
  /** A piece of sound, samples from -1 to 1. */
  readonly onSamples: (samples: Float32Array) => void;
  /** It was unplugged or taken away; a sentence. */
  readonly onGone: (sentence: string) => void;
}

/** Why there is no microphone, in a sentence that says what to do. */
export function microphoneProblem(error: unknown): string {
  const name = error instanceof DOMException || error instanceof Error ? error.name : "";
  const without = "You can go on without it: tap at the end of each line.";
  if (name === "NotAllowedError" || name === "SecurityError") return `The microphone was refused. Allow it for this window where your system or browser keeps such permissions, then try again. ${without}`;
  if (name === "NotFoundError" || name === "OverconstrainedError") return `No microphone was found. Plug one in and try again. ${without}`;
  if (name === "NotReadableError" || name === "AbortError") return `The microphone is there but could not be opened; another program may be using it. Close it there and try again. ${without}`;
  return `The microphone could not be opened${error instanceof Error && error.message ? `: ${error.message}` : ""}. ${without}`;
}

/** The voice as it is: what calls need to sound clear would change its length and level. */
const AS_IT_IS: MediaTrackConstraints = { channelCount: 1, echoCancellation: false, noiseSuppression: false, autoGainControl: false };

/**
 * Opens the microphone. The sound stays on this computer: it goes to `onSamples` and nowhere else.
 * @returns the microphone, or a sentence why there is none
 */
export async function openMicrophone({ onSamples, onGone }: Listener): Promise<{ ok: true; microphone: Microphone } | { ok: false; sentence: string }> {
  if (navigator.mediaDevices === undefined) return { ok: false, sentence: microphoneProblem(new DOMException("", "NotFoundError")) };
  let stream: MediaStream | null = null;
  let context: AudioContext | null = null;
  const close = (): void => {
    for (const track of stream?.getTracks() ?? []) track.stop();
    if (context && context.state !== "closed") void context.close();
  };
  try {
    stream = await navigator.mediaDevices.getUserMedia({ audio: AS_IT_IS });
    context = new AudioContext();
    await context.audioWorklet.addModule(captureAddress);
    if (context.state === "suspended") await context.resume();
    const [track] = stream.getAudioTracks();
    const capture = new AudioWorkletNode(context, "capture");
    capture.port.onmessage = ({ data }: MessageEvent<Float32Array>) => onSamples(data);
    context.createMediaStreamSource(stream).connect(capture);
    // It plays nothing; connected to the end so that it is asked for sound.
    capture.connect(context.destination);
    track?.addEventListener("ended", () => {
      close();
      onGone("The microphone is gone: it was unplugged or taken away.");
    });
    return { ok: true, microphone: { name: track?.label || "Microphone", rate: context.sampleRate, close } };
  } catch (error) {
    close();
    return { ok: false, sentence: microphoneProblem(error) };
  }
}
