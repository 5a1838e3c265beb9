import { useState } from "react";
import { dropsFile, FileField } from "../../fields/file-field";
import { blockName, type Block } from "../../../shared/episode";
import { liftedInWords, takeOver, type ReportLine, type SessionReport } from "../../../shared/session-report";
import { useActions, useSession } from "../../session/context";
import { count, listed } from "../../words/count";
import { useReport } from "./use-report";
import "./back-from-gym.css";

/** Takes over what the phone sheet hands back, and shows what is known from the gym. */
export function BackFromGym() {
  const { reading, readFile, readPasted, takenOver, again } = useReport();
  return (
    <section className="back-from-gym" aria-labelledby="back-from-gym">
      <h2 id="back-from-gym">Back from the gym</h2>
      {reading.step === "read"
        ? <Preview report={reading.report} onTaken={takenOver} onAgain={again} />
        : <Source problem={reading.step === "choosing" ? reading.problem : null} onFile={readFile} onPasted={readPasted} />}
      {reading.step === "taken-over" && <p role="status">{reading.changed ? "Taken over. Undo takes all of it back at once." : "Nothing changed: the episode knew it all already."}</p>}
      <Known />
    </section>
  );
}

function Source({ problem, onFile, onPasted }: { problem: string | null; onFile: (file: File) => void; onPasted: (text: string) => void }) {
  const [text, setText] = useState("");
  return (
    <form
      className="back-source"
      onSubmit={(event) => {
        event.preventDefault();
        onPasted(text);
      }}
      {...dropsFile(onFile)}
    >
      {problem !== null && <p className="field-problem" role="alert">{problem}</p>}
      <FileField label="The file the phone sheet handed back (.session.json)" accept=".json,application/json" onFile={onFile} />
      <label>
        <span>Or paste its code</span>
        <textarea rows={3} spellCheck={false} value={text} onChange={(event) => setText(event.target.value)} />
      </label>
      <button type="submit" className="plain-button" disabled={text.trim() === ""}>Read the code</button>
    </form>
  );
}

/** What taking over would do, before it is done. */
function Preview({ report, onTaken, onAgain }: { report: SessionReport; onTaken: (changed: boolean) => void; onAgain: () => void }) {
  const { episode } = useSession();
  const { mend } = useActions();
  const { edits, summary } = takeOver(report, episode);
  const nothing = edits.length === 0;
  return (
    <div className="back-preview" role="group" aria-label="What came back">
      <p>
        {`${count(summary.logged.length, "set")} logged, ${count(summary.inTheBox.length, "shot")} in the box, `}
        <span className={summary.lost.length > 0 ? "back-lost" : undefined}>{`${count(summary.lost.length, "shot")} lost`}</span>.
        {nothing && " The episode knows all of it already."}
      </p>
      <Lines title="Sets logged" lines={summary.logged} />
      <Lines title="In the box" lines={summary.inTheBox} />
      <Lines title="Lost" lines={summary.lost} isLost />
      <Lines title="On the day" lines={summary.told} />
      {summary.noPlace.length > 0 && (
        <>
          <h3>No place for it any more</h3>
          <ul>{summary.noPlace.map((words, i) => <li key={i} className="missing">{words}</li>)}</ul>
        </>
      )}
      <div className="back-buttons">
        <button
          type="button" className="main-button"
          onClick={() => {
            if (!nothing) mend(edits);
            onTaken(!nothing);
          }}
        >
          {nothing ? "All right" : "Take it over"}
        </button>
        <button type="button" className="plain-button" onClick={onAgain}>Leave it</button>
      </div>
    </div>
  );
}

/** Lines of one kind, each block named once. */
function Lines({ title, lines, isLost = false }: { title: string; lines: readonly ReportLine[]; isLost?: boolean }) {
  if (lines.length === 0) return null;
  const blocks = [...new Set(lines.map(({ block }) => block))];
  return (
    <details open={isLost || lines.length <= 12}>
      <summary>{title}</summary>
      <ul>
        {blocks.map((block) => {
          const words = lines.filter((line) => line.block === block).map((line) => line.words);
          return <li key={block} className={isLost ? "back-lost" : undefined}>{block === "" ? words.join("; ") : `${block}: ${words.join("; ")}`}</li>;
        })}
      </ul>
    </details>
  );
}

/** Sets and shots the episode knows from the gym. */
function Known() {
  const { episode } = useSession();
  const blocks = episode.blocks.filter((block) => block.actuals.length > 0 || (block.filming?.filmed.length ?? 0) > 0);
  if (blocks.length === 0) return null;
  return (
    <div className="back-known">
      <h3>Known from the gym</h3>
      <dl>
        {blocks.map((block) => (
          <div key={block.id}>
            <dt>{blockName(block)}</dt>
            <dd>
              {block.actuals.map(({ set, ...lifted }) => <p key={set}>Set {set}: {liftedInWords(lifted, episode.session.units) || "no numbers"}</p>)}
              <Filmed block={block} />
            </dd>
          </div>
        ))}
      </dl>
    </div>
  );
}

function Filmed({ block }: { block: Block }) {
  const filmed = block.filming?.filmed ?? [];
  const lost = filmed.filter(({ got }) => !got).flatMap(({ shot }) => block.lines.find(({ id }) => id === shot)?.text ?? []);
  const inBox = filmed.filter(({ got }) => got).length;
  return (
    <>
      {inBox > 0 && <p>{count(inBox, "shot")} in the box</p>}
      {lost.length > 0 && <p className="back-lost">Lost: {listed(lost)}</p>}
    </>
  );
}
