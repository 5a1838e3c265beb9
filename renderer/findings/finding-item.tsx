import { memo, useId, useRef, useState } from "react";
import type { Finding } from "../../shared/checks";
import { useActions } from "../session/context";
import { WaiveForm } from "./waive-form";

/** "Title, at" of where a rule comes from. */
export function sourceLine({ title, at }: Finding["source"]): string {
  return at ? `${title}, ${at}` : title;
}

/** One finding: the sentence leads to the words, the buttons mend, explain or set aside. */
export const FindingItem = memo(function FindingItem({ finding }: { finding: Finding }) {
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
      <p className="second">{sourceLine(finding.source)}</p>
      <div className="finding-remedies">
        {finding.remedies.map((remedy) => (
          <button key={remedy.label} type="button" className="word-button" onClick={() => actions.apply(remedy.edits)}>
            {remedy.label}
          </button>
        ))}
        <button type="button" className="word-button quiet" aria-expanded={showing === "why"} aria-controls={whyId} onClick={() => toggle("why")}>Why</button>
        <button type="button" ref={setAside} className="word-button quiet" aria-expanded={showing === "waive"} onClick={() => toggle("waive")}>Set aside</button>
      </div>
      <p id={whyId} className="finding-why" hidden={showing !== "why"}>{finding.why}</p>
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
