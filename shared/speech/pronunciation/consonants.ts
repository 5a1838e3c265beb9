/** Letters that together make fewer sounds than they are, or more. Tried in this order; the digit is how many consonants are heard. */
const HEARD: readonly (readonly [RegExp, string])[] = [
  // silent at the start or the end of a word: knee, gnaw, wrist, psoas; lamb, calm, half, walk, sign
  [/^(?:kn|gn|wr|ps|pn|wh)/g, "1"],
  [/(?:mb|mn)(?=s?$|ing$|ed$)/g, "1"],
  [/(?<=[ao])l(?=[kmf](?![aeiou]))/g, ""],
  [/gn(?=s?$|ed$|ing$|ment)/g, "1"],
  // night, weigh, through: no sound; laugh, enough, rough: one
  [/(?<=lau|enou|tou|cou|^rou)gh/g, "1"],
  [/gh(?=t|s?$|[^aeiou])/g, ""],
  // one sound for several letters
  [/tch|dge?(?=$|[eiy])|sch(?=e)|sc(?=[eiy])/g, "1"],
  [/ch|sh|th|ph|ck|wh|gh|rh/g, "1"],
  // exercise, next: two sounds; x alone at the start is one
  [/^x/g, "1"],
  [/xc(?=[eiy])/g, "2"],
  [/x/g, "2"],
  [/qu(?=e$|es$)/g, "1"],
  [/qu/g, "2"],
  // singing, thing: one; finger, angle: two; think: two
  [/ng(?=$|s$|ing|ed$|ers?$|th)/g, "1"],
  // station, pressure, muscle, listen, castle
  [/(?<=s)t(?=en$|le)/g, ""],
  [/sc(?=le)/g, "1"],
  // perfect, first, burn, word: the r is in the vowel
  [/(?<=[eiu]|wo)rr?(?![aeiouyr])|(?<=^ea)r(?![aeiouy])/g, ""],
  // doubled letters are one
  [/([bcdfgklmnprstvz])\1/g, "1"],
  // few, music, use: a glide that is heard and not written
  [/(?<=[bcfhkmpv])u(?=[bcdfgklmnprstvz][aeiou])|(?<=[fhnv])ew/g, "1"],
  [/^u(?=[bcdfgklmnprstvz][aeiou])/g, "1"],
  // the y of yes, the w of away; elsewhere both belong to the vowel
  [/^y(?=[aeiou])|(?<=[aeiou])y(?=[aou])/g, "1"],
  [/(?<![aeo])w|w(?=[aeiou])/g, "1"],
  [/h(?![aeiouy])/g, ""],
];

const SINGLE = /[bcdfghjklmnpqrstvz]/g;

/**
 * Consonants heard in one word, by its spelling: "breath" 3 (b, r, th), "squat" 4 (s, k, w, t).
 *
 * Known limit: English spelling is no alphabet; the pronouncing table corrects what is off by two and more.
 * @param word - in lower case, letters and apostrophes only
 */
export function consonantsBySpelling(word: string): number {
  const bare = word.replace(/'/g, "");
  const marked = HEARD.reduce((open, [letters, sounds]) => open.replace(letters, sounds), bare);
  const digits = marked.replace(/[^12]/g, "");
  return Array.from(digits).reduce((sum, digit) => sum + Number(digit), 0) + (marked.match(SINGLE)?.length ?? 0);
}
