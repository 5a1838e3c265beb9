/** The pocket list: the shot list on a sheet that is folded twice. */
import type { Episode } from "../../episode";
import { PANELS, pagesOf, renderPdf, type Paper } from "../paper";
import type { ExportOptions, Exporter } from "../types";
import { POCKET_SIZES, pocketListPaper } from "./tree";

export { POCKET_SIZES, pocketListPaper } from "./tree";

const FOLDING = "Print the pocket list on one side at full size; fold the upper half back, then the left half behind the right one.";

/** The roomiest setting that needs the fewest sheets. */
async function fitted(episode: Episode, options: ExportOptions): Promise<Paper> {
  let best: { readonly paper: Paper; readonly sheets: number } | null = null;
  for (const size of POCKET_SIZES) {
    const paper = pocketListPaper(episode, options.units, size);
    const sheets = Math.ceil((await pagesOf(paper, options)) / PANELS);
    if (!best || sheets < best.sheets) best = { paper, sheets };
    if (sheets === 1) break;
  }
  return best?.paper ?? pocketListPaper(episode, options.units);
}

export const pocketListPdf: Exporter = {
  meta: { id: "pocket-list.pdf", title: "Pocket list", extension: "pdf", mime: "application/pdf", source: "common practice, no source" },
  render: async (episode, options) => {
    const rendered = await renderPdf(await fitted(episode, options), options);
    return { ...rendered, notes: [FOLDING, ...rendered.notes] };
  },
};
