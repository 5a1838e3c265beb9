import { useEffect, type RefObject } from "react";

/** Closes a pop-up on Escape and on a press outside it; gives the focus back to what opened it. One that opens at the edge of the view is brought into it. */
export function useDismiss(ref: RefObject<HTMLElement | null>, close: () => void): void {
  useEffect(() => {
    const opener = document.activeElement;
    ref.current?.scrollIntoView({ block: "nearest" });
    const onKey = (event: KeyboardEvent): void => {
      if (event.key !== "Escape") return;
      event.stopPropagation();
      close();
      if (opener instanceof HTMLElement) opener.focus();
    };
    const onPress = (event: PointerEvent): void => {
      if (event.target instanceof Node && !ref.current?.contains(event.target)) close();
    };
    document.addEventListener("keydown", onKey, true);
    document.addEventListener("pointerdown", onPress, true);
    return () => {
      document.removeEventListener("keydown", onKey, true);
      document.removeEventListener("pointerdown", onPress, true);
    };
  }, [ref, close]);
}

/** Where a pop-up goes: under an element of the sheet, in the sheet's own coordinates. */
export interface Anchor { readonly left: number; readonly top: number }

export function anchorUnder(element: Element, within: Element): Anchor {
  const box = element.getBoundingClientRect();
  const frame = within.getBoundingClientRect();
  return { left: box.left - frame.left, top: box.bottom - frame.top + 4 };
}
