import { takeDash, takeDuration } from "./amounts";
import type { Draft } from "./draft";
import type { Reader } from "./reader";

/** "EMOM", "every minute on the minute"; refuses intervals of another length. */
function keyword(reader: Reader): boolean {
  if (reader.take("emom") || reader.phrase("e . m . o . m .?") || reader.phrase("every minute|min on the minute|min") || reader.phrase("on the minute|min")) return true;
  const from = reader.at;
  if (reader.peek().text === "e" && reader.peek(1).kind === "number" && reader.peek(2).text === "mom") {
    if (reader.peek(1).value === 1) {
      reader.at += 3;
      return true;
    }
    reader.at += 3;
    reader.refuse("Only work on every single minute is read: write it as sets with a rest", from);
  }
  if (reader.peek().text === "every" && (reader.peek(1).kind === "number" || reader.peek(1).kind === "clock")) {
    reader.at++;
    if (takeDuration(reader)) {
      reader.phrase("on the minute");
      reader.refuse("Only work on every single minute is read: write it as sets with a rest", from);
    }
    reader.at = from;
  }
  return reader.phrase("every minute|min");
}

/** States the minutes of an EMOM, which are whole; `from` is the token to blame. */
export function stateMinutes(reader: Reader, draft: Draft, from: number, seconds: number): void {
  if (seconds % 60 !== 0 || seconds === 0) reader.refuse("An EMOM lasts whole minutes", from);
  if (seconds > 120 * 60) reader.refuse("An EMOM of more than two hours is a slip", from);
  draft.state(reader, from, "emomMinutes", seconds / 60);
  draft.emom = false;
}

/** "EMOM 8 min", "EMOM 15", "10-minute EMOM"; the minutes may also come later in the line. */
export function emom(reader: Reader, draft: Draft): boolean {
  const from = reader.at;
  const before = reader.attempt(() => {
    const length = takeDuration(reader);
    if (!length) return null;
    reader.take("-");
    reader.take("of");
    return keyword(reader) ? length : null;
  });
  if (before) {
    stateMinutes(reader, draft, from, before.seconds);
    reader.take(":", "x", "of");
    return true;
  }
  if (!keyword(reader)) return false;
  const length = reader.attempt(() => {
    if (!takeDash(reader)) reader.take(":", "x", "for", "of", "(", ",");
    const reps = reader.peek().kind === "number" && reader.sees(() => {
      reader.at++;
      // a dash set apart parts the minutes from the reps: EMOM 10 - 3 reps
      return (!reader.peek().spaced && reader.take("-")) || reader.take("reps", "rep", "repetitions", "to", "+", "kg", "lb", "%", "each", "per", "/");
    });
    const found = reps ? null : takeDuration(reader, "minute");
    return found && found.unit !== "second" ? found : null;
  });
  if (length) {
    stateMinutes(reader, draft, from, length.seconds);
    reader.take(":", "x", "of");
  } else {
    if (draft.emom) reader.refuse("EMOM is stated twice", from);
    draft.emom = true;
  }
  return true;
}
