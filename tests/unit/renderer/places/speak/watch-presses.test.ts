import { describe, expect, it, vi } from "vitest";
import { watchPresses } from "../../../../../renderer/places/speak/watch-presses";

const turn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));
const tell = (page: EventTarget, ...events: string[]): void => events.forEach((name) => page.dispatchEvent(new Event(name)));

describe("a press", () => {
  it("is over before anything is done that waits for it, and so is its click", async () => {
    const page = new EventTarget();
    const presses = watchPresses(page);
    const seen: string[] = [];
    page.addEventListener("click", () => seen.push("click"));
    tell(page, "mousedown");
    presses.after(() => seen.push("folded"));
    await turn();
    expect(seen).toEqual([]);
    tell(page, "mouseup", "click");
    await turn();
    expect(seen).toEqual(["click", "folded"]);
    presses.after(() => seen.push("at once"));
    expect(seen).toHaveLength(3);
  });

  it.each(["dragend", "pointercancel", "keydown"])("ends with %s too", async (end) => {
    const page = new EventTarget();
    const [presses, act] = [watchPresses(page), vi.fn()];
    tell(page, "mousedown");
    presses.after(act);
    tell(page, end);
    await turn();
    expect(act).toHaveBeenCalledOnce();
  });

  it("right after another holds back what waits until it is over as well", async () => {
    const page = new EventTarget();
    const [presses, act] = [watchPresses(page), vi.fn()];
    tell(page, "mousedown");
    presses.after(act);
    tell(page, "mouseup", "mousedown");
    await turn();
    expect(act).not.toHaveBeenCalled();
    tell(page, "mouseup");
    await turn();
    expect(act).toHaveBeenCalledOnce();
  });

  it("no longer watched loses nothing that waited", () => {
    const page = new EventTarget();
    const [presses, act] = [watchPresses(page), vi.fn()];
    tell(page, "mousedown");
    presses.after(act);
    presses.stop();
    expect(act).toHaveBeenCalledOnce();
    tell(page, "mousedown");
    presses.after(act);
    expect(act).toHaveBeenCalledTimes(2);
  });
});
