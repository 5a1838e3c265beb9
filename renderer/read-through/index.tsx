import { useCallback, useEffect, useMemo, useRef, useState, useSyncExternalStore } from "react";
import { DEFAULT_PACE, paceOf } from "../../shared/speech";
import { Dialog } from "../dialog/dialog";
import { Tick } from "../fields/choice";
import { useActions, useApi, useSession } from "../session/context";
import { seconds } from "../words/clock";
import { count } from "../words/count";
import { useFocusKept } from "../words/use-focus-kept";
import { LineAtHand } from "./line-at-hand";
import { learnPace, linesToRead, takesOf, type LineToRead } from "./lines";
import { openMicrophone } from "./microphone";
import { createReading, type ReadingDesk } from "./reading";
import { readingKey } from "./reading-keys";
import { TakesTable } from "./takes-table";
import { usePlaceForTakes } from "./use-place-for-takes";
import "./read-through.css";

/** Reads the voiceover line by line, aloud: with the microphone or with taps. */
export function ReadThrough({ onClose }: { onClose: () => void }) {
  const { episode, pace } = useSession();
  const api = useApi();
  const { file, problem } = usePlaceForTakes();
  const [desk, setDesk] = useState<ReadingDesk | null>(null);
  // The episode as it stands when the read-through opens: the words under a reader's eyes do not change, their seconds follow the pace.
  const [opened] = useState(episode);
  const lines = useMemo(() => linesToRead(opened, pace), [opened, pace]);
  const linesNow = useRef(lines);
  useEffect(() => {
    linesNow.current = lines;
  }, [lines]);
  useEffect(() => {
    if (file === null) return;
    const made = createReading({ api, file, lines: () => linesNow.current, openMicrophone, now: () => performance.now() });
    setDesk(made);
    void made.load();
    return () => void made.close();
  }, [api, file]);
  // Escape has closed the dialog before anything can be asked; a warning is a dialog opened anew.
  const [warnings, setWarnings] = useState(0);
  const leave = async (): Promise<void> => {
    if (!open) return;
    if (desk === null || (await desk.leave())) setOpen(false);
    else setWarnings((before) => before + 1);
  };
  const [open, setOpen] = useState(true);
  // Runs after the dialog has closed, which gives the focus back.
  useEffect(() => {
    if (!open) onClose();
  }, [open, onClose]);
  return (
    <Dialog key={warnings} open={open} title="Read it through" kind="read-through" onClose={() => void leave()}>
      {problem !== null && <p className="reading-message" role="alert">{problem}</p>}
      {desk ? <Desk desk={desk} lines={lines} /> : problem === null && <p className="soft">One moment.</p>}
    </Dialog>
  );
}

function Desk({ desk, lines }: { desk: ReadingDesk; lines: readonly LineToRead[] }) {
  const reading = useSyncExternalStore(desk.state.subscribe, desk.state.get);
  const { at, phase, microphone, message, unwritten, warnedOf } = reading;
  const hand = useRef<HTMLDivElement>(null);
  const line = lines[at];
  const isReading = phase === "reading";
  const firstUnread = lines.findIndex((one) => takesOf(reading.takes, one).counts === null);

  // The buttons change with the phase; the keys must go on reaching the desk, and the words to read be in sight.
  const toHand = useCallback((): void => {
    hand.current?.focus({ preventScroll: true });
    hand.current?.scrollIntoView({ block: "start" });
  }, []);
  useEffect(toHand, [toHand, phase, reading.isRetake]);
  const part = useRef<HTMLDivElement>(null);
  useFocusKept(part, () => hand.current);
  // From one line read alone to another nothing of that changes, and in the table the keys are the table's.
  const retake = useCallback((index: number): void => {
    desk.retake(index);
    toHand();
  }, [desk, toHand]);
  useEffect(() => {
    if (unwritten === 0) return;
    const warn = (event: BeforeUnloadEvent): void => event.preventDefault();
    window.addEventListener("beforeunload", warn);
    return () => window.removeEventListener("beforeunload", warn);
  }, [unwritten]);

  const onKeyDown = (event: KeyboardEvent): void => {
    // Escape has closed the dialog while the disk is still waited for: the keys belong to the page again.
    if (hand.current?.closest("dialog")?.open !== true) return;
    const focused = event.target instanceof Element ? event.target : null;
    const way = readingKey(event, (selector) => focused !== null && focused.closest(selector) !== null);
    if (way === "forward") desk.forward();
    else if (way === "back" && isReading) desk.again();
    else return;
    event.preventDefault();
  };
  const latest = useRef(onKeyDown);
  useEffect(() => {
    latest.current = onKeyDown;
  });
  // The whole window listens: buttons come and go here, and a pedal knows nothing of where the focus went with them.
  useEffect(() => {
    const listen = (event: KeyboardEvent): void => latest.current(event);
    document.addEventListener("keydown", listen);
    return () => document.removeEventListener("keydown", listen);
  }, []);
  if (!line) return <p className="soft">There are no words to read yet.</p>;
  return (
    <div ref={part}>
      {warnedOf > 0 && <p className="reading-message" role="alert">The sound of {count(warnedOf, "take")} is not written yet. Write it again, or close once more to leave without it.</p>}
      <div className="hand" ref={hand} tabIndex={-1} aria-label="The line at hand">
        <MicrophoneRow desk={desk} />
        {message !== null && (
          <p className="reading-message" role="alert">
            {message} {unwritten > 0 && <button type="button" className="word-button" onClick={() => void desk.writeAgain()}>Write {count(unwritten, "take")} again</button>}
          </p>
        )}
        <LineAtHand desk={desk} line={line} next={lines[at + 1] ?? null} of={`Line ${at + 1} of ${lines.length}, ${line.block}`} />
        <div className="hand-doings">
          {isReading ? (
            <>
              <button type="button" className="main-button" onClick={desk.next}>{reading.isRetake ? "Done" : at + 1 < lines.length ? "Next line" : "Done"}</button>
              <button type="button" className="plain-button" onClick={desk.again}>This line again</button>
              <button type="button" className="plain-button" onClick={desk.stop}>Stop</button>
            </>
          ) : (
            <>
              <button type="button" className="main-button" onClick={() => desk.start(phase === "done" ? 0 : at)}>{phase === "done" ? "Read it all again" : at === 0 ? "Start reading" : "Go on from this line"}</button>
              {firstUnread > 0 && firstUnread !== at && <button type="button" className="plain-button" onClick={() => desk.start(firstUnread)}>Start at line {firstUnread + 1}, the first not read</button>}
            </>
          )}
          {microphone.state === "on" && <Tick label="go on by itself when I pause" checked={reading.goesOn} onChange={desk.setGoesOn} />}
          <span className="second">{isReading ? "Space, page down or a pedal: next line. Page up: this line again." : phase === "ready" && "Space, page down or a pedal starts."}</span>
        </div>
      </div>
      <PaceLearned desk={desk} lines={lines} />
      <TakesTable desk={desk} lines={lines} onRetake={retake} />
    </div>
  );
}

function MicrophoneRow({ desk }: { desk: ReadingDesk }) {
  const { microphone } = useSyncExternalStore(desk.state.subscribe, desk.state.get);
  if (microphone.state === "on") {
    return (
      <div className="microphone-row">
        <p>Recording with {microphone.name}. The sound stays on this computer. <button type="button" className="word-button" onClick={desk.dropMicrophone}>Go on without it</button></p>
        <Level desk={desk} />
      </div>
    );
  }
  if (microphone.state === "muted") {
    return (
      <div className="microphone-row">
        <p>{microphone.name} is muted; nothing is recorded. <button type="button" className="word-button" onClick={desk.dropMicrophone}>Go on without it</button></p>
      </div>
    );
  }
  return (
    <div className="microphone-row">
      <p>
        {microphone.state === "asking" ? "Asking for the microphone. " : "Without a microphone: your taps are timed, nothing is recorded. "}
        {microphone.state === "off" && <button type="button" className="word-button" onClick={() => void desk.useMicrophone()}>Record with the microphone</button>}
      </p>
    </div>
  );
}

const WORDS = ["silent", "quiet", "good", "too loud"];

/** How loud it is, as a bar and a word; drawn on every frame without React. */
function Level({ desk }: { desk: ReadingDesk }) {
  const bar = useRef<HTMLSpanElement>(null);
  const word = useRef<HTMLSpanElement>(null);
  const meter = useRef<HTMLDivElement>(null);
  useEffect(() => {
    let shown = 0;
    let held = { word: "silent", until: 0 };
    let frame = requestAnimationFrame(function draw() {
      const now = desk.moment();
      // Up at once, down slowly, as an eye can follow.
      shown = Math.max(now.share, shown - 0.015);
      if (bar.current) bar.current.style.width = `${100 * shown}%`;
      // A louder word counts at once and stays a moment, so that it can be read.
      if (WORDS.indexOf(now.word) >= WORDS.indexOf(held.word) || performance.now() > held.until) held = { word: now.word, until: performance.now() + 600 };
      if (word.current && word.current.textContent !== held.word) {
        word.current.textContent = held.word;
        meter.current?.setAttribute("aria-valuetext", held.word);
        meter.current?.classList.toggle("loud", held.word === "too loud");
      }
      meter.current?.setAttribute("aria-valuenow", String(Math.round(shown * 100)));
      frame = requestAnimationFrame(draw);
    });
    return () => cancelAnimationFrame(frame);
  }, [desk]);
  return (
    <div className="loudness">
      <div className="loudness-bar" role="meter" aria-label="Loudness" aria-valuemin={0} aria-valuemax={100} aria-valuenow={0} ref={meter}><span ref={bar} /></div>
      <span className="second loudness-word" aria-hidden="true" ref={word}>silent</span>
    </div>
  );
}

/** The whole against what was planned, and the pace that comes out of it. */
function PaceLearned({ desk, lines }: { desk: ReadingDesk; lines: readonly LineToRead[] }) {
  const { episode, pace } = useSession();
  const { keepVoice } = useActions();
  const { takes } = useSyncExternalStore(desk.state.subscribe, desk.state.get);
  const [said, setSaid] = useState<string | null>(null);
  const counted = lines.flatMap((line) => takesOf(takes, line).counts ?? []);
  if (counted.length === 0) return null;
  const read = counted.reduce((sum, take) => sum + (take.seconds ?? 0), 0);
  const planned = lines.reduce((sum, line) => (takesOf(takes, line).counts ? sum + line.planned : sum), 0);
  const learned = learnPace(counted, takes, paceOf(episode, DEFAULT_PACE), new Date().toISOString());
  const isUsed = learned.ok && Math.abs(learned.voice.pace.syllablesPerSecond - pace.syllablesPerSecond) < 0.005;
  return (
    <div className="pace-learned">
      <p><b>{seconds(read)} s</b> for {count(counted.length, "line")} read, {seconds(planned)} s planned.</p>
      {learned.ok ? (
        <p>
          Your pace: <b>{learned.voice.pace.syllablesPerSecond.toFixed(1)} syllables a second</b>, pauses left out{learned.leftOut > 0 && `; ${count(learned.leftOut, "line")} far from the others left out`}.{" "}
          {isUsed ? <span className="soft">Everything is counted at it.</span> : (
            <button type="button" className="word-button" onClick={() => void keepVoice(learned.voice).then((problem) => setSaid(problem))}>Count everything at this pace</button>
          )}
        </p>
      ) : <p className="soft">{learned.sentence}</p>}
      {said !== null && <p className="missing" role="alert">{said}</p>}
    </div>
  );
}
