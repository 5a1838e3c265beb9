import { memo, useMemo, useState } from "react";
import { blockName, type Block } from "../../../shared/episode";
import { quietIn, type Pace } from "../../../shared/speech";
import { DraftField } from "../../fields/draft-field";
import { orNothing, readLength } from "../../fields/read";
import { useActions } from "../../session/context";
import { clock } from "../../words/clock";
import { count } from "../../words/count";
import { BlockPart } from "../place";
import { ClipStrip } from "./clip-strip";
import { fitSentence } from "./fit-sentence";
import type { FoldSize } from "./fold";
import { Ruler } from "./ruler";
import { blockScreen, blockTimeline } from "../../voiceover/timeline";

const readClip = orNothing(readLength(0, 86_400, "1:35"));

interface Props {
  readonly block: Block;
  readonly number: number;
  /** When the block begins in the video; whole seconds, so that letters typed before it seldom draw it again. */
  readonly start: number;
  /** The longest ruler of the place; seconds. */
  readonly longest: number;
  readonly pace: Pace;
  readonly size: FoldSize | null;
  readonly onPrompt: (block: string) => void;
}

/** One block: its ruler at the scale of all, whether the words fit, and the words where they are spoken. */
export const SpeakPart = memo(function SpeakPart({ block, number, start, longest, pace, size, onPrompt }: Props) {
  const { apply, mend } = useActions();
  const [draft, setDraft] = useState<number | null>(null);
  const shown = useMemo(() => (draft === null ? block : { ...block, clipSeconds: draft }), [block, draft]);
  const screen = useMemo(() => blockScreen(shown, pace), [shown, pace]);
  const timeline = useMemo(() => blockTimeline(shown, pace, screen.seconds), [shown, pace, screen.seconds]);
  const quiet = quietIn(shown, pace);
  const fit = fitSentence(screen);
  const name = blockName(block);
  return (
    <BlockPart
      block={block} number={number}
      aside={
        <div className="speak-aside">
          <span>from {clock(start)}</span>
          <DraftField
            className="clip-field" label="Clip" value={block.clipSeconds === null ? "" : clock(block.clipSeconds)} placeholder={clock(screen.seconds)} read={readClip}
            onCommit={(clipSeconds) => mend([{ type: "set-block", block: block.id, fields: { clipSeconds } }])}
          />
        </div>
      }
    >
      <ClipStrip
        name={name} timeline={timeline} isSet={shown.clipSeconds !== null} longest={longest} isQuietFine={quiet.length > 0} words={fit} onDraft={setDraft}
        onSet={(clipSeconds) => apply([{ type: "set-block", block: block.id, fields: { clipSeconds } }])}
      />
      <p className={screen.overSeconds > 0 ? "fit over" : "fit"}>
        {fit}
        {timeline.hanging > 0 && ` ${count(timeline.hanging, "word")} ${timeline.hanging === 1 ? "hangs" : "hang"} over the end.`}
        {screen.spoken.words > 0 && <button type="button" className="word-button" onClick={() => onPrompt(block.id)}>Prompter from here</button>}
      </p>
      <Ruler block={shown} timeline={timeline} quiet={quiet} size={size} pace={pace} />
    </BlockPart>
  );
});
