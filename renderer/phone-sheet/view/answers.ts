import type { App } from "../app";
import { openShots } from "../run/state";
import { shotWords } from "../run/what-changed";
import { button, h, many } from "./dom";

/** One shot's answer: in the box, or not. Pressing the answer that stands takes it away. */
export function answerRow(app: App, shot: string, where: string): HTMLElement {
  const answer = app.run.answers.get(shot);
  const words = shotWords(app.find, shot);
  const give = (got: boolean): void => app.press({ type: "tick", shot, got: answer?.got === got ? null : got });
  return h("li", { class: "answer" },
    h("p", { id: `shot-${shot}` }, words, where === "" ? null : h("span", { class: "second" }, ` ${where}`)),
    h("div", { class: "pair", role: "group", "aria-labelledby": `shot-${shot}` },
      button("In the box", () => give(true), { key: `got ${shot}`, "aria-pressed": String(answer?.got === true), class: "yes" }),
      button("Not in it", () => give(false), { key: `not ${shot}`, "aria-pressed": String(answer?.got === false), class: "no" })),
  );
}

/** Shots of the set that has just ended, answered or not, and older ones still without an answer. @param except - shots that are asked for elsewhere on the page */
export function answers(app: App, after: string | null, except: readonly string[] = []): HTMLElement | null {
  const { run, find } = app;
  const just = after === null ? [] : (run.films.get(after)?.shots ?? []).filter((shot) => !except.includes(shot));
  const older = openShots(run).filter(({ shot }) => !just.includes(shot) && !except.includes(shot));
  if (just.length + older.length === 0) return null;
  const rows = older.map(({ shot, set }) => answerRow(app, shot, `${find.set(set).name} of ${find.blockOf(set).name}, not answered yet`));
  return h("section", { class: "part", "aria-labelledby": "answers" },
    h("h2", { id: "answers" }, "In the box?"),
    h("ul", {},
      just.map((shot) => answerRow(app, shot, "")),
      just.length === 0 ? rows : null),
    just.length > 0 && older.length > 0 ? h("details", { class: "older" }, h("summary", {}, `${many(older.length, "earlier shot")} not answered`), h("ul", {}, rows)) : null);
}
