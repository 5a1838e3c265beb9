import type { Readable } from "node:stream";

/** What a command may touch, so that a test can hold it in its hands. */
export interface Terminal {
  readonly stdin: Readable;
  /** Resolves when more may be written. */
  readonly out: (text: string) => Promise<void>;
  readonly err: (text: string) => void;
  readonly now: () => Date;
  /** The dist folder of this app. */
  readonly dist: string;
  /** Resolves when the person or the system asks the program to end. */
  readonly ended: () => Promise<void>;
}

/** 0: done. 1: done, and a stop stands. 2: could not be done. */
export type ExitCode = 0 | 1 | 2;

/** A failure that ends the command with one sentence and exit code 2. */
export class CommandFailed extends Error {}
