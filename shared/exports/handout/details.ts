import type { LineKind } from "../../episode";
import { exerciseById } from "../../exercises";
import { columns, heading, keepTogether, label, list, paragraph, rule, type PaperNode } from "../paper";
import type { PlanItem } from "./plan";
import type { Spacing } from "./spacing";

/** The catalogue offers more than fits a handout. */
const MAX_SUBSTITUTES = 2;

const texts = (item: PlanItem, kind: LineKind): string[] => item.block.lines.filter((line) => line.kind === kind && line.text.trim() !== "").map((line) => line.text.trim());

/** What to do when the station is taken: the coach's own alternates, then the catalogue's, each once. */
function alternatesOf(item: PlanItem): string[] {
  const own = item.block.alternates.map((alternate) => alternate.text.trim()).filter(Boolean);
  const exercise = item.block.exercise === null ? null : exerciseById(item.block.exercise);
  const others = (exercise?.substitutes ?? []).flatMap(({ exercise: id, without }) => {
    const other = exerciseById(id);
    return other ? [{ name: other.name, without }] : [];
  });
  const fresh = others.filter(({ name }, i) => others.findIndex((other) => other.name === name) === i && !own.some((text) => text.toLowerCase().includes(name.toLowerCase())));
  return [...own, ...fresh.slice(0, MAX_SUBSTITUTES).map(({ name, without }) => `${name} (needs no ${without})`)];
}

const said = (title: string, lines: readonly string[], { text: size, line: after, last }: Spacing): PaperNode[] =>
  lines.length === 0 ? [] : [label(title), ...lines.map((line, i) => paragraph(line, { size, after: i === lines.length - 1 ? last : after }))];

/** How one part of the plan is done; empty when the coach wrote nothing a viewer reads. */
function detail(item: PlanItem, spacing: Spacing): PaperNode[] {
  const cues = texts(item, "cue");
  const care = said("take care", texts(item, "caution"), spacing);
  const right = [...said("avoid", texts(item, "avoid"), spacing), ...said("if the place is taken", alternatesOf(item), spacing)];
  if (cues.length === 0 && care.length === 0 && right.length === 0) return [];
  const title = heading(3, `${item.number}. ${item.name}`);
  if (item.block.kind !== "exercise") return [keepTogether([rule(), title, ...(cues.length > 0 ? [list(cues, { size: spacing.text })] : []), ...care, ...right])];
  const left = [...said("do", cues, spacing), ...care];
  const body = left.length === 0 ? right : right.length === 0 ? left : [columns([{ width: 1, children: left }, { width: 1, children: right }], 24)];
  return [keepTogether([rule(), title, ...body])];
}

/** "How each one should look and feel": the plan's parts in order. Private notes, shots and spoken words stay out. */
export function detailsOf(items: readonly PlanItem[], spacing: Spacing): PaperNode[] {
  const parts = items.flatMap((item) => detail(item, spacing));
  return parts.length === 0 ? [] : [heading(2, "How each one should look and feel"), ...parts];
}

/** The words of the plan a viewer reads, to find the terms that need explaining. */
export const wordsOf = (items: readonly PlanItem[]): string =>
  items.flatMap((item) => [...texts(item, "cue"), ...texts(item, "avoid"), ...texts(item, "caution"), ...alternatesOf(item)]).join("\n");
