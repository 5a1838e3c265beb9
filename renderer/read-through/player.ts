import { createStore, type Store } from "../session/store";

/** A sound that can be played; what of the browser's audio element is needed. */
export interface Playable {
  readonly play: () => Promise<void>;
  readonly pause: () => void;
  /** Called when it has ended or was stopped from outside, by a media key for one. */
  readonly onOver: (over: () => void) => void;
}

/** Plays one take at a time, or none. */
export interface Player {
  /** The take that is heard or fetched; null for silence. */
  readonly playing: Store<string | null>;
  readonly listen: (take: string) => Promise<void>;
  readonly quiet: () => void;
}

/**
 * @param fetchSound - a take's sound as base64; null when there is none
 * @param playable - the sound made ready
 */
export function createPlayer(fetchSound: (take: string) => Promise<string | null>, playable: (base64: string) => Playable): Player {
  const playing = createStore<string | null>(null);
  let sound: Playable | null = null;
  /** Every press is one more: whoever waited meanwhile finds that it is not wanted any longer. */
  let press = 0;
  const quiet = (): void => {
    press += 1;
    sound?.pause();
    sound = null;
    playing.set(null);
  };
  return {
    playing,
    quiet,
    listen: async (take) => {
      quiet();
      const mine = press;
      const over = (): void => {
        if (press === mine) quiet();
      };
      playing.set(take);
      const base64 = await fetchSound(take);
      if (press !== mine) return;
      if (base64 === null) return over();
      sound = playable(base64);
      sound.onOver(over);
      await sound.play().catch(over);
    },
  };
}

/** A WAV file as the browser plays it. */
export function playableWav(base64: string): Playable {
  const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  const address = URL.createObjectURL(new Blob([bytes], { type: "audio/wav" }));
  const sound = new Audio(address);
  const free = (): void => URL.revokeObjectURL(address);
  sound.addEventListener("ended", free);
  return {
    play: () => sound.play(),
    pause: () => {
      sound.pause();
      free();
    },
    onOver: (over) => {
      sound.addEventListener("ended", over);
      sound.addEventListener("pause", over);
    },
  };
}
