import { useCallback, useEffect, useMemo, useRef, useState } from "react";

/** Milliseconds a pointer rests on a remedy before its preview comes, so that passing over shows nothing. */
const SHOW_AFTER = 180;
/** Milliseconds in which the pointer may travel from the remedy to its preview. */
const HIDE_AFTER = 220;

/** A remedy by its finding's name in the list and its own words: both outlast a new check, which hands out new objects. */
export interface Shown {
  readonly finding: string;
  readonly label: string;
  readonly button: HTMLElement;
}

export interface PreviewHandlers {
  /** The pointer came to rest on a remedy. */
  readonly point: (remedy: Shown) => void;
  /** The focus came to a remedy by key. */
  readonly focus: (remedy: Shown) => void;
  /** The pointer went away; the preview stays for as long as the pointer needs to reach it. */
  readonly leave: () => void;
  /** The pointer reached the preview. */
  readonly hold: () => void;
  readonly hide: () => void;
}

/** Which remedy shows what it would do. One at a time; Escape, a press on the remedy and a turn of the wheel take it away. */
export function usePreview(): { shown: Shown | null; handlers: PreviewHandlers } {
  const [shown, setShown] = useState<Shown | null>(null);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const later = useCallback((next: Shown | null, after: number) => {
    clearTimeout(timer.current);
    timer.current = setTimeout(() => setShown(next), after);
  }, []);
  const handlers = useMemo((): PreviewHandlers => {
    const now = (next: Shown | null): void => {
      clearTimeout(timer.current);
      setShown(next);
    };
    return {
      point: (remedy) => later(remedy, SHOW_AFTER),
      focus: now,
      leave: () => later(null, HIDE_AFTER),
      hold: () => clearTimeout(timer.current),
      hide: () => now(null),
    };
  }, [later]);
  useEffect(() => () => clearTimeout(timer.current), []);
  useEffect(() => {
    if (shown === null) return;
    const onKey = (event: KeyboardEvent): void => {
      if (event.key === "Escape") handlers.hide();
    };
    document.addEventListener("keydown", onKey);
    document.addEventListener("wheel", handlers.hide, { passive: true });
    window.addEventListener("resize", handlers.hide);
    return () => {
      document.removeEventListener("keydown", onKey);
      document.removeEventListener("wheel", handlers.hide);
      window.removeEventListener("resize", handlers.hide);
    };
  }, [shown, handlers]);
  return { shown, handlers };
}
