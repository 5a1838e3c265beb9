import { PDFDocument } from "pdf-lib";
import type { ExportOptions, PaperSize, Rendered } from "../types";
import { FontBook } from "./fonts";
import { paintFolds, PANEL_MARGIN, PANELS, panelMatrix, panelSize, type Margins } from "./fold";
import { Form } from "./form";
import { layout } from "./layout";
import { Outline } from "./outline";
import { Pen } from "./pen";
import { paginate, stack, type Piece } from "./pieces";
import { Tagger, name } from "./tagger";
import { SIZES, type Paper, type RunningHead } from "./tree";
import { lines } from "./typeset";

const MM = 72 / 25.4;
/** Points. @source ISO 216 (A4, 210 x 297 mm); US Letter, 8.5 x 11 in */
export const PAGE_SIZES: Readonly<Record<PaperSize, { readonly width: number; readonly height: number }>> = {
  a4: { width: 210 * MM, height: 297 * MM },
  letter: { width: 612, height: 792 },
};
/** 14.8 mm at the sides, 13.4 mm above and below: every home printer reaches that far. */
export const MARGIN = { side: 42, top: 38, bottom: 38 } as const;

const FOOT_LEADING = 1.3;
/** A foot longer than this is cut; the document says the same in full at its beginning. */
const FOOT_LINES = 3;
const HEAD_ROOM = 30;
const PAGE_NUMBER_WIDTH = 60;
/** Most of the running head that its right side may take. */
const HEAD_RIGHT = 0.62;
/** A last page with less on it than this share is worth setting the paper tighter for. */
const SPARSE = 0.4;

/** One page as planned: what stands on it and under which running head. */
interface Sheet {
  readonly head: RunningHead | null;
  readonly parts: { readonly pieces: readonly Piece[]; readonly top: number }[];
  end: number;
}

/**
 * Draws a paper as a tagged PDF (ISO 32000-1) with embedded fonts, a form and one page number a page.
 * Same paper and options, same bytes. It follows the clauses of ISO 14289-1 named in the code but claims no conformance.
 *
 * @param tighter - the same paper set tighter, taken when that saves a last page with little on it
 * @returns the file, and a note naming the characters that no font has
 */
export async function renderPdf(paper: Paper, options: PdfOptions, tighter?: () => Paper): Promise<Rendered> {
  const roomy = await plan(paper, options);
  if (!tighter || roomy.pages < 2 || roomy.lastPage >= SPARSE) return roomy.draw();
  const tight = await plan(tighter(), options);
  return tight.pages < roomy.pages ? tight.draw() : roomy.draw();
}

/** How many pages a paper takes; nothing is drawn. */
export async function pagesOf(paper: Paper, options: PdfOptions): Promise<number> {
  return (await plan(paper, options)).pages;
}

type PdfOptions = Pick<ExportOptions, "paper" | "fonts" | "date">;

interface Plan {
  readonly pages: number;
  /** How full the last page is, 0 to 1. */
  readonly lastPage: number;
  readonly draw: () => Promise<Rendered>;
}

/** Cuts a paper into pages; nothing is drawn yet. */
async function plan(paper: Paper, options: PdfOptions): Promise<Plan> {
  const doc = await PDFDocument.create({ updateMetadata: false });
  const sheetSize = PAGE_SIZES[options.paper];
  const size = paper.folded ? panelSize(sheetSize) : sheetSize;
  const margin: Margins = paper.folded ? PANEL_MARGIN : MARGIN;
  const width = size.width - 2 * margin.side;
  const fonts = await FontBook.load(doc, options.fonts, paper);
  const tagger = new Tagger(doc);
  const form = new Form(doc, tagger);
  const outline = new Outline(doc);

  const foot = lines(paper.foot, width - PAGE_NUMBER_WIDTH, { size: SIZES.foot, grey: true }, fonts).slice(0, FOOT_LINES);
  const footTop = size.height - margin.bottom - Math.max(1, foot.length) * SIZES.foot * FOOT_LEADING;
  const bottom = footTop - 12;
  const topOf = (head: RunningHead | null) => margin.top + (head ? HEAD_ROOM : 0);

  const sheets: Sheet[] = [];
  for (const section of paper.sections) {
    const top = topOf(section.head);
    const pieces = layout(section.children, width, tagger.document, { fonts, form, outline, page: bottom - top });
    const open = section.startsPage ? undefined : sheets.at(-1);
    const pages = paginate(pieces, bottom - top, open ? Math.min(bottom - open.end, bottom - top - 0.001) : bottom - top);
    pages.forEach((page, i) => {
      const height = stack(page).height;
      if (i === 0 && open) {
        const before = page[0]?.before ?? 0;
        open.parts.push({ pieces: page, top: open.end + before });
        open.end += before + height;
      } else {
        sheets.push({ head: section.head, parts: [{ pieces: page, top }], end: top + height });
      }
    });
  }
  if (sheets.length === 0) sheets.push({ head: null, parts: [], end: margin.top });

  const last = sheets.at(-1);
  const lastPage = last ? (last.end - topOf(last.head)) / (bottom - topOf(last.head)) : 0;
  const draw = async (): Promise<Rendered> => {
    const newPage = () => {
      const page = doc.addPage([sheetSize.width, sheetSize.height]);
      tagger.addPage(page);
      return page;
    };
    const paint = (pen: Pen, sheet: Sheet, i: number): void => {
      if (sheet.head) paintHead(pen, sheet.head, width, margin, fonts);
      for (const part of sheet.parts) {
        const { tops } = stack(part.pieces);
        part.pieces.forEach((piece, p) => piece.paint(pen, margin.side, part.top + (tops[p] ?? 0)));
      }
      pen.artifact(() => {
        const line = (l: number) => footTop + (l + 0.5) * SIZES.foot * FOOT_LEADING + SIZES.foot * 0.33;
        foot.forEach((text, l) => pen.text(text, margin.side, line(l)));
        const number = `${i + 1} / ${sheets.length}`;
        pen.show(number, "semibold", SIZES.foot, size.width - margin.side - fonts.measure(number, "semibold", SIZES.foot), line(0), 0);
      });
    };
    let page = newPage();
    sheets.forEach((sheet, i) => {
      const isNew = i > 0 && (!paper.folded || i % PANELS === 0);
      if (isNew) page = newPage();
      if (paper.folded && i % PANELS === 0) paintFolds(new Pen(page, sheetSize.height, fonts, tagger), sheetSize);
      const pen = new Pen(page, size.height, fonts, tagger);
      if (paper.folded) pen.within(panelMatrix(i, sheetSize), () => paint(pen, sheet, i));
      else paint(pen, sheet, i);
    });

    tagger.finish();
    form.finish();
    outline.finish();
    describe(doc, paper, options.date);
    const bytes = await doc.save({ updateFieldAppearances: false, addDefaultPage: false });
    return { bytes, notes: missingNote(fonts.missing) };
  };
  return { pages: sheets.length, lastPage, draw };
}

function paintHead(pen: Pen, head: RunningHead, width: number, margin: Margins, fonts: FontBook): void {
  const set = { size: SIZES.head } as const;
  // The right side keeps its width; the left gives way.
  const right = lines(head.right, width * HEAD_RIGHT, set, fonts)[0];
  const left = lines(head.left, width - (right?.width ?? 0) - 16, set, fonts)[0];
  const baseline = margin.top + SIZES.head;
  pen.artifact(() => {
    if (left) pen.text(left, margin.side, baseline);
    if (right) pen.text(right, margin.side + width - right.width, baseline);
    pen.rule("heavy", margin.side, margin.top + 17, width);
  });
}

/** Title, dates and language, in the information dictionary and as XMP (ISO 14289-1, 7.1 and 7.2). */
function describe(doc: PDFDocument, paper: Paper, date: string): void {
  const day = new Date(date.length === 10 ? `${date}T00:00:00Z` : date);
  doc.setTitle(paper.title, { showInWindowTitleBar: true });
  doc.setSubject(paper.subject);
  if (paper.author) doc.setAuthor(paper.author);
  doc.setLanguage(paper.language);
  doc.setCreator("Repwright");
  doc.setProducer("Repwright");
  doc.setCreationDate(day);
  doc.setModificationDate(day);
  const stamp = day.toISOString().replace(/\.\d+Z$/, "Z");
  const xmp = `<?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">
<dc:title><rdf:Alt><rdf:li xml:lang="x-default">${escapeXml(paper.title)}</rdf:li></rdf:Alt></dc:title>
<dc:creator><rdf:Seq><rdf:li>${escapeXml(paper.author)}</rdf:li></rdf:Seq></dc:creator>
<dc:description><rdf:Alt><rdf:li xml:lang="x-default">${escapeXml(paper.subject)}</rdf:li></rdf:Alt></dc:description>
<dc:language><rdf:Bag><rdf:li>${paper.language}</rdf:li></rdf:Bag></dc:language>
<xmp:CreateDate>${stamp}</xmp:CreateDate><xmp:ModifyDate>${stamp}</xmp:ModifyDate><xmp:CreatorTool>Repwright</xmp:CreatorTool><pdf:Producer>Repwright</pdf:Producer>
</rdf:Description></rdf:RDF></x:xmpmeta>
<?xpacket end="w"?>`;
  const { context, catalog } = doc;
  const stream = context.stream(new TextEncoder().encode(xmp), { Type: "Metadata", Subtype: "XML" });
  catalog.set(name("Metadata"), context.register(stream));
}

const escapeXml = (text: string): string => text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");

function missingNote(missing: ReadonlySet<string>): string[] {
  if (missing.size === 0) return [];
  const shown = [...missing].slice(0, 20).map((char) => `${char} (U+${(char.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")})`);
  const more = missing.size > 20 ? ` and ${missing.size - 20} more` : "";
  return [`No font has these characters; each is printed as an empty square: ${shown.join(", ")}${more}.`];
}
