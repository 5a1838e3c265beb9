import type { PhoneBlock, PhoneSet } from "../../../shared/exports";
import type { App } from "../app";
import { filmingOf, nextSet, openShots } from "../run/state";
import { answerRow } from "./answers";
import { button, h, many } from "./dom";
import { liftedForm, liftedWords } from "./lifted";
import { extraTick, told, type View } from "./parts";

/** Where a set stands, in words. */
function standing(app: App, block: PhoneBlock, set: PhoneSet): string {
  const { run } = app;
  if (run.running?.set === set.id) return "under way";
  if (run.over.has(set.id)) {
    const lifted = run.lifted.get(set.id);
    if (run.over.get(set.id) === null) return "passed over";
    const open = openShots(run).filter((each) => each.set === set.id).length;
    return [lifted ? `done: ${liftedWords(lifted, app.session.units)}` : "done", open > 0 ? `${many(open, "shot")} without an answer` : ""].filter(Boolean).join("; ");
  }
  if (run.taken.get(block.id) === "dropped") return "left out";
  const { marks, shots } = filmingOf(run, set.id);
  const letters = marks.map((key) => block.marks.find((mark) => mark.key === key)?.letter ?? "").join(" and ");
  return letters === "" ? "" : `${letters}${shots.length > 0 ? "" : ", nothing new"}`;
}

/** The whole running order; every set can be jumped to. */
export function orderView(app: App): View {
  const { run, find, session } = app;
  const next = nextSet(find, run);
  return {
    title: "Running order",
    body: [
      h("header", { class: "title" }, h("p", { class: "over" }, session.title), h("h1", { tabindex: -1 }, "Running order")),
      told(app, false),
      ...run.order.map((id, i) => {
        const block = find.block(id);
        const lost = block.shots.filter((shot) => run.plan.lost.includes(shot.id));
        const got = block.shots.filter((shot) => run.answers.get(shot.id)?.got).length;
        return h("section", { class: "part order", "aria-labelledby": `block-${id}` },
          h("h2", { id: `block-${id}` }, `${i + 1}. ${block.name}`),
          h("p", { class: "second" }, [block.station, block.shots.length === 0 ? "no shot planned" : `${got} of ${block.shots.length} in the box`].filter(Boolean).join(", ")),
          lost.map((shot) => h("p", { class: "lost" }, `Lost: ${shot.short}: ${shot.subject}`)),
          h("ul", {}, block.sets.map((set) => h("li", {},
            button([h("strong", {}, set.role === "run" && block.sets.length === 1 ? "In one go" : set.name), h("span", { class: "second" }, standing(app, block, set))],
              () => (run.over.get(set.id) ? app.show({ at: "set", set: set.id }) : app.press({ type: "go", set: set.id })),
              { key: `set ${set.id}`, class: "row", ...(next?.id === set.id ? { "aria-current": "step" } : {}), disabled: run.running !== null && !run.over.get(set.id) })))));
      }),
      ...session.extras.filter(({ block }) => block === null).map(({ what, words }) => extraTick(app, what, words)),
    ],
    main: null,
  };
}

/** A set that is over: its answers and numbers can still be put right. */
export function setView(app: App, id: string): View {
  const block = app.find.blockOf(id);
  const set = app.find.set(id);
  const shots = app.run.films.get(id)?.shots ?? [];
  return {
    title: `${set.name}, ${block.name}`,
    body: [
      h("header", { class: "title" }, h("p", { class: "over" }, `${block.name}, done`), h("h1", { tabindex: -1 }, set.name)),
      shots.length > 0 ? h("ul", { class: "part" }, shots.map((shot) => answerRow(app, shot, ""))) : h("p", { class: "part second" }, "Nothing was filmed on this set."),
      told(app, true),
      liftedForm(app, set, block.id),
      button("Do this set once more", () => app.press({ type: "go", set: id }), { key: "again", class: "wide quiet" }),
    ],
    main: { words: "Back to the order", press: () => app.show({ at: "order" }) },
  };
}
