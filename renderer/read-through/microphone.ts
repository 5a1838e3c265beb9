import captureAddress from "./capture-worklet?worker&url";
import { microphoneProblem, surroundings } from "./microphone-problem";

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
  /** It is there but gives no sound: switched off by the system or by its own button, or the computer slept. Or it gives sound again. */
  readonly onMuted: (isMuted: boolean) => void;
}

/** The voice as it is: what calls need to sound clear would change its length and level. */
const AS_IT_IS: MediaTrackConstraints = { channelCount: 1, echoCancellation: false, noiseSuppression: false, autoGainControl: false };

/**
 * Opens the microphone. The sound stays on this computer: it goes to `onSamples` and nowhere else.
 * @returns the microphone, or a sentence why there is none
 */
export async function openMicrophone({ onSamples, onGone, onMuted }: Listener): Promise<{ ok: true; microphone: Microphone } | { ok: false; sentence: string }> {
  const problem = (error: unknown): string => microphoneProblem(error, surroundings(navigator.userAgent));
  if (navigator.mediaDevices === undefined) return { ok: false, sentence: problem(new DOMException("", "NotFoundError")) };
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
    track?.addEventListener("mute", () => onMuted(true));
    track?.addEventListener("unmute", () => onMuted(false));
    if (track?.muted) onMuted(true);
    // A computer that goes to sleep, or another program that takes the sound, halts what brings it here.
    const bringsSound = context;
    bringsSound.addEventListener("statechange", () => {
      if (bringsSound.state === "closed") return;
      onMuted(bringsSound.state !== "running" || (track?.muted ?? false));
      if (bringsSound.state === "suspended") void bringsSound.resume().catch(() => undefined);
    });
    return { ok: true, microphone: { name: track?.label || "Microphone", rate: context.sampleRate, close } };
  } catch (error) {
    close();
    return { ok: false, sentence: problem(error) };
  }
}
