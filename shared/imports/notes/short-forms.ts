import type { Word } from "../types";

/**
 * Names as coaches shorten them when they type. Only notes are read by these: nobody says them.
 * "BB", "DB", "KB" and others of one word are known wherever names are compared. Common practice, no source.
 */
const SHORT_FORMS: Readonly<Record<string, string>> = {
  bss: "bulgarian split squat", rfess: "bulgarian split squat", ffess: "front foot elevated split squat", ssb: "safety bar",
  rdl: "romanian deadlift", rdls: "romanian deadlift", slrdl: "single leg romanian deadlift", sldl: "stiff leg deadlift", dl: "deadlift", dls: "deadlift", tbdl: "trap bar deadlift",
  ohp: "overhead press", bp: "bench press", cgbp: "close grip bench press", ibp: "incline bench press", dbbp: "dumbbell bench press",
  bs: "back squat", fs: "front squat", gs: "goblet squat", sq: "squat", hspu: "handstand push up", tgu: "turkish get up", kbs: "kettlebell swing",
  ghr: "glute ham raise", hlr: "hanging leg raise", hkr: "hanging knee raise", t2b: "toes to bar", ttb: "toes to bar", wgs: "world's greatest stretch",
  bor: "bent over row", ht: "hip thrust", bpa: "band pull apart", lpd: "lat pulldown",
  sl: "single leg", sa: "single arm", hk: "half kneeling", tb: "trap bar", mb: "medicine ball", inc: "incline", alt: "alternating", ext: "extension", exts: "extension",
  ham: "hamstring", tri: "triceps", tris: "triceps", bi: "biceps", bulg: "bulgarian split squat", bulgs: "bulgarian split squat", chins: "chin up", farmers: "farmer's", waiters: "waiter's",
};

/** The words with short forms spelled out, for looking names up; each keeps its place. */
export const spelledOut = (words: readonly Word[]): Word[] =>
  words.map((word) => {
    const full = SHORT_FORMS[word.plain.replace(/\./g, "")];
    return full === undefined ? word : { ...word, plain: full };
  });
