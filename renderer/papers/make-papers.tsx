import { useState } from "react";
import { documentId } from "../../shared/bridge";
import type { DocumentId, PaperSize } from "../../shared/exports";
import type { Units } from "../../shared/episode";
import { Dialog } from "../dialog/dialog";
import { Tick } from "../fields/choice";
import { useSession } from "../session/context";
import { count } from "../words/count";
import { PAPERS } from "./documents";
import { useMaking, type Making } from "./use-making";
import "./papers.css";

/** Chooses which documents to write, on which paper and in which unit, and writes them. */
export function MakePapers({ open, onClose }: { open: boolean; onClose: () => void }) {
  const { episode, findings } = useSession();
  const [chosen, setChosen] = useState<readonly DocumentId[]>(["shot-list.pdf", "voiceover.pdf", "handout.pdf"]);
  const [paper, setPaper] = useState<PaperSize>("a4");
  const [ownUnits, setOwnUnits] = useState<Units | null>(null);
  const { making, make, cancel, again } = useMaking();
  const units = ownUnits ?? episode.session.units;
  const stops = findings.filter((finding) => finding.level === "stop" && finding.waiver === null).length;
  const close = (): void => {
    if (making.step === "working") return cancel();
    again();
    onClose();
  };
  return (
    <Dialog open={open} title="Make papers" onClose={close}>
      {making.step === "choosing" || making.step === "failed" ? (
        <form
          onSubmit={(event) => {
            event.preventDefault();
            void make({ documents: [...chosen], paper, units });
          }}
        >
          {making.step === "failed" && <p className="field-problem papers-failed" role="alert">{making.message}</p>}
          {stops > 0 && (
            <p className="papers-stop">
              <span className="level stop">stop</span> {stops === 1 ? "One finding says stop. It goes on paper as it stands." : `${count(stops, "finding")} say stop. They go on paper as they stand.`}
            </p>
          )}
          <fieldset className="papers-choice">
            <legend className="visually-hidden">Documents</legend>
            {PAPERS.map((one) => (
              <div key={one.title} className="papers-row" role="group" aria-label={one.title}>
                <p>{one.title} <span className="second">{one.forWhom}</span></p>
                {one.formats.map(({ id, label }) => (
                  <Tick key={id} label={label} checked={chosen.includes(id)} onChange={(on) => setChosen(documentId.options.filter((each) => (each === id ? on : chosen.includes(each))))} />
                ))}
              </div>
            ))}
          </fieldset>
          <div className="papers-sizes">
            <Either legend="Paper" value={paper} options={[["a4", "A4"], ["letter", "Letter"]]} onChoose={setPaper} />
            <Either legend="Loads in" value={units} options={[["kg", "kg"], ["lb", "lb"]]} onChoose={setOwnUnits} />
          </div>
          <button type="submit" className="main-button" disabled={chosen.length === 0}>{chosen.length === 0 ? "Choose a paper first" : `Make ${count(chosen.length, "paper")}`}</button>
        </form>
      ) : making.step === "working" ? (
        <Working making={making} onCancel={cancel} />
      ) : (
        <Result making={making} onAgain={again} />
      )}
    </Dialog>
  );
}

function Either<T extends string>({ legend, value, options, onChoose }: { legend: string; value: T; options: readonly (readonly [T, string])[]; onChoose: (value: T) => void }) {
  return (
    <fieldset className="either">
      <legend className="second">{legend}</legend>
      {options.map(([each, label]) => (
        <label key={each} className="tick"><input type="radio" name={legend} checked={each === value} onChange={() => onChoose(each)} /> {label}</label>
      ))}
    </fieldset>
  );
}

function Working({ making, onCancel }: { making: Extract<Making, { step: "working" }>; onCancel: () => void }) {
  const words = making.stopping ? "Stopping after this paper." : making.now === null ? `${making.done} of ${making.total} done` : `${making.now}: ${making.done} of ${making.total} done`;
  return (
    <div className="papers-working">
      <p aria-live="polite">{words}</p>
      <progress value={making.done} max={making.total} aria-label="Papers done" />
      <button type="button" className="plain-button" disabled={making.stopping} onClick={onCancel}>Cancel</button>
    </div>
  );
}

function Result({ making, onAgain }: { making: Extract<Making, { step: "made" }>; onAgain: () => void }) {
  const { folder, files, notes } = making.made;
  return (
    <div className="papers-result">
      <p role="status">{count(files.length, "file")} in <span className="papers-folder">{folder}</span></p>
      <ul>{files.map((file) => <li key={file}>{file}</li>)}</ul>
      {notes.length > 0 && (
        <>
          <h3>Notes</h3>
          <ul>{notes.map((note) => <li key={note} className="second">{note}</li>)}</ul>
        </>
      )}
      <button type="button" className="plain-button" onClick={onAgain}>Make others</button>
    </div>
  );
}
