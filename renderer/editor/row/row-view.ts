import { setDOMUnmanaged } from "lexical";

/**
 * The three parts of every row of the sheet: the word in the margin, the words themselves, and a grey remark.
 * Only the middle part belongs to the editor. The remark is set as an attribute and shown by the stylesheet,
 * so that painting it never disturbs the text being typed.
 */
export function rowView(className: string, remarkTag: "button" | "span" = "span"): HTMLElement {
  const row = document.createElement("div");
  row.className = `row ${className}`;
  const margin = document.createElement("button");
  margin.type = "button";
  margin.className = "margin-word";
  const text = document.createElement("div");
  text.className = "text";
  const remark = document.createElement(remarkTag);
  remark.className = "remark";
  remark.hidden = true;
  for (const part of [margin, remark]) {
    part.contentEditable = "false";
    setDOMUnmanaged(part);
  }
  margin.tabIndex = -1;
  if (remark instanceof HTMLButtonElement) {
    remark.type = "button";
    remark.tabIndex = -1;
  }
  row.append(margin, text, remark);
  return row;
}

/** The element of a row that holds the editor's own text. */
export function textPart(row: HTMLElement): HTMLElement {
  const text = row.querySelector<HTMLElement>(":scope > .text");
  if (!text) throw new Error("textPart: the row has no text part");
  return text;
}

/** Brings margin word, id and the hint of an empty row up to date. */
export function paintRow(row: HTMLElement, view: { id: string; word: string; hint: string; isEmpty: boolean }): void {
  row.dataset["id"] = view.id;
  row.dataset["word"] = view.word;
  row.dataset["empty"] = String(view.isEmpty);
  textPart(row).dataset["hint"] = view.hint;
  const margin = row.querySelector<HTMLElement>(":scope > .margin-word");
  if (margin && margin.textContent !== view.word) margin.textContent = view.word;
  if (margin) margin.setAttribute("aria-label", view.word === "" ? "Facts of this block" : `${view.word}, change the kind`);
}

/** What each row says already, so that painting all of them costs little while one is typed in. */
const painted = new WeakMap<HTMLElement, string>();

/** Sets the grey remark of a row: read-back, seconds, clocks. `isFault` marks a remark that says what is wrong. */
export function paintRemark(row: HTMLElement, remark: string, isFault = false): void {
  if ((painted.get(row) ?? "") === remark) return;
  const part = row.querySelector<HTMLElement>(":scope > .remark");
  if (!part) return;
  painted.set(row, remark);
  part.dataset["remark"] = remark;
  part.dataset["fault"] = String(isFault);
  if (part instanceof HTMLButtonElement) part.setAttribute("aria-label", remark);
  part.hidden = remark === "";
}
