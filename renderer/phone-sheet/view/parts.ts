import type { App } from "../app";
import { shotWords } from "../run/what-changed";
import { button, h } from "./dom";

/** What stands on the page, and the one big press at its foot. */
export interface View {
  readonly title: string;
  readonly body: readonly (Node | null)[];
  /** `warns` where pressing it leaves something behind. */
  readonly main: { readonly words: string; readonly press: () => void; readonly warns?: boolean } | null;
}

/** What the last change did; the lost in red words. What an answer did stands below the answers, so that they stay under the thumb. */
export function told(app: App, byAnswer: boolean): HTMLElement | null {
  if (app.run.told?.byAnswer !== byAnswer) return null;
  const { words: sentences } = app.run.told;
  return h("section", { class: "part notice", "aria-labelledby": "told" },
    h("h2", { id: "told" }, "What changed"),
    sentences.map((words) => h("p", { class: words.startsWith("Lost now") ? "lost" : null }, words)));
}

/** A tick for what no shot line asks for. */
export function extraTick(app: App, what: string, words: string): HTMLElement {
  const isIn = app.run.extras.has(what);
  return h("section", { class: "part", "aria-label": what.replace("-", " ") },
    h("p", {}, words),
    button(isIn ? "In the box" : "Tick: in the box", () => app.press({ type: "extra", what, got: !isIn }), { key: `extra ${what}`, class: "wide yes", "aria-pressed": String(isIn) }));
}

/** Closing shots that are not in the box; "closing" stands for one that no line asks for. */
export function openClosing({ session, run }: Pick<App, "session" | "run">): string[] {
  const bare = session.extras.some(({ what }) => what === "closing") && !run.extras.has("closing") ? ["closing"] : [];
  return [...session.closing.filter((shot) => run.answers.get(shot)?.got !== true), ...bare];
}

/** Everything that is lost, in red words. */
export function lost(app: App, title = "Not filmed"): HTMLElement | null {
  const { lost: ids } = app.run.plan;
  if (ids.length === 0) return null;
  return h("section", { class: "part", "aria-labelledby": "lost" },
    h("h2", { id: "lost" }, title), h("ul", { class: "plain-list" }, ids.map((id) => h("li", { class: "lost" }, `${shotWords(app.find, id)} (${app.find.blockOfShot(id).name})`))));
}
