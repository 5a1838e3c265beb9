/** Letters said one by one although they hold a vowel; capitals without a vowel are always spelled. */
const SPELLED: ReadonlySet<string> = new Set(
  `RPE ROM ACL PCL UCL AC SI IT ITB ID AI TV UK US USA EU GPS USB DIY FAQ FYI ETA AM PM ACSM NSCA AHA WHO BMI PE OHP RFESS ATG TUT EZ OA RA MRI ECG EMG AED UV ABC VIP IQ API URL OTC`.split(/\s+/),
);

/** Initials that are words as well, and what shows that the letters are meant: beside a capital word they are words said loudly. */
const WORDS_TOO: ReadonlyMap<string, { readonly before: RegExp; readonly after: RegExp }> = new Map([
  ["IT", { before: /\b(?:the|your|my|an?|each|both|works? in|job in)\s+$/i, after: /^\s+(?:bands?|tracts?|syndrome)\b/i }],
  ["WHO", { before: /\bthe\s+$/i, after: /^\s+(?:says|said|advises|recommends|suggests|guidelines?)\b/i }],
  ["AM", { before: /(?:^|[^I\s])\s+$/, after: /^$/ }],
  ["US", { before: /\b(?:the|a|in|and|or)\s+$/i, after: /^\s+(?:dollars|pounds|units|sizes?)\b/i }],
]);

/** As much of a text beside the letters as shows what they are. */
const NEAR = 24;

/** A word in capitals that is no initials: "STOP", "I". */
const isLoud = (word: string | undefined): boolean =>
  word !== undefined && (word === "I" || (word.length > 1 && /[AEIOUY]/.test(word) && (!SPELLED.has(word) || WORDS_TOO.has(word))));

function isSpelled(letters: string, before: string, after: string): boolean {
  const words = WORDS_TOO.get(letters);
  if (!words) return SPELLED.has(letters) || !/[AEIOUY]/.test(letters);
  const isInRun = isLoud(/(?<![\p{L}'])([A-Z]+)[^\p{L}\p{N}.!?]+$/u.exec(before)?.[1]) || isLoud(/^[^\p{L}\p{N}.!?]+([A-Z]+)(?![\p{L}'])/u.exec(after)?.[1]);
  return words.after.test(after) || (!isInRun && words.before.test(before));
}

/**
 * Letters that are read one by one: RPE, ACLs, and any capitals without a vowel. A word in capitals for emphasis stays a word
 * ("STOP IF IT HURTS").
 */
export function spellInitials(text: string): string {
  return text.replace(/(?<![\p{L}'])([A-Z]{2,5})('?s)?(?![\p{L}'])/gu, (written: string, letters: string, plural: string | undefined, at: number, whole: string) => {
    const end = at + written.length;
    return isSpelled(letters, whole.slice(Math.max(0, at - NEAR), at), whole.slice(end, end + NEAR)) ? Array.from(letters).join(" ") + (plural ?? "") : written;
  });
}
