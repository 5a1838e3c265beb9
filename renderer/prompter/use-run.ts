import { useCallback, useEffect, useRef, useState } from "react";
import { blockAt, type PromptScript } from "./script";

/** Where the prompter is. `isWaiting`: at a block's beginning, until it is started. */
export interface Run {
  readonly isRunning: boolean;
  readonly isWaiting: boolean;
  readonly start: () => void;
  readonly stop: () => void;
  readonly goTo: (seconds: number, waits?: boolean) => void;
  /** Seconds from the script's start, now. */
  readonly now: () => number;
}

/** A tab in the background gets no frames; when it comes back, it goes on from where it was. Seconds. */
const LONGEST_FRAME = 0.25;

interface Setup {
  readonly script: PromptScript;
  readonly startAt: number;
  /** 1 is the measured pace. */
  readonly rate: number;
  /** Stops before each block until it is started. */
  readonly waits: boolean;
  /** Called on every frame and after every jump. */
  readonly onMoment: (seconds: number) => void;
}

/** Runs through a script in real time. */
export function useRun({ script, startAt, rate, waits, onMoment }: Setup): Run {
  const at = useRef(startAt);
  const [isRunning, setRunning] = useState(false);
  const [isWaiting, setWaiting] = useState(true);
  const moment = useRef(onMoment);
  useEffect(() => {
    moment.current = onMoment;
  });

  useEffect(() => {
    if (!isRunning) return;
    let before = performance.now();
    let frame = requestAnimationFrame(function run(time) {
      const seconds = Math.min(LONGEST_FRAME, Math.max(0, time - before) / 1000) * rate;
      before = time;
      const here = blockAt(script, at.current);
      const next = at.current + seconds;
      const isOver = next >= script.seconds;
      if (isOver || (waits && here && next >= here.to)) {
        at.current = isOver ? script.seconds : (here?.to ?? next);
        setRunning(false);
        setWaiting(!isOver);
      } else at.current = next;
      moment.current(at.current);
      frame = requestAnimationFrame(run);
    });
    return () => cancelAnimationFrame(frame);
  }, [isRunning, rate, waits, script]);

  return {
    isRunning, isWaiting,
    start: useCallback(() => {
      if (at.current >= script.seconds) at.current = 0;
      setWaiting(false);
      setRunning(true);
    }, [script]),
    stop: useCallback(() => setRunning(false), []),
    goTo: useCallback((seconds, isBlock = false) => {
      at.current = seconds;
      if (isBlock) {
        setRunning(false);
        setWaiting(true);
      }
      moment.current(seconds);
    }, []),
    now: useCallback(() => at.current, []),
  };
}
