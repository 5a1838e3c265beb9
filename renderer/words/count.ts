/** "1 block", "3 blocks", "no blocks": a number with its noun, the plural given when it is not the noun and s. */
export function count(n: number, noun: string, plural = `${noun}s`): string {
  return `${n === 0 ? "no" : String(n)} ${n === 1 ? noun : plural}`;
}

/** "a", "a and b", "a, b and c". */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join("");
  return `${words.slice(0, -1).join(", ")} and ${words.at(-1) ?? ""}`;
}
