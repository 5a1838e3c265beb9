import { useCallback, useLayoutEffect, useMemo, useRef, useState, type KeyboardEvent, type MouseEvent } from "react";
import { Tick } from "../fields/choice";
import { useSession } from "../session/context";
import { clock, seconds } from "../words/clock";
import { RATES, SIZES, useChoices } from "./choices";
import { fateOfKey, nameOfKey } from "./keys";
import { clipLeft, type Moment } from "./moment";
import { PromptText } from "./prompt-text";
import { blockAt, promptScript, stretchAt, type PromptBlock } from "./script";
import { pushAt } from "./scroll";
import { stepByBlock, stepByStretch } from "./steps";
import { useRun } from "./use-run";
import { useWholeScreen, wantsLessMotion } from "./use-screen";
import "./prompter.css";

/** Seconds a clip still has, in words for the corner of an eye; "3 s over" when it has none. */
export function leftWords(left: number): { readonly figure: string; readonly isOver: boolean } {
  return left >= -0.05 ? { figure: clock(Math.ceil(Math.max(0, left) - 1e-6)), isOver: false } : { figure: `${seconds(-left)} s over`, isOver: true };
}

/** The words to read from, over the whole screen. @param from - the block to begin at, null for the first */
export function Prompter({ from, onClose }: { from: string | null; onClose: () => void }) {
  const { episode, pace } = useSession();
  // The script is the one that was opened; nothing changes under the reader's eyes.
  const [script] = useState(() => promptScript(episode, pace));
  const choices = useChoices();
  const dialog = useRef<HTMLDialogElement>(null);
  const stage = useRef<HTMLDivElement>(null);
  const text = useRef<HTMLDivElement>(null);
  const places = useRef<number[]>([]);
  const [opener] = useState(() => (document.activeElement instanceof HTMLElement ? document.activeElement : null));
  const [lessMotion] = useState(wantsLessMotion);
  const startAt = useMemo(() => script.blocks.find(({ id }) => id === from)?.from ?? 0, [script, from]);
  const [now, setNow] = useState(() => stretchAt(script, startAt)?.index ?? 0);
  const [block, setBlock] = useState<PromptBlock | null>(() => blockAt(script, startAt));
  const left = useRef<HTMLSpanElement>(null);
  const { rate } = choices;

  const onMoment = useCallback((moment: Moment) => {
    setNow(stretchAt(script, moment.at)?.index ?? 0);
    setBlock(script.blocks[moment.block] ?? null);
    if (text.current) text.current.style.transform = `translateY(${-pushAt(script.stretches, places.current, moment.at, !lessMotion)}px)`;
    if (left.current) {
      const { figure, isOver } = leftWords(clipLeft(script, moment));
      if (left.current.textContent !== figure) left.current.textContent = figure;
      left.current.classList.toggle("over", isOver);
    }
  }, [script, lessMotion]);
  const run = useRun({ script, startAt, rate, waits: choices.waits, onMoment });
  const { now: moment } = run;

  // Closed before it is taken out of the page, so that the browser gives the focus back.
  useLayoutEffect(() => {
    const node = dialog.current;
    if (!node) return;
    if (!node.open) node.showModal();
    stage.current?.focus();
    return () => node.close();
  }, []);
  useWholeScreen(stage, opener, onClose);

  // The letters' size and the screen's decide where each stretch lies.
  useLayoutEffect(() => {
    const column = text.current;
    if (!column) return;
    const measure = (): void => {
      places.current = Array.from(column.querySelectorAll<HTMLElement>("[data-stretch]"), (node) => node.offsetTop + parseFloat(getComputedStyle(node).lineHeight) / 2);
      onMoment(moment());
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(column);
    return () => observer.disconnect();
  }, [choices.size, onMoment, moment]);
  // A new block is drawn with its whole clip; a step back into it may lead to where less is left.
  useLayoutEffect(() => onMoment(moment()), [block, onMoment, moment]);

  const toggle = (): void => (run.isRunning ? run.stop() : run.start());
  const stretchBy = (step: 1 | -1): void => {
    if (step === 1 && run.isWaiting) return run.start();
    const { to, entersBlock } = stepByStretch(script, moment(), step);
    if (entersBlock && choices.waits) blockBy(1);
    else run.goTo(to);
  };
  const blockBy = (step: 1 | -1): void => run.goTo(stepByBlock(script, moment(), step), true);
  const sizeBy = (step: 1 | -1): void => choices.set({ size: choices.size + step * SIZES.step });
  const rateBy = (step: 1 | -1): void => choices.set({ rate: rate + step * RATES.step });
  const keys: Readonly<Record<string, () => void>> = {
    " ": toggle, Enter: toggle, PageDown: () => stretchBy(1), ArrowDown: () => stretchBy(1), PageUp: () => stretchBy(-1), ArrowUp: () => stretchBy(-1),
    ArrowRight: () => blockBy(1), ArrowLeft: () => blockBy(-1), Home: () => run.goTo(block?.from ?? 0, true),
    "+": () => sizeBy(1), "=": () => sizeBy(1), "-": () => sizeBy(-1), f: () => rateBy(1), s: () => rateBy(-1), m: () => choices.set({ isMirrored: !choices.isMirrored }),
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const isOnControl = event.target instanceof HTMLElement && event.target.closest("button, input") !== null;
    const act = keys[nameOfKey(event.key)];
    const fate = fateOfKey(event, act !== undefined, isOnControl);
    if (fate === "leave") return;
    event.preventDefault();
    if (fate === "act") act?.();
  };
  /** A press with the mouse leaves the keys to the prompter; one from the keyboard keeps its place. */
  const onControl = (event: MouseEvent): void => {
    if (event.detail > 0) stage.current?.focus();
  };
  const speed = `${Math.round(rate * 100)} %`;
  return (
    <dialog ref={dialog} className="prompter" aria-label="Prompter" onClose={onClose} onKeyDown={onKeyDown}>
      <div ref={stage} tabIndex={-1} className={`stage ${choices.isLight ? "light" : "dark"} ${run.isRunning ? "running" : ""}`} style={{ fontSize: choices.size }}>
        <div className={choices.isMirrored ? "glass mirrored" : "glass"} onClick={toggle}>
          <div className="prompt-window"><div className="prompt-text" ref={text}><PromptText script={script} now={now} /></div></div>
          <div className="reading-line" aria-hidden="true"><span>read</span></div>
          {block && (
            <div className="clip-left" role="timer" aria-label={`Clip of ${block.name}`}>
              <span className="figure" ref={left}>{leftWords(block.clip).figure}</span>
              <span className="of">of {clock(block.clip)}, {block.name}</span>
            </div>
          )}
        </div>
        <div className="prompter-bar" onClick={onControl}>
          <p role="status">{run.isRunning ? "Running" : run.isWaiting ? `${block?.name ?? ""} waits` : "Stopped"}</p>
          <div className="prompter-doings">
            <button type="button" className="go" onClick={toggle}>{run.isRunning ? "Stop" : "Start"}</button>
            <button type="button" onClick={() => blockBy(-1)}>Block back</button>
            <button type="button" onClick={() => blockBy(1)}>Next block</button>
            <Stepper label="Letters" value={String(choices.size)} less="Smaller letters" more="Larger letters" onStep={sizeBy} />
            <Stepper label="Pace" value={speed} less="Slower" more="Faster" onStep={rateBy} />
            <Tick label="mirrored" checked={choices.isMirrored} onChange={(isMirrored) => choices.set({ isMirrored })} />
            <Tick label="light" checked={choices.isLight} onChange={(isLight) => choices.set({ isLight })} />
            <Tick label="wait at each block" checked={choices.waits} onChange={(waits) => choices.set({ waits })} />
            <button type="button" onClick={onClose}>Leave</button>
          </div>
          <p className="keys">Space or Enter starts and stops. Page keys or arrows up and down, also from a pedal: one breath on or back. Left and right: a block. Plus and minus: letters. S and F: slower, faster. M: mirrored. Escape leaves.</p>
        </div>
      </div>
    </dialog>
  );
}

function Stepper({ label, value, less, more, onStep }: { label: string; value: string; less: string; more: string; onStep: (step: 1 | -1) => void }) {
  return (
    <span className="stepper" role="group" aria-label={label}>
      <button type="button" aria-label={less} onClick={() => onStep(-1)}>−</button>
      <span>{label} <b>{value}</b></span>
      <button type="button" aria-label={more} onClick={() => onStep(1)}>+</button>
    </span>
  );
}
