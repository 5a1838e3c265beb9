import { describe, expect, it } from "vitest";
import { doneAloud } from "../../../../shared/imports/schemes/aloud";
import type { Ordered } from "../../../../shared/imports/schemes/compose";
import { wordsOfText } from "../../../../shared/imports/source/words";

/** Reps wherever a figure stands; {12} is twelve seconds of silence. */
function heard(text: string, isSided: boolean): ReturnType<typeof doneAloud> {
  const pauses = new Map<number, number>();
  const plain: string[] = [];
  for (const piece of text.split(" ")) {
    const silence = /^\{(\d+)\}$/.exec(piece);
    if (silence) pauses.set(plain.length, Number(silence[1]));
    else plain.push(piece);
  }
  const words = wordsOfText(plain.join(" ")).map((word, at) => ({ ...word, pause: pauses.get(at) ?? 0 }));
  const own = words.flatMap(({ plain: word }, at): Ordered[] => (/^\d\d?$/.test(word) ? [{ says: { repsMin: Number(word), repsMax: Number(word) }, rank: "part", about: "working", either: false, remark: null, from: at, to: at, sentence: 0 }] : []));
  return doneAloud(own, words, 0, words.length, isSided);
}

describe("sets and sides that are done and not told", () => {
  it.each<readonly [text: string, wanted: ReturnType<typeof doneAloud>, isSided: boolean]>([
    ["12 times {38} and rest {25} and once more 12", { sets: 2 }, false],
    ["we do 12 {30} second set 12 again {30} and the third and final set of 12", { sets: 3 }, false],
    ["8 of these please {30} and 8 more", { sets: 2 }, false],
    ["10 of those slowly that's 10 good reps", {}, false],
    // A count is no set; the other side is none; what nobody tells a number of is one.
    ["10 of these here we go {9} 8 9 10 {20} rest", {}, false],
    ["8 with the right {20} and change over 8 on the other {20} and again 8 {20} change 8", { sets: 2 }, true],
    ["6 and 6 {20} once more 6 and 6", { sets: 2 }, true],
    ["8 each leg {20} then the other leg {20} again 8", { sets: 2 }, true],
    ["8 of those {30} lovely rest {20} and once more {30} good", { sets: 2 }, false],
    ["10 reps {30} next", {}, false],
    ["so this is set three of 10", { sets: 3 }, false],
    ["each set is 10 reps and a set of 10 is plenty", {}, false],
    ["10 on the right {20} and 10 on the left", { eachSide: true }, false],
    ["6 on the right leg {20} 6 on the left leg {20} same again 6 on the right {20} and 6 on the left", { sets: 2, eachSide: true }, false],
    ["10 of these right that's it left to do is the next one", {}, false],
  ])("%s", (text, wanted, isSided) => {
    expect(heard(text, isSided)).toEqual(wanted);
  });
});
