import type { Part } from "../order/speech";

/** An exercise of the running order: the words at which the speaker turns to it, and names it. */
export interface Turned {
  readonly part: Part;
  readonly turn: number;
  readonly at: number;
}
