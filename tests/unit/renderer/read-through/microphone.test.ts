import { afterEach, describe, expect, it, vi } from "vitest";
import { openMicrophone } from "../../../../renderer/read-through/microphone";

/** A page with a microphone of which a test can switch the track and halt the sound. */
function page(isMuted = false) {
  const track = Object.assign(new EventTarget(), { muted: isMuted, label: "Test microphone", stop: vi.fn() });
  class Context extends EventTarget {
    state = "running";
    sampleRate = 48_000;
    audioWorklet = { addModule: async (): Promise<void> => undefined };
    destination = {};
    constructor() {
      super();
      contexts.push(this);
    }
    createMediaStreamSource = (): { connect: () => void } => ({ connect: () => undefined });
    resume = vi.fn(async (): Promise<void> => this.become("running"));
    close = async (): Promise<void> => this.become("closed");
    become(state: string): void {
      this.state = state;
      this.dispatchEvent(new Event("statechange"));
    }
  }
  const contexts: Context[] = [];
  vi.stubGlobal("AudioContext", Context);
  vi.stubGlobal("AudioWorkletNode", class { port = {}; connect = (): void => undefined; });
  vi.stubGlobal("navigator", { userAgent: "", mediaDevices: { getUserMedia: async () => ({ getTracks: () => [track], getAudioTracks: () => [track] }) } });
  return { track, contexts };
}
afterEach(() => vi.unstubAllGlobals());

const listener = () => ({ onSamples: vi.fn(), onGone: vi.fn(), onMuted: vi.fn() });

describe("an open microphone", () => {
  it("tells when the system mutes it and when it is heard again", async () => {
    const { track } = page();
    const hears = listener();
    expect(await openMicrophone(hears)).toMatchObject({ ok: true, microphone: { name: "Test microphone", rate: 48_000 } });
    expect(hears.onMuted).not.toHaveBeenCalled();
    track.dispatchEvent(new Event("mute"));
    track.dispatchEvent(new Event("unmute"));
    expect(hears.onMuted.mock.calls).toEqual([[true], [false]]);
  });

  it("tells when it is muted from the first", async () => {
    page(true);
    const hears = listener();
    await openMicrophone(hears);
    expect(hears.onMuted.mock.calls).toEqual([[true]]);
  });

  it.each(["suspended", "interrupted"])("tells when its sound is %s, as by a computer that sleeps, and asks for it again", async (state) => {
    const { contexts } = page();
    const hears = listener();
    await openMicrophone(hears);
    contexts[0]?.become(state);
    expect(hears.onMuted.mock.calls[0]).toEqual([true]);
    if (state === "suspended") expect(contexts[0]?.resume).toHaveBeenCalledOnce();
    else contexts[0]?.become("running");
    expect(hears.onMuted.mock.lastCall).toEqual([false]);
  });

  it("is not heard again while its track is still muted, and tells nothing when it is closed", async () => {
    const { track, contexts } = page();
    const hears = listener();
    const answer = await openMicrophone(hears);
    track.muted = true;
    contexts[0]?.become("running");
    expect(hears.onMuted.mock.calls).toEqual([[true]]);
    if (answer.ok) answer.microphone.close();
    expect(hears.onMuted.mock.calls).toEqual([[true]]);
    expect(hears.onGone).not.toHaveBeenCalled();
  });
});
