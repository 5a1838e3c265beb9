import type { Block } from "../../shared/episode";
import { DEFAULT_PACE, type BlockScreenClock, type Pace } from "../../shared/speech";
import { DraftField } from "../fields/draft-field";
import { orNothing, readLength } from "../fields/read";
import { useActions, useSession } from "../session/context";
import { clock, seconds } from "../words/clock";
import { LengthBar } from "./lengths";
import { BlockPart, EmptyPlace, Figure, PlaceFrame } from "./place";
import { fitSentence, speakRows, type SpeakRow } from "./speak-rows";
import "./speak.css";

const readClip = orNothing(readLength(0, 86_400, "1:35"));

/** Words against seconds: what is said, when, and whether it fits the clip. */
export function Speak() {
  const { episode, clocks, pace } = useSession();
  const { screen } = clocks;
  const known = new Map(screen.blocks.map((block) => [block.block, block]));
  const longest = Math.max(0, ...screen.blocks.map((block) => Math.max(block.spoken.seconds, block.clipSeconds ?? block.seconds)));
  const words = screen.blocks.reduce((sum, block) => sum + block.spoken.words, 0);
  const said = screen.blocks.reduce((sum, block) => sum + block.spoken.seconds, 0);
  const over = screen.seconds - screen.targetSeconds;
  let start = 0;
  return (
    <PlaceFrame
      title="Speak"
      about={`Words against seconds, at ${pace.syllablesPerSecond.toFixed(1)} syllables a second${pace === DEFAULT_PACE ? ", the usual pace until yours is measured" : ", your own pace"}.`}
      figures={
        <>
          <Figure value={clock(said)} label={`${words} words to say`} />
          <Figure value={`${clock(screen.seconds)} of ${clock(screen.targetSeconds)}`} label="on screen" over={over >= 0.5 ? `${clock(over)} over` : null} />
        </>
      }
    >
      {episode.blocks.length === 0 && <EmptyPlace>No words yet. Write a line that begins with "say:" and its seconds are counted here.</EmptyPlace>}
      {episode.blocks.length > 0 && (
        <p className="second breath-key"><Breath marked /> is a breath you marked, <Breath marked={false} /> one that would help.</p>
      )}
      {episode.blocks.map((block, i) => {
        const at = start;
        const time = known.get(block.id);
        start += time?.seconds ?? 0;
        return time && <SpeakPart key={block.id} block={block} number={i + 1} start={at} screen={time} longest={longest} pace={pace} />;
      })}
    </PlaceFrame>
  );
}

interface PartProps {
  readonly block: Block;
  readonly number: number;
  /** When the block begins in the video; seconds. */
  readonly start: number;
  readonly screen: BlockScreenClock;
  readonly longest: number;
  readonly pace: Pace;
}

function SpeakPart({ block, number, start, screen, longest, pace }: PartProps) {
  const actions = useActions();
  const fit = fitSentence(screen);
  return (
    <BlockPart
      block={block} number={number}
      aside={
        <DraftField
          className="clip-field" label="Clip" value={block.clipSeconds === null ? "" : clock(block.clipSeconds)} placeholder={clock(screen.seconds)} read={readClip}
          onCommit={(clipSeconds) => actions.apply([{ type: "set-block", block: block.id, fields: { clipSeconds } }])}
        />
      }
    >
      <LengthBar filled={screen.spoken.seconds} room={screen.clipSeconds ?? screen.seconds} longest={longest} words={fit} />
      <p className={screen.overSeconds > 0 ? "fit over" : "fit"} aria-hidden="true">{fit}</p>
      <ol className="say-lines">
        {speakRows(block, pace).map((row) => <SayLine key={row.line} row={row} start={start} onGo={() => actions.goTo({ block: block.id, line: row.line })} />)}
      </ol>
    </BlockPart>
  );
}

function SayLine({ row, start, onGo }: { row: SpeakRow; start: number; onGo: () => void }) {
  return (
    <li>
      <span className="second say-time">{clock(start + row.from)}</span>
      <button type="button" className="say-text" title="Go to these words" onClick={onGo}>
        {row.segments.map((segment, i) => (
          <span key={i}>
            {segment.text}
            {segment.breathAfter === "marked" || segment.breathAfter === "suggested" ? <> <Breath marked={segment.breathAfter === "marked"} /> </> : " "}
          </span>
        ))}
      </button>
      <span className="second say-seconds">{seconds(row.seconds)} s</span>
    </li>
  );
}

/** A breath in the text: one stroke when it was marked, a light one when it is only suggested. */
function Breath({ marked }: { marked: boolean }) {
  return <span className={marked ? "breath marked" : "breath"} role="img" aria-label={marked ? "breath" : "suggested breath"}>{marked ? "/" : "(/)"}</span>;
}
