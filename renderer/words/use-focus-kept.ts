import { useEffect, useRef, type RefObject } from "react";

/**
 * When what has the focus goes away, the focus goes on to the next sensible thing and is never lost.
 * @param part - where it looks after the focus; the same element as long as the caller stands
 * @param next - where it goes on; `nearest` is the innermost element around the lost one that still stands, `part` or one inside it
 */
export function useFocusKept(part: RefObject<HTMLElement | null>, next: (nearest: Element) => HTMLElement | null | undefined): void {
  const latest = useRef(next);
  useEffect(() => {
    latest.current = next;
  });
  useEffect(() => {
    const whole = part.current;
    if (!whole) return;
    /** What has the focus, and what is around it, innermost first. */
    let focused: Element[] = [];
    const isInside = (target: EventTarget | null): target is Element => target instanceof Element && whole.contains(target);
    const onFocus = ({ target }: FocusEvent): void => {
      focused = [];
      if (!isInside(target)) return;
      for (let at: Element | null = target; at !== null && isInside(at); at = at.parentElement) focused.push(at);
    };
    // A press elsewhere gives the focus up by itself.
    const onPress = ({ target }: PointerEvent): void => {
      if (!isInside(target)) focused = [];
    };
    // Parts of it are drawn at times of their own, so the page is watched and not the caller.
    const observer = new MutationObserver(() => {
      const [lost] = focused;
      if (!lost || lost.isConnected || (document.activeElement !== null && document.activeElement !== document.body)) return;
      const nearest = focused.find((around) => around.isConnected);
      focused = [];
      if (nearest) latest.current(nearest)?.focus({ preventScroll: true });
    });
    observer.observe(whole, { childList: true, subtree: true });
    document.addEventListener("focusin", onFocus);
    document.addEventListener("pointerdown", onPress, { capture: true });
    return () => {
      observer.disconnect();
      document.removeEventListener("focusin", onFocus);
      document.removeEventListener("pointerdown", onPress, { capture: true });
    };
  }, [part]);
}
