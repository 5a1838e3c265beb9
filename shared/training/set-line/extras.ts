import { plainNumber, takeCount } from "./amounts";
import type { Draft } from "./draft";
import type { Reader } from "./reader";

const SIDES = ["side", "sides", "leg", "legs", "arm", "arms", "foot", "feet", "hip", "hips", "knee", "way", "direction", "limb", "shoulder", "ankle", "wrist"];

/** "each side", "/leg", "e/s", "L/R", "left and right"; a lone "each" counts straight after the work only. */
export function eachSide(reader: Reader, draft: Draft): boolean {
  const from = reader.at;
  const found = reader.attempt(() => {
    reader.take("on", "to", "for");
    if (reader.take("each", "per", "/", "a", "ea", "every", "both")) {
      reader.take(".");
      reader.take("single");
      if (reader.take(...SIDES)) return true;
      const word = reader.tokens[reader.at - 1]?.text;
      return (word === "each" || word === "ea" || word === ".") && draft.hasWork && reader.peek().kind !== "word" ? true : null;
    }
    return reader.phrase("e|p / s|side") || reader.phrase("es") || reader.phrase("l|r /|+|&|and|-? r|l") || reader.phrase("left|right and|/|+|&|then? right|left") || null;
  });
  if (!found) return false;
  draft.state(reader, from, "eachSide", true);
  return true;
}

const DROP = ["drop", "drops", "dropset", "dropsets"];

/** Drops after the main work: "+ 1 drop", "then 2 drop sets", "a double drop", "drop set x 2". */
export function drops(reader: Reader, draft: Draft): boolean {
  const from = reader.at;
  const found = reader.attempt(() => {
    void (reader.phrase("followed by") || reader.phrase("finish|finishing|end|ending with|on"));
    if (reader.phrase("drop twice")) return { count: 2 };
    if (reader.phrase("drop once")) return { count: 1 };
    reader.phrase("last|final set|one? is?");
    const named = reader.phrase("a? double") ? 2 : reader.phrase("a? triple") ? 3 : null;
    const stated = named ?? takeCount(reader);
    if (!reader.take(...DROP)) return null;
    const plural = reader.tokens[reader.at - 1]?.text.endsWith("s") ?? false;
    const sets = reader.attempt(() => {
      reader.take("-");
      return reader.take("set", "sets") ? (reader.tokens[reader.at - 1]?.text ?? null) : null;
    });
    const times = stated === null && reader.take("x", ":") ? plainNumber(reader) : null;
    void (reader.phrase("on|after the? last|final set|one?") || reader.phrase("at the end"));
    return { count: stated ?? times ?? (plural || sets === "sets" ? null : 1) };
  });
  if (!found) return false;
  if (found.count === null) return reader.refuse("Say how many drop sets", from);
  if (!Number.isInteger(found.count) || found.count < 1 || found.count > 10) reader.refuse(`The number of drop sets is a whole number from 1 to 10, not ${found.count}`, from);
  draft.state(reader, from, "dropSets", found.count);
  return true;
}
