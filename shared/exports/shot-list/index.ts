/** The shot list: where the camera stands and what it films, one station a page, to be ticked off on the gym floor. */
import { blockName, type Episode } from "../../episode";
import { shotsOf } from "../../filming";
import { renderDocx, renderPdf } from "../paper";
import { parseSetLine } from "../../training";
import type { Exporter, Rendered } from "../types";
import { shotListPaper } from "./tree";

export { shotListPaper } from "./tree";

const SOURCE = "common practice, no source";

/** More sentences of one kind than this are counted, not read. */
const MANY = 5;

/** What the coach should know before printing. */
function remarks(episode: Episode): string[] {
  const bare = episode.blocks.filter((block) => shotsOf(block).length === 0).map(blockName);
  const unread = episode.blocks.flatMap((block) => block.sets
    .filter((line) => line.text.trim() !== "" && !parseSetLine(line.text).ok)
    .map((line) => `The set line "${line.text.trim()}" of ${blockName(block)} could not be read: it has no rows to tick.`));
  const more = unread.length - MANY;
  return [
    ...(bare.length === 0 ? [] : [`No shot is planned for ${listed(bare)}; the shot list says so.`]),
    ...unread.slice(0, MANY),
    ...(more > 0 ? [`${more} more set ${more === 1 ? "line" : "lines"} could not be read.`] : []),
  ];
}

/** "Closing", "Talk and Closing", "Talk, Talk, Talk and 4 more" */
function listed(names: readonly string[]): string {
  const rest = names.length - MANY;
  if (rest > 1) return `${names.slice(0, MANY).join(", ")} and ${rest} more blocks`;
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1) ?? ""}`;
}

const withNotes = (rendered: Rendered, notes: readonly string[]): Rendered => ({ ...rendered, notes: [...notes, ...rendered.notes] });

export const shotListPdf: Exporter = {
  meta: { id: "shot-list.pdf", title: "Shot list", extension: "pdf", mime: "application/pdf", source: SOURCE },
  render: async (episode, options) => withNotes(await renderPdf(shotListPaper(episode, options.units), options), remarks(episode)),
};

export const shotListDocx: Exporter = {
  meta: {
    id: "shot-list.docx", title: "Shot list for Word", extension: "docx",
    mime: "application/vnd.openxmlformats-officedocument.wordprocessingml.document", source: SOURCE,
  },
  render: async (episode, options) => withNotes(await renderDocx(shotListPaper(episode, options.units), options), remarks(episode)),
};
