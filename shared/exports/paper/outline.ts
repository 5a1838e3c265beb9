import { PDFName, type PDFDict, type PDFDocument, type PDFPage, type PDFRef } from "pdf-lib";
import { name, words } from "./tagger";

interface Entry {
  readonly level: number;
  readonly title: string;
  readonly page: PDFPage;
  /** Top of the heading in PDF coordinates, points. */
  readonly top: number;
}

interface Branch {
  readonly entry: Entry;
  readonly ref: PDFRef;
  readonly children: Branch[];
}

/** The list of headings a reader shows beside the pages (ISO 32000-1, 12.3.3). */
export class Outline {
  private readonly entries: Entry[] = [];

  constructor(private readonly doc: PDFDocument) {}

  add(entry: Entry): void {
    this.entries.push(entry);
  }

  /** Writes it into the catalog; a single heading needs no list. */
  finish(): void {
    if (this.entries.length < 2) return;
    const { context, catalog } = this.doc;
    const top: Branch[] = [];
    const open: Branch[] = [];
    for (const entry of this.entries) {
      const branch: Branch = { entry, ref: context.nextRef(), children: [] };
      while (open.length > 0 && (open.at(-1)?.entry.level ?? 0) >= entry.level) open.pop();
      (open.at(-1)?.children ?? top).push(branch);
      open.push(branch);
    }
    const root = context.nextRef();
    const dict = context.obj({ Type: "Outlines" });
    this.link(dict, root, top);
    context.assign(root, dict);
    catalog.set(PDFName.of("Outlines"), root);
  }

  /** Chains siblings to each other and to their parent. All branches stand open. */
  private link(parent: PDFDict, parentRef: PDFRef, branches: readonly Branch[]): number {
    const { context } = this.doc;
    const [first, last] = [branches[0], branches.at(-1)];
    if (!first || !last) return 0;
    parent.set(name("First"), first.ref);
    parent.set(name("Last"), last.ref);
    let count = branches.length;
    branches.forEach((branch, i) => {
      const { entry } = branch;
      const dict = context.obj({ Parent: parentRef, Dest: [entry.page.ref, name("XYZ"), null, entry.top, null] });
      dict.set(name("Title"), words(entry.title));
      const [before, after] = [branches[i - 1], branches[i + 1]];
      if (before) dict.set(name("Prev"), before.ref);
      if (after) dict.set(name("Next"), after.ref);
      count += this.link(dict, branch.ref, branch.children);
      context.assign(branch.ref, dict);
    });
    parent.set(name("Count"), context.obj(count));
    return count;
  }
}
