import { useDeferredValue, useMemo, useRef, useState } from "react";
import { saidDifferently } from "../../../shared/speech";
import { DraftField } from "../../fields/draft-field";
import type { Reading } from "../../fields/read";
import { useFocusKept } from "../../words/use-focus-kept";
import { isSameWord, listIsFull, readSaid } from "./pronunciation-list";
import { usePronunciations } from "./use-pronunciations";

/**
 * What of a line is said otherwise than it is written, each piece to correct. Corrections are the series' own and hold in every episode.
 */
export function SaidAs({ text }: { text: string }) {
  const { own, keep } = usePronunciations();
  const [adding, setAdding] = useState("");
  const part = useRef<HTMLDivElement>(null);
  // A word's own field goes once it is on the list: to the piece it has become part of, else to the next word.
  useFocusKept(part, (nearest) => nearest.querySelector<HTMLElement>(".said-piece:last-child input, :scope > .field input"));
  // After the letters are drawn: the ruler shows where words stand, this only what is odd about them.
  const calm = useDeferredValue(text);
  const pieces = useMemo(() => saidDifferently(calm, own).filter(({ written }, i, all) => all.findIndex((one) => isSameWord(one.written, written)) === i), [calm, own]);
  /** How a word is said, once there is room for it on the list. */
  const readFor = (written: string) => (text: string): Reading<string> => {
    const full = listIsFull(own, written);
    return full === null ? readSaid(text) : { ok: false, problem: full };
  };
  return (
    <div className="said-as" ref={part} role="group" aria-label="Said otherwise than written">
      {pieces.map(({ written, said }) => {
        const isOwn = own.some((one) => isSameWord(one.written, written));
        return (
          <div key={written} className="said-piece">
            <DraftField label={`${written} is said`} value={said} read={readFor(written)} onCommit={(value) => keep(written, value)} />
            {isOwn && <button type="button" className="word-button" aria-label={`Say ${written} as usual again`} onClick={() => keep(written, null)}>As usual again</button>}
          </div>
        );
      })}
      <div className="said-piece">
        <DraftField label={pieces.length === 0 ? "All is said as written. A word you say another way" : "Another word you say in a way of your own"} value={adding} placeholder="psoas" read={readSaid} onCommit={setAdding} />
        {adding !== "" && (
          <DraftField
            label={`${adding} is said`} value="" placeholder="so as" read={readFor(adding)}
            onCommit={(said) => {
              keep(adding, said);
              setAdding("");
            }}
          />
        )}
      </div>
    </div>
  );
}
