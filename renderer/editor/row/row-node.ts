import { $getState, ElementNode, type EditorConfig, type ElementDOMSlot } from "lexical";
import { idState } from "../states";
import { paintRow, rowView, textPart } from "./row-view";

/** What every row of the sheet has in common: an id, a word in the margin, and one line of text. */
export abstract class RowNode extends ElementNode {
  /** The word in the margin. */
  abstract word(): string;
  /** What belongs here, shown while the row is empty. */
  abstract hint(): string;
  protected abstract rowClass(): string;
  /** Whether the remark can be pressed. */
  protected remarkTag(): "button" | "span" {
    return "span";
  }

  override createDOM(_config: EditorConfig): HTMLElement {
    const row = rowView(this.rowClass(), this.remarkTag());
    this.paint(row);
    return row;
  }

  override updateDOM(_previous: this, dom: HTMLElement): boolean {
    this.paint(dom);
    return false;
  }

  override getDOMSlot(element: HTMLElement): ElementDOMSlot<HTMLElement> {
    return super.getDOMSlot(element).withElement(textPart(element));
  }

  override canIndent(): false {
    return false;
  }

  protected paint(dom: HTMLElement): void {
    paintRow(dom, { id: $getState(this, idState), word: this.word(), hint: this.hint(), isEmpty: this.getChildrenSize() === 0 });
  }
}
