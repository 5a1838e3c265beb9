import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { join } from "node:path";
import { createHash } from "node:crypto";
import { buildSync } from "esbuild";
import { describe, expect, it } from "vitest";
import { fieldRow, field, heading, list, paragraph, renderPdf, table, type PaperNode } from "../../../../shared/exports/paper";
import { A4, LETTER, everyNode, open, pageTexts, paperOf } from "./kit";

const digest = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex");
const long = Array.from({ length: 60 }, (_, i) => `word${i}`).join(" ");

/** Text with its place on the page, in points from the lower left corner. */
async function placed(bytes: Uint8Array, page: number) {
  const content = await (await (await open(bytes)).getPage(page)).getTextContent();
  return content.items.flatMap((item) => ("str" in item && item.str.trim() !== "" ? [{ text: item.str, x: Number(item.transform[4]), y: Number(item.transform[5]), width: item.width }] : []));
}

describe("drawing a paper as PDF", () => {
  it("gives the same bytes twice in one process", async () => {
    const paper = paperOf(everyNode());
    expect(digest((await renderPdf(paper, A4)).bytes)).toBe(digest((await renderPdf(paper, A4)).bytes));
  });

  it("gives the same bytes in another process", async () => {
    // Inside node_modules, so that the bundle finds the libraries left out of it.
    const folder = mkdtempSync(join(process.cwd(), "node_modules", ".pdf-test-"));
    try {
      const script = `
        import { createHash } from "node:crypto";
        import { renderPdf } from "./shared/exports/paper";
        import { A4, everyNode, paperOf } from "./tests/unit/exports/paper/kit";
        const { bytes } = await renderPdf(paperOf(everyNode()), A4);
        console.log(createHash("sha256").update(bytes).digest("hex"));`;
      buildSync({ stdin: { contents: script, resolveDir: process.cwd(), loader: "ts" }, bundle: true, platform: "node", format: "esm", packages: "external", outfile: join(folder, "run.mjs") });
      const other = execFileSync(process.execPath, [join(folder, "run.mjs")], { encoding: "utf8" }).trim();
      expect(other).toBe(digest((await renderPdf(paperOf(everyNode()), A4)).bytes));
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  it("changes the bytes with the date and with nothing else of the day", async () => {
    const paper = paperOf([paragraph("Row")]);
    const [one, other] = await Promise.all([renderPdf(paper, A4), renderPdf(paper, { ...A4, date: "2027-03-05" })]);
    expect(digest(one.bytes)).not.toBe(digest(other.bytes));
  });

  it("sets a paper tighter when that saves a last page with little on it, and only then", async () => {
    const pages = async (loose: number, tight: number) => (await pageTexts((await renderPdf(paperOf(Array.from({ length: loose }, () => paragraph("row"))), A4, () => paperOf(Array.from({ length: tight }, () => paragraph("tight"))))).bytes)).map((text) => text.split(" ")[0]);
    expect(await pages(42, 34)).toEqual(["tight"]);
    expect(await pages(42, 42)).toEqual(["row", "row"]);
    expect(await pages(62, 34)).toEqual(["row", "row"]);
    expect(await pages(20, 10)).toEqual(["row"]);
  });

  it("numbers every page and repeats the foot", async () => {
    const { bytes } = await renderPdf(paperOf(Array.from({ length: 30 }, () => paragraph(long))), A4);
    const texts = await pageTexts(bytes);
    expect(texts.length).toBeGreaterThan(1);
    texts.forEach((text, i) => {
      expect(text).toContain(`${i + 1} / ${texts.length}`);
      expect(text).toContain("Ask before filming.");
    });
  });

  it.each([["A4", A4], ["Letter", LETTER]])("keeps all text inside margins of 13 mm and clear of the foot on %s", async (_name, options) => {
    const nodes: PaperNode[] = [...everyNode(), ...Array.from({ length: 20 }, () => paragraph(long)), paragraph("x".repeat(900))];
    const { bytes } = await renderPdf(paperOf(nodes, { foot: "The foot of the page." }), options);
    const pdf = await open(bytes);
    const margin = (13 * 72) / 25.4;
    for (let p = 1; p <= pdf.numPages; p++) {
      const [, , width = 0, height = 0] = (await pdf.getPage(p)).view;
      const items = await placed(bytes, p);
      const foot = items.find((item) => item.text.startsWith("The foot"));
      for (const item of items) {
        expect(item.x).toBeGreaterThanOrEqual(margin);
        expect(item.x + item.width).toBeLessThanOrEqual(width - margin);
        expect(item.y).toBeGreaterThanOrEqual(margin);
        expect(item.y).toBeLessThanOrEqual(height - margin);
        if (foot && item.y !== foot.y) expect(item.y).toBeGreaterThan(foot.y + 12);
      }
    }
  });

  it("repeats the head of a table on each of its pages and splits no row", async () => {
    const rows = Array.from({ length: 40 }, (_, i) => ({ cells: [[paragraph(`row${i} begins`), paragraph("middle"), paragraph(`row${i} ends`)], [paragraph("x")]] }));
    const { bytes } = await renderPdf(paperOf([table({ summary: "Rows", rowHead: 0, columns: [{ width: 1, head: "Exercise" }, { width: 1, head: "Sets" }], rows })]), A4);
    const texts = await pageTexts(bytes);
    expect(texts.length).toBeGreaterThan(2);
    for (const text of texts) expect(text).toContain("Exercise");
    for (let i = 0; i < 40; i++) {
      const page = texts.findIndex((text) => text.includes(`row${i} begins`));
      expect(texts[page]).toContain(`row${i} ends`);
    }
  });

  it("draws all of a row that is taller than a page", async () => {
    const tall = Array.from({ length: 120 }, (_, i) => paragraph(`line${i}.`));
    const { bytes } = await renderPdf(paperOf([table({ summary: "Tall", rowHead: null, columns: [{ width: 1, head: "A" }], rows: [{ cells: [tall] }] })]), LETTER);
    const all = (await pageTexts(bytes)).join(" ");
    for (let i = 0; i < 120; i++) expect(all).toContain(`line${i}.`);
  });

  it("keeps a heading with the first two lines of its text wherever it falls", async () => {
    for (let lines = 44; lines < 54; lines++) {
      const nodes = [...Array.from({ length: lines }, () => paragraph("filler", { after: 0 })), heading(1, "Title here"), paragraph(long)];
      const pages = await pageTexts((await renderPdf(paperOf(nodes), A4)).bytes);
      const page = pages.find((text) => text.includes("Title here")) ?? "";
      expect(page).toContain("word0");
      expect(page).toMatch(/word1[0-9]/);
    }
  });

  it("prints characters of the text face and of the fallback, and keeps them readable", async () => {
    const said = "½ × – é ł ż ő – Ω ж ≥ 30°";
    const { bytes, notes } = await renderPdf(paperOf([paragraph(said)]), A4);
    expect(notes).toEqual([]);
    expect((await pageTexts(bytes)).join(" ").replace(/\s/g, "")).toContain(said.replace(/\s/g, ""));
  });

  it("prints a square for a character no font has, and names it in a note", async () => {
    const { bytes, notes } = await renderPdf(paperOf([paragraph("squat 深蹲 and 💪🏽 done")]), A4);
    expect(notes).toEqual([expect.stringMatching(/深 \(U\+6DF1\), 蹲 \(U\+8E72\), 💪🏽 \(U\+1F4AA\)/)]);
    expect((await pageTexts(bytes))[0]).toMatch(/squat .*and .*done/);
  });

  it("folds letters and accents that came apart, and drops invisible joiners", async () => {
    const { bytes, notes } = await renderPdf(paperOf([paragraph("cafe\u0301 soft\u00adly \u200bgo\ufeff")]), A4);
    expect(notes).toEqual([]);
    expect((await pageTexts(bytes))[0]).toContain("café");
  });

  it("refuses two fields of one name, which would share one value", async () => {
    const twice = field({ type: "text", name: "kg", tip: "Your kg", width: 40, height: 20 });
    await expect(renderPdf(paperOf([fieldRow([twice, twice])]), A4)).rejects.toThrow('Form.add: the field name "kg" is used twice');
  });

  it("refuses a field name with a full stop", async () => {
    await expect(renderPdf(paperOf([field({ type: "text", name: "a.b", tip: "A", width: 40, height: 20 })]), A4)).rejects.toThrow('Form.add: the field name "a.b" may hold letters, digits, - and _');
  });

  it("draws an empty paper as one page", async () => {
    expect(await pageTexts((await renderPdf(paperOf([]), A4)).bytes)).toHaveLength(1);
    expect(await pageTexts((await renderPdf(paperOf([], { sections: [] }), A4)).bytes)).toHaveLength(1);
  });

  it("gives each section its own running head, and lets one go on where the last ended", async () => {
    const section = (text: string, startsPage: boolean, left: string) => ({ startsPage, head: { left, right: "right" }, children: [paragraph(text)] });
    const { bytes } = await renderPdf(paperOf([], { sections: [section("one", true, "first head"), section("two", false, "unused"), section("three", true, "third head")] }), A4);
    const texts = await pageTexts(bytes);
    expect(texts).toHaveLength(2);
    expect(texts[0]).toMatch(/first head .*one.*two/);
    expect(texts[1]).toMatch(/third head .*three/);
  });

  it("lists its headings beside the pages, nested as they are, each leading to its page", async () => {
    const nodes = [heading(1, "Plan"), heading(2, "Warm-up"), heading(3, "Circles"), paragraph("x"), heading(2, "Row"), { kind: "pageBreak" } as const, heading(1, "Notes"), paragraph("x")];
    const pdf = await open((await renderPdf(paperOf(nodes), A4)).bytes);
    const outline = await pdf.getOutline();
    type Item = { title: string; items: Item[] };
    const shape = (items: readonly Item[]): unknown[] => items.map((item) => [item.title, shape(item.items)]);
    expect(shape(outline as Item[])).toEqual([["Plan", [["Warm-up", [["Circles", []]]], ["Row", []]]], ["Notes", []]]);
    const dest = outline.at(-1)?.dest;
    expect(Array.isArray(dest) ? await pdf.getPageIndex(dest[0]) : null).toBe(1);
  });

  it("wraps a list below its own words, not below the bullet", async () => {
    const { bytes } = await renderPdf(paperOf([list([long])]), A4);
    const items = await placed(bytes, 1);
    const [bullet, first, second] = items;
    expect(bullet?.text).toBe("•");
    expect(first?.x).toBeCloseTo(second?.x ?? 0, 1);
  });
});
