import { useActions, useSession } from "../../session/context";
import { seconds } from "../../words/clock";
import { count } from "../../words/count";

/** Whose pace the seconds are counted at, in a sentence. */
export function PaceWords() {
  const { voice } = useSession();
  const { keepVoice } = useActions();
  if (voice === null) return <span className="second">Reading it through once measures your own pace.</span>;
  return (
    <span className="second">
      Your pace was measured on {count(voice.lines, "line")}, {seconds(voice.seconds)} s of speech.{" "}
      <button type="button" className="word-button" onClick={() => void keepVoice(null)}>Go back to the usual pace</button>
    </span>
  );
}
