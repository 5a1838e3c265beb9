import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { DocumentId, PhonePage } from "../../shared/exports";

/** The files `build.mjs` leaves in dist/phone-sheet. */
const FILES = { script: "page.js", style: "page.css" } as const;

/**
 * Script and style of the phone sheet, when it is among the documents; else null.
 * @param folder - the app's dist/phone-sheet
 */
export async function pageFor(documents: readonly DocumentId[], folder: string): Promise<PhonePage | null> {
  if (!documents.includes("phone-sheet.html")) return null;
  const text = (file: string): Promise<string> =>
    readFile(join(folder, file), "utf8").catch((cause: unknown) => {
      throw new Error(`The phone sheet's ${file} is missing from ${folder}: install Repwright again.`, { cause });
    });
  const [script, style] = await Promise.all([text(FILES.script), text(FILES.style)]);
  return { script, style };
}
