import { useCallback, useMemo, useRef, useState } from "react";
import { shotSeconds } from "../../../shared/filming";
import { paceOf, screenClock, type BlockScreenClock } from "../../../shared/speech";
import { Prompter } from "../../prompter";
import { ReadThrough } from "../../read-through";
import { useSession } from "../../session/context";
import { clock } from "../../words/clock";
import { count } from "../../words/count";
import { EmptyPlace, Figure, PlaceFrame } from "../place";
import { PaceWords } from "./pace-words";
import { Pronunciations } from "./pronunciations";
import { SpeakPart } from "./speak-part";
import { useFoldSize } from "./use-fold-size";
import "./speak.css";

const sum = (blocks: readonly BlockScreenClock[], of: (block: BlockScreenClock) => number): number => blocks.reduce((total, block) => total + of(block), 0);

/** Words against seconds: each block is a ruler as long as its clip, the words stand on it where they are spoken. */
export function Speak() {
  const { episode, pace: own, voice } = useSession();
  const pace = paceOf(episode, own);
  const [prompting, setPrompting] = useState<{ from: string | null } | null>(null);
  const [isReading, setReading] = useState(false);
  const ruler = useRef<HTMLDivElement>(null);
  const rem = useRef<HTMLSpanElement>(null);
  const size = useFoldSize(ruler, rem, pace.syllablesPerSecond);
  // Counted here and not taken from the session: its clocks rest while somebody types, and rulers must follow at once.
  const screen = useMemo(() => screenClock(episode, shotSeconds, pace), [episode, pace]);
  const longest = scaleFor(screen.blocks);
  const words = sum(screen.blocks, ({ spoken }) => spoken.words);
  const over = screen.seconds - screen.targetSeconds;
  const onPrompt = useCallback((block: string) => setPrompting({ from: block }), []);
  const starts = startsOf(screen.blocks);
  return (
    <PlaceFrame
      title="Speak"
      about="Words against seconds: each ruler is as long as its clip, and every word stands where it is spoken."
      figures={
        <>
          <Figure value={clock(sum(screen.blocks, ({ spoken }) => spoken.seconds))} label={`${count(words, "word")} to say`} />
          <Figure value={`${clock(screen.seconds)} of ${clock(screen.targetSeconds)}`} label="on screen" over={over >= 0.5 ? `${clock(over)} over` : null} />
          <Figure value={pace.syllablesPerSecond.toFixed(1)} label={voice === null ? "syllables a second, a usual pace" : "syllables a second, your own pace"} />
        </>
      }
    >
      <div className="fold-probe" ref={ruler} aria-hidden="true"><span ref={rem} /></div>
      {episode.blocks.length === 0 && <EmptyPlace>No words yet. Write a line that begins with "say:" and it is set on a ruler here.</EmptyPlace>}
      {words > 0 && (
        <div className="speak-doings">
          <button type="button" className="plain-button" onClick={() => setPrompting({ from: null })}>Open the prompter</button>
          <button type="button" className="plain-button" onClick={() => setReading(true)}>Read it through</button>
          <PaceWords />
          <p className="second">Press a word to change it, drag a ruler's end to change the clip. <span className="breath-key marked">/</span> is a breath you marked, <span className="breath-key">(/)</span> one that would help, <span className="quiet-key" aria-hidden="true" /> room to be quiet.</p>
        </div>
      )}
      {episode.blocks.length > 0 && <Pronunciations />}
      <div className="speak-parts">
        {episode.blocks.map((block, i) => <SpeakPart key={block.id} block={block} number={i + 1} start={starts[i] ?? 0} longest={longest} pace={pace} size={size} onPrompt={onPrompt} />)}
      </div>
      {prompting && <Prompter from={prompting.from} onClose={() => setPrompting(null)} />}
      {isReading && <ReadThrough onClose={() => setReading(false)} />}
    </PlaceFrame>
  );
}

/** Seconds the width stands for: in steps, so that the rulers do not all stretch with every letter. */
function scaleFor(blocks: readonly BlockScreenClock[]): number {
  return Math.max(1, Math.ceil(Math.max(0, ...blocks.map((block) => Math.max(block.spoken.seconds, block.seconds))) / 10)) * 10;
}

/** When each block begins in the video; whole seconds. */
function startsOf(blocks: readonly BlockScreenClock[]): number[] {
  let at = 0;
  return blocks.map((block) => {
    const start = Math.round(at);
    at += block.seconds;
    return start;
  });
}
