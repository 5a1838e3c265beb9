/** Keys that go on while they are held; any other would start and stop, or flicker, as fast as the keyboard repeats. */
const MAY_REPEAT = new Set(["+", "=", "-", "f", "s"]);
/** Keys a button or a tick has a use of its own for. */
const CONTROLS_OWN = new Set([" ", "Enter"]);

export interface PressedKey {
  readonly key: string;
  readonly repeat: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
}

/** A key's name, whatever its case. */
export const nameOfKey = (key: string): string => (key.length === 1 ? key.toLowerCase() : key);

/**
 * What becomes of a key in the prompter.
 * @param isKnown - whether the prompter has a use for it
 * @param isOnControl - whether a button or a tick has the focus
 * @returns "act", "drop" for the repeats of a held key, or "leave" for the browser's own use
 */
export function fateOfKey({ key, repeat, ctrlKey, metaKey, altKey }: PressedKey, isKnown: boolean, isOnControl: boolean): "act" | "drop" | "leave" {
  const name = nameOfKey(key);
  if (ctrlKey || metaKey || altKey || !isKnown) return "leave";
  if (repeat && !MAY_REPEAT.has(name)) return "drop";
  return isOnControl && CONTROLS_OWN.has(name) ? "leave" : "act";
}
