import type { PhoneBlock } from "../../../shared/exports";
import type { App } from "../app";
import type { Filming } from "../run/state";
import { button, h } from "./dom";

/** A question over the page; the phone's back key and Escape answer "no". */
export function ask(title: string, words: readonly string[], choices: readonly { readonly words: string; readonly strong?: boolean; readonly choose: () => void }[], no = "Leave it as it is"): void {
  const dialog = h("dialog", { "aria-labelledby": "question" });
  const close = (): void => {
    if (typeof dialog.close === "function" && dialog.open) dialog.close();
    dialog.remove();
  };
  dialog.append(
    h("h2", { id: "question" }, title),
    ...words.map((each) => h("p", {}, each)),
    ...choices.map((choice) => button(choice.words, () => {
      close();
      choice.choose();
    }, { class: choice.strong ? "wide strong" : "wide" })),
    button(no, close, { class: "wide quiet" }));
  dialog.addEventListener("close", () => dialog.remove());
  document.body.append(dialog);
  if (typeof dialog.showModal === "function") dialog.showModal();
  else dialog.setAttribute("open", "");
}

/** The two things that go wrong on a gym floor. */
export function trouble(app: App, block: PhoneBlock, filming: Filming): HTMLElement {
  const marks = filming.marks.flatMap((key) => block.marks.find((mark) => mark.key === key) ?? []);
  return h("section", { class: "trouble", "aria-label": "When something comes in between" },
    marks.map((mark) => button(`Angle ${mark.letter} is lost`, () => app.press({ type: "angle-lost", block: block.id, mark: mark.key }), { key: `lost ${mark.key}` })),
    button("Station is taken", () => askAboutStation(app, block), { key: "taken" }),
    hasBegun(app, block) ? button("Stop this block", () => app.press({ type: "station-taken", block: block.id, then: "dropped" }), { key: "stop", class: "quiet" }) : null);
}

/** Sets that are over stay; somebody may have had enough, or some pain. */
const hasBegun = (app: App, block: PhoneBlock): boolean => block.sets.some(({ id }) => app.run.over.get(id) || app.run.running?.set === id);

function askAboutStation(app: App, block: PhoneBlock): void {
  const take = (then: "later" | "dropped" | number) => (): void => app.press({ type: "station-taken", block: block.id, then });
  const left = app.run.order.filter((id) => id !== block.id && app.run.taken.get(id) !== "dropped" && app.find.block(id).sets.some((set) => !app.run.over.has(set.id)));
  ask(`${block.station === "" ? block.name : block.station}: taken`, [`What becomes of ${block.name}?`], [
    ...(left.length > 0 ? [{ words: "Come back to it later", strong: true, choose: take("later") }] : []),
    ...block.alternates.map((words, i) => ({ words: `Instead: ${words}`, choose: take(i) })),
    { words: "Leave it out today", choose: take("dropped") },
  ]);
}
