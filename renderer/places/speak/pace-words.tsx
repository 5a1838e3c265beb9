import { useRef, useState } from "react";
import { useActions, useSession } from "../../session/context";
import { seconds } from "../../words/clock";
import { count } from "../../words/count";
import { useFocusKept } from "../../words/use-focus-kept";
import { PaceFromRecording } from "./pace-from-recording";

/** Whose pace the seconds are counted at, in a sentence, and how it is measured. */
export function PaceWords() {
  const { voice } = useSession();
  const { keepVoice } = useActions();
  const [isLearning, setLearning] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);
  const words = useRef<HTMLSpanElement>(null);
  useFocusKept(words, (nearest) => nearest.querySelector("button"));
  const goBack = (): void => void keepVoice(null).then(setProblem);
  return (
    <>
      <span className="second" ref={words}>
        {voice === null ? "Reading it through once measures your own pace." : <>Your pace was measured on {count(voice.lines, "line")}, {seconds(voice.seconds)} s of speech.</>}{" "}
        <button type="button" className="word-button" onClick={() => setLearning(true)}>Measure it on a recording</button>
        {voice !== null && <>{" "}<button type="button" className="word-button" onClick={goBack}>Go back to the usual pace</button></>}
      </span>
      {/* A new pace that was measured meanwhile leaves nothing to tell. */}
      {voice === null && problem !== null && (
        <p className="missing" role="alert">
          {problem} Until the app is closed, everything is counted at the usual pace; then your own is back.{" "}
          <button type="button" className="word-button" onClick={goBack}>Try again</button>
        </p>
      )}
      <PaceFromRecording open={isLearning} onClose={() => setLearning(false)} />
    </>
  );
}
