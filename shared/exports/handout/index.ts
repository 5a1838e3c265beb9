import { episodeClocks } from "../../clocks";
import { renderPdf } from "../paper";
import type { Exporter } from "../types";
import { TIGHT } from "./spacing";
import { handoutPaper } from "./tree";

export { handoutPaper } from "./tree";

/** The viewer's handout: the plan with fields for their own numbers, how each part is done, cautions and terms. */
export const handoutPdf: Exporter = {
  meta: { id: "handout.pdf", title: "Handout", extension: "pdf", mime: "application/pdf", source: "ISO 32000-1:2008; tagged after ISO 14289-1:2014" },
  render: async (episode, options) => {
    const clocks = episodeClocks(episode, options.pace);
    const { paper, notes } = handoutPaper(episode, clocks, options.units);
    const file = await renderPdf(paper, options, () => handoutPaper(episode, clocks, options.units, TIGHT).paper);
    return { bytes: file.bytes, notes: [...notes, ...file.notes] };
  },
};
