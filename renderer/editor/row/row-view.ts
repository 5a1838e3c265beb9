import { setDOMUnmanaged } from "lexical";

/**
 * The three parts of every row of the sheet: the word in the margin, the words themselves, and a grey remark.
 * Only the middle part belongs to the editor. The remark is set as an attribute and shown by the stylesheet,
 * so that painting it never disturbs the text being typed.
 */
export function rowView(className: string): HTMLElement {
  const row = document.createElement("div");
  row.className = `row ${className}`;
  const margin = document.createElement("button");
  margin.type = "button";
  margin.className = "margin-word";
  margin.tabIndex = -1;
  margin.contentEditable = "false";
  setDOMUnmanaged(margin);
  const text = document.createElement("div");
  text.className = "text";
  const remark = document.createElement("button");
  remark.type = "button";
  remark.className = "remark";
  remark.tabIndex = -1;
  remark.contentEditable = "false";
  setDOMUnmanaged(remark);
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
}

/** Sets the grey remark of a row: read-back, seconds, clocks. `isFault` marks a remark that says what is wrong. */
export function paintRemark(row: HTMLElement, remark: string, isFault = false): void {
  const part = row.querySelector<HTMLElement>(":scope > .remark");
  if (!part || (part.dataset["remark"] ?? "") === remark) return;
  part.dataset["remark"] = remark;
  part.dataset["fault"] = String(isFault);
  part.setAttribute("aria-label", remark || "nothing to remark");
  part.hidden = remark === "";
}
