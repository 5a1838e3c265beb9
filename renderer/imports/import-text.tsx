import { useState } from "react";
import { dropsFile, FileField } from "../fields/file-field";
import { Dialog } from "../dialog/dialog";
import type { Imported } from "../../shared/imports";
import { Tick } from "../fields/choice";
import { useActions, useSession } from "../session/context";
import { count } from "../words/count";
import { DraftPreview } from "./draft-preview";
import { useReading } from "./use-reading";
import "./imports.css";

/** Old captions, a transcript or notes: chosen or pasted, shown as they were understood, then made an episode. */
export function ImportText({ open, onClose }: { open: boolean; onClose: () => void }) {
  const { reading, readFile, readPasted, again } = useReading();
  const close = (): void => {
    again();
    onClose();
  };
  return (
    <Dialog open={open} title="Start from old footage or notes" kind="import-dialog" onClose={close}>
      {reading.step === "read"
        ? <Understood name={reading.name} draft={reading.draft} onAgain={again} onCreated={close} />
        : <Source problem={reading.step === "choosing" ? reading.problem : null} progress={reading.step === "reading" ? reading.progress : null} onFile={readFile} onPasted={readPasted} onStop={again} />}
    </Dialog>
  );
}

function Source({ problem, progress, onFile, onPasted, onStop }: { problem: string | null; progress: number | null; onFile: (file: File) => void; onPasted: (text: string) => void; onStop: () => void }) {
  const [text, setText] = useState("");
  const isReading = progress !== null;
  return (
    <form
      className="import-source"
      onSubmit={(event) => {
        event.preventDefault();
        onPasted(text);
      }}
      {...dropsFile(onFile)}
    >
      {problem !== null && <p className="field-problem" role="alert">{problem}</p>}
      <FileField className="import-file" label="Captions of an earlier episode (.vtt, .srt), lines with times, a transcript or notes" accept=".vtt,.srt,.txt,.md,.sbv,text/*" disabled={isReading} onFile={onFile} />
      <label className="import-paste">
        <span>Or paste the words</span>
        <textarea rows={10} value={text} disabled={isReading} onChange={(event) => setText(event.target.value)} />
      </label>
      <div className="import-buttons">
        <button type="submit" className="main-button" disabled={isReading || text.trim() === ""}>{isReading ? "Reading" : "Read the words"}</button>
        {isReading && <button type="button" className="plain-button" onClick={onStop}>Stop reading</button>}
        {isReading && <progress aria-label="Reading" value={progress} max={1} />}
        <span className="second" role="status">{isReading ? "Reading the words." : "Nothing is sent anywhere; the words stay on this computer."}</span>
      </div>
    </form>
  );
}

function Understood({ name, draft, onAgain, onCreated }: { name: string; draft: Imported; onAgain: () => void; onCreated: () => void }) {
  const { startFrom, keepVoice } = useActions();
  const { voice } = useSession();
  const own = draft.pace?.own ?? null;
  const [keepsPace, setKeepsPace] = useState(voice === null);
  const [problem, setProblem] = useState<string | null>(null);
  // The episode is made, but its pace could not be written down.
  const [unkept, setUnkept] = useState<string | null>(null);
  const [isBusy, setBusy] = useState(false);
  const create = async (): Promise<void> => {
    setBusy(true);
    const refused = await startFrom(draft.episode);
    setBusy(false);
    if (refused !== null) return setProblem(refused);
    const refusedPace = own && keepsPace && draft.pace
      ? await keepVoice({ pace: own, lines: Math.max(1, draft.sentences), seconds: draft.pace.speechSeconds, at: new Date().toISOString() })
      : null;
    if (refusedPace === null) onCreated();
    else setUnkept(refusedPace);
  };
  if (unkept !== null) {
    return (
      <div className="import-read">
        <p className="field-problem" role="alert">The episode is made. {unkept}</p>
        <div className="import-buttons"><button type="button" className="main-button" onClick={onCreated}>Go to the episode</button></div>
      </div>
    );
  }
  return (
    <div className="import-read">
      {problem !== null && <p className="field-problem" role="alert">{problem}</p>}
      <p>
        {name === "" ? "Pasted" : name}: {count(draft.words, "word")}, {count(draft.episode.blocks.length, "block")}
        {draft.pace && `, spoken at ${Math.round(draft.pace.wordsPerMinute)} words a minute`}.
      </p>
      <DraftPreview draft={draft} />
      {own && <Tick label="Count every episode at the pace of this recording" checked={keepsPace} onChange={setKeepsPace} />}
      <div className="import-buttons">
        <button type="button" className="main-button" disabled={isBusy} onClick={() => void create()}>Create the episode</button>
        <button type="button" className="plain-button" onClick={onAgain}>Other words</button>
      </div>
    </div>
  );
}
