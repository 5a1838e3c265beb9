import { memo, useId, useRef, useState } from "react";
import type { Finding, Remedy } from "../../shared/checks";
import { sourceLine } from "../rule-book/book";
import { useActions } from "../session/context";
import type { PreviewHandlers } from "./use-preview";
import { WaiveForm } from "./waive-form";

interface Props {
  readonly finding: Finding;
  /** Its name in the list. */
  readonly name: string;
  readonly preview: PreviewHandlers;
  /** Id of the slip that shows what a remedy would do, and the remedy it shows. */
  readonly slip: string;
  readonly previewed: Remedy | null;
  readonly onMend: (remedy: Remedy) => void;
  readonly onAbout: (rule: string) => void;
}

/** One finding: the sentence leads to the words, the buttons mend, explain or set aside. */
export const FindingItem = memo(function FindingItem({ finding, name, preview, slip, previewed, onMend, onAbout }: Props) {
  const actions = useActions();
  const [showing, setShowing] = useState<"nothing" | "why" | "waive">("nothing");
  const whyId = useId();
  const setAside = useRef<HTMLButtonElement>(null);
  const toggle = (part: "why" | "waive"): void => setShowing(showing === part ? "nothing" : part);
  const sentence = (
    <>
      <span className={`level ${finding.level}`}>{finding.level}</span> {finding.message}
    </>
  );
  const { block, line, range } = finding;
  return (
    <li className="finding">
      {block === null ? (
        <p className="finding-sentence">{sentence}</p>
      ) : (
        <button type="button" className="finding-sentence" title="Go to these words" onClick={() => actions.goTo({ block, line, range })}>
          {sentence}
        </button>
      )}
      {finding.remedies.length > 0 && (
        <ul className="remedies">
          {finding.remedies.map((remedy) => (
            <li key={remedy.label}>
              <button
                type="button" className="word-button" aria-describedby={remedy === previewed ? slip : undefined}
                onClick={() => onMend(remedy)}
                onMouseEnter={(event) => preview.point({ finding: name, label: remedy.label, button: event.currentTarget })} onMouseLeave={preview.leave}
                onFocus={(event) => event.currentTarget.matches(":focus-visible") && preview.focus({ finding: name, label: remedy.label, button: event.currentTarget })} onBlur={preview.hide}
              >
                {remedy.label}
              </button>
            </li>
          ))}
        </ul>
      )}
      <div className="finding-more">
        <button type="button" className="word-button quiet" aria-expanded={showing === "why"} aria-controls={whyId} onClick={() => toggle("why")}>Why</button>
        <button type="button" ref={setAside} className="word-button quiet" aria-expanded={showing === "waive"} onClick={() => toggle("waive")}>Set aside</button>
      </div>
      <div id={whyId} className="finding-why" hidden={showing !== "why"}>
        <p>{finding.why}</p>
        <p className="second">Source: {sourceLine(finding.source)}</p>
        <button type="button" className="word-button quiet" onClick={() => onAbout(finding.rule)}>About this check</button>
      </div>
      {showing === "waive" && (
        <WaiveForm
          level={finding.level}
          onWaive={(reason) => actions.waive(finding, reason)}
          onLeaveOut={() => actions.leaveOut(finding.rule)}
          onClose={() => {
            setShowing("nothing");
            setAside.current?.focus();
          }}
        />
      )}
    </li>
  );
});
