import { PDFName, type PDFDocument, type PDFPage, type PDFRef } from "pdf-lib";
import { ascii, name, words, type Tag, type Tagger } from "./tagger";
import type { Field } from "./tree";

/** Flag bits of ISO 32000-1, tables 221 and 228. */
const PRINT = 4;
const MULTILINE = 4096;
/** Size of what the viewer types. */
const TYPED = 11;

/**
 * The fields of a document (AcroForm, ISO 32000-1, 12.7). Each has its frame drawn into its own appearance,
 * so it shows and prints in every reader. What people type is set in Helvetica, which every reader brings along:
 * an embedded subset would lack the letters they need.
 */
export class Form {
  private readonly fields: PDFRef[] = [];
  private readonly names = new Set<string>();

  constructor(private readonly doc: PDFDocument, private readonly tagger: Tagger) {}

  /**
   * Puts a field on a page. x and y are its lower left corner in PDF coordinates, points.
   * @throws {Error} when the name was used before or holds a full stop: two fields of one name would share one value
   */
  add(page: PDFPage, tag: Tag, field: Pick<Field, "type" | "name" | "tip" | "multiline">, at: { x: number; y: number; width: number; height: number }): void {
    if (this.names.has(field.name)) throw new Error(`Form.add: the field name "${field.name}" is used twice`);
    if (!/^[A-Za-z0-9_-]+$/.test(field.name)) throw new Error(`Form.add: the field name "${field.name}" may hold letters, digits, - and _`);
    this.names.add(field.name);
    const { context } = this.doc;
    const { x, y, width, height } = at;
    // A box to tick is found at arm's length; a box to write in stands back behind what is written.
    const [line, grey] = field.type === "tick" ? [1.4, 0] : [0.75, 0.45];
    const frame = `q ${line} w ${grey} G ${line / 2} ${line / 2} ${round(width - line)} ${round(height - line)} re S Q`;
    const widget = context.obj({
      Type: "Annot", Subtype: "Widget", F: PRINT, Rect: [x, y, x + width, y + height], P: page.ref,
      T: words(field.name), TU: words(field.tip),
      MK: { BC: [grey] }, BS: { Type: "Border", W: line, S: "S" },
    });
    if (field.type === "tick") {
      const tick = `q 1.8 w 0 G ${round(width * 0.22)} ${round(height * 0.52)} m ${round(width * 0.42)} ${round(height * 0.26)} l ${round(width * 0.78)} ${round(height * 0.78)} l S Q`;
      widget.set(name("FT"), name("Btn"));
      widget.set(name("V"), name("Off"));
      widget.set(name("AS"), name("Off"));
      widget.set(name("AP"), context.obj({ N: { Off: this.appearance(frame, width, height), Yes: this.appearance(`${frame} ${tick}`, width, height) } }));
    } else {
      widget.set(name("FT"), name("Tx"));
      widget.set(name("V"), words(""));
      widget.set(name("DA"), ascii(`/Helv ${TYPED} Tf 0 g`));
      if (field.multiline) widget.set(name("Ff"), context.obj(MULTILINE));
      else widget.set(name("Q"), context.obj(height < 30 && width < 80 ? 1 : 0));
      widget.set(name("AP"), context.obj({ N: this.appearance(`${frame} /Tx BMC EMC`, width, height) }));
    }
    const ref = context.register(widget);
    page.node.addAnnot(ref);
    this.fields.push(ref);
    this.tagger.annotation(page, tag, widget, ref);
  }

  /** Writes the form into the catalog, when there is one. */
  finish(): void {
    if (this.fields.length === 0) return;
    const { context, catalog } = this.doc;
    const helvetica = context.register(context.obj({ Type: "Font", Subtype: "Type1", BaseFont: "Helvetica", Encoding: "WinAnsiEncoding" }));
    catalog.set(PDFName.of("AcroForm"), context.obj({
      Fields: context.obj(this.fields),
      DR: { Font: { Helv: helvetica } },
      DA: ascii(`/Helv ${TYPED} Tf 0 g`),
    }));
  }

  private appearance(content: string, width: number, height: number): PDFRef {
    const { context } = this.doc;
    return context.register(context.stream(content, { Type: "XObject", Subtype: "Form", BBox: [0, 0, width, height], Resources: {} }));
  }
}

const round = (n: number): number => Math.round(n * 100) / 100;
