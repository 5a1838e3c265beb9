import { writeReport, writeReportCode } from "../../../shared/session-report";
import type { App } from "../app";
import { openShots } from "../run/state";
import { reportOf } from "../run/report";
import { shotWords } from "../run/what-changed";
import { button, h, many } from "./dom";
import { lost, openClosing, type View } from "./parts";
import { ask } from "./trouble";

/** The way back: a file to share or save, a code to copy. Nothing leaves the phone but by these presses. */
export function handBack(app: App, title = "Hand back"): View {
  const { session, run, find } = app;
  const report = reportOf(find, run);
  const code = writeReportCode(report);
  const name = `${session.stem}.session.json`;
  const file = (): File => new File([writeReport(report)], name, { type: "application/json" });
  const said = h("p", { class: "written", role: "status" });
  const open = openShots(run);
  const working = session.blocks.flatMap(({ sets }) => sets).filter((set) => set.role === "working" && run.over.get(set.id));
  const blank = working.filter(({ id }) => !run.lifted.has(id)).length;
  const shots = session.blocks.flatMap((block) => block.shots);
  const area = h("textarea", { id: "code", readonly: true, rows: 4, spellcheck: "false", onfocus: () => area.select() });
  area.value = code;

  return {
    title,
    body: [
      h("header", { class: "title" }, h("p", { class: "over" }, session.title), h("h1", { tabindex: -1 }, title)),
      h("p", { class: "asked" }, `${shots.filter(({ id }) => run.answers.get(id)?.got).length} of ${many(shots.length, "shot")} in the box, ${many(working.length - blank, "set")} written down.`),
      run.finishedAt !== null && openClosing(app).length > 0 ? h("p", { class: "part lost" }, "The closing was not filmed.") : null,
      open.length > 0 ? h("p", { class: "part notice" }, `Not answered yet: ${open.map(({ shot }) => shotWords(find, shot)).join("; ")}. They are handed back as not known.`) : null,
      blank > 0 ? h("p", { class: "part second" }, `${many(blank, "working set")} without numbers. They can be typed under Order.`) : null,
      h("section", { class: "part", "aria-labelledby": "file" },
        h("h2", { id: "file" }, "As a file"),
        canShare(file()) ? button("Share the file", () => void share(file(), said), { key: "share", class: "wide strong" }) : null,
        button("Save the file", () => save(file(), said), { key: "save", class: canShare(file()) ? "wide" : "wide strong" }),
        h("p", { class: "second" }, name)),
      h("section", { class: "part", "aria-labelledby": "as-code" },
        h("h2", { id: "as-code" }, "As a code"),
        button("Copy the code", () => void copy(area, said), { key: "copy", class: "wide" }),
        h("label", { class: "second", for: "code" }, `${code.length} letters; send them to yourself`),
        area),
      said,
      h("p", { class: "part second" }, "At the desk: open the episode, go to Shoot, Back from the gym."),
      lost(app),
      app.keeps ? null : notKept(),
      run.startedAt === null ? null : button("Begin this session anew", () => ask("Begin anew?", ["All presses and numbers of this session on this phone are wiped. This cannot be taken back."], [{ words: "Wipe and begin anew", choose: app.startOver }]), { key: "anew", class: "wide quiet" }),
    ],
    main: null,
  };
}

export const notKept = (): HTMLElement => h("p", { class: "part notice" }, "This phone keeps nothing for this page. Do not close or reload it before you have handed back.");

const canShare = (file: File): boolean => typeof navigator.canShare === "function" && navigator.canShare({ files: [file] });

async function share(file: File, said: HTMLElement): Promise<void> {
  try {
    await navigator.share({ files: [file], title: file.name });
    said.textContent = "Handed to the other app.";
  } catch (error) {
    // Closing the list of apps is an answer too.
    said.textContent = error instanceof Error && error.name === "AbortError" ? "Nothing was shared." : "This phone would not share it. Save the file or copy the code.";
  }
}

function save(file: File, said: HTMLElement): void {
  const address = URL.createObjectURL(file);
  h("a", { href: address, download: file.name }).click();
  // The phone needs the address until it has begun to write.
  window.setTimeout(() => URL.revokeObjectURL(address), 60_000);
  said.textContent = `${file.name} goes to this phone's downloads.`;
}

async function copy(area: HTMLTextAreaElement, said: HTMLElement): Promise<void> {
  let done: boolean;
  try {
    await navigator.clipboard.writeText(area.value);
    done = true;
  } catch {
    // Pages opened from a file are refused on some phones; the older way still works there.
    area.focus();
    area.select();
    done = document.execCommand("copy");
  }
  said.textContent = done ? "The code is copied." : "It could not be copied. Press the code long and copy it by hand.";
}
