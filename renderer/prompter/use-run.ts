import { useCallback, useEffect, useRef, useState } from "react";
import { advance, beginningOf, isAtEnd, momentAt, type Moment } from "./moment";
import type { PromptScript } from "./script";

/** Where the prompter is. `isWaiting`: at a block's beginning, until it is started. */
export interface Run {
  readonly isRunning: boolean;
  readonly isWaiting: boolean;
  readonly start: () => void;
  readonly stop: () => void;
  /** @param seconds - planned ones from the script's start; `isBlock` stops there until it is started */
  readonly goTo: (seconds: number, isBlock?: boolean) => void;
  readonly now: () => Moment;
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
  readonly onMoment: (moment: Moment) => void;
}

/** Runs through a script in real time. */
export function useRun({ script, startAt, rate, waits, onMoment }: Setup): Run {
  const here = useRef<Moment>(momentAt(script, startAt, rate));
  const [isRunning, setRunning] = useState(false);
  const [isWaiting, setWaiting] = useState(true);
  // Read on each frame, so that a change of pace does not begin the frame anew.
  const latest = useRef({ rate, waits, onMoment });
  useEffect(() => {
    latest.current = { rate, waits, onMoment };
  });

  useEffect(() => {
    if (!isRunning) return;
    let before = performance.now();
    let frame = requestAnimationFrame(function run(time) {
      const seconds = Math.min(LONGEST_FRAME, Math.max(0, time - before) / 1000);
      before = time;
      const { moment, stopsAt } = advance(script, here.current, seconds, latest.current);
      here.current = moment;
      latest.current.onMoment(moment);
      if (stopsAt === null) frame = requestAnimationFrame(run);
      else {
        setRunning(false);
        setWaiting(stopsAt === "block");
      }
    });
    return () => cancelAnimationFrame(frame);
  }, [isRunning, script]);

  return {
    isRunning, isWaiting,
    start: useCallback(() => {
      if (isAtEnd(script, here.current)) here.current = beginningOf(script, 0);
      setWaiting(false);
      setRunning(true);
    }, [script]),
    stop: useCallback(() => setRunning(false), []),
    goTo: useCallback((seconds, isBlock = false) => {
      // A step that leads nowhere leaves the clip's seconds as they are.
      if (isBlock || seconds !== here.current.at) here.current = momentAt(script, seconds, latest.current.rate);
      if (isBlock) {
        setRunning(false);
        setWaiting(true);
      }
      latest.current.onMoment(here.current);
    }, [script]),
    now: useCallback(() => here.current, []),
  };
}
