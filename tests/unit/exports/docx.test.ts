import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { join } from "node:path";
import { buildSync } from "esbuild";
import fc from "fast-check";
import { strFromU8, unzipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { DOCX_NOTES, box, columns, drawing, field, fieldRow, heading, keepTogether, keyValues, list, pageBreak, paragraph, renderDocx, rule, spacer, table, tickRow, type Paper, type PaperNode, type Section } from "../../../shared/exports/paper";

const DAY = { paper: "a4", date: "2027-03-04" } as const;
const paper = (children: readonly PaperNode[], more: Partial<Section> = {}, foot = "Foot"): Paper => ({
  title: "Title <&\">", author: "Coach", subject: "Subject", language: "en-GB", foot,
  sections: [{ startsPage: true, head: { left: "Left", right: "Right" }, children, ...more }],
});

const tick = (label: string, log = true): PaperNode =>
  tickRow({ label, under: "20 kg", title: "A, side", text: [paragraph("See the arm")], log: log ? [[{ blank: 34 }, "kg", { blank: 34 }, "reps"]] : [], field: { name: label, tip: `${label} filmed` } });
const plan = drawing({
  width: 200, height: 100, alt: "A at the side", frame: true,
  shapes: [
    { shape: "rect", x: 10, y: 10, w: 20, h: 40, fill: "light" }, { shape: "line", from: [0, 90], to: [80, 20], dash: [3, 3] }, { shape: "line", from: [0, 0], to: [0, 50] },
    { shape: "circle", x: 50, y: 50, r: 11, fill: "black" }, { shape: "text", x: 50, y: 54, text: "A & <B>", size: 12, anchor: "middle", white: true, weight: "bold" },
    { shape: "text", x: 199, y: 5, text: "at the edge", size: 9 }, { shape: "text", x: 3, y: 99, text: "end", size: 9, anchor: "end" },
    { shape: "polyline", points: [[0, 0], [10, 10], [20, 0]], closed: true, fill: "white", grey: true, width: 0 }, { shape: "polyline", points: [[1, 1]] },
  ],
});

/** One of each node, and the ways they stand next to each other. */
const everything: readonly PaperNode[] = [
  heading(1, "One"), heading(2, "Two"), heading(3, "Three", { size: 14 }),
  paragraph([{ text: "½ × – é ł ", weight: "bold" }, { text: "<&\">", italic: true, grey: true, size: 9 }], { align: "centre", keepWithNext: true, after: 0 }),
  paragraph(""), list(["a", [{ text: "b" }]]), list(["one"], { ordered: true }), list(["again"], { ordered: true }), list([]),
  table({ summary: "t", columns: [{ width: 1, head: "h" }, { width: 3, head: "", align: "right" }], rows: [{ cells: [[paragraph("x")], []] }, { cells: [] }], rowHead: 0, valign: "middle" }),
  table({ summary: "no head", columns: [{ width: 0, head: "" }], rows: [], rowHead: null }),
  tick("Set 1"), tick("Set 2", false), box("outline", [paragraph("in a box")]), box("bar", []), keyValues([{ key: "k", value: "v" }]), keyValues([]),
  rule("heavy"), rule(), spacer(0), field({ type: "text", name: "f", tip: "f", width: null, height: 30 }), field({ type: "tick", name: "g", tip: "g", width: 14, height: 14 }),
  fieldRow([1, 2, 3].map((n) => field({ type: n === 2 ? "tick" : "text", name: `r${n}`, tip: "r", width: 300, height: 20 }))), fieldRow([]),
  plan, columns([{ width: 1, children: [plan] }, { width: 2, children: [] }]), columns([]), pageBreak(), keepTogether([heading(2, "Kept"), paragraph("with this"), tick("Set 3"), keyValues([{ key: "k", value: "v" }])]), keepTogether([]),
];

async function partsOf(of: Paper, options: { readonly paper: "a4" | "letter"; readonly date: string } = DAY): Promise<Record<string, string>> {
  const { bytes } = await renderDocx(of, options);
  return Object.fromEntries(Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]));
}
const bodyOf = async (of: Paper): Promise<string> => (await partsOf(of))["word/document.xml"] ?? "";

/** Names of elements left open or closed wrongly, and bare ampersands: empty when the text is well-formed enough to be read. */
function faultsIn(xml: string): string[] {
  const open: string[] = [];
  const faults: string[] = [];
  for (const [tag = "", close = "", name = "", self = ""] of xml.matchAll(/<(\/?)([A-Za-z][\w:.-]*)(?:\s+[\w:.-]+="[^"<]*")*\s*(\/?)>/g)) {
    if (close) {
      if (open.pop() !== name) faults.push(tag);
    } else if (!self) open.push(name);
  }
  const rest = xml.replace(/<\?xml[^>]*\?>/, "").replace(/<\/?[A-Za-z][\w:.-]*(?:\s+[\w:.-]+="[^"<]*")*\s*\/?>/g, "");
  if (/[<>]/.test(rest)) faults.push("stray bracket");
  if (/&(?!amp;|lt;|gt;|quot;|apos;|#\d+;|#x[\da-f]+;)/i.test(xml)) faults.push("bare ampersand");
  return [...faults, ...open];
}

describe("renderDocx", () => {
  it("gives the same bytes for the same tree, also after another document", async () => {
    const first = await renderDocx(paper(everything), DAY);
    await renderDocx(paper([plan, plan, tick("x"), list(["a"], { ordered: true })]), DAY);
    const second = await renderDocx(paper(everything), DAY);
    expect(Buffer.compare(Buffer.from(first.bytes), Buffer.from(second.bytes))).toBe(0);
  });

  it("gives the same bytes in another process and another time zone", () => {
    const root = join(import.meta.dirname, "../../..");
    // Beside the modules, so that the bundle finds the packages it leaves out.
    const folder = mkdtempSync(join(root, "node_modules/.docx-test-"));
    try {
      const script = `
        import { createHash } from "node:crypto";
        import { demoEpisode } from "./shared/episode";
        import { renderDocx } from "./shared/exports/paper";
        import { shotListPaper } from "./shared/exports/shot-list";
        const { bytes } = await renderDocx(shotListPaper(demoEpisode), { paper: "letter", date: "2027-03-04" });
        console.log(createHash("sha256").update(bytes).digest("hex"));`;
      buildSync({ stdin: { contents: script, resolveDir: root, loader: "ts" }, bundle: true, packages: "external", platform: "node", format: "esm", outfile: join(folder, "hash.mjs") });
      const hashIn = (zone: string) => execFileSync(process.execPath, [join(folder, "hash.mjs")], { env: { ...process.env, TZ: zone }, encoding: "utf8" }).trim();
      const hash = hashIn("Pacific/Auckland");
      expect(hash).toMatch(/^[0-9a-f]{64}$/);
      expect(hashIn("America/Los_Angeles")).toBe(hash);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  it("leaves out what XML cannot hold", async () => {
    const xml = await bodyOf(paper([paragraph("be\u0001fore\ufffe after")]));
    expect(xml).toContain("before after");
  });

  it("writes the date it is given, the title and the author", async () => {
    const core = (await partsOf(paper([])))["docProps/core.xml"] ?? "";
    expect(core.match(/2027-03-04T00:00:00Z/g)).toHaveLength(2);
    expect(core).toContain("<dc:title>Title &lt;&amp;&quot;&gt;</dc:title>");
    expect(core).toContain("<dc:creator>Coach</dc:creator>");
    expect(core).not.toContain("Un-named");
  });

  it("keeps a date and time as it is", async () => {
    const core = (await partsOf(paper([]), { paper: "a4", date: "2027-03-04T10:00:00Z" }))["docProps/core.xml"] ?? "";
    expect(core.match(/2027-03-04T10:00:00Z/g)).toHaveLength(2);
  });

  it("puts the list of content types first in the package, and stamps every entry 1980", async () => {
    const { bytes } = await renderDocx(paper(everything), DAY);
    const zip = Buffer.from(bytes);
    const entries: { stamp: number; name: string }[] = [];
    // Local file header of the zip format: signature, stamp at 10, length of the name at 26, the name at 30.
    for (let at = zip.indexOf("PK\u0003\u0004"); at >= 0; at = zip.indexOf("PK\u0003\u0004", at + 4)) {
      entries.push({ stamp: zip.readUInt32LE(at + 10), name: zip.toString("utf8", at + 30, at + 30 + zip.readUInt16LE(at + 26)) });
    }
    expect(entries.length).toBeGreaterThan(10);
    expect(entries[0]?.name).toBe("[Content_Types].xml");
    // MS-DOS date 1980-01-01, time 00:00: day 1 in bits 16-20, month 1 in bits 21-24.
    expect(new Set(entries.map(({ stamp }) => stamp))).toEqual(new Set([(1 << 21) | (1 << 16)]));
  });

  it("writes every kind of node as well-formed parts", async () => {
    const parts = await partsOf(paper(everything));
    for (const [name, xml] of Object.entries(parts)) expect({ name, faults: faultsIn(xml) }).toEqual({ name, faults: [] });
    expect(faultsIn("<a><b></a>")).not.toEqual([]);
  });

  it("gives paragraphs of one style its name alone, and says only where one differs", async () => {
    const parts = await partsOf(paper([
      paragraph("first", { style: "Spoken words", size: 17, after: 0 }), paragraph([{ text: "second " }, { text: "lean", weight: "bold" }], { style: "Spoken words", size: 17, after: 0 }),
      paragraph("third", { style: "Spoken words", size: 19, after: 2 }),
    ]));
    expect(parts["word/styles.xml"]).toMatch(/w:styleId="Spokenwords"><w:name w:val="Spoken words"\/>(?:(?!<\/w:style>).)*<w:sz w:val="34"\/>/);
    const [first = "", second = "", third = ""] = [...(parts["word/document.xml"] ?? "").matchAll(/<w:p>(?:(?!<\/w:p>).)*<\/w:p>/g)].map(([xml]) => xml);
    for (const one of [first, second, third]) expect(one).toContain('<w:pStyle w:val="Spokenwords"/>');
    expect(first).not.toMatch(/<w:sz |<w:spacing|<w:b[ /]|<w:rPr>/);
    expect(second).not.toMatch(/<w:sz |<w:spacing/);
    expect(second.match(/<w:b\/>/g)).toHaveLength(1);
    expect(third).toMatch(/<w:spacing(?=[^>]*w:after="40")[^>]*\/>.*<w:sz w:val="38"\/>/);
  });

  it("tells screen readers what a table is", async () => {
    const xml = await bodyOf(paper([table({ summary: "Marks & heights", columns: [{ width: 1, head: "a" }], rows: [{ cells: [[paragraph("1")]] }], rowHead: null })]));
    expect(xml).toMatch(/<w:tblLook [^>]*\/><w:tblDescription w:val="Marks &amp; heights"\/><\/w:tblPr>/);
  });

  it("never lets two tables touch, and ends every cell in a paragraph", async () => {
    const xml = await bodyOf(paper(everything));
    expect(xml).not.toContain("</w:tbl><w:tbl>");
    expect(xml).not.toContain("</w:tbl></w:tc>");
    expect(xml).not.toMatch(/<\/w:tcPr><\/w:tc>/);
  });

  it("gives headings their style and level", async () => {
    const parts = await partsOf(paper([heading(1, "One"), heading(2, "Two"), heading(3, "Three")]));
    expect([...(parts["word/document.xml"] ?? "").matchAll(/<w:pStyle w:val="(Heading\d)"/g)].map(([, style]) => style)).toEqual(["Heading1", "Heading2", "Heading3"]);
    for (const level of [1, 2, 3]) expect(parts["word/styles.xml"]).toMatch(new RegExp(`w:styleId="Heading${level}"(?:(?!</w:style>).)*<w:outlineLvl w:val="${level - 1}"/>`));
    expect(parts["word/styles.xml"]).toContain('<w:lang w:val="en-GB"/>');
  });

  it("repeats table heads, keeps rows whole, and gives widths twice that add up", async () => {
    const xml = await bodyOf(paper([table({ summary: "t", columns: [{ width: 1, head: "a" }, { width: 2, head: "b" }], rows: [{ cells: [[paragraph("1")], [paragraph("2")]] }], rowHead: null })]));
    expect(xml.match(/<w:tblHeader\/>/g)).toHaveLength(1);
    expect(xml.match(/<w:cantSplit\/>/g)).toHaveLength(2);
    expect(xml).toContain('<w:tblLayout w:type="fixed"/>');
    const whole = Number(/<w:tblW w:type="dxa" w:w="(\d+)"/.exec(xml)?.[1]);
    const grid = [...xml.matchAll(/<w:gridCol w:w="(\d+)"/g)].map(([, width]) => Number(width));
    const cells = [...xml.matchAll(/<w:tcW w:type="dxa" w:w="(\d+)"/g)].map(([, width]) => Number(width));
    expect(Math.abs(grid.reduce((sum, width) => sum + width, 0) - whole)).toBeLessThanOrEqual(1);
    expect(cells).toEqual([...grid, ...grid]);
  });

  it("makes one table of tick rows that follow each other, each with a box to press", async () => {
    const xml = await bodyOf(paper([tick("Set 1"), tick("Set 2"), tick("Insert", false)]));
    expect(xml.match(/<w:tbl>/g)).toHaveLength(1);
    expect(xml.match(/<w14:checkbox>/g)).toHaveLength(3);
    expect(xml.match(/<w:t>\u2610<\/w:t>/g)).toHaveLength(3);
    expect(xml).not.toContain("<w:sym");
    expect(xml).toContain('<w:alias w:val="Set 2 filmed"/>');
  });

  it("numbers each ordered list from 1", async () => {
    const xml = await bodyOf(paper([list(["a", "b"], { ordered: true }), list(["c"], { ordered: true })]));
    const used = [...xml.matchAll(/<w:numId w:val="(\d+)"/g)].map(([, id]) => id);
    expect(used[0]).toBe(used[1]);
    expect(used[2]).not.toBe(used[0]);
  });

  it("keeps a group with itself but not with what follows", async () => {
    const xml = await bodyOf(paper([keepTogether([paragraph("first"), paragraph("second"), paragraph("third")]), paragraph("after")]));
    const kept = [...xml.matchAll(/<w:p>(.*?)<\/w:p>/g)].map(([, inner = ""]) => /<w:keepNext(?: w:val="(?:true|1)")?\/>/.test(inner));
    expect(kept.slice(0, 4)).toEqual([true, true, false, false]);
  });

  it("draws vectors with their description and numbers them in each part", async () => {
    const xml = await bodyOf(paper([plan, plan]));
    expect(xml.match(/descr="A at the side"/g)).toHaveLength(2);
    const ids = [...xml.matchAll(/<(?:wp:docPr|wps:cNvPr) id="(\d+)"/g)].map(([, id]) => Number(id));
    expect(ids).toEqual(ids.map((_, at) => at + 1));
    expect(xml).toContain("A &amp; &lt;B&gt;");
    expect(xml).not.toContain("<pic:pic");
  });

  it("sets sheet, head and foot of each section", async () => {
    const two: Paper = { ...paper([paragraph("a")]), sections: [...paper([paragraph("a")]).sections, { startsPage: false, head: null, children: [] }, { startsPage: true, head: { left: "Other", right: "" }, children: [paragraph("b")] }] };
    const a4 = await partsOf(two);
    const letter = await partsOf(two, { paper: "letter", date: "2027-03-04" });
    // ISO 216 A4 is 210 x 297 mm = 11906 x 16838 twips; US Letter 8.5 x 11 in = 12240 x 15840 twips.
    expect(a4["word/document.xml"]).toMatch(/<w:pgSz w:w="11906" w:h="16838"/);
    expect(letter["word/document.xml"]).toMatch(/<w:pgSz w:w="12240" w:h="15840"/);
    expect([...(a4["word/document.xml"] ?? "").matchAll(/<w:type w:val="(\w+)"/g)].map(([, type]) => type)).toEqual(["nextPage", "continuous", "nextPage"]);
    const heads = Object.keys(a4).filter((name) => /^word\/header\d/.test(name)).map((name) => a4[name] ?? "");
    expect(heads).toHaveLength(3);
    expect(heads.filter((xml) => xml.includes("<w:tbl>"))).toHaveLength(2);
    const foot = a4["word/footer1.xml"] ?? "";
    expect(foot).toMatch(/PAGE<\/w:instrText>.*NUMPAGES<\/w:instrText>/);
  });

  it("writes a paper without sections as one empty page", async () => {
    expect(faultsIn(await bodyOf({ ...paper([]), sections: [] }))).toEqual([]);
  });

  it("says that the typeface is named but not inside, and names what may stand in", async () => {
    const { notes } = await renderDocx(paper([]), DAY);
    expect(notes).toEqual(DOCX_NOTES);
    expect((await partsOf(paper([])))["word/fontTable.xml"]).toContain('<w:font w:name="Atkinson Hyperlegible Next"><w:altName w:val="Verdana"/>');
  });

  it("stays well-formed whatever the words", async () => {
    await fc.assert(fc.asyncProperty(fc.string({ unit: "grapheme", maxLength: 40 }), async (words) => {
      const line = words.replace(/[\p{Cc}\p{Cs}\ufffe\uffff]/gu, "");
      const parts = await partsOf({ ...paper([heading(1, line), paragraph(line), list([line]), tick(line), keyValues([{ key: line, value: line }])], { head: { left: line, right: line } }, line), title: line, author: line });
      for (const xml of Object.values(parts)) expect(faultsIn(xml)).toEqual([]);
    }), { numRuns: 15 });
  });
});
