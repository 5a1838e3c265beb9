import { Fragment, memo } from "react";
import { clock } from "../../words/clock";
import { foldLine, type FoldSize, type Row, type RowBreath } from "./fold";
import type { PlacedLine } from "../../voiceover/timeline";

interface Props {
  readonly placed: PlacedLine;
  /** Seconds from the clip's start: the first word, the clip's end, and how far the ruler goes on. */
  readonly from: number;
  readonly length: number;
  readonly until: number;
  /** Whole seconds that may stay silent after the line. */
  readonly quiet: number;
  readonly size: FoldSize;
  /** A press on a word; breaths are marked and taken out by a press on them. */
  readonly onWord: (placed: PlacedLine, index: number) => void;
  readonly onBreath: (placed: PlacedLine, afterWord: number, isMarked: boolean) => void;
}

/** A say line on its ruler. The words are text in reading order; only their places are drawn. */
export const RuledLine = memo(function RuledLine({ placed, from, length, until, quiet, size, onWord, onBreath }: Props) {
  const rows = foldLine(placed, from, length, until, size, quiet);
  const firstHanging = rows.flatMap(({ words }) => words).find(({ hangs }) => hangs)?.index ?? null;
  const scale = size.width / size.rowSeconds;
  return (
    <div className="fold">
      {rows.map((row, i) => <RuledRow key={i} placed={placed} row={row} scale={scale} firstHanging={firstHanging} onWord={onWord} onBreath={onBreath} />)}
    </div>
  );
});

interface RowProps extends Pick<Props, "placed" | "onWord" | "onBreath"> {
  readonly row: Row;
  /** Pixels a second. */
  readonly scale: number;
  readonly firstHanging: number | null;
}

function RuledRow({ placed, row, scale, firstHanging, onWord, onBreath }: RowProps) {
  const breathAfter = new Map(row.breaths.map((breath) => [breath.afterWord, breath]));
  return (
    <div className="row-of-ruler">
      <span className="edge" style={{ backgroundSize: `${scale}px 100%`, backgroundPositionX: `${-(row.from % 1) * scale}px` }} />
      {row.over && <span className="over-part" style={{ left: row.over.x, width: row.over.width }} />}
      {row.over && <span className="over-edge" style={{ left: row.over.x, width: row.over.width }} />}
      {row.speech.map(({ x, width }, i) => <span key={i} className="speech-part" style={{ left: x, width }} />)}
      {row.words.map((word) => (
        <Fragment key={word.index}>
          {word.index === firstHanging && <span className="visually-hidden"> over the clip's end from here: </span>}
          <span className={`ruled-word${word.hangs ? " hangs" : ""}${word.isCut ? " cut" : ""}`} style={{ left: word.x, ...(word.isCut && { maxWidth: `calc(100% - ${word.x}px + 4px)` }) }} onClick={() => onWord(placed, word.index)}>{word.text} </span>
          <Breath breath={breathAfter.get(word.index)} onPress={(breath, isMarked) => onBreath(placed, breath.afterWord, isMarked)} />
        </Fragment>
      ))}
      {row.quiet && <span className="quiet-part" style={{ left: row.quiet.x, width: row.quiet.width }} />}
      {row.quiet && row.quiet.wordsX !== null && <span className={row.quiet.isBelow ? "quiet-words below" : "quiet-words"} style={{ left: row.quiet.wordsX }}>{row.quiet.words}</span>}
      {row.marks.map(({ wordsX, seconds: at }) => <span key={at} className="ruler-mark" style={{ left: wordsX }} aria-hidden="true">{clock(at)}</span>)}
      {row.end && <span className="clip-ends" style={{ left: row.end.x }} aria-hidden="true" />}
      {row.end && <span className="end-words" style={{ left: row.end.wordsX }} aria-hidden="true">{row.end.words}</span>}
    </div>
  );
}

/** One stroke where the coach marked a breath, a light one in brackets where one would help; a sentence's end breathes by itself. */
function Breath({ breath, onPress }: { breath: RowBreath | undefined; onPress: (breath: RowBreath, isMarked: boolean) => void }) {
  if (!breath || breath.why === "sentence") return null;
  const isMarked = breath.why === "marked";
  const words = isMarked ? "Take this breath out" : "Mark this breath";
  return (
    <button type="button" className={isMarked ? "breath marked" : "breath"} style={{ left: breath.x }} title={words} aria-label={isMarked ? "breath, take it out" : "suggested breath, mark it"} onClick={() => onPress(breath, isMarked)}>
      {isMarked ? "/" : "(/)"}
    </button>
  );
}
