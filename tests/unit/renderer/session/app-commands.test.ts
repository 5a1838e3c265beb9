import { describe, expect, it } from "vitest";
import { bridgeEvents } from "../../../../shared/bridge";
import { commandOf, refusalOf } from "../../../../renderer/session/app-commands";

const press = (key: string, fields: object = {}) => ({ key, ctrlKey: true, metaKey: false, altKey: false, shiftKey: false, ...fields });
const { options } = bridgeEvents["menu:chosen"].shape.item;

describe("the app's commands", () => {
  it("are all done while nothing lies over the episode", () => {
    for (const command of options) expect(refusalOf(command, null)).toBeNull();
  });

  it("wait, but for saving, while a window lies over it, each with a sentence of its own", () => {
    const sentences = options.filter((command) => command !== "save").map((command) => refusalOf(command, "Read it through"));
    for (const sentence of sentences) expect(sentence).toMatch(/^Close "Read it through" first, then \w.+\.$/);
    expect(new Set(sentences).size).toBe(options.length - 1);
    expect(refusalOf("save", "Prompter")).toBeNull();
    expect(refusalOf("undo", "Prompter")).toBe('Close "Prompter" first, then undo.');
  });

  it.each([
    [press("s"), "save"], [press("O"), "open"], [press("z"), "undo"], [press("Z", { shiftKey: true }), "redo"], [press("y"), "redo"],
    [press("z", { ctrlKey: false, metaKey: true }), "undo"], [press("z", { ctrlKey: false }), null], [press("z", { altKey: true }), null], [press("k"), null],
  ])("by key %#", (key, command) => expect(commandOf(key)).toBe(command));
});
