import type { Token } from "./token";

/** A line that is refused: the sentence for the coach and the characters to blame. Never leaves this folder. */
export class Refusal extends Error {
  constructor(message: string, readonly at: number, readonly length: number) {
    super(message);
  }
}

interface PhrasePart {
  readonly words: readonly string[];
  readonly optional: boolean;
}

/** Phrases are few and asked for thousands of times, so each is taken apart once. */
const phrases = new Map<string, readonly PhrasePart[]>();

function partsOf(pattern: string): readonly PhrasePart[] {
  const known = phrases.get(pattern);
  if (known) return known;
  const parts = pattern.split(" ").map((part) => {
    const optional = part.endsWith("?");
    return { words: (optional ? part.slice(0, -1) : part).split("|"), optional };
  });
  phrases.set(pattern, parts);
  return parts;
}

const END: Token = { kind: "sign", text: "", value: 0, start: 0, end: 0, spaced: true };

/** A place in the tokens of one line. */
export class Reader {
  /** Index of the next token. */
  at = 0;
  /** The connecting word or sign directly before the next statement ("@", "for"), or "". */
  lead = "";

  constructor(readonly text: string, readonly norm: string, readonly tokens: readonly Token[]) {}

  get done(): boolean {
    return this.at >= this.tokens.length;
  }

  /** The token `ahead` places on; past the end an empty sign. */
  peek(ahead = 0): Token {
    return this.tokens[this.at + ahead] ?? { ...END, start: this.text.length, end: this.text.length };
  }

  /** Takes the next token if its text is one of these. */
  take(...texts: readonly string[]): boolean {
    if (this.done || !texts.includes(this.peek().text)) return false;
    this.at++;
    return true;
  }

  /** Takes a phrase: words parted by spaces, an alternative by |, a word that may be missing ends in ?. All of it or nothing. */
  phrase(pattern: string): boolean {
    const from = this.at;
    for (const { words, optional } of partsOf(pattern)) {
      if (!this.done && words.includes(this.peek().text)) this.at++;
      else if (!optional) {
        this.at = from;
        return false;
      }
    }
    return true;
  }

  /** Runs a step and goes back to where it began when it finds nothing. */
  attempt<T>(step: () => T | null): T | null {
    const from = this.at;
    const found = step();
    if (found === null || found === false) this.at = from;
    return found;
  }

  /** Would the step succeed from here? Does not move. */
  sees(step: () => boolean): boolean {
    const from = this.at;
    const seen = step();
    this.at = from;
    return seen;
  }

  /** Moves to the first token that starts at or after this character. */
  moveTo(character: number): void {
    while (!this.done && this.peek().start < character) this.at++;
  }

  /** The text from token `from` up to here, as typed. */
  since(from: number): string {
    const first = this.tokens[from];
    const last = this.tokens[this.at - 1];
    return first && last && this.at > from ? this.text.slice(first.start, last.end) : "";
  }

  /** Refuses the line, blaming the tokens from `from` up to here, or the next one when there are none. */
  refuse(message: string, from = this.at): never {
    const first = this.tokens[from] ?? this.peek();
    const last = this.at > from ? (this.tokens[this.at - 1] ?? first) : first;
    throw new Refusal(message, first.start, Math.max(0, last.end - first.start));
  }
}
