import { PDFDocument } from "pdf-lib";
import { describe, expect, it } from "vitest";
import { countingIds, demoEpisode, emptyBlock, emptyEpisode, newLine, type Episode } from "../../../../shared/episode";
import { PAGE_SIZES, PANELS, pagesOf, renderPdf, type PaperNode } from "../../../../shared/exports/paper";
import { panelMatrix } from "../../../../shared/exports/paper/fold";
import { POCKET_SIZES, pocketListPaper, pocketListPdf } from "../../../../shared/exports/pocket-list";
import { DEFAULT_PACE } from "../../../../shared/speech";
import { fonts } from "../paper/kit";

const newId = countingIds("p-");
const options = { paper: "a4", units: "kg", date: "2027-03-04", pace: DEFAULT_PACE, fonts } as const;

function nodesIn(nodes: readonly PaperNode[]): PaperNode[] {
  return nodes.flatMap((node): PaperNode[] => {
    if (node.kind === "table") return [node, ...nodesIn(node.rows.flatMap(({ cells }) => cells.flat()))];
    return "children" in node ? [node, ...nodesIn(node.children)] : [node];
  });
}
const wordsOf = (episode: Episode, size = POCKET_SIZES[0]): string => nodesIn(pocketListPaper(episode, "kg", size).sections.flatMap(({ children }) => children))
  .flatMap((node) => (node.kind === "paragraph" ? [typeof node.text === "string" ? node.text : node.text.map(({ text }) => text).join("")] : node.kind === "heading" ? [node.text] : [])).join("\n");

describe("the pocket list", () => {
  it("holds a whole session on one folded sheet, A4 and Letter", async () => {
    for (const paper of ["a4", "letter"] as const) {
      const { bytes, notes } = await pocketListPdf.render(demoEpisode, { ...options, paper });
      const pdf = await PDFDocument.load(bytes);
      expect([pdf.getPageCount(), Math.round(pdf.getPage(0).getWidth())]).toEqual([1, Math.round(PAGE_SIZES[paper].width)]);
      expect(notes[0]).toContain("fold the upper half back");
    }
  });

  it("goes on to a second sheet when there is more, and says the same every time", async () => {
    const many = { ...demoEpisode, blocks: Array.from({ length: 20 }, (_, i) => ({ ...(demoEpisode.blocks[i % demoEpisode.blocks.length] ?? expect.fail("no block")), id: `b${i}` })) };
    const first = await pocketListPdf.render(many, options);
    expect((await PDFDocument.load(first.bytes)).getPageCount()).toBeGreaterThan(1);
    expect(Buffer.from((await pocketListPdf.render(many, options)).bytes).equals(Buffer.from(first.bytes))).toBe(true);
  });

  it("says for every mark how many steps away and how high, in every size", () => {
    for (const size of POCKET_SIZES) {
      const words = wordsOf(demoEpisode, size);
      expect(words).toContain("A side, full: 2.0 m 2½ steps, lens 0.7 m thigh");
      expect(words).toContain("15 s: knees over toes");
      expect(words).toContain("Then to B.");
    }
  });

  it("cries for a closing shot that nobody planned, and asks for one that is", () => {
    expect(wordsOf(demoEpisode)).toContain("CLOSING SHOT: none is planned.");
    const closing = emptyEpisode(newId, { blocks: [emptyBlock(newId, "closing", { lines: [newLine(newId, "shot", "Front, medium: goodbye")] })] });
    expect(wordsOf(closing)).toContain("Closing shot: in the box?");
  });

  it("survives an episode with nothing in it", async () => {
    expect((await pocketListPdf.render(emptyEpisode(newId), options)).bytes.length).toBeGreaterThan(1000);
  });

  it("puts together where nothing is filmed only in the tight sizes", () => {
    expect(wordsOf(demoEpisode, POCKET_SIZES[0])).not.toContain("nothing new");
    expect(wordsOf(demoEpisode, POCKET_SIZES[2])).toContain("Set 3, Set 4: nothing new");
  });
});

describe("a folded sheet", () => {
  const sheet = { width: 200, height: 300 };
  /** A point of small page `index`, from its lower left corner, on the sheet. */
  const at = (index: number, x: number, y: number): number[] => {
    const [a, b, c, d, e, f] = panelMatrix(index, sheet);
    return [a * x + c * y + e, b * x + d * y + f];
  };

  it("lies so that it reads like a booklet: 1 in front and 4 behind below, 2 and 3 inside upside down above", () => {
    expect([0, 1, 2, 3].map((index) => at(index, 0, 0))).toEqual([[100, 0], [200, 300], [100, 300], [0, 0]]);
    // The inner edge of facing pages 2 and 3 is the middle fold; so is that of 4 and 1.
    expect([at(1, 100, 0)[0], at(2, 0, 0)[0], at(3, 100, 0)[0], at(0, 0, 0)[0]]).toEqual([100, 100, 100, 100]);
  });

  it("has four small pages a sheet", async () => {
    const paper = pocketListPaper(demoEpisode);
    const small = await pagesOf(paper, options);
    const { bytes } = await renderPdf(paper, options);
    expect((await PDFDocument.load(bytes)).getPageCount()).toBe(Math.ceil(small / PANELS));
  });
});
