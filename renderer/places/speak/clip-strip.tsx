import { useRef, useState, type KeyboardEvent, type PointerEvent } from "react";
import { clock, seconds } from "../../words/clock";
import type { BlockTimeline } from "../../voiceover/timeline";

/** Longest clip the document holds; seconds. */
const MOST = 86_400;
/** Share of the ruler that has room for the word. */
const LEAST_QUIET = 0.1;
const STEPS: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1, PageUp: 10, PageDown: -10 };

interface Props {
  readonly name: string;
  readonly timeline: BlockTimeline;
  /** Whether the block has a clip, or its length only follows the words. */
  readonly isSet: boolean;
  /** The longest ruler of the place, so that rulers compare; seconds. */
  readonly longest: number;
  /** The seconds without words have nothing wrong about them. */
  readonly isQuietFine: boolean;
  /** What the ruler says in words. */
  readonly words: string;
  /** While the end is dragged: the length it would have; null when it is let go without a change. */
  readonly onDraft: (length: number | null) => void;
  readonly onSet: (length: number) => void;
}

/** A block's ruler at the scale of all: where there is speech, where silence, what hangs over. Its end can be dragged, which Escape gives up, or moved with arrow keys. */
export function ClipStrip({ name, timeline, isSet, longest, isQuietFine, words, onDraft, onSet }: Props) {
  const ruler = useRef<HTMLDivElement>(null);
  /** While the end is dragged: the scale it was taken up at, and the length it had. */
  const [drag, setDrag] = useState<{ readonly scale: number; readonly from: number | null; readonly x: number } | null>(null);
  const { lines, length, speechTo } = timeline;
  const whole = drag?.scale ?? Math.max(longest, length, speechTo, 1);
  const share = (value: number): string => `${Math.min(100, (100 * value) / whole)}%`;
  const stretches = lines.flatMap(({ placed, from }) => placed.stretches.map((stretch) => [from + stretch.from, from + stretch.to] as const));

  /** Whole seconds; close to the last word's end, exactly as long as the words need. */
  const lengthAt = (event: PointerEvent): number => {
    const box = ruler.current?.getBoundingClientRect();
    if (!box || box.width === 0) return length;
    const at = ((event.clientX - box.left) / box.width) * whole;
    const near = (5 * whole) / box.width;
    const fits = Math.ceil(speechTo);
    return Math.max(0, Math.min(MOST, Math.abs(at - fits) < near ? fits : Math.round(at)));
  };
  const letGo = (): void => {
    setDrag(null);
    onDraft(null);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (drag !== null) {
      event.preventDefault();
      if (event.key === "Escape") letGo();
      return;
    }
    const step = STEPS[event.key];
    const to = step !== undefined ? length + step : event.key === "Home" ? 0 : event.key === "End" ? Math.ceil(speechTo) : null;
    if (to === null) return;
    event.preventDefault();
    onSet(Math.max(0, Math.min(MOST, Math.round(to))));
  };
  return (
    <div className="strip" ref={ruler}>
      <span className={isSet ? "strip-clip" : "strip-clip open"} style={{ width: share(length) }} />
      {stretches.map(([from, to], i) => <span key={i} className="strip-speech" style={{ left: share(from), width: `max(2px, ${share(Math.max(0, Math.min(to, length) - from))})` }} hidden={from >= length} />)}
      {isQuietFine && length - speechTo > LEAST_QUIET * whole && <span className="strip-quiet" style={{ left: share(speechTo), width: share(length - speechTo) }} aria-hidden="true">quiet</span>}
      {speechTo > length && <span className="strip-over" style={{ left: share(length), width: share(speechTo - length) }} />}
      <button
        type="button" role="slider" className="strip-end" style={{ left: share(length) }} title="Drag the clip's end"
        aria-label={`End of the clip of ${name}`} aria-orientation="horizontal" aria-valuemin={0} aria-valuemax={MOST} aria-valuenow={Math.round(length)} aria-valuetext={words}
        onKeyDown={onKeyDown}
        onPointerDown={(event) => {
          if (event.button !== 0) return;
          event.currentTarget.setPointerCapture(event.pointerId);
          setDrag({ scale: whole, from: isSet ? length : null, x: event.clientX });
        }}
        onPointerMove={(event) => {
          if (drag !== null) onDraft(lengthAt(event));
        }}
        onPointerUp={(event) => {
          if (drag === null) return;
          const to = lengthAt(event);
          letGo();
          // A press that moved nothing is no change.
          if (event.clientX !== drag.x && to !== drag.from) onSet(to);
        }}
        onPointerCancel={letGo}
      >
        {drag !== null && <span className="strip-draft">{length >= 60 ? clock(length) : `${seconds(length)} s`}</span>}
      </button>
    </div>
  );
}
