import { useEffect, useRef, useSyncExternalStore } from "react";
import { seconds } from "../words/clock";
import type { LineToRead } from "./lines";
import type { ReadingDesk } from "./reading";

interface Props {
  readonly desk: ReadingDesk;
  readonly line: LineToRead;
  readonly next: LineToRead | null;
  /** Which line this is, in words. */
  readonly of: string;
}

/** Seconds shown beyond the plan before the ruler's end is reached. */
const MORE = 1.3;

/** The line to read, large, with its seconds running over a ruler as long as planned, and the line after it. */
export function LineAtHand({ desk, line, next, of }: Props) {
  const { phase } = useSyncExternalStore(desk.state.subscribe, desk.state.get);
  const bar = useRef<HTMLSpanElement>(null);
  const over = useRef<HTMLSpanElement>(null);
  const figure = useRef<HTMLSpanElement>(null);
  useEffect(() => {
    let frame = requestAnimationFrame(function draw() {
      const said = desk.moment().seconds;
      const whole = Math.max(line.planned * MORE, 1);
      if (bar.current) bar.current.style.width = `${Math.min(100, (100 * Math.min(said, line.planned)) / whole)}%`;
      if (over.current) {
        over.current.style.left = `${(100 * line.planned) / whole}%`;
        over.current.style.width = `${Math.max(0, Math.min(100 - (100 * line.planned) / whole, (100 * (said - line.planned)) / whole))}%`;
      }
      const text = `${said.toFixed(1)} s`;
      if (figure.current && figure.current.textContent !== text) figure.current.textContent = text;
      frame = requestAnimationFrame(draw);
    });
    return () => cancelAnimationFrame(frame);
  }, [desk, line]);
  return (
    <div className="line-at-hand">
      <p className="second">{of}</p>
      <p className={phase === "reading" ? "hand-words live" : "hand-words"}>{line.text.split(/(?<=^|\s)\/(?=\s|$)/).map((part, i) => <span key={i}>{i > 0 && <span className="breath-key marked"> / </span>}{part}</span>)}</p>
      <div className="hand-ruler" aria-hidden="true">
        <span className="hand-planned" style={{ width: `${100 / MORE}%` }} />
        <span className="hand-said" ref={bar} />
        <span className="hand-over" ref={over} />
      </div>
      <p className="hand-figures"><span ref={figure} className="strong">0.0 s</span> <span className="soft">of {seconds(line.planned)} s planned</span></p>
      <p className="hand-next soft">{next ? <><span className="second">then</span> {next.text}</> : <span className="second">the last line</span>}</p>
    </div>
  );
}
