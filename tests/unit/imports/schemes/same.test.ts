import { describe, expect, it } from "vitest";
import { sameIn } from "../../../../shared/imports/schemes/same";
import { wordsOfText } from "../../../../shared/imports/source/words";

const fieldsIn = (text: string): string => {
  const words = wordsOfText(text);
  return [...new Set(sameIn(words, 0, words.length).flatMap(({ fields }) => fields))].filter((field) => ["sets", "repsMin", "load", "restSeconds", "tempo", "rpe"].includes(field)).join(" ");
};

describe("what an exercise takes over from another", () => {
  it.each([
    ["twelve of these three times with that same little rest", "restSeconds"],
    ["three trips with the same minute of rest", "restSeconds"],
    ["the minute stays the same", "restSeconds"],
    ["and the rest is the same as on the leg press", "restSeconds"],
    ["same number of sets and same rest as the chest press", "sets restSeconds"],
    ["same weight same sets", "load sets"],
    ["same pair of dumbbells here", "load"],
    ["same again for these", "sets repsMin restSeconds"],
    ["it's the same for these", "sets repsMin restSeconds"],
    ["same thing again", "sets repsMin restSeconds"],
    ["same tempo as before", "tempo"],
  ])("%s: %s", (text, fields) => {
    expect(fieldsIn(text)).toBe(fields);
  });

  it.each(["it's the same idea with one leg", "do the same thing on the left", "same again on the other side", "at the same time you breathe out", "it isn't the same muscle"])("nothing in: %s", (text) => {
    expect(fieldsIn(text)).toBe("");
  });
});
