import { plainNumber, seesUnit, takeScale } from "./amounts";
import type { Draft } from "./draft";
import type { Reader } from "./reader";
import { SET_WORDS, wholeReps } from "./reps";

/** Does the next token after a joiner carry on a ladder? Side words after a slash and numbers with units do not. */
function rungFollows(reader: Reader, joiner: string): boolean {
  const [sign, next] = [reader.peek(), reader.peek(1)];
  if (sign.text !== joiner) return false;
  if (next.kind === "number" || next.kind === "clock") {
    const united = reader.sees(() => {
      reader.at += 2;
      return seesUnit(reader) || reader.take(...SET_WORDS) || takeScale(reader);
    });
    return !united;
  }
  return false;
}

/**
 * "10/8/6", "21-15-9": three rungs or more with the same sign between them; null when none is next.
 * @param named - the word ladder stands beside it, so two rungs, commas and spaces will do
 */
export function takeLadder(reader: Reader, named: boolean): number[] | null {
  return reader.attempt(() => {
    const from = reader.at;
    const first = plainNumber(reader);
    if (first === null) return null;
    const joiner = reader.peek().text;
    const spaces = named && reader.peek().kind === "number";
    if (joiner !== "/" && joiner !== "-" && !(named && joiner === ",") && !spaces) return null;
    const rungs = [first];
    while (!reader.done && (spaces ? reader.peek().kind === "number" && !reader.sees(() => plainNumber(reader) !== null && seesUnit(reader)) : rungFollows(reader, joiner))) {
      if (!spaces) reader.at++;
      if (reader.peek().kind !== "number") reader.refuse("A rung of the ladder is not a number");
      rungs.push(plainNumber(reader) ?? 0);
    }
    const slashOn = joiner === "/" && reader.peek().text === "/" && !reader.sees(() => reader.take("/") && (reader.peek().kind === "word" && reader.peek().text !== "x" && reader.peek().text !== "amrap" || seesUnitNumber(reader)));
    if (slashOn) {
      reader.at++;
      reader.refuse(`Rung ${rungs.length + 1} of the ladder is not a number`);
    }
    if (rungs.length < 3) {
      if (joiner === "/" && rungs.length === 2 && !named) reader.refuse("A ladder has three rungs or more; a range is written 8-10", from);
      if (rungs.length < 2 || joiner !== "/") return null;
    }
    if (joiner !== "," && reader.peek().text === (joiner === "/" ? "-" : "/") && reader.peek(1).kind === "number" && !reader.peek().spaced) {
      reader.refuse("A ladder has one kind of sign between its rungs");
    }
    if (joiner === "-" && reader.peek().text === "-" && !reader.peek().spaced) {
      reader.at++;
      reader.refuse(`Rung ${rungs.length + 1} of the ladder is not a number`);
    }
    return rungs.map((rung) => wholeReps(reader, from, rung));
  });
}

function seesUnitNumber(reader: Reader): boolean {
  return reader.peek().kind === "number" && reader.sees(() => {
    reader.at++;
    return seesUnit(reader);
  });
}

/** "4 sets of 12, 10, 8, 6": as many bare numbers as sets. */
export function commaLadder(reader: Reader, draft: Draft): number[] | null {
  const { sets } = draft.scheme;
  if (sets === undefined || sets < 3) return null;
  return reader.attempt(() => {
    const from = reader.at;
    const rungs: number[] = [];
    while (rungs.length < sets) {
      if (rungs.length > 0) {
        const joined = reader.take(",");
        if (!reader.take("and") && !joined) return null;
      }
      const rung = plainNumber(reader);
      if (rung === null || seesUnit(reader) || (rungs.length > 0 && (["x", "-", "to"].includes(reader.peek().text) || takeScale(reader)))) return null;
      rungs.push(rung);
    }
    return rungs.map((rung) => wholeReps(reader, from, rung));
  });
}
