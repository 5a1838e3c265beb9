import { memo, useCallback, useEffect, useMemo, useRef, useState, type FocusEvent } from "react";
import type { Block } from "../../../shared/episode";
import { breathEdits, type Pace, type QuietPlace } from "../../../shared/speech";
import { useActions } from "../../session/context";
import { clock, seconds } from "../../words/clock";
import { useFocusKept } from "../../words/use-focus-kept";
import { useNear } from "../../words/use-near";
import { withBlank, type Blank } from "./blank-line";
import { emptyHalf, joinLine, splitLine, withBreath, withoutBreath, wordOffsets } from "./edits";
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
  const { length } = timeline;
  /** A line that was begun and has no words yet: it is not in the episode, so one that stays empty was never there. */
  const [blank, setBlank] = useState<Blank | null>(null);
  const lines = useMemo(() => withBlank(timeline, block, blank), [timeline, block, blank]);

  /** What stands now, for what was begun earlier: a press that ends, a line that is drawn only when its words move. */
  const latest = useRef({ here, words: block.lines });
  useEffect(() => {
    latest.current = { here, words: block.lines };
  });
  /** A line without words is not left behind. */
  const drop = useCallback((line: string): void => {
    setBlank((now) => (now?.line === line ? null : now));
    const text = latest.current.words.find(({ id }) => id === line)?.text;
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
  const begin = (at: number | null): void => {
    const line = newId();
    open({ line, caret: 0 });
    setBlank({ line, at });
  };
  // The line may be gone by undo, or by another place.
  const isHereGone = here !== null && !lines.some(({ placed }) => placed.line === here.line);
  useEffect(() => {
    if (isHereGone) setHere(null);
  }, [isHereGone]);
  const type = (line: string, text: string): void => {
    const isBlank = blank?.line === line;
    if (isBlank && text.trim() === "") return;
    if (isBlank) setBlank(null);
    apply([isBlank ? { type: "insert-line", block: block.id, at: blank.at, line: { id: line, kind: "say", text } } : { type: "set-line", line, fields: { text } }]);
  };
  const addButton = useRef<HTMLButtonElement>(null);
  const part = useRef<HTMLDivElement>(null);
  useFocusKept(part, (nearest) => {
    // Its fields look after themselves.
    if (nearest.closest(".said-as")) return null;
    // From the words of a line, or a breath on them, to the line; from a way of saying less to the next; from what is gone altogether to the foot.
    return nearest.closest(".ruled-line")?.querySelector<HTMLElement>(".line-time button") ?? nearest.closest(".say-less")?.querySelector("button") ?? addButton.current;
  });
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
    <div ref={part}>
      <ol className="ruled-lines" ref={list}>
        {lines.map((timed, i) => {
          const { placed, from } = timed;
          const text = placed.text;
          const until = size ? untilOf(timeline, timed, size.rowSeconds) : 0;
          const isHere = here?.line === placed.line;
          return (
            <li key={placed.line} className={isHere ? "ruled-line here" : "ruled-line"}>
              <LineTime timed={timed} onOpen={() => open({ line: placed.line, caret: text.length })} />
              <div onBlur={(event) => isHere && onBlur(placed.line, event)}>
                {isHere && (
                  <LineEditor
                    label={`Words from ${clock(from)}`} text={text} place={here}
                    onText={(typed) => type(placed.line, typed)}
                    onSplit={(typed, at) => {
                      const emptyAt = emptyHalf(block, placed.line, typed, at);
                      if (emptyAt !== null) return begin(emptyAt);
                      const split = splitLine(block, placed.line, typed, at, newId);
                      if (!split) return;
                      mend(split.edits);
                      open({ line: split.line, caret: 0 });
                    }}
                    onJoin={(typed) => {
                      const before = lines[i - 1];
                      if (blank?.line === placed.line) {
                        if (before) open({ line: before.placed.line, caret: before.placed.text.length });
                        return null;
                      }
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
                  <p className="far-words" style={{ height: `${ROW_REM * rowCount(placed, from, until, size.rowSeconds)}rem` }}>{text}</p>
                )}
                {size && isNear && placed.words.length > 0 && (
                  <RuledLine placed={placed} from={from} length={length} until={until} quiet={quietAfter(quiet, placed.line)} size={size} onWord={onWord} onBreath={onBreath} />
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
        <button type="button" ref={addButton} className="word-button" onClick={() => begin(null)}>{lines.length === 0 ? "Write words for this clip" : "Add a line"}</button>
      </p>
    </div>
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
function untilOf({ lines, length }: BlockTimeline, line: TimedLine, rowSeconds: number): number {
  const end = line.from + line.placed.seconds;
  const next = lines[lines.indexOf(line) + 1];
  if (next) return next.from;
  const rowEnd = line.from + Math.ceil((line.placed.seconds + 1e-6) / rowSeconds) * rowSeconds;
  return length > end && length <= rowEnd ? length : end;
}

/** Whole seconds, so that a letter seldom changes them. */
const quietAfter = (quiet: readonly QuietPlace[], line: string): number => Math.floor(quiet.find(({ after }) => after === line)?.seconds ?? 0);
