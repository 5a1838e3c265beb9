import { useDeferredValue, useMemo, useState } from "react";
import { saidDifferently, type Pronunciation } from "../../../shared/speech";
import { DraftField } from "../../fields/draft-field";
import type { Reading } from "../../fields/read";
import { useActions, useSession } from "../../session/context";

const NONE: readonly Pronunciation[] = [];
const isSame = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();

const readSaid = (text: string): Reading<string> => (text.trim().length > 0 && text.trim().length <= 200 ? { ok: true, value: text.trim() } : { ok: false, problem: "Write it as it sounds, in at most 200 letters." });

/** The list with one word said another way; said as written takes it off the list. */
export function withPronunciation(list: readonly Pronunciation[], written: string, said: string | null): Pronunciation[] {
  const others = list.filter((one) => !isSame(one.written, written));
  return said === null ? others : [...others, { written: written.trim(), said }];
}

/**
 * What of a line is said otherwise than it is written, each piece to correct. Corrections are the series' own and hold in every episode.
 */
export function SaidAs({ text }: { text: string }) {
  const { episode } = useSession();
  const { mend } = useActions();
  const [adding, setAdding] = useState("");
  const { series } = episode;
  const own = series.pronunciations ?? NONE;
  // After the letters are drawn: the ruler shows where words stand, this only what is odd about them.
  const calm = useDeferredValue(text);
  const pieces = useMemo(() => saidDifferently(calm, own).filter(({ written }, i, all) => all.findIndex((one) => isSame(one.written, written)) === i), [calm, own]);
  const keep = (written: string, said: string | null): void => mend([{ type: "set-facts", fields: { series: { ...series, pronunciations: withPronunciation(own, written, said) } } }]);
  return (
    <div className="said-as" role="group" aria-label="Said otherwise than written">
      {pieces.map(({ written, said }) => {
        const isOwn = own.some((one) => isSame(one.written, written));
        return (
          <div key={written} className="said-piece">
            <DraftField label={`${written} is said`} value={said} read={readSaid} onCommit={(value) => keep(written, value)} />
            {isOwn && <button type="button" className="word-button" aria-label={`Say ${written} as usual again`} onClick={() => keep(written, null)}>As usual again</button>}
          </div>
        );
      })}
      <div className="said-piece">
        <DraftField label={pieces.length === 0 ? "All is said as written. A word you say another way" : "Another word you say in a way of your own"} value={adding} placeholder="psoas" read={readSaid} onCommit={setAdding} />
        {adding !== "" && (
          <DraftField
            label={`${adding} is said`} value="" placeholder="so as" read={readSaid}
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
