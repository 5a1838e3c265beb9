import type { Finding } from "../../shared/checks";
import { pairUp } from "./same-findings";

/** Quiet milliseconds after which what is new about the words being typed is told. */
const QUIET = 1000;

/** The words being typed: a line, or the name of the block when `line` is null. */
export interface Typing {
  readonly block: string;
  readonly line: string | null;
}

/** Is the finding about the words being typed, or about the block they stand in as a whole? */
const isAbout = ({ block, line }: Finding, typing: Typing): boolean => block === typing.block && (line === null || typing.line === null || line === typing.line);

/**
 * The findings to show while somebody types: all of them, but for what is new about the words being typed, because half
 * a word is not at fault yet. What stands already goes on standing, with its words brought up to date; what is mended goes.
 * @returns `found` itself when nothing is held back
 */
export function calmed(shown: readonly Finding[], found: readonly Finding[], typing: Typing | null): readonly Finding[] {
  if (typing === null) return found;
  const pairs = pairUp(shown, found);
  const kept = found.filter((finding, i) => pairs[i] !== null || !isAbout(finding, typing));
  return kept.length === found.length ? found : kept;
}

export interface Calm {
  /** A letter came in: what is new about these words waits until `quiet` has passed. */
  readonly typed: (typing: Typing) => void;
  /** The caret stands in another line, or the words were changed by other means than typing: nothing waits any longer. */
  readonly rest: () => void;
  readonly isTyping: (typing: Typing) => boolean;
  /** Takes what the checks found. @returns what to show of it */
  readonly found: (findings: readonly Finding[]) => readonly Finding[];
}

/** @param show - called with the whole list when what was held back is told */
export function createCalm(show: (findings: readonly Finding[]) => void, quiet = QUIET): Calm {
  let shown: readonly Finding[] = [];
  let latest: readonly Finding[] = [];
  let typing: Typing | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const rest = (): void => {
    clearTimeout(timer);
    typing = null;
    if (shown === latest) return;
    shown = latest;
    show(shown);
  };
  return {
    typed: (now) => {
      typing = now;
      clearTimeout(timer);
      timer = setTimeout(rest, quiet);
    },
    rest,
    isTyping: ({ block, line }) => typing !== null && typing.block === block && typing.line === line,
    found: (findings) => {
      latest = findings;
      shown = calmed(shown, findings, typing);
      return shown;
    },
  };
}
