/** Quieter than this is no voice in any room; of full scale. */
const LEAST_VOICE = 0.006;
/** A voice is at least this many times as loud as the room. */
const OVER_ROOM = 4;
/** A louder room than this and the limit stays where it is: a voice still has to pass it. */
const MOST_LIMIT = 0.05;
/** A shorter sound is a click: a key, a tap on the table. Seconds. Common practice, no source. */
const LEAST_SOUND = 0.08;
/** How fast the notion of the room follows when it gets louder; a share a second. */
const ROOM_RISES = 0.25;

/** Tells a voice from a room, piece by piece, and when it was first and last heard. */
export interface Hearing {
  /** Seconds of sound taken in since `begin`. */
  readonly seconds: () => number;
  /** From the first sound to the last since `begin`; null when nothing was said. Seconds. */
  readonly span: () => number | null;
  /** Seconds of silence since the last sound; 0 while there is a voice or nothing was said yet. */
  readonly quietFor: () => number;
  readonly add: (rms: number, seconds: number) => void;
  /** A new line: what was heard before no longer counts; what is known of the room does. */
  readonly begin: () => void;
}

export function createHearing(): Hearing {
  let room = LEAST_VOICE / OVER_ROOM;
  let [at, loudFrom, first, last] = [0, null as number | null, null as number | null, null as number | null];
  return {
    seconds: () => at,
    span: () => (first === null || last === null ? null : last - first),
    quietFor: () => (last === null || loudFrom !== null ? 0 : at - last),
    add: (rms, seconds) => {
      const limit = Math.max(LEAST_VOICE, Math.min(MOST_LIMIT, room * OVER_ROOM));
      room = rms < room ? Math.max(rms, room * 0.9) : Math.min(rms, room * (1 + ROOM_RISES * seconds) + 1e-6);
      if (rms < limit) loudFrom = null;
      else {
        loudFrom ??= at;
        if (at + seconds - loudFrom >= LEAST_SOUND - 1e-9) {
          first ??= loudFrom;
          last = at + seconds;
        }
      }
      at += seconds;
    },
    begin: () => {
      [at, loudFrom, first, last] = [0, null, null, null];
    },
  };
}

/** How loud it is, as a share of a meter from -60 dB to full scale, with the word for it. */
export function levelOf(rms: number, peak: number): { readonly share: number; readonly word: "silent" | "quiet" | "good" | "too loud" } {
  const decibels = 20 * Math.log10(Math.max(rms, 1e-6));
  const word = peak >= 0.98 ? "too loud" : rms < LEAST_VOICE ? "silent" : decibels < -36 ? "quiet" : "good";
  return { share: Math.max(0, Math.min(1, (decibels + 60) / 60)), word };
}
