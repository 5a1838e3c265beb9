import { plainNumber, takeDash, takeDuration } from "./amounts";
import type { Draft } from "./draft";
import type { Reader } from "./reader";
import { stateSets } from "./reps";
import { REST_WORDS } from "./rest";

/** After a length, these make it a rest and no working time. */
const MAKES_REST = [...REST_WORDS, "between", "off"];

/** "AMRAP", "max reps", "as many as possible": reps without a number. */
export function takeAmrap(reader: Reader): "open" | "failure" | null {
  if (reader.take("amrap", "amraps", "amap") || reader.phrase("as many reps|rounds? as possible|you can|can?") || reader.phrase("as many as possible") || reader.phrase("as many as you can")) return "open";
  if (reader.phrase("to|till|until technical|muscular|muscle? failure") || reader.take("failure")) return "failure";
  const max = reader.attempt(() => {
    if (!reader.take("max", "maximum", "maximal")) return null;
    if (reader.take("reps", "rep", "repetitions")) return true;
    return reader.peek().kind === "word" && ["hold", "time", "effort", "weight", "load", "distance", "rm"].includes(reader.peek().text) ? null : true;
  });
  return max ? "open" : null;
}

/** "5+" again for the last set, where five reps are stated. */
function atLeast(reader: Reader, draft: Draft): boolean {
  return reader.attempt(() => plainNumber(reader) === draft.scheme.repsMin && draft.scheme.repsMin !== undefined && reader.take("+") ? true : null) === true;
}

/** "last set AMRAP", "AMRAP on the last set", "last one to failure": on top of the stated reps. */
export function lastSet(reader: Reader, draft: Draft): boolean {
  const from = reader.at;
  const found = reader.attempt(() => {
    const last = (): boolean => {
      reader.take("on", "for", "in");
      reader.take("the");
      return reader.take("last", "final") && (reader.take("set", "one", "round") || true);
    };
    if (last()) {
      while (reader.take("is", ":", "=", "an", "for", "goes", "taken", "-", "set") || reader.phrase("as an")) continue;
      return takeAmrap(reader) !== null || atLeast(reader, draft) || null;
    }
    return (takeAmrap(reader) !== null || atLeast(reader, draft)) && last() ? true : null;
  });
  if (!found) return false;
  if (draft.amrap !== null) reader.refuse("AMRAP is stated twice", from);
  draft.amrap = "last";
  return true;
}

/** "AMRAP 6 min" (one long set), "3 x AMRAP in 30 s", "AMRAP x 3", "6 min AMRAP". */
export function amrap(reader: Reader, draft: Draft): boolean {
  const from = reader.at;
  const timed = reader.attempt(() => {
    if (draft.hasWork || draft.scheme.sets !== undefined) return null;
    const length = takeDuration(reader);
    reader.take("-");
    reader.take("of", ":");
    return length && takeAmrap(reader) ? length : null;
  });
  const kind = timed ? "open" : takeAmrap(reader);
  if (!kind) return false;
  if (draft.amrap !== null) reader.refuse("AMRAP is stated twice", from);
  draft.amrap = kind;
  if (timed) stateTime(reader, draft, from, timed.seconds);
  else amrapTime(reader, draft, kind);
  const sets = reader.attempt(() => (reader.take("x") ? plainNumber(reader) : null));
  if (sets !== null) {
    reader.take("sets", "rounds");
    stateSets(reader, draft, from, sets);
  }
  return true;
}

/** The minutes of an AMRAP; with a set count only "in" or "for" makes it working time, since a lone duration is rest. */
export function amrapTime(reader: Reader, draft: Draft, kind: "open" | "failure"): void {
  const length = reader.attempt(() => {
    const inTime = reader.take("in", "for", "within");
    const counted = draft.scheme.sets !== undefined;
    if (counted && !inTime) {
      const from = reader.at;
      const next = kind === "open" ? takeDuration(reader) : null;
      if (next && !MAKES_REST.includes(reader.peek().text)) reader.refuse(`"${reader.since(from)}" may be the time of each set or the rest: write "in" or "rest" before it`, from);
      return null;
    }
    if (inTime) reader.take("the");
    // "AMRAP x 3" is three sets, "AMRAP x 6 min" one of six minutes
    const times = !inTime && reader.take("x");
    if (!inTime && !times && !takeDash(reader)) reader.take(":", "of");
    const bare = reader.peek().kind === "number" && reader.sees(() => {
      reader.at++;
      return !reader.take("x", "sets", "set", "rounds", "round", "reps", "rep", "rir", "rpe", "%", "-", "to", "kg", "lb");
    });
    const found = takeDuration(reader, bare && !counted && !times ? "minute" : null);
    return found && !MAKES_REST.includes(reader.peek().text) ? found : null;
  });
  if (length) stateTime(reader, draft, reader.at - 1, length.seconds);
}

function stateTime(reader: Reader, draft: Draft, from: number, seconds: number): void {
  if (seconds <= 0) reader.refuse("A working time is more than zero", from);
  draft.work(reader, from, { seconds });
}
