import { describe, expect, it } from "vitest";
import { fateOfKey } from "../../../../renderer/prompter/keys";

const press = (key: string, fields: object = {}) => ({ key, repeat: false, ctrlKey: false, metaKey: false, altKey: false, ...fields });

describe("a key in the prompter", () => {
  it.each([" ", "Enter", "PageDown", "ArrowUp", "ArrowRight", "Home", "m", "M"])("%j acts once however long it is held", (key) => {
    expect(fateOfKey(press(key), true, false)).toBe("act");
    expect(fateOfKey(press(key, { repeat: true }), true, false)).toBe("drop");
  });

  it.each(["+", "=", "-", "f", "F", "s"])("%j goes on while it is held", (key) => expect(fateOfKey(press(key, { repeat: true }), true, false)).toBe("act"));

  it("belongs to the button that has the focus when it is the one that presses it, but not as often as the keyboard repeats", () => {
    for (const key of [" ", "Enter"]) {
      expect(fateOfKey(press(key), true, true)).toBe("leave");
      expect(fateOfKey(press(key, { repeat: true }), true, true)).toBe("drop");
    }
    expect(fateOfKey(press("PageDown"), true, true)).toBe("act");
  });

  it("is left alone with Ctrl, Alt or a command key, and when nothing is bound to it", () => {
    for (const held of ["ctrlKey", "metaKey", "altKey"]) expect(fateOfKey(press("s", { [held]: true }), true, false)).toBe("leave");
    expect(fateOfKey(press("Tab", { repeat: true }), false, false)).toBe("leave");
  });
});
