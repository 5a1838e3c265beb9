import {
  PDFHexString, PDFName, PDFNumber, PDFOperator, PDFOperatorNames, PDFString,
  type PDFContext, type PDFDict, type PDFDocument, type PDFObject, type PDFPage, type PDFRef,
} from "pdf-lib";

/** Standard structure types in use. ISO 32000-1, 14.8.4. */
export type TagType =
  | "Document" | "Div" | "H1" | "H2" | "H3" | "P" | "L" | "LI" | "Lbl" | "LBody"
  | "Table" | "THead" | "TBody" | "TR" | "TH" | "TD" | "Form" | "Figure";

type Kid = Tag | { readonly page: PDFPage; readonly mcid: number } | { readonly page: PDFPage; readonly object: PDFRef };

/** One element of the structure tree. Elements stand in reading order, which is the order they are made in. */
export class Tag {
  readonly ref: PDFRef;
  readonly kids: Kid[] = [];
  private readonly entries: [string, PDFObject][] = [];

  constructor(private readonly context: PDFContext, readonly type: TagType, private readonly parent: PDFRef) {
    this.ref = context.nextRef();
  }

  child(type: TagType): Tag {
    const tag = new Tag(this.context, type, this.ref);
    this.kids.push(tag);
    return tag;
  }

  /** Alternate description (ISO 32000-1, 14.9.3). */
  alt(text: string): this {
    this.entries.push(["Alt", PDFHexString.fromText(text)]);
    return this;
  }

  /** Attributes of an owner, such as Table (ISO 32000-1, 14.8.5). */
  attributes(owner: "Table" | "Layout" | "List", values: Record<string, PDFObject>): this {
    this.entries.push(["A", this.context.obj({ O: PDFName.of(owner), ...values })]);
    return this;
  }

  /** Writes this element and all below it. */
  write(): void {
    const { context } = this;
    const kids = this.kids.map((kid) => {
      if (kid instanceof Tag) {
        kid.write();
        return kid.ref;
      }
      return "mcid" in kid
        ? context.obj({ Type: "MCR", Pg: kid.page.ref, MCID: kid.mcid })
        : context.obj({ Type: "OBJR", Pg: kid.page.ref, Obj: kid.object });
    });
    const dict = context.obj({ Type: "StructElem", S: this.type, P: this.parent, K: context.obj(kids) });
    for (const [key, value] of this.entries) dict.set(PDFName.of(key), value);
    context.assign(this.ref, dict);
  }
}

/** The structure tree of a document: marks content on pages and ties annotations to their elements. */
export class Tagger {
  readonly document: Tag;
  private readonly root: PDFRef;
  /** Number tree of ISO 32000-1, 14.7.4.4: per page the elements of its marks, per annotation its element. */
  private readonly parents: (PDFRef | PDFRef[])[] = [];
  private readonly marks = new Map<PDFPage, PDFRef[]>();

  constructor(private readonly doc: PDFDocument) {
    this.root = doc.context.nextRef();
    this.document = new Tag(doc.context, "Document", this.root);
  }

  /** Must be called once for every page, in order. */
  addPage(page: PDFPage): void {
    const marks: PDFRef[] = [];
    this.marks.set(page, marks);
    page.node.set(PDFName.of("StructParents"), PDFNumber.of(this.parents.push(marks) - 1));
    // Tab order follows the structure (ISO 14289-1, 7.18.3).
    page.node.set(PDFName.of("Tabs"), PDFName.of("S"));
  }

  /** What `draw` puts on the page is content of `tag`. */
  mark(page: PDFPage, tag: Tag, draw: () => void): void {
    const marks = this.marks.get(page);
    if (!marks) throw new Error("Tagger.mark: the page was never added");
    const mcid = marks.push(tag.ref) - 1;
    tag.kids.push({ page, mcid });
    page.pushOperators(PDFOperator.of(PDFOperatorNames.BeginMarkedContentSequence, [PDFName.of(tag.type), `<</MCID ${mcid}>>`]));
    draw();
    page.pushOperators(PDFOperator.of(PDFOperatorNames.EndMarkedContent));
  }

  /** What `draw` puts on the page is no content: rules, page numbers, repeated table heads. */
  artifact(page: PDFPage, draw: () => void): void {
    page.pushOperators(PDFOperator.of(PDFOperatorNames.BeginMarkedContent, [PDFName.of("Artifact")]));
    draw();
    page.pushOperators(PDFOperator.of(PDFOperatorNames.EndMarkedContent));
  }

  /** Ties a widget to its Form element (ISO 14289-1, 7.18.4). */
  annotation(page: PDFPage, tag: Tag, widget: PDFDict, ref: PDFRef): void {
    widget.set(PDFName.of("StructParent"), PDFNumber.of(this.parents.push(tag.ref) - 1));
    tag.kids.push({ page, object: ref });
  }

  /** Writes the tree into the catalog. */
  finish(): void {
    const { context, catalog } = this.doc;
    this.document.write();
    const numbers = context.obj([]);
    this.parents.forEach((entry, i) => {
      numbers.push(PDFNumber.of(i));
      numbers.push(Array.isArray(entry) ? context.obj(entry) : entry);
    });
    context.assign(this.root, context.obj({
      Type: "StructTreeRoot",
      K: context.obj([this.document.ref]),
      ParentTree: context.register(context.obj({ Nums: numbers })),
      ParentTreeNextKey: this.parents.length,
    }));
    catalog.set(PDFName.of("StructTreeRoot"), this.root);
    catalog.set(PDFName.of("MarkInfo"), context.obj({ Marked: true }));
  }
}

export const name = (text: string): PDFName => PDFName.of(text);
export const words = (text: string): PDFHexString => PDFHexString.fromText(text);
export const ascii = (text: string): PDFString => PDFString.of(text);
