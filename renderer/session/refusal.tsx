import { useEffect } from "react";
import { createPortal } from "react-dom";
import "./refusal.css";

/** A sentence on why a command was not done, and the window it stands in: nothing outside of that is seen or read out. */
export interface Refused {
  readonly sentence: string;
  readonly over: HTMLElement;
}

/** Long enough to read a sentence twice. Milliseconds. */
const SHOWN_FOR = 7000;

/** Shows the sentence in the window that is in the way, until it was read or the window is closed. */
export function Refusal({ refused, onOver }: { refused: Refused | null; onOver: () => void }) {
  useEffect(() => {
    if (refused === null) return;
    const timer = setTimeout(onOver, SHOWN_FOR);
    const closing = refused.over.closest("dialog");
    closing?.addEventListener("close", onOver);
    return () => {
      clearTimeout(timer);
      closing?.removeEventListener("close", onOver);
    };
  }, [refused, onOver]);
  return refused && createPortal(<p className="refusal" role="alert">{refused.sentence}</p>, refused.over);
}
