import { takeDash, takeDuration } from "./amounts";
import type { Draft } from "./draft";
import type { Reader } from "./reader";

/** "between sets", "after each set": where rests are anyway. */
function betweenSets(reader: Reader): boolean {
  return reader.phrase("in? between|btw|btwn each|all|the? sets|set|rounds|round|rungs|efforts") || reader.phrase("b / w sets|rounds") ||
    reader.phrase("after|per each|every|the? set|round|rung|sets|rounds") || reader.phrase("each|every set|round") || reader.phrase("between");
}

/** Refuses "60-90 s": a rest is one length here. */
function refuseRange(reader: Reader, from: number): void {
  const dash = reader.peek();
  if ((dash.text === "-" || dash.text === "to") && (reader.peek(1).kind === "number" || reader.peek(1).kind === "clock") && (dash.text === "to" || dash.spaced === reader.peek(1).spaced)) {
    if (dash.text === "-" && dash.spaced) return;
    reader.at += 2;
    reader.refuse("A range of rests cannot be planned: write one length", from);
  }
}

function state(reader: Reader, draft: Draft, from: number, seconds: number): true {
  draft.state(reader, from, "restSeconds", seconds);
  return true;
}

export const REST_WORDS = ["rest", "rests", "resting", "recovery", "recover", "break", "breaks"];

/** "rest 90", "rest: 2 min", "r 60s", "pause 90 s between sets", "no rest". */
function wordFirst(reader: Reader, draft: Draft): boolean {
  const from = reader.at;
  if (reader.phrase("no rest|breaks|break") || reader.phrase("without rest|breaks|break|a? rest|break")) {
    betweenSets(reader);
    return state(reader, draft, from, 0);
  }
  const paused = reader.attempt(() => {
    if (!reader.take("pause", "pausing", "wait", "off")) return null;
    reader.take("for", ":", "of");
    const length = takeDuration(reader);
    return length && betweenSets(reader) ? length : null;
  });
  if (paused) return state(reader, draft, from, paused.seconds);
  const short = reader.peek().text === "r" && (reader.peek(1).kind === "number" || reader.peek(1).kind === "clock" || reader.peek(1).text === ":");
  if (!(short && reader.take("r")) && !reader.take(...REST_WORDS)) return false;
  reader.phrase("period|periods|time|interval");
  betweenSets(reader);
  while (reader.take(":", "=", "of", "for", "is") || takeDash(reader)) continue;
  if (reader.peek().text === "-") {
    reader.at += 2;
    reader.refuse("A rest cannot be negative", from);
  }
  if (reader.sees(() => takeDuration(reader, "second") !== null)) {
    const first = reader.at;
    const length = takeDuration(reader, "second");
    refuseRange(reader, first);
    betweenSets(reader);
    if (length) return state(reader, draft, from, length.seconds);
  }
  return reader.refuse(`Length of the rest missing after "${reader.since(from)}"`, from);
}

/** "90s rest", "a two-minute break", "2 min between sets", "10 s off". */
function lengthFirst(reader: Reader, draft: Draft): boolean {
  return reader.attempt(() => {
    const from = reader.at;
    if (reader.peek().text === "a" && reader.peek(1).kind === "number") reader.at++;
    const length = takeDuration(reader);
    if (!length) return null;
    reader.take("-");
    reader.take("of");
    if (!reader.take(...REST_WORDS, "off") && !reader.sees(() => betweenSets(reader)) && !reader.phrase("pause|pauses between|btw|btwn")) return null;
    // "@ 24s rest 3 min": a pair of 24s, and then the rest
    if ((reader.lead === "@" || reader.lead === "at") && reader.sees(() => takeDuration(reader, reader.take(":") ? "second" : null) !== null)) return null;
    reader.take("period", "periods", "time");
    betweenSets(reader);
    reader.take("sets");
    return state(reader, draft, from, length.seconds);
  }) === true;
}

/** A rest in any of its written forms. */
export function rest(reader: Reader, draft: Draft): boolean {
  return wordFirst(reader, draft) || lengthFirst(reader, draft);
}
