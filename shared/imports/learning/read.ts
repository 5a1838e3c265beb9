import { prepared, type Prepared } from "../heard";
import { hesitationsIn } from "../sentences/hesitations";
import { soundsIn } from "../source/sounds";
import { readMarked, type MarkedTranscript } from "./transcript";

/** The transcripts of one file: several are parted by a line of equals signs. */
export const transcriptsIn = (file: string): string[] => file.split(/^===\n/m);

/** Kinds of parts that a mark may turn to besides exercises. */
const PARTS = new Set(["opening", "warm-up", "cool-down", "closing", "talk"]);

/** A marked transcript, ready to be learned from. */
export interface Lesson {
  readonly file: string;
  readonly ready: Prepared;
  readonly marked: MarkedTranscript;
  /** The marked turns to exercises. */
  readonly turns: MarkedTranscript["turns"];
}

/** A transcript as it would be read from captions. */
export function lessonOf(file: string): Lesson {
  const marked = readMarked(file);
  const { words } = marked;
  const skip = new Set([...soundsIn(words), ...hesitationsIn(words)]);
  return { file, ready: prepared(words, skip), marked, turns: marked.turns.filter(({ to }) => !PARTS.has(to)) };
}
