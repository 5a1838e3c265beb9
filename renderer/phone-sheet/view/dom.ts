type Child = Node | string | null | false;
type Attributes = Readonly<Record<string, string | number | boolean | null | ((event: Event) => void)>>;

/** One element: attributes, listeners (names that begin with "on"), children. */
export function h<K extends keyof HTMLElementTagNameMap>(tag: K, attributes: Attributes = {}, ...children: readonly (Child | readonly Child[])[]): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value === null || value === false) continue;
    if (typeof value === "function") element.addEventListener(name.slice(2), value);
    else element.setAttribute(name, value === true ? "" : String(value));
  }
  for (const child of children.flat()) if (child !== null && child !== false) element.append(child);
  return element;
}

/** A button at least as tall as a thumb. @param key - by which focus finds it again after the page is drawn anew */
export const button = (words: Child | readonly Child[], onPress: () => void, attributes: Attributes & { readonly key?: string } = {}): HTMLButtonElement => {
  const { key, ...others } = attributes;
  return h("button", { type: "button", onclick: onPress, ...(key === undefined ? {} : { "data-key": key }), ...others }, ...(Array.isArray(words) ? [words as readonly Child[]] : [words as Child]));
};

/** "1:05"; below zero with its sign. */
export function clock(seconds: number): string {
  const whole = Math.abs(Math.trunc(seconds));
  return `${seconds <= -1 ? "-" : ""}${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
}

export const many = (n: number, noun: string): string => `${n} ${noun}${n === 1 ? "" : "s"}`;
