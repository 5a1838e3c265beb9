import { useEffect, type RefObject } from "react";
import { keepLit } from "./keep-lit";

/**
 * Takes the whole screen where that is allowed, and keeps it lit. Leaving the whole screen, which is what Escape does there, closes.
 * The focus goes back to `opener` afterwards: while something has the whole screen, nothing else can take it.
 */
export function useWholeScreen(stage: RefObject<HTMLElement | null>, opener: HTMLElement | null, onLeave: () => void): void {
  useEffect(() => {
    const node = stage.current;
    if (!node) return;
    let [gone, isWhole] = [false, false];
    const onChange = (): void => {
      if (document.fullscreenElement !== null || gone) return;
      isWhole = false;
      onLeave();
    };
    // Refused without a key or a press just before, or by the system: then it fills the window.
    void node.requestFullscreen?.({ navigationUI: "hide" }).then(() => {
      if (gone) void document.exitFullscreen().catch(() => undefined);
      else {
        isWhole = true;
        document.addEventListener("fullscreenchange", onChange);
      }
    }, () => undefined);
    const { wakeLock } = navigator as Partial<Navigator>;
    const letGoDark = wakeLock && keepLit(document, () => wakeLock.request("screen"));
    return () => {
      gone = true;
      document.removeEventListener("fullscreenchange", onChange);
      if (document.fullscreenElement === node) void document.exitFullscreen().catch(() => undefined);
      letGoDark?.();
      const back = (): void => opener?.focus({ preventScroll: true });
      if (isWhole) document.addEventListener("fullscreenchange", back, { once: true });
      if (document.fullscreenElement === null) back();
    };
    // The screen is taken once, when the prompter opens.
  }, []);
}

/** Whether the person asked their system for less motion. */
export function wantsLessMotion(): boolean {
  return window.matchMedia("(prefers-reduced-motion: reduce)").matches;
}
