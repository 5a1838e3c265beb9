import type { PhoneSet } from "../../../shared/exports";
import { liftedInWords } from "../../../shared/session-report";
import type { App } from "../app";
import type { Lifted } from "../run/presses";
import { button, h } from "./dom";

interface Field {
  readonly name: keyof Lifted;
  readonly label: string;
  readonly most: number;
  readonly step: number;
  readonly decimals: boolean;
}

/** Plates and bells step by one; above twenty a pair of small plates is the usual step. Common practice, no source. */
const loadStep = (units: "kg" | "lb", load: number | null): number => (units === "lb" ? 5 : (load ?? 0) > 20 ? 2.5 : 1);

export const liftedWords = (lifted: Lifted, units: "kg" | "lb"): string => liftedInWords(lifted, units) || "no numbers";

/** A typed number with a comma or a point; null for nothing, undefined for what is no number or too much. */
export function typedNumber(text: string, { most, decimals }: Pick<Field, "most" | "decimals">): number | null | undefined {
  const bare = text.trim().replace(",", ".");
  if (bare === "") return null;
  if (!(decimals ? /^\d{1,5}(\.\d{0,3})?$/ : /^\d{1,5}$/).test(bare)) return undefined;
  const value = Number(bare);
  return value <= most ? value : undefined;
}

/** What was lifted in a working set: begins with the plan's numbers, written down with each change or as planned. @param here - the block the page is about, which need not be named again */
export function liftedForm(app: App, set: PhoneSet, here: string | null = null): HTMLElement | null {
  if (set.planned === null) return null;
  const { units } = app.session;
  const written = app.run.lifted.get(set.id) ?? null;
  const now = written ?? set.planned;
  const fields: readonly Field[] = [
    { name: "load", label: `Load, ${units}`, most: 2000, step: loadStep(units, now.load), decimals: true },
    { name: "reps", label: "Reps", most: 1000, step: 1, decimals: false },
    { name: "rir", label: "Reps in reserve", most: 10, step: 1, decimals: true },
  ];
  const problem = h("p", { class: "problem", role: "alert" });
  const write = (field: Field, value: number | null): void => app.press({ type: "log", set: set.id, lifted: { ...now, [field.name]: value } });
  const stepped = (field: Field, by: number): void => {
    const value = Math.min(field.most, Math.max(0, (now[field.name] ?? 0) + by));
    write(field, Math.round(value * 1000) / 1000);
  };

  return h("section", { class: "part", "aria-labelledby": "lifted" },
    h("h2", { id: "lifted" }, `What it was: ${set.name.toLowerCase()}${app.find.blockOf(set.id).id === here ? "" : ` of ${app.find.blockOf(set.id).name}`}`),
    fields.map((field) => {
      const id = `${field.name}-${set.id}`;
      const value = now[field.name];
      const input = h("input", {
        id, "data-key": id, inputmode: field.decimals ? "decimal" : "numeric", autocomplete: "off", enterkeyhint: "done", maxlength: 8, class: written === null ? "as-planned" : null,
        onchange: () => {
          const typed = typedNumber(input.value, field);
          if (typed === undefined) problem.textContent = `${field.label}: a number from 0 to ${field.most}. "${input.value}" is not written down.`;
          else write(field, typed);
        },
        onfocus: () => input.select(),
      });
      input.value = value === null ? "" : String(value);
      return h("div", { class: "number" },
        h("label", { for: id }, field.label),
        h("div", { class: "stepper" },
          button("−", () => stepped(field, -field.step), { key: `less ${id}`, "aria-label": `${field.label}: ${field.step} less` }),
          input,
          button("+", () => stepped(field, field.step), { key: `more ${id}`, "aria-label": `${field.label}: ${field.step} more` })));
    }),
    problem,
    written === null
      ? button(`As planned: ${liftedWords(set.planned, units)}`, () => app.press({ type: "log", set: set.id, lifted: set.planned ?? now }), { key: `planned ${set.id}`, class: "wide" })
      : h("p", { class: "written", role: "status" }, `Written down: ${liftedWords(written, units)}`),
  );
}
