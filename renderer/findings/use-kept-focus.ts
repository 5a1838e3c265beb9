import { useEffect, useLayoutEffect, useRef, type RefObject } from "react";

/**
 * When the focused finding is mended or set aside and so goes away, the focus goes to the one that takes its place
 * in the list, else to the last one, else to the panel; it is never lost.
 */
export function useKeptFocus(panel: RefObject<HTMLElement | null>, list: unknown): void {
  const isInside = useRef(false);
  const at = useRef(0);
  useEffect(() => {
    const onFocus = (event: FocusEvent): void => {
      const target = event.target instanceof Element && panel.current?.contains(event.target) === true ? event.target : null;
      isInside.current = target !== null;
      const item = target?.closest(".moment .finding");
      if (item && panel.current) at.current = [...panel.current.querySelectorAll(".moment .finding")].indexOf(item);
    };
    document.addEventListener("focusin", onFocus);
    return () => document.removeEventListener("focusin", onFocus);
  }, [panel]);
  useLayoutEffect(() => {
    if (!isInside.current || (document.activeElement !== null && document.activeElement !== document.body)) return;
    const items = [...(panel.current?.querySelectorAll(".moment .finding") ?? [])];
    const next = items[Math.min(at.current, items.length - 1)]?.querySelector<HTMLElement>("button");
    (next ?? panel.current)?.focus({ preventScroll: next !== undefined && next !== null });
    next?.scrollIntoView({ block: "nearest" });
  }, [panel, list]);
}
