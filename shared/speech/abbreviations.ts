/** A short form that people never read letter by letter, and what they say instead. */
export interface ShortForm {
  readonly written: RegExp;
  readonly said: string;
}

/** Tried in this order; `$1` stands for what the pattern caught.: where a full stop may end the sentence as well, the narrower pattern stands first. */
export const SHORT_FORMS: readonly ShortForm[] = [
  { written: /\be\.\s?g\.?,?(?=[\s,:;)]|$)/gi, said: "for example" },
  { written: /\bi\.\s?e\.?,?(?=[\s,:;)]|$)/gi, said: "that is" },
  { written: /\betc\b\.?(?=[\s,;:)]+[^A-Z\s])/g, said: "et cetera" },
  { written: /\betc\b/gi, said: "et cetera" },
  { written: /\bvs\b\.?/gi, said: "versus" },
  { written: /\ba\.m\.(?=\s+[A-Z]|\s*$)/g, said: "am." },
  { written: /\bp\.m\.(?=\s+[A-Z]|\s*$)/g, said: "pm." },
  { written: /\ba\.m\./gi, said: "am" },
  { written: /\bp\.m\./gi, said: "pm" },
  { written: /\bapprox\b\.?/gi, said: "about" },
  { written: /\bca\.(?=\s?\d)/gi, said: "about" },
  { written: /\bincl\b\.?/gi, said: "including" },
  { written: /\bexcl\b\.?/gi, said: "excluding" },
  { written: /\ba\.?k\.?a\b\.?/gi, said: "also known as" },
  { written: /\bDr\.(?=\s[A-Z])/g, said: "Doctor" },
  { written: /(?<![\d\s])(\s)min\.?(?=\s\d)/g, said: "$1minimum" },
  { written: /^min\.?(?=\s\d)/gi, said: "minimum" },
  { written: /\bmax\.(?=\s+[a-z0-9])/g, said: "max" },
  { written: /\bmin\.(?=\s+[a-z0-9])/g, said: "min" },
  { written: /\bno\.\s?(?=\d)/gi, said: "number " },
  { written: /\bnos\.\s?(?=\d)/gi, said: "numbers " },
  { written: /#\s?(?=\d)/g, said: "number " },
  { written: /(?<!\/)\bw\/o(?:ut)?(?![A-Za-z])\s?/gi, said: "without " },
  { written: /(?<!\/)\bw\/(?!kg\b)\s?/gi, said: "with " },
  { written: /\bL\s?[/+&]\s?R\b/g, said: "left and right" },
  { written: /\bR\s?[/+&]\s?L\b/g, said: "right and left" },
  { written: /\band\/or\b/gi, said: "and or" },
  { written: /(?<=\d)\s?e\/s\b/gi, said: " each side" },
  { written: /(?<=\d)\s?ea\b\.?/gi, said: " each" },
  { written: /\s?\/\s?(?:ea|each)\b\.?/gi, said: " each" },
  { written: /\bea\b\.?/g, said: "each" },
  { written: /\bBW\b/g, said: "bodyweight" },
  { written: /\bDBs\b/g, said: "dumbbells" },
  { written: /\bDB\b/g, said: "dumbbell" },
  { written: /\bKBs\b/g, said: "kettlebells" },
  { written: /\bKB\b/g, said: "kettlebell" },
  { written: /\bBB\b/g, said: "barbell" },
  { written: /\bRDLs\b/g, said: "Romanian deadlifts" },
  { written: /\bRDL\b/g, said: "Romanian deadlift" },
  { written: /\br(?:n)?ds\b\.?/g, said: "rounds" },
  { written: /\bE(\d)MOM\b/g, said: "every $1 minutes on the minute" },
  { written: /\bVO2\s?max\b/gi, said: "V O 2 max" },
  { written: /\b24\/7\b/g, said: "24 7" },
  { written: /\b50\/50\b/g, said: "50 50" },
  { written: /\b([1-9](?:\.5)?)\/10\b(?!\/)/g, said: "$1 out of 10" },
  { written: /\bHIIT\b/g, said: "hit" },
  { written: /\bOK\b/g, said: "okay" },
];

/** Letters said one by one although they hold a vowel; capitals without a vowel are always spelled. */
export const SPELLED = ["RPE", "ROM", "ACL", "AC", "SI", "IT", "ID", "AI", "TV", "UK", "USA", "EU", "GPS", "USB", "DIY", "FAQ", "AM", "PM", "ACSM", "NSCA", "AHA", "WHO", "BMI"] as const;
