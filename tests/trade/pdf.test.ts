import { PDFArray, PDFDict, PDFDocument, PDFName, PDFNumber, PDFRawStream, PDFRef, decodePDFRawStream, type PDFObject } from "pdf-lib";
import { beforeAll, describe, expect, it } from "vitest";
import { countingIds, demoEpisode, emptyEpisode } from "../../shared/episode";
import { handoutPdf } from "../../shared/exports/handout";
import { renderPdf } from "../../shared/exports/paper";
import { DEFAULT_PACE } from "../../shared/speech";
import { A4, LETTER, everyNode, open, paperOf } from "../unit/exports/paper/kit";

/*
 * The files against ISO 32000-1:2008 (PDF 1.7) and ISO 14289-1:2014 (PDF/UA-1); clauses named beside each check.
 * What a viewer sees is read with a second, independent reader (pdfjs-dist); what it does not show is read from the objects.
 * The files claim no PDF/UA conformance: no validator has passed them.
 */

interface TreeNode { readonly role?: string; readonly type?: string; readonly alt?: string; readonly children?: readonly TreeNode[] }

let bytes: Uint8Array;
let doc: PDFDocument;
let reader: Awaited<ReturnType<typeof open>>;

beforeAll(async () => {
  bytes = (await renderPdf(paperOf(everyNode(), { title: "Rows & presses", sections: [{ startsPage: true, head: { left: "left", right: "right" }, children: everyNode() }] }), A4)).bytes;
  doc = await PDFDocument.load(bytes, { updateMetadata: false });
  reader = await open(bytes);
});

const get = (dict: PDFDict, key: string): PDFObject | undefined => dict.lookup(PDFName.of(key));
const dictOf = (dict: PDFDict, key: string): PDFDict => dict.lookup(PDFName.of(key), PDFDict);
const text = (object: PDFObject | undefined): string => (object && "decodeText" in object ? (object as { decodeText(): string }).decodeText() : String(object));

async function trees(): Promise<TreeNode[]> {
  const all: TreeNode[] = [];
  for (let p = 1; p <= reader.numPages; p++) all.push((await (await reader.getPage(p)).getStructTree()) as TreeNode);
  return all;
}
const rolesIn = (node: TreeNode): string[] => [node.role ?? "", ...(node.children ?? []).flatMap(rolesIn)].filter(Boolean);
const nodesOf = (node: TreeNode, role: string): TreeNode[] => [...(node.role === role ? [node] : []), ...(node.children ?? []).flatMap((child) => nodesOf(child, role))];

/** The drawing operators of a page. */
function contentOf(page: number): string {
  const stream = doc.getPage(page).node.Contents();
  const parts = stream instanceof PDFArray ? stream.asArray().map((ref) => doc.context.lookup(ref)) : [stream];
  return parts.map((part) => (part instanceof PDFRawStream ? new TextDecoder("latin1").decode(decodePDFRawStream(part).decode()) : "")).join("\n");
}

describe("page sizes", () => {
  // ISO 216: A4 is 210 x 297 mm; US Letter is 8.5 x 11 in; a point is 1/72 in (ISO 32000-1, 8.3.2.3).
  it.each([["A4", A4, 595.276, 841.89], ["Letter", LETTER, 612, 792]])("%s has its published size in points", async (_name, options, width, height) => {
    const pdf = await open((await renderPdf(paperOf([]), options)).bytes);
    const [x, y, w = 0, h = 0] = (await pdf.getPage(1)).view;
    expect([x, y]).toEqual([0, 0]);
    expect(w).toBeCloseTo(width, 2);
    expect(h).toBeCloseTo(height, 2);
  });
});

describe("ISO 14289-1:2014", () => {
  it("6.1: the header names a PDF 1.n with n from 0 to 7", () => {
    expect(new TextDecoder("latin1").decode(bytes.slice(0, 8))).toMatch(/^%PDF-1\.[0-7]$/);
  });

  it("6.2 and 7.1: the document says that it is marked, and Suspects is not true", async () => {
    const info = (await reader.getMarkInfo()) as { Marked: boolean; Suspects: boolean } | null;
    expect(info).toMatchObject({ Marked: true, Suspects: false });
  });

  it("5: it claims no conformance that no validator has checked", () => {
    const xmp = doc.catalog.lookup(PDFName.of("Metadata"));
    expect(xmp).toBeInstanceOf(PDFRawStream);
    expect(new TextDecoder().decode((xmp as PDFRawStream).contents)).not.toContain("pdfuaid");
  });

  it("7.1: the XMP stream carries dc:title, and the window shows it", async () => {
    const { metadata, info } = await reader.getMetadata();
    expect(metadata.get("dc:title")).toBe("Rows & presses");
    expect(info).toMatchObject({ Title: "Rows & presses" });
    expect(await reader.getViewerPreferences()).toMatchObject({ DisplayDocTitle: true });
  });

  it("7.1: everything drawn is tagged content or an artifact, and neither holds the other", () => {
    let drawn = 0;
    for (let p = 0; p < doc.getPageCount(); p++) {
      const open: string[] = [];
      for (const line of contentOf(p).split("\n")) {
        const begin = /^\/(\w+) (?:<<.*>> BDC|BMC)$/.exec(line.trim());
        if (begin) {
          const tag = begin[1] ?? "";
          // A Span inside content is allowed; an artifact stands alone.
          expect(tag === "Span" || open.length === 0, `${tag} inside ${open.join("/")}`).toBe(true);
          open.push(tag);
        } else if (/\bEMC$/.test(line.trim())) {
          open.pop();
        } else if (/(?:^|\s)(?:TJ|Tj|S|B|f)$/.test(line.trim())) {
          drawn++;
          expect(open.length, `untagged: ${line}`).toBeGreaterThan(0);
        }
      }
      expect(open).toEqual([]);
    }
    expect(drawn).toBeGreaterThan(60);
  });

  it("7.1 and ISO 32000-1, 14.7.4: every mark of every page has its element in the parent tree", () => {
    const tree = dictOf(dictOf(doc.catalog, "StructTreeRoot"), "ParentTree").lookup(PDFName.of("Nums"), PDFArray);
    const entries = new Map<number, PDFObject>();
    for (let i = 0; i < tree.size(); i += 2) entries.set(tree.lookup(i, PDFNumber).asNumber(), tree.lookup(i + 1) as PDFObject);
    for (let p = 0; p < doc.getPageCount(); p++) {
      const marks = entries.get(doc.getPage(p).node.lookup(PDFName.of("StructParents"), PDFNumber).asNumber());
      const ids = [...contentOf(p).matchAll(/\/MCID (\d+)/g)].map((found) => Number(found[1]));
      expect(ids).toEqual(ids.map((_, i) => i));
      expect(marks).toBeInstanceOf(PDFArray);
      expect((marks as PDFArray).size()).toBe(ids.length);
    }
  });

  it("7.2: the language is stated as en-GB", () => {
    expect(text(get(doc.catalog, "Lang"))).toBe("en-GB");
  });

  it("7.3: every figure has an alternate description", async () => {
    const figures = (await trees()).flatMap((tree) => nodesOf(tree, "Figure"));
    expect(figures.map((figure) => figure.alt)).toEqual(["Floor plan: mark A stands 2.9 m to the side, mark B 1.8 m behind."]);
  });

  it("7.4.2: headings begin with H1 and skip no level going down", async () => {
    const levels = (await trees()).flatMap(rolesIn).filter((role) => /^H\d$/.test(role)).map((role) => Number(role[1]));
    expect(levels[0]).toBe(1);
    levels.forEach((level, i) => expect(level - (levels[i - 1] ?? 1)).toBeLessThanOrEqual(1));
  });

  it("7.2 and 7.5: tables hold rows, rows hold cells, and header cells state their scope", async () => {
    const [table] = (await trees()).flatMap((tree) => nodesOf(tree, "Table"));
    expect(table?.children?.map((child) => child.role)).toEqual(["THead", "TBody"]);
    expect(nodesOf(table ?? {}, "TR").map((row) => row.children?.map((cell) => cell.role))).toEqual([["TH", "TH", "TH", "TH"], ["TH", "TD", "TD", "TD"]]);
    const scopes: string[] = [];
    for (const [, object] of doc.context.enumerateIndirectObjects()) {
      if (!(object instanceof PDFDict) || get(object, "S") !== PDFName.of("TH")) continue;
      scopes.push(String(get(dictOf(object, "A"), "Scope")));
    }
    expect(scopes).toEqual(["/Column", "/Column", "/Column", "/Column", "/Row"]);
  });

  it("7.6: lists hold items, items hold a label and a body", async () => {
    const lists = (await trees()).flatMap((tree) => nodesOf(tree, "L"));
    expect(lists).toHaveLength(2);
    for (const item of lists.flatMap((list) => list.children ?? [])) expect([item.role, ...(item.children ?? []).map((child) => child.role)]).toEqual(["LI", "Lbl", "LBody"]);
  });

  it("7.15 and 7.16: there is no XFA and no encryption", async () => {
    const form = dictOf(doc.catalog, "AcroForm");
    expect(get(form, "XFA")).toBeUndefined();
    expect(doc.isEncrypted).toBe(false);
  });

  it("7.18.1: every field has a name for screen readers, on the field and on its Form element", async () => {
    const widgets = await annotations();
    expect(widgets.map((widget) => widget.alternativeText)).toEqual(["Set 1 is filmed", "Reps, set 1", "Done", "Notes"]);
    const forms = (await trees()).flatMap((tree) => nodesOf(tree, "Form"));
    expect(forms.map((form) => form.alt)).toEqual(["Set 1 is filmed", "Reps, set 1", "Done", "Notes"]);
  });

  it("7.18.3: every page walks its fields in the order of the structure", () => {
    for (const page of doc.getPages()) expect(get(page.node, "Tabs")).toBe(PDFName.of("S"));
  });

  it("7.18.4: every widget stands in a Form element that points back at it", () => {
    const tree = dictOf(dictOf(doc.catalog, "StructTreeRoot"), "ParentTree").lookup(PDFName.of("Nums"), PDFArray);
    const at = new Map<number, PDFObject | undefined>();
    for (let i = 0; i < tree.size(); i += 2) at.set(tree.lookup(i, PDFNumber).asNumber(), tree.get(i + 1));
    const fields = dictOf(doc.catalog, "AcroForm").lookup(PDFName.of("Fields"), PDFArray);
    expect(fields.size()).toBe(4);
    for (let i = 0; i < fields.size(); i++) {
      const widget = fields.lookup(i, PDFDict);
      const ref = at.get(widget.lookup(PDFName.of("StructParent"), PDFNumber).asNumber());
      expect(ref).toBeInstanceOf(PDFRef);
      const element = doc.context.lookup(ref as PDFRef, PDFDict);
      expect(get(element, "S")).toBe(PDFName.of("Form"));
      const kid = element.lookup(PDFName.of("K"), PDFArray).lookup(0, PDFDict);
      expect(get(kid, "Type")).toBe(PDFName.of("OBJR"));
      expect(kid.get(PDFName.of("Obj"))).toBe(fields.get(i));
    }
  });

  it("7.21.4.1 and 7.21.7: every font a page draws with is embedded and maps to Unicode", () => {
    const used = new Set<PDFDict>();
    for (const page of doc.getPages()) {
      const fonts = dictOf(dictOf(page.node, "Resources"), "Font");
      for (const key of fonts.keys()) used.add(fonts.lookup(key, PDFDict));
    }
    expect(used.size).toBeGreaterThan(2);
    for (const font of used) {
      const descriptor = dictOf(font.lookup(PDFName.of("DescendantFonts"), PDFArray).lookup(0, PDFDict), "FontDescriptor");
      expect(get(descriptor, "FontFile2")).toBeDefined();
      expect(get(font, "ToUnicode")).toBeDefined();
      // ISO 32000-1, 9.6.4: a subset is named by six capitals and a plus sign.
      expect(String(get(font, "BaseFont"))).toMatch(/^\/[A-Z]{6}\+/);
    }
  });

  it("reads in the order a person reads: title, plan, marks, sets, boxes, notes", async () => {
    const roles = (await trees()).flatMap(rolesIn).filter((role) => ["H1", "Figure", "Table", "L", "H2", "H3", "Form"].includes(role));
    expect(roles.slice(0, 8)).toEqual(["H1", "Figure", "Table", "Form", "H2", "L", "L", "H3"]);
  });
});

describe("the viewer's handout against ISO 14289-1:2014", () => {
  it.each([["the demo", demoEpisode], ["an empty episode", emptyEpisode(countingIds("e-"))]])("7.4.2, 7.18.1: %s has headings in order and a name for every field", async (_name, episode) => {
    const pdf = await open((await handoutPdf.render(episode, { ...A4, units: "kg", pace: DEFAULT_PACE })).bytes);
    const levels: number[] = [];
    for (let p = 1; p <= pdf.numPages; p++) {
      const page = await pdf.getPage(p);
      levels.push(...rolesIn((await page.getStructTree()) as TreeNode).filter((role) => /^H\d$/.test(role)).map((role) => Number(role[1])));
      for (const widget of (await page.getAnnotations()) as Widget[]) expect(widget.alternativeText.trim().length).toBeGreaterThan(3);
    }
    expect(levels[0]).toBe(1);
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    levels.forEach((level, i) => expect(level - (levels[i - 1] ?? 1)).toBeLessThanOrEqual(1));
  });
});

interface Widget { readonly fieldName: string; readonly fieldType: string; readonly alternativeText: string; readonly multiLine?: boolean; readonly checkBox?: boolean }
async function annotations(): Promise<Widget[]> {
  const all: Widget[] = [];
  for (let p = 1; p <= reader.numPages; p++) all.push(...((await (await reader.getPage(p)).getAnnotations()) as Widget[]));
  return all;
}

describe("ISO 32000-1, 12.7: the form", () => {
  it("has text fields and tick boxes of unique names without a full stop", async () => {
    const widgets = await annotations();
    const names = widgets.map((widget) => widget.fieldName);
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) expect(name).not.toContain(".");
    expect(widgets.map((widget) => [widget.fieldType, widget.checkBox ?? false, widget.multiLine ?? false])).toEqual([["Btn", true, false], ["Tx", false, false], ["Btn", true, false], ["Tx", false, true]]);
  });

  it("can be filled in by another program and keeps what was written", async () => {
    const copy = await PDFDocument.load(bytes);
    copy.getForm().getTextField("notes").setText("Felt light. Next time 24 kg.");
    copy.getForm().getCheckBox("done").check();
    const again = await PDFDocument.load(await copy.save());
    expect(again.getForm().getTextField("notes").getText()).toBe("Felt light. Next time 24 kg.");
    expect(again.getForm().getCheckBox("done").isChecked()).toBe(true);
  });
});
