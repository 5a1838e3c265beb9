import { memo, useDeferredValue, useMemo } from "react";
import { applyEdits, emptyEpisode, type Block } from "../../../shared/episode";
import { blockFit, editsToFit, type CutSuggestion, type Pace } from "../../../shared/speech";
import { useActions } from "../../session/context";
import { blockScreen } from "../../voiceover/timeline";
import { seconds } from "../../words/clock";

/** Suggestions shown at once; the rest would be read by nobody. */
const MOST = 4;

const short = (text: string): string => (text.length > 90 ? `${text.slice(0, 86).trimEnd()}…` : text);

/** What a press does, in words. */
export function suggestionWords({ sentence, becomes, edits }: Pick<CutSuggestion, "sentence" | "becomes" | "edits">): string {
  if (edits.length === 0) return `Show "${short(sentence)}"`;
  return becomes === "" ? `Takes out "${short(sentence)}"` : `Says "${short(becomes)}"`;
}

/** How many seconds a block is still over after some edits; 0 when it fits. */
function overAfter(block: Block, pace: Pace, edits: CutSuggestion["edits"]): number {
  const [after] = applyEdits(emptyEpisode(() => "say-less", { blocks: [block] }), edits).blocks;
  return after ? blockScreen(after, pace).overSeconds : 0;
}

interface Props {
  readonly block: Block;
  readonly pace: Pace;
  /** Opens a sentence's words to find shorter ones. */
  readonly onShow: (line: string, at: number) => void;
}

/** Ways of saying less in a block whose words do not fit. They are looked for after the letters are drawn, a moment behind the words. */
export function SayLess({ block, pace, onShow }: Props) {
  const calm = useDeferredValue(block);
  return blockScreen(calm, pace).overSeconds > 0 && <Ways block={calm} isBehind={calm !== block} pace={pace} onShow={onShow} />;
}

/** The ways, best first, each one undo step. */
const Ways = memo(function Ways({ block, isBehind, pace, onShow }: Props & { readonly isBehind: boolean }) {
  const { mend } = useActions();
  const { suggestions } = blockFit(block, pace);
  const all = useMemo(() => editsToFit(block, pace), [block, pace]);
  const left = useMemo(() => overAfter(block, pace, all), [block, pace, all]);
  if (suggestions.length === 0) return null;
  // What was found for other words than those that stand would write over them.
  const take = (edits: CutSuggestion["edits"]): void => {
    if (!isBehind) mend(edits);
  };
  return (
    <div className="say-less">
      <ul aria-label="Ways of saying less">
        {suggestions.slice(0, MOST).map((suggestion, i) => (
          <li key={`${i} ${suggestion.reason} ${suggestion.sentence}`}>
            <button
              type="button" className="word-button"
              onClick={() => {
                if (suggestion.edits.length > 0) take(suggestion.edits);
                else onShow(suggestion.line, Math.max(0, block.lines.find(({ id }) => id === suggestion.line)?.text.indexOf(suggestion.sentence) ?? 0));
              }}
            >
              {suggestionWords(suggestion)}
            </button>{" "}
            <span className="second">{suggestion.why}{suggestion.savesSeconds > 0 && ` Saves ${seconds(suggestion.savesSeconds)} s.`}</span>
          </li>
        ))}
      </ul>
      {all.length > 1 && (
        <p><button type="button" className="word-button" onClick={() => take(all)}>{left > 0 ? `Do all of these, ${seconds(left)} s stay over` : `Do the first ${all.length}, then it fits`}</button></p>
      )}
    </div>
  );
});
