import type { PhoneSession } from "../../shared/exports";
import { keep, readKept } from "./run/keep";
import { afterPress, runOf } from "./run/after-press";
import { finderOf, firstRun, type Finder, type Run } from "./run/state";
import { PRESS_WORDS, type Press } from "./run/presses";

export type Screen = { readonly at: "now" | "order" | "back" } | { readonly at: "set"; readonly set: string };

/** A press without its moment. */
export type Pressed = Press extends infer Each ? (Each extends Press ? Omit<Each, "at"> : never) : never;

/** What the views see and may do. */
export interface App {
  readonly session: PhoneSession;
  readonly find: Finder;
  readonly run: Run;
  readonly screen: Screen;
  /** False when a reload would forget. */
  readonly keeps: boolean;
  readonly hasOlder: boolean;
  /** "set begun"; null when there is nothing to take back. */
  readonly undoes: string | null;
  readonly now: () => number;
  readonly press: (press: Pressed) => void;
  readonly undo: () => void;
  readonly show: (screen: Screen) => void;
  readonly startOver: () => void;
  /** Called four times a second while what is drawn stays. */
  readonly everyTick: (work: () => void) => void;
  /** Said to screen readers. */
  readonly say: (words: string) => void;
}

export interface AppSetup {
  readonly session: PhoneSession;
  readonly storage: () => Storage;
  readonly now: () => number;
  /** Draws everything; `moved` is true when another thing stands on the page than before. */
  readonly draw: (app: App, moved: boolean) => void;
  readonly say: (words: string) => void;
}

/** The session at hand: presses, what they come to, and which screen shows. */
export function startApp({ session, storage, now, draw, say }: AppSetup): { readonly tick: () => void } {
  const find = finderOf(session);
  const kept = readKept(session, storage);
  let presses = kept.presses;
  let keeps = kept.keeps;
  /** The session after each press, as far as it was lived through since the page was opened; the last is now. */
  let past: Run[] = [];
  let run = startingRun();
  let screen: Screen = { at: "now" };
  let ticks: (() => void)[] = [];

  /** What was kept may be from a page that was half written; presses that do not fit are let go from there on. */
  function startingRun(): Run {
    try {
      return runOf(find, presses);
    } catch {
      let good = firstRun(find);
      const fitting: Press[] = [];
      for (const press of presses) {
        try {
          good = afterPress(find, good, press);
          fitting.push(press);
        } catch {
          break;
        }
      }
      presses = fitting;
      return good;
    }
  }

  const view = (): App => {
    const last = presses.at(-1);
    return {
      session, find, run, screen, keeps, hasOlder: kept.hasOlder && presses.length === 0, undoes: last ? PRESS_WORDS[last.type] : null, now,
      press, undo, show, startOver, everyTick: (work) => void ticks.push(work), say,
    };
  };
  const redraw = (moved: boolean): void => {
    ticks = [];
    draw(view(), moved);
  };
  const save = (): void => {
    keeps = keep(session, presses, storage);
  };

  function press(pressed: Pressed): void {
    const whole: Press = { ...pressed, at: now() };
    const last = presses.at(-1);
    // Numbers typed one after the other into one set are one step back.
    if (whole.type === "log" && last?.type === "log" && last.set === whole.set) {
      presses = [...presses.slice(0, -1), whole];
    } else {
      presses = [...presses, whole];
      past.push(run);
    }
    run = afterPress(find, run, whole);
    save();
    const moved = ["start", "begin", "end", "go", "finish", "station-taken", "angle-lost"].includes(whole.type);
    if (moved) screen = { at: "now" };
    redraw(moved);
    if (run.told !== null && (whole.type === "angle-lost" || whole.type === "station-taken" || whole.type === "tick")) say(run.told.words.join(" "));
  }
  function undo(): void {
    const last = presses.at(-1);
    if (!last) return;
    presses = presses.slice(0, -1);
    run = past.pop() ?? runOf(find, presses);
    save();
    redraw(last.type !== "log" && last.type !== "tick");
    say(`Taken back: ${PRESS_WORDS[last.type]}.`);
  }
  function show(next: Screen): void {
    screen = next;
    redraw(true);
  }
  function startOver(): void {
    presses = [];
    past = [];
    run = firstRun(find);
    screen = { at: "now" };
    save();
    redraw(true);
  }

  redraw(true);
  return { tick: () => ticks.forEach((work) => work()) };
}
