const VOWEL_GROUPS = /[aeiouy]+/g;

/** Regular forms: round, rounds, rounded, rounding; collapse, collapsing; sag, sagging; carry, carried. Irregular ones come from the lemma. */
export function verbForms(stem: string): string[] {
  if (/[^aeiou]y$/.test(stem)) return ["y", "ies", "ied", "ying"].map((ending) => stem.slice(0, -1) + ending);
  if (/e$/.test(stem)) return ["e", "es", "ed", "ing"].map((ending) => stem.slice(0, -1) + ending);
  const doubles = /[^aeiou][aeiou][^aeiouwxy]$/.test(` ${stem}`) && (stem.match(VOWEL_GROUPS) ?? []).length === 1;
  const last = stem.slice(-1);
  if (doubles) return [stem, `${stem}s`, `${stem}${last}ed`, `${stem}${last}ing`];
  return [stem, `${stem}${/(?:s|x|z|ch|sh)$/.test(stem) ? "es" : "s"}`, `${stem}ed`, `${stem}ing`];
}
