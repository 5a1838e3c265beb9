import type { PhoneBlock, PhoneSet } from "../../../shared/exports";
import type { App } from "../app";
import { filmingOf, nextSet } from "../run/state";
import { answers } from "./answers";
import { clock, h } from "./dom";
import { endOf } from "./end";
import { liftedForm } from "./lifted";
import { cameraTask, marksFor, mustSee } from "./marks";
import { extraTick, lost, told, type View } from "./parts";
import { trouble } from "./trouble";
import { buzz } from "../phone";

/** Seconds before the end of a rest at which the phone buzzes, so that there is time to get in place. */
const WARNING = 10;

const heading = (over: string, words: string): HTMLElement => h("header", { class: "title" }, h("p", { class: "over" }, over), h("h1", { tabindex: -1 }, words));

/** "Set 2"; a block that is done in one go goes by its own name. */
const nameOf = (block: PhoneBlock, set: PhoneSet): string => (set.role === "run" && block.sets.length === 1 ? block.name : set.name);

/** "Chest-supported row, 3 of 9" */
const placeIn = (app: App, block: PhoneBlock): string => `${block.name}, ${app.run.order.indexOf(block.id) + 1}\u00a0of\u00a0${app.run.order.length}`;

const asked = ({ work, load }: PhoneSet): string => [work, load].filter(Boolean).join(", ");

/** The screen for this moment: before the first set, during one, between two, after the last. */
export function nowView(app: App): View {
  const { run, find } = app;
  if (run.finishedAt !== null) return endOf(app);
  if (run.running) return duringSet(app, find.blockOf(run.running.set), find.set(run.running.set), run.running.from);
  const next = nextSet(find, run);
  if (next === null) return endOf(app);
  if (run.startedAt === null) return beforeAll(app, next);
  return betweenSets(app, find.blockOf(next.id), next);
}

function beforeAll(app: App, next: PhoneSet): View {
  const { session, find } = app;
  const first = find.blockOf(next.id).name;
  return {
    title: session.title,
    body: [
      heading(session.series, session.title),
      session.where + session.when === "" ? null : h("p", { class: "part" }, [session.where, session.when].filter(Boolean).join(", ")),
      app.hasOlder ? h("p", { class: "part notice" }, "This phone also holds presses of an older plan of this episode. They stay with that older sheet.") : null,
      h("section", { class: "part", "aria-labelledby": "rules" }, h("h2", { id: "rules" }, "Before you film"), h("ul", { class: "plain-list" }, session.reminders.map((words) => h("li", {}, words)))),
      h("section", { class: "part", "aria-labelledby": "camera" }, h("h2", { id: "camera" }, "Camera"), h("p", {}, session.hold)),
      lost(app, "The plan has no set for"),
      session.kit.length > 0 ? h("section", { class: "part", "aria-labelledby": "kit" }, h("h2", { id: "kit" }, "Bring"), h("p", {}, session.kit.join(", "), ".")) : null,
    ],
    main: { words: `Begin: ${first}`, press: () => app.press({ type: "start" }) },
  };
}

/** A thin line that fills up; the number beside it says the same. */
function bar(): { readonly element: HTMLElement; readonly fill: (share: number) => void } {
  const line = h("div", { class: "filled" });
  return { element: h("div", { class: "bar", "aria-hidden": "true" }, line), fill: (share) => (line.style.transform = `scaleX(${Math.min(1, Math.max(0, share))})`) };
}

function duringSet(app: App, block: PhoneBlock, set: PhoneSet, from: number): View {
  const filming = app.run.films.get(set.id) ?? { marks: [], shots: [] };
  const count = h("p", { class: "count", role: "timer", "aria-label": "Time of this set" });
  const line = bar();
  let wasOver: boolean | null = null;
  app.everyTick(() => {
    const seconds = (app.now() - from) / 1000;
    count.textContent = clock(Math.max(0, seconds));
    line.fill(set.seconds > 0 ? seconds / set.seconds : 0);
    const isOver = set.seconds > 0 && seconds >= set.seconds;
    count.classList.toggle("reached", isOver);
    // Nothing hums while somebody speaks to the camera.
    if (isOver && wasOver === false && set.role !== "run") buzz([120]);
    wasOver = isOver;
  });
  return {
    title: `${set.name}, ${block.name}`,
    body: [
      heading(placeIn(app, block), nameOf(block, set)),
      asked(set) === "" ? null : h("p", { class: "asked" }, asked(set)),
      h("div", { class: "clock" }, count, h("p", { class: "second" }, set.role === "run" ? "running" : `of about ${clock(set.seconds)}`), line.element),
      mustSee(block, filming),
      marksFor(app, block, filming, true),
      spoken(block),
      cautions(block),
      trouble(app, block, filming),
    ],
    main: { words: set.role === "run" ? "End this take" : `End ${set.name.toLowerCase()}`, press: () => app.press({ type: "end", set: set.id }) },
  };
}

function betweenSets(app: App, block: PhoneBlock, set: PhoneSet): View {
  const { run, find } = app;
  const filming = filmingOf(run, set.id);
  const after = run.resting ? find.set(run.resting.after) : null;
  const extra = app.session.extras.find((each) => each.block === block.id);
  const alternate = run.taken.get(block.id);
  const begins = !block.sets.some(({ id }) => run.over.get(id));
  return {
    title: `Next: ${set.name}, ${block.name}`,
    body: [
      after && run.resting ? rest(app, after, run.resting.from, block, filming.marks) : null,
      told(app, false),
      heading(`Next: ${placeIn(app, block)}`, nameOf(block, set)),
      begins && block.station !== "" ? h("p", { class: "over" }, `At the ${block.station}`) : null,
      typeof alternate === "number" ? h("p", { class: "notice part" }, `Done another way: ${block.alternates[alternate] ?? ""}`) : null,
      asked(set) === "" ? null : h("p", { class: "asked" }, asked(set)),
      marksFor(app, block, filming, false),
      extra ? extraTick(app, extra.what, extra.words) : mustSee(block, filming),
      answers(app, after?.id ?? null),
      told(app, true),
      trouble(app, block, filming),
      after ? liftedForm(app, after, block.id) : null,
      spoken(block),
      cautions(block),
      lostOf(app, block),
    ],
    main: { words: `Start ${nameOf(block, set).toLowerCase()}`, press: () => app.press({ type: "begin", set: set.id }) },
  };
}

/** The rest counts down; a camera move that falls into it is named at once. */
function rest(app: App, after: PhoneSet, from: number, next: PhoneBlock, marks: readonly string[]): HTMLElement {
  const isSameBlock = app.find.blockOf(after.id).id === next.id;
  if (after.restSeconds === 0 || after.role === "run" || !isSameBlock) return h("p", { class: "part over" }, `${nameOf(app.find.blockOf(after.id), after)} is done.${isSameBlock ? "" : ` On to ${next.station === "" ? next.name : next.station}.`}`);
  const count = h("p", { class: "count", role: "timer", "aria-label": "Rest left" });
  const line = bar();
  const moves = marks.flatMap((mark, camera) => {
    const { words, isMove } = cameraTask(app, next, camera, mark);
    const letter = next.marks.find(({ key }) => key === mark)?.letter ?? "";
    return isMove ? [`${words.replace(/ to here$/, "")} to ${letter}.`] : [];
  });
  let before: number | null = null;
  app.everyTick(() => {
    const left = after.restSeconds - (app.now() - from) / 1000;
    count.textContent = left >= 0 ? clock(Math.ceil(left)) : `+${clock(Math.trunc(-left))}`;
    count.classList.toggle("reached", left <= 0);
    line.fill(1 - left / after.restSeconds);
    // Only a moment that was lived through buzzes; after an unlock nothing is made up for.
    if (before !== null && before > WARNING && left <= WARNING && left > WARNING - 2) {
      buzz([80]);
      app.say(`${WARNING} seconds of rest left.${moves.length > 0 ? ` ${moves.join(" ")}` : ""}`);
    }
    if (before !== null && before > 0 && left <= 0 && left > -2) {
      buzz([200, 100, 200]);
      app.say("The rest is over.");
    }
    before = left;
  });
  return h("section", { class: "clock resting", "aria-label": `Rest after ${after.name.toLowerCase()}` },
    h("p", { class: "over" }, `Rest after ${after.name.toLowerCase()}, of ${clock(after.restSeconds)}`),
    h("div", { class: "beside" }, count, moves.length > 0 ? h("p", { class: "due" }, moves.join(" ")) : null), line.element);
}

function lostOf(app: App, block: PhoneBlock): HTMLElement | null {
  const lost = block.shots.filter(({ id }) => app.run.plan.lost.includes(id));
  if (lost.length === 0) return null;
  return h("section", { class: "part", "aria-labelledby": "lost-here" },
    h("h2", { id: "lost-here" }, "Lost here"), lost.map(({ short, subject }) => h("p", { class: "lost" }, `${short}: ${subject}`)));
}

/** Words for the camera: open where the block is nothing but words, folded where they are spoken later at the desk. */
function spoken(block: PhoneBlock): HTMLElement | null {
  if (block.say.length === 0) return null;
  const words = block.say.map((line) => h("p", { class: "say" }, line));
  const isTalk = ["opening", "closing", "talk"].includes(block.kind) || block.shots.some(({ subject }) => /\bto (?:the )?camera\b/i.test(subject));
  if (isTalk) return h("section", { class: "part", "aria-labelledby": "say" }, h("h2", { id: "say" }, "Say to the camera"), words);
  return h("details", { class: "part" }, h("summary", {}, "Words of this block"), words);
}

const cautions = (block: PhoneBlock): HTMLElement | null =>
  block.cautions.length === 0 ? null : h("section", { class: "part cautions", "aria-label": "Cautions" }, block.cautions.map((words) => h("p", {}, words)));
