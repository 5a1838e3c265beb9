import type { App } from "../app";
import { openShots } from "../run/state";
import { answerRow, answers } from "./answers";
import { h } from "./dom";
import { handBack } from "./hand-back";
import { liftedForm } from "./lifted";
import { extraTick, lost, openClosing, told, type View } from "./parts";
import { ask } from "./trouble";

/** After the last set: what is open, the closing first, and the way back. The session is not called over while the closing is missing. */
export function endOf(app: App): View {
  const { session, run, find } = app;
  if (run.finishedAt !== null) return handBack(app, "The session is over");
  const missing = openClosing(app);
  const after = run.resting ? find.set(run.resting.after) : null;
  const finish = (): void => app.press({ type: "finish" });
  return {
    title: "The last set is done",
    body: [
      h("header", { class: "title" }, h("p", { class: "over" }, session.blocks.length === 0 ? "Nothing is planned" : "The last set is done"), h("h1", { tabindex: -1 }, missing.length > 0 ? "The closing is missing" : openShots(run).length > 0 ? "Some shots have no answer" : "Everything is answered for")),
      told(app, false),
      missing.length > 0 ? h("section", { class: "part closing", "aria-labelledby": "closing" },
        h("h2", { id: "closing" }, "Film the closing before you pack"),
        h("ul", {}, missing.filter((shot) => shot !== "closing").map((shot) => answerRow(app, shot, ""))),
        missing.includes("closing") ? extraTick(app, "closing", session.extras.find(({ what }) => what === "closing")?.words ?? "") : null) : null,
      answers(app, after?.id ?? null, missing),
      told(app, true),
      after ? liftedForm(app, after) : null,
      ...session.extras.filter(({ what }) => what !== "closing" && what !== "opening").map(({ what, words }) => extraTick(app, what, words)),
      lost(app),
    ],
    main: {
      words: missing.length > 0 ? "End without the closing" : "The session is over",
      warns: missing.length > 0,
      press: () => {
        if (missing.length === 0 || run.withoutClosing) return finish();
        ask("The closing is not in the box", ["Without it the video has no end. The camera, the light and you are still here."], [
          { words: "Film it now", strong: true, choose: () => undefined },
          { words: "Leave without it", choose: () => {
            app.press({ type: "without-closing" });
            finish();
          } },
        ], "Back");
      },
    },
  };
}
