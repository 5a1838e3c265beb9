/**
 * Runs on the audio thread: hands over what the microphone hears in small pieces of one channel, and nothing else.
 * The types of that thread are not among the page's.
 */
declare abstract class AudioWorkletProcessor {
  readonly port: MessagePort;
}
declare function registerProcessor(name: string, processor: new () => AudioWorkletProcessor & { process: (inputs: readonly (readonly Float32Array[])[]) => boolean }): void;

/** Samples of a piece: about a fiftieth of a second. */
const PIECE = 1024;

class Capture extends AudioWorkletProcessor {
  private piece = new Float32Array(PIECE);
  private filled = 0;

  process(inputs: readonly (readonly Float32Array[])[]): boolean {
    const channels = inputs[0] ?? [];
    const length = channels[0]?.length ?? 0;
    for (let i = 0; i < length; i++) {
      let sum = 0;
      for (const channel of channels) sum += channel[i] ?? 0;
      this.piece[this.filled++] = sum / channels.length;
      if (this.filled < PIECE) continue;
      this.port.postMessage(this.piece, [this.piece.buffer]);
      this.piece = new Float32Array(PIECE);
      this.filled = 0;
    }
    return true;
  }
}

registerProcessor("capture", Capture);

export {};
