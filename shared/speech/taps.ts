/** One reading of a line, as far as its time was taken. */
export interface TimedReading {
  readonly id: string;
  /** The sound file; null when it was only tapped. */
  readonly file: string | null;
  /** From tap to tap, or of the sound; null when it was broken off. */
  readonly seconds: number | null;
  /** When it was noted, ISO; for a tapped one its end. */
  readonly at: string;
}

/** A tap that ends one reading begins the next; both are noted at most this far apart. Milliseconds. */
const SAME_TAP = 400;

/** Whether `reading` was tapped and its last tap began another one of `all`, so that the pause before the next line is in its seconds. */
export const ranOn = (reading: TimedReading, all: readonly TimedReading[]): boolean =>
  reading.file === null &&
  all.some((next) => next.file === null && next.id !== reading.id && next.seconds !== null && Math.abs(Date.parse(next.at) - next.seconds * 1000 - Date.parse(reading.at)) <= SAME_TAP);
