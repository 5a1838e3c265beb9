import { useRef, useState } from "react";
import { DraftField } from "../../fields/draft-field";
import { count } from "../../words/count";
import { readSaid } from "./pronunciation-list";
import { usePronunciations } from "./use-pronunciations";

/** Every word of the series that is said another way, to look at, change and take out, wherever it stands. */
export function Pronunciations() {
  const { own, keep } = usePronunciations();
  const [isOpen, setOpen] = useState(false);
  const summary = useRef<HTMLElement>(null);
  const sorted = [...own].sort((a, b) => a.written.localeCompare(b.written));
  return (
    <details className="pronunciations" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary ref={summary}>Your pronunciations<span className="second"> {own.length === 0 ? "none yet" : count(own.length, "word")}</span></summary>
      {isOpen && own.length === 0 && <p className="second">Press a word of a line, and say under the line how you say it. It is listed here and holds in every episode of the series.</p>}
      {isOpen && own.length > 0 && (
        <form autoComplete="off" onSubmit={(event) => event.preventDefault()}>
          <ul aria-label="Your pronunciations">
            {sorted.map(({ written, said }) => (
              <li key={written}>
                <DraftField label={`${written} is said`} value={said} read={readSaid} onCommit={(value) => keep(written, value)} />
                <button
                  type="button" className="word-button" aria-label={`Take out ${written}`}
                  onClick={() => {
                    keep(written, null);
                    // The button goes with its word; the keys go on from the list's head.
                    summary.current?.focus();
                  }}
                >
                  Take out
                </button>
              </li>
            ))}
          </ul>
        </form>
      )}
    </details>
  );
}
