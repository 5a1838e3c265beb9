import type { PhoneBlock, PhoneMark } from "../../../shared/exports";
import type { App } from "../app";
import type { Filming } from "../run/state";
import { h } from "./dom";

const metres = (value: number): string => `${value.toFixed(1)} m`;

/** A mark in numbers that can be read from the floor. */
function markFigure(mark: PhoneMark, task: string): HTMLElement {
  return h("div", { class: "mark" },
    h("p", { class: "letter" }, h("span", { class: "sr" }, "Mark "), mark.letter),
    h("div", {},
      h("p", { class: "task" }, task),
      h("p", { class: "second" }, mark.words)),
    h("dl", {},
      h("div", {}, h("dt", {}, `away, ${mark.steps}`), h("dd", {}, metres(mark.distance))),
      h("div", {}, h("dt", {}, [mark.level === "" ? "high" : `high, ${mark.level}`, mark.tilt === "level" ? "" : `, look ${mark.tilt}`].join("")), h("dd", {}, metres(mark.height)))),
    mark.warnings.length > 0 ? h("div", { class: "warnings" }, mark.warnings.map((words) => h("p", {}, words))) : null);
}

/** Whether the block before, at the same station, has left the camera at just that place. */
function stoodThere(app: App, block: PhoneBlock, camera: number, mark: string): boolean {
  const { cameras } = app.run;
  if (cameras === null || block.station === "") return false;
  const before = app.find.block(cameras.block);
  const [there, here] = [before.marks.find(({ key }) => key === cameras.marks[camera]), block.marks.find(({ key }) => key === mark)];
  return before.station === block.station && there !== undefined && there.key === here?.key && there.distance === here.distance && there.height === here.height;
}

/** What a camera has to do before the set. */
export function cameraTask(app: App, block: PhoneBlock, camera: number, mark: string): { readonly words: string; readonly isMove: boolean } {
  const { run, session } = app;
  const name = session.problem.cameras === 2 ? `Camera ${camera + 1}` : "The camera";
  const stood = run.cameras?.block === block.id ? run.cameras.marks[camera] : undefined;
  if (stood === undefined) return stoodThere(app, block, camera, mark) ? { words: `${name} stays here`, isMove: false } : { words: `Set ${name.toLowerCase()} up here`, isMove: false };
  if (stood === mark) return { words: `${name} stays here`, isMove: false };
  const from = block.marks.find(({ key }) => key === stood)?.letter ?? "";
  return { words: `Move ${name.toLowerCase()}${from === "" ? "" : ` from ${from}`} to here`, isMove: true };
}

/** Where each camera stands for a set. */
export function marksFor(app: App, block: PhoneBlock, { marks }: Filming, isRunning: boolean): HTMLElement | null {
  if (marks.length === 0) return null;
  return h("section", { class: "part marks", "aria-label": "Where the camera stands" }, marks.map((key, camera) => {
    const mark = block.marks.find((each) => each.key === key);
    if (!mark) return null;
    const { words, isMove } = cameraTask(app, block, camera, key);
    const figure = markFigure(mark, isRunning ? (marks.length > 1 ? `Camera ${camera + 1}, from here` : "Films from here") : words);
    if (isMove && !isRunning) figure.classList.add("move");
    return figure;
  }));
}

/** What must be seen in a set, in the words of the shot lines. */
export function mustSee(block: PhoneBlock, { shots }: Filming): HTMLElement {
  if (shots.length === 0) return h("p", { class: "part second" }, "Nothing has to be filmed here. Leave the camera running if the card allows.");
  return h("section", { class: "part", "aria-labelledby": "see" },
    h("h2", { id: "see" }, "Must be seen"),
    h("ul", { class: "see" }, block.shots.filter(({ id }) => shots.includes(id)).map((shot) =>
      h("li", {}, h("strong", {}, shot.subject), h("span", { class: "second" }, ` ${block.marks.find(({ key }) => key === shot.mark)?.letter ?? ""}: ${shot.short.toLowerCase()}, ${shot.seconds} s${shot.need === "nice" ? ", nice to have" : ""}`)))));
}
