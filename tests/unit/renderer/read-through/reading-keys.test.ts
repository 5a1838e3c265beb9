import { describe, expect, it } from "vitest";
import { readingKey } from "../../../../renderer/read-through/reading-keys";

const press = (key: string, inside: readonly string[] = [], held: Partial<KeyboardEvent> = {}) =>
  readingKey({ key, ctrlKey: false, metaKey: false, altKey: false, repeat: false, ...held }, (selector) => selector.split(", ").some((one) => inside.includes(one)));
const KEYS = [[" ", "forward"], ["PageDown", "forward"], ["ArrowDown", "forward"], ["ArrowRight", "forward"], ["PageUp", "back"], ["ArrowUp", "back"], ["ArrowLeft", "back"]] as const;

describe("a key that drives reading", () => {
  it.each(KEYS)("%j goes %s", (key, way) => expect(press(key)).toBe(way));

  it.each(["Enter", "Tab", "a", "Escape", "Home"])("is not %s", (key) => expect(press(key)).toBeNull());

  it.each(KEYS)("is not %j while the focus is in a region that scrolls, or on a choice", (key) => {
    expect(press(key, ["[role='region'][tabindex]"])).toBeNull();
    expect(press(key, ["[role='region'][tabindex]", "button"])).toBeNull();
    expect(press(key, ["select"])).toBeNull();
  });

  it.each(["button", "input", "summary"])("is not the space bar on a %s, whose own key it is; a pedal's keys still are", (element) => {
    expect(press(" ", [element])).toBeNull();
    expect(press("PageDown", [element])).toBe("forward");
    expect(press("PageUp", [element])).toBe("back");
  });

  it.each(["ctrlKey", "metaKey", "altKey", "repeat"] as const)("is none with %s", (held) => expect(press("PageDown", [], { [held]: true })).toBeNull());
});
