/** Tells whether a press of the mouse or a finger is under way. */
export interface Presses {
  /** Does it when the press under way and its click are over; at once when nothing is pressed. */
  readonly after: (act: () => void) => void;
  /** Does what still waits, and watches no more. */
  readonly stop: () => void;
}

/** What ends a press. A drag of the browser's own and a scrolled touch end without letting go; a key says that an end was missed. */
const ENDS = ["mouseup", "dragend", "pointercancel", "keydown"];
/** Before anything on the page hears of it. */
const FIRST = { capture: true };

/**
 * A press moves the focus as it goes down and clicks as it comes up. What folds away in between moves the page under the
 * pointer, and the click goes nowhere; so that waits here.
 */
export function watchPresses(page: EventTarget): Presses {
  let isDown = false;
  let waiting: (() => void)[] = [];
  let timer: ReturnType<typeof setTimeout> | undefined;
  const settle = (): void => {
    isDown = false;
    const acts = waiting;
    waiting = [];
    for (const act of acts) act();
  };
  const onDown = (): void => {
    clearTimeout(timer);
    isDown = true;
  };
  // The click comes in the same turn as the end of the press.
  const onEnd = (): void => {
    if (!isDown) return;
    clearTimeout(timer);
    timer = setTimeout(settle, 0);
  };
  page.addEventListener("mousedown", onDown, FIRST);
  for (const end of ENDS) page.addEventListener(end, onEnd, FIRST);
  return {
    after: (act) => {
      if (isDown) waiting.push(act);
      else act();
    },
    stop: () => {
      clearTimeout(timer);
      page.removeEventListener("mousedown", onDown, FIRST);
      for (const end of ENDS) page.removeEventListener(end, onEnd, FIRST);
      settle();
    },
  };
}
