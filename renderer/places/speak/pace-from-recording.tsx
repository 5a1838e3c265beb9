import { useState } from "react";
import { DEFAULT_PACE, linesAloud, paceOf, paceOfRecording, readAloud, type RecordedPace, type Recording } from "../../../shared/speech";
import { Dialog } from "../../dialog/dialog";
import { dropsFile, FileField } from "../../fields/file-field";
import { difference } from "../../read-through/takes-table";
import { useActions, useSession } from "../../session/context";
import { clock, seconds } from "../../words/clock";
import { count } from "../../words/count";
import { useRecording } from "./use-recording";

/** Learns the pace from a sound file of the episode's lines being read: chosen, shown as it was measured, then taken over. */
export function PaceFromRecording({ open, onClose }: { open: boolean; onClose: () => void }) {
  const { hearing, hear, again } = useRecording();
  const close = (): void => {
    again();
    onClose();
  };
  return (
    <Dialog open={open} title="Your pace from a recording" onClose={close}>
      {hearing.step === "heard"
        ? <Measured name={hearing.name} recording={hearing.recording} onAgain={again} onKept={close} />
        : <Source problem={hearing.step === "choosing" ? hearing.problem : null} progress={hearing.step === "hearing" ? hearing.progress : null} onFile={hear} onStop={again} />}
    </Dialog>
  );
}

function Source({ problem, progress, onFile, onStop }: { problem: string | null; progress: number | null; onFile: (file: File) => void; onStop: () => void }) {
  const { episode } = useSession();
  const isHearing = progress !== null;
  return (
    <div
      className="pace-source"
      {...dropsFile(onFile)}
    >
      {problem !== null && <p className="field-problem" role="alert">{problem}</p>}
      <FileField label={`Yourself reading the words of this episode (${count(linesAloud(episode).length, "line")}), all in order, as a WAV file (.wav)`} accept=".wav,audio/wav,audio/x-wav" disabled={isHearing} onFile={onFile} />
      <div className="pace-doings">
        {isHearing && <button type="button" className="plain-button" onClick={onStop}>Stop listening</button>}
        {isHearing && <progress aria-label="Listening" value={progress} max={1} />}
        <span className="second" role="status">{isHearing ? "Listening to the recording." : "Silence is left out, so wait between lines as long as you like. The sound stays on this computer."}</span>
      </div>
    </div>
  );
}

function Measured({ name, recording, onAgain, onKept }: { name: string; recording: Recording; onAgain: () => void; onKept: () => void }) {
  const { episode } = useSession();
  const learned = paceOfRecording(linesAloud(episode), recording, paceOf(episode, DEFAULT_PACE));
  return (
    <div className="pace-measured">
      {learned.ok ? <Learned name={name} recording={recording} learned={learned} onKept={onKept} /> : <p className="field-problem" role="alert">{`${name} was not measured. ${learned.message}`}</p>}
      <button type="button" className="plain-button" onClick={onAgain}>Another recording</button>
    </div>
  );
}

function Learned({ name, recording, learned, onKept }: { name: string; recording: Recording; learned: RecordedPace; onKept: () => void }) {
  const { episode, pace: own } = useSession();
  const { keepVoice } = useActions();
  const [problem, setProblem] = useState<string | null>(null);
  const lines = linesAloud(episode);
  // As it was planned when the recording was heard: a pace that is taken over must not be held against itself.
  const [planned] = useState(() => readAloud(lines, paceOf(episode, own)).seconds);
  const { speechSeconds, silentSeconds } = learned;
  const { syllablesPerSecond, commaSeconds, sentenceSeconds, breathSeconds } = learned.pace;
  const keep = async (): Promise<void> => {
    const pace = { syllablesPerSecond, commaSeconds, sentenceSeconds, breathSeconds };
    const refused = await keepVoice({ pace, lines: lines.length, seconds: speechSeconds, at: new Date().toISOString() });
    if (refused === null) onKept();
    else setProblem(refused);
  };
  return (
    <>
      <p>{name}: {seconds(speechSeconds)} s of speech in {clock(recording.seconds)} of sound, {seconds(silentSeconds)} s of silence left out.</p>
      <p><b>{seconds(speechSeconds)} s</b> for {count(lines.length, "line")} read, {seconds(planned)} s planned: {difference(speechSeconds, planned)}.</p>
      <p>Your pace: <b>{syllablesPerSecond.toFixed(1)} syllables a second</b>, pauses left out.</p>
      {problem !== null && <p className="missing" role="alert">{problem} Until the app is closed, everything is counted at this pace all the same.</p>}
      <button type="button" className="main-button" onClick={() => void keep()}>Count everything at this pace</button>
    </>
  );
}
