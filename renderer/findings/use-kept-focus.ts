import { useEffect, useLayoutEffect, useRef, type RefObject } from "react";

/** When the focused finding is mended or set aside and so goes away, the focus stays in the panel instead of being lost. */
export function useKeptFocus(panel: RefObject<HTMLElement | null>, list: unknown): void {
  const isInside = useRef(false);
  useEffect(() => {
    const onFocus = (event: FocusEvent): void => {
      isInside.current = event.target instanceof Node && panel.current?.contains(event.target) === true;
    };
    document.addEventListener("focusin", onFocus);
    return () => document.removeEventListener("focusin", onFocus);
  }, [panel]);
  useLayoutEffect(() => {
    if (isInside.current && (document.activeElement === null || document.activeElement === document.body)) panel.current?.focus();
  }, [panel, list]);
}
