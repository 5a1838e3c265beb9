import { useEffect, useMemo, useRef, useState } from "react";
import { dropsFile, FileField } from "../fields/file-field";
import { Dialog } from "../dialog/dialog";
import type { Imported } from "../../shared/imports";
import { Tick } from "../fields/choice";
import { useActions } from "../session/context";
import { count } from "../words/count";
import { DraftPreview } from "./draft-preview";
import { piecesToKeep, withNotes } from "./kept-notes";
import { useReading, type Reading } from "./use-reading";
import "./imports.css";

/** Old captions, a transcript or notes: chosen or pasted, shown as they were understood, then made an episode. */
export function ImportText({ open, onClose }: { open: boolean; onClose: () => void }) {
  const { reading, readFile, readPasted, again } = useReading();
  // Pasted words are nowhere else: they stay while the app is open, whatever becomes of the dialog.
  const [pasted, setPasted] = useState("");
  const [isBack, setBack] = useState(false);
  const close = (): void => {
    setBack(false);
    again();
    onClose();
  };
  const back = (): void => {
    setBack(true);
    again();
  };
  return (
    <Dialog open={open} title="Start from old footage or notes" kind="import-dialog" onClose={close}>
      <p className={reading.step === "read" ? "import-state" : "import-state second"} role="status">{stateWords(reading)}</p>
      {reading.step === "read"
        ? <Understood draft={reading.draft} onAgain={back} onCreated={close} />
        : (
          <Source
            pasted={pasted} onPaste={setPasted} isBack={isBack} problem={reading.step === "choosing" ? reading.problem : null} progress={reading.step === "reading" ? reading.progress : null}
            onFile={readFile} onRead={() => readPasted(pasted)} onStop={again}
          />
        )}
    </Dialog>
  );
}

/** How far the words are, in a sentence. */
function stateWords(reading: Reading): string {
  if (reading.step === "choosing") return "Nothing is sent anywhere; the words stay on this computer.";
  if (reading.step === "reading") return "Reading the words.";
  const { words, episode, pace } = reading.draft;
  const spoken = pace ? `, spoken at ${Math.round(pace.wordsPerMinute)} words a minute` : "";
  return `${reading.name === "" ? "Pasted" : reading.name}: ${count(words, "word")}, ${count(episode.blocks.length, "block")}${spoken}.`;
}

interface SourceProps {
  readonly pasted: string;
  readonly onPaste: (text: string) => void;
  /** Other words are wanted than those that were read. */
  readonly isBack: boolean;
  readonly problem: string | null;
  /** Of the reading, from 0 to 1; null while nothing is read. */
  readonly progress: number | null;
  readonly onFile: (file: File) => void;
  readonly onRead: () => void;
  readonly onStop: () => void;
}

function Source({ pasted, onPaste, isBack, problem, progress, onFile, onRead, onStop }: SourceProps) {
  const isReading = progress !== null;
  const stop = useRef<HTMLButtonElement>(null);
  const words = useRef<HTMLTextAreaElement>(null);
  const wasAway = useRef(isBack);
  // What was pressed goes or rests while words are read; the keys go on from what can be done next.
  useEffect(() => {
    if (isReading) stop.current?.focus();
    else if (wasAway.current) words.current?.focus();
    wasAway.current = isReading;
  }, [isReading]);
  return (
    <form
      className="import-source"
      onSubmit={(event) => {
        event.preventDefault();
        onRead();
      }}
      {...dropsFile(onFile)}
    >
      {problem !== null && <p className="field-problem" role="alert">{problem}</p>}
      <FileField className="import-file" label="Captions of an earlier episode (.vtt, .srt), lines with times, a transcript or notes" accept=".vtt,.srt,.txt,.md,.sbv,text/*" disabled={isReading} onFile={onFile} />
      <label className="import-paste">
        <span>Or paste the words</span>
        <textarea ref={words} rows={10} value={pasted} disabled={isReading} onChange={(event) => onPaste(event.target.value)} />
      </label>
      <div className="import-buttons">
        <button type="submit" className="main-button" disabled={isReading || pasted.trim() === ""}>{isReading ? "Reading" : "Read the words"}</button>
        {isReading && <button type="button" ref={stop} className="plain-button" onClick={onStop}>Stop reading</button>}
        {isReading && <progress aria-label="Reading" value={progress} max={1} />}
      </div>
    </form>
  );
}

/** The lines that were made of what was said. */
const linesIn = ({ episode }: Imported): number => episode.blocks.reduce((sum, { lines }) => sum + lines.length, 0);

function Understood({ draft, onAgain, onCreated }: { draft: Imported; onAgain: () => void; onCreated: () => void }) {
  const { startFrom, keepVoice, newId } = useActions();
  const pieces = useMemo(() => piecesToKeep(draft), [draft]);
  const [keepsPieces, setKeepsPieces] = useState(true);
  const own = draft.pace?.own ?? null;
  // It changes the seconds of every other episode as well, so nobody comes to it unasked.
  const [keepsPace, setKeepsPace] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);
  // The episode is made, but its pace could not be written down.
  const [unkept, setUnkept] = useState<string | null>(null);
  const [isBusy, setBusy] = useState(false);
  const create = async (): Promise<void> => {
    setBusy(true);
    const refused = await startFrom(keepsPieces ? withNotes(draft.episode, pieces, newId) : draft.episode);
    setBusy(false);
    if (refused !== null) return setProblem(refused);
    const refusedPace = own && keepsPace && draft.pace
      ? await keepVoice({ pace: own, lines: Math.max(1, linesIn(draft)), seconds: draft.pace.speechSeconds, at: new Date().toISOString() })
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
      <DraftPreview draft={draft} />
      {pieces.length > 0 && <Tick label={`Keep ${count(pieces.length, "piece")} that ${pieces.length === 1 ? "was" : "were"} not understood as ${pieces.length === 1 ? "a note in its block" : "notes in their blocks"}`} checked={keepsPieces} onChange={setKeepsPieces} />}
      {own && <Tick label="Count every episode at the pace of this recording" checked={keepsPace} onChange={setKeepsPace} />}
      <div className="import-buttons">
        <button type="button" className="main-button" disabled={isBusy} onClick={() => void create()}>Create the episode</button>
        <button type="button" className="plain-button" onClick={onAgain}>Other words</button>
      </div>
    </div>
  );
}
