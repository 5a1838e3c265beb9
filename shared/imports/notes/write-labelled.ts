import { labelOf, type Labelled } from "./labels";
import type { NotesSheet } from "./sheet";
import { writeRamps } from "./write-sets";
import { holdsAll, setLineIn } from "./written";

/** Words under a label onto the sheet, as what the label makes of them. */
export function writeLabelled(sheet: NotesSheet, kind: Labelled, text: string): void {
  if (kind === "sets") {
    const read = setLineIn(text, sheet.unit);
    sheet.set("working", read !== null && read.text !== text && holdsAll([read.text], text) ? read.text : text);
    if (read?.remark && holdsAll([read.text], text)) sheet.list(text, "range", read.remark);
  } else if (kind === "ramp-up") writeRamps(sheet, text);
  else if (kind === "if taken") sheet.alternate(text);
  else sheet.add(kind, text);
}

/** What stands behind the sets, with labels or without: "cue: chest tall, avoid: knees caving". */
export function writeBehind(sheet: NotesSheet, text: string): void {
  for (const piece of text.split(/[,;]\s+(?=[a-z' ]{2,14}:\s)/i)) {
    const label = labelOf(piece);
    if (label === null || label.behind === "") sheet.line(piece);
    else {
      sheet.mark(label.label);
      writeLabelled(sheet, label.kind, label.behind);
    }
  }
}
