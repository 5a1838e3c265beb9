const FORWARD = new Set([" ", "PageDown", "ArrowDown", "ArrowRight"]);
const BACK = new Set(["PageUp", "ArrowUp", "ArrowLeft"]);

/** What has the focus keeps these keys for itself; selectors. */
const OWN_KEYS: readonly (readonly [where: string, isOwn: (key: string) => boolean])[] = [
  // Arrows, pages and the space bar scroll a region, and what stands in it along.
  ["[role='region'][tabindex]", () => true],
  ["select", () => true],
  ["button, input, summary", (key) => key === " "],
];

/**
 * What a key does to the reading: a pedal sends page down or an arrow, wherever the focus is.
 * @param isIn - whether the focus is in an element of a selector
 * @returns null for a key that is none of the reading's
 */
export function readingKey({ key, ctrlKey, metaKey, altKey, repeat }: Pick<KeyboardEvent, "key" | "ctrlKey" | "metaKey" | "altKey" | "repeat">, isIn: (selector: string) => boolean): "forward" | "back" | null {
  if (ctrlKey || metaKey || altKey || repeat) return null;
  if (OWN_KEYS.some(([where, isOwn]) => isOwn(key) && isIn(where))) return null;
  if (FORWARD.has(key)) return "forward";
  return BACK.has(key) ? "back" : null;
}
