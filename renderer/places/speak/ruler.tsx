import { memo, useCallback, useEffect, useRef, useState, type FocusEvent } from "react";
import type { Block } from "../../../shared/episode";
import { breathEdits, type Pace, type QuietPlace } from "../../../shared/speech";
import { useActions } from "../../session/context";
import { clock, seconds } from "../../words/clock";
import { useNear } from "../../words/use-near";
import { joinLine, splitLine, withBreath, withoutBreath, wordOffsets } from "./edits";
import { rowCount, type FoldSize } from "./fold";
import { LineEditor } from "./line-editor";
import { RuledLine } from "./ruled-line";
import { SaidAs } from "./said-as";
import { SayLess } from "./say-less";
import { watchPresses, type Presses } from "./watch-presses";
import type { BlockTimeline, PlacedLine, TimedLine } from "../../voiceover/timeline";

interface Props {
  readonly block: Block;
  readonly timeline: BlockTimeline;
  /** Where free seconds may stay silent. */
  readonly quiet: readonly QuietPlace[];
  readonly size: FoldSize | null;
  readonly pace: Pace;
}

/** Rulers are drawn from this far on: an episode of an hour has more words than a page likes to hold. Pixels. */
const NEAR = 900;
/** Height of one row; rem, as in the styles. */
const ROW_REM = 3.25;

interface Here {
  readonly line: string;
  readonly caret: number;
}

/** The words of a block on its ruler, folded line by line; each line can be changed in place. */
export const Ruler = memo(function Ruler({ block, timeline, quiet, size, pace }: Props) {
  const { apply, mend, newId } = useActions();
  const [here, setHere] = useState<Here | null>(null);
  const list = useRef<HTMLOListElement>(null);
  const isNear = useNear(list, ".app-place", NEAR);
  const { lines, length } = timeline;

  /** What stands now, for what was begun earlier: a press that ends, a line that is drawn only when its words move. */
  const latest = useRef({ here, lines });
  useEffect(() => {
    latest.current = { here, lines };
  });
  /** A line without words is not left behind. */
  const drop = useCallback((line: string): void => {
    const text = latest.current.lines.find(({ placed }) => placed.line === line)?.placed.text;
    if (text !== undefined && text.trim() === "") apply([{ type: "remove-line", line }]);
  }, [apply]);
  const leave = (line: string): void => {
    setHere((now) => (now?.line === line ? null : now));
    drop(line);
  };
  /** The words of a line to change; those of the line before are left. */
  const open = useCallback((next: Here): void => {
    const before = latest.current.here;
    if (before && before.line !== next.line) drop(before.line);
    setHere(next);
  }, [drop]);
  const addLine = (): void => {
    const id = newId();
    mend([{ type: "insert-line", block: block.id, at: null, line: { id, kind: "say", text: "" } }]);
    open({ line: id, caret: 0 });
  };
  const presses = useRef<Presses | null>(null);
  const isOpen = here !== null;
  useEffect(() => {
    if (!isOpen) return;
    const watched = watchPresses(document);
    presses.current = watched;
    return () => {
      presses.current = null;
      watched.stop();
    };
  }, [isOpen]);
  const onBlur = (line: string, event: FocusEvent): void => {
    const part = event.currentTarget;
    // Another window in front is no reason to close the words.
    if (part.contains(event.relatedTarget) || part.contains(document.activeElement)) return;
    const leaveUnlessBack = (): void => {
      if (!part.contains(document.activeElement)) leave(line);
    };
    if (presses.current) presses.current.after(leaveUnlessBack);
    else leave(line);
  };
  // The same functions as long as the ruler stands, so that only lines whose words moved are drawn again.
  const onWord = useCallback(({ line, text }: PlacedLine, index: number) => open({ line, caret: wordOffsets(text)[index]?.start ?? 0 }), [open]);
  const onBreath = useCallback(
    ({ line, text }: PlacedLine, afterWord: number, isMarked: boolean) => mend([{ type: "set-line", line, fields: { text: isMarked ? withoutBreath(text, afterWord) : withBreath(text, afterWord) } }]),
    [mend],
  );
  const breathsToMark = lines.reduce((sum, { placed }) => sum + placed.breaths.filter(({ why }) => why === "suggested").length, 0);
  return (
    <>
      <ol className="ruled-lines" ref={list}>
        {lines.map((timed, i) => {
          const { placed, from } = timed;
          const text = placed.text;
          const isHere = here?.line === placed.line;
          return (
            <li key={placed.line} className={isHere ? "ruled-line here" : "ruled-line"}>
              <LineTime timed={timed} onOpen={() => open({ line: placed.line, caret: text.length })} />
              <div onBlur={(event) => isHere && onBlur(placed.line, event)}>
                {isHere && (
                  <LineEditor
                    label={`Words from ${clock(from)}`} text={text} place={here}
                    onText={(typed) => apply([{ type: "set-line", line: placed.line, fields: { text: typed } }])}
                    onSplit={(typed, at) => {
                      const split = splitLine(block, placed.line, typed, at, newId);
                      if (!split) return;
                      mend(split.edits);
                      open({ line: split.line, caret: 0 });
                    }}
                    onJoin={(typed) => {
                      const joined = joinLine(block, placed.line, typed);
                      if (!joined) return null;
                      if ("problem" in joined) return joined.problem;
                      mend(joined.edits);
                      open({ line: joined.line, caret: joined.at });
                      return null;
                    }}
                    onMove={(step) => {
                      const next = lines[i + step];
                      if (next) open({ line: next.placed.line, caret: step === 1 ? 0 : next.placed.text.length });
                    }}
                    onLeave={() => leave(placed.line)}
                  />
                )}
                {isHere && <SaidAs text={text} />}
                {size && !isNear && placed.words.length > 0 && (
                  <p className="far-words" style={{ height: `${ROW_REM * rowCount(placed, from, untilOf(timeline, i, size.rowSeconds), size.rowSeconds)}rem` }}>{text}</p>
                )}
                {size && isNear && placed.words.length > 0 && (
                  <RuledLine placed={placed} from={from} length={length} until={untilOf(timeline, i, size.rowSeconds)} quiet={quietAfter(quiet, placed.line)} size={size} onWord={onWord} onBreath={onBreath} />
                )}
              </div>
            </li>
          );
        })}
      </ol>
      {/* Below the words: it changes while they are typed, and must not push them about. */}
      <SayLess block={block} pace={pace} onShow={(line, caret) => open({ line, caret })} />
      <p className="ruler-foot second">
        {breathsToMark > 0 && <button type="button" className="word-button" onClick={() => mend(breathEdits(block, pace))}>{breathsToMark === 1 ? "Mark the breath that would help" : `Mark the ${breathsToMark} breaths that would help`}</button>}
        <button type="button" className="word-button" onClick={addLine}>{lines.length === 0 ? "Write words for this clip" : "Add a line"}</button>
      </p>
    </>
  );
});

/** When a line begins and how long it takes; a press opens its words. */
function LineTime({ timed: { placed, from }, onOpen }: { timed: TimedLine; onOpen: () => void }) {
  return (
    <div className="line-time">
      <button type="button" aria-label={`${clock(from)}, ${seconds(placed.seconds)} seconds: change the words "${placed.text}"`} onClick={onOpen}>{clock(from)}</button>
      <span className="second">{placed.words.length > 0 && `${seconds(placed.seconds)} s`}</span>
    </div>
  );
}

/** A ruler goes on to where the next line begins; the last one to the clip's end when that is within its row. */
function untilOf({ lines, length }: BlockTimeline, i: number, rowSeconds: number): number {
  const line = lines[i];
  if (!line) return 0;
  const end = line.from + line.placed.seconds;
  const next = lines[i + 1];
  if (next) return next.from;
  const rowEnd = line.from + Math.ceil((line.placed.seconds + 1e-6) / rowSeconds) * rowSeconds;
  return length > end && length <= rowEnd ? length : end;
}

/** Whole seconds, so that a letter seldom changes them. */
const quietAfter = (quiet: readonly QuietPlace[], line: string): number => Math.floor(quiet.find(({ after }) => after === line)?.seconds ?? 0);
