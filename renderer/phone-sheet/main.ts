import type { PhoneSession } from "../../shared/exports";
import { startApp, type App } from "./app";
import { keepAwake } from "./phone";
import "./page.css";
import { button, h } from "./view/dom";
import { handBack, notKept } from "./view/hand-back";
import { nowView } from "./view/now";
import { orderView, setView } from "./view/order";
import type { View } from "./view/parts";

const viewOf = (app: App): View => {
  switch (app.screen.at) {
    case "now":
      return nowView(app);
    case "order":
      return orderView(app);
    case "back":
      return handBack(app);
    case "set":
      return setView(app, app.screen.set);
  }
};

/** The bar at the foot, where the thumb is: the main press, and the ways through the page. */
function foot(app: App, view: View): HTMLElement {
  const way = (at: "now" | "order" | "back", words: string): HTMLElement =>
    button(words, () => app.show({ at }), { key: at, ...(app.screen.at === at ? { "aria-current": "page" } : {}) });
  return h("div", { class: "foot" },
    view.main ? button(view.main.words, view.main.press, { key: "main", class: view.main.warns ? "main warns" : "main" }) : null,
    h("nav", { "aria-label": "Phone sheet" }, way("now", "Now"), way("order", "Order"), way("back", "Hand back"),
      button("Undo", app.undo, { key: "undo", disabled: app.undoes === null, "aria-label": app.undoes === null ? "Undo: nothing to take back" : `Undo: ${app.undoes}` })));
}

function start(): void {
  const root = document.getElementById("sheet");
  const data = document.getElementById("session")?.textContent;
  if (!root || !data) return;
  const session = JSON.parse(data) as PhoneSession;
  const said = h("p", { class: "sr", role: "status", "aria-live": "polite" });
  const sheet = h("main");
  root.append(sheet, said);
  let tick = (): void => undefined;

  const draw = (app: App, moved: boolean): void => {
    const view = viewOf(app);
    const key = document.activeElement instanceof HTMLElement ? document.activeElement.dataset["key"] : undefined;
    const isFirst = sheet.childElementCount === 0;
    sheet.replaceChildren(...[...view.body, app.keeps || view.main === null ? null : notKept()].filter((node) => node !== null));
    root.querySelector(".foot")?.remove();
    root.insertBefore(foot(app, view), said);
    document.title = `${view.title}: phone sheet`;
    tick();
    if (moved) {
      window.scrollTo(0, 0);
      if (!isFirst) sheet.querySelector("h1")?.focus({ preventScroll: true });
    } else if (key !== undefined) [...root.querySelectorAll<HTMLElement>("[data-key]")].find((element) => element.dataset["key"] === key)?.focus({ preventScroll: true });
  };
  const app = startApp({ session, storage: () => window.localStorage, now: () => Date.now(), draw, say: (words) => (said.textContent = words) });
  tick = app.tick;
  tick();
  window.setInterval(tick, 250);
  // A phone that was locked shows the right time at once.
  document.addEventListener("visibilitychange", tick);
  keepAwake();
}

start();
