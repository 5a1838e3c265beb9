import type { Press } from "./presses";
import { planOfRest } from "./rest-plan";
import { angleKey, filmingOf, firstRun, type Finder, type Run } from "./state";
import { whatChanged } from "./what-changed";

const withKey = <K, V>(map: ReadonlyMap<K, V>, key: K, value: V): Map<K, V> => new Map(map).set(key, value);

/** The set on which a shot was last filmed. */
const filmedOn = (run: Run, shot: string): string | null => [...run.films].filter(([, { shots }]) => shots.includes(shot)).at(-1)?.[0] ?? null;

/** Moves a block in front of all that are not over. */
function broughtForward(find: Finder, run: Run, block: string): string[] {
  const isOver = (id: string): boolean => find.block(id).sets.every((set) => run.over.has(set.id));
  const others = run.order.filter((id) => id !== block);
  const at = others.findIndex((id) => !isOver(id) && run.taken.get(id) !== "dropped");
  return at < 0 ? [...others, block] : [...others.slice(0, at), block, ...others.slice(at)];
}

/** Moves a block behind all others, but in front of the cool-down and the closing that are still to come. */
function putOff(find: Finder, run: Run, block: string): string[] {
  const others = run.order.filter((id) => id !== block);
  const isEnd = (id: string): boolean => ["cool-down", "closing"].includes(find.block(id).kind);
  const at = others.findLastIndex((id) => !isEnd(id)) + 1;
  return isEnd(block) ? [...others, block] : [...others.slice(0, at), block, ...others.slice(at)];
}

/** The facts after a press; the plan follows from them. */
function facts(find: Finder, run: Run, press: Press): Run {
  switch (press.type) {
    case "start":
      return { ...run, startedAt: press.at };
    case "begin": {
      const filming = filmingOf(run, press.set);
      const block = find.blockOf(press.set).id;
      const cameras = filming.marks.length > 0 ? { block, marks: filming.marks } : run.cameras;
      // Filmed once more: an earlier no does not count any longer.
      const answers = new Map([...run.answers].filter(([shot, { got }]) => got || !filming.shots.includes(shot)));
      return { ...run, startedAt: run.startedAt ?? press.at, answers, running: { set: press.set, from: press.at }, resting: null, wanted: null, cameras, films: withKey(run.films, press.set, filming), told: null };
    }
    case "end": {
      if (run.running?.set !== press.set) return run;
      return { ...run, running: null, resting: { after: press.set, from: press.at }, over: withKey(run.over, press.set, { from: run.running.from, to: press.at }) };
    }
    case "tick": {
      const answers = new Map(run.answers);
      if (press.got === null) answers.delete(press.shot);
      else answers.set(press.shot, { got: press.got, set: filmedOn(run, press.shot) });
      return { ...run, answers };
    }
    case "extra": {
      const extras = new Set(run.extras);
      if (press.got) extras.add(press.what);
      else extras.delete(press.what);
      return { ...run, extras };
    }
    case "angle-lost":
      return { ...run, lostAngles: new Set(run.lostAngles).add(angleKey(press.block, press.mark)) };
    case "station-taken": {
      const taken = withKey(run.taken, press.block, press.then);
      const order = press.then === "later" ? putOff(find, run, press.block) : run.order;
      // Whoever leaves a station, or changes what is done there, sets the camera up anew.
      const cameras = run.cameras?.block === press.block ? null : run.cameras;
      const running = run.running && find.blockOf(run.running.set).id === press.block ? null : run.running;
      return { ...run, taken, order, cameras, running, wanted: null };
    }
    case "go": {
      const block = find.blockOf(press.set);
      const over = new Map(run.over);
      over.delete(press.set);
      for (const set of block.sets.slice(0, block.sets.findIndex(({ id }) => id === press.set))) if (!over.has(set.id)) over.set(set.id, null);
      const taken = new Map(run.taken);
      if (taken.get(block.id) === "dropped") taken.delete(block.id);
      return { ...run, over, taken, order: broughtForward(find, { ...run, over }, block.id), wanted: press.set };
    }
    case "log":
      return { ...run, lifted: withKey(run.lifted, press.set, press.lifted) };
    case "without-closing":
      return { ...run, withoutClosing: true };
    case "finish":
      return { ...run, finishedAt: press.at };
  }
}

/** Presses after which what is left has to be planned again. */
const REPLANS: readonly Press["type"][] = ["begin", "end", "tick", "angle-lost", "station-taken", "go"];
/** Of those, the ones after which the change is told. */
const TELLS: readonly Press["type"][] = ["tick", "angle-lost", "station-taken", "go"];

/** The session after one more press. The engine plans what is left; nothing that is done is changed. */
export function afterPress(find: Finder, run: Run, press: Press): Run {
  const next = facts(find, run, press);
  if (next === run || !REPLANS.includes(press.type)) return next;
  const planned = { ...next, ...planOfRest(find, next) };
  if (!TELLS.includes(press.type)) return planned;
  const words = whatChanged(find, run, planned, press);
  const byAnswer = press.type === "tick";
  return { ...planned, told: words.length > 0 ? { words, byAnswer } : byAnswer ? run.told : null };
}

export const runOf = (find: Finder, presses: readonly Press[]): Run => presses.reduce((run, press) => afterPress(find, run, press), firstRun(find));
