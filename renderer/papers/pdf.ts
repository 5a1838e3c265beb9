import type * as Pdfjs from "pdfjs-dist";
import type { PDFDocumentLoadingTask, PDFDocumentProxy, PDFPageProxy } from "pdfjs-dist";

export type { PDFDocumentProxy, PDFPageProxy };

/** The reader is large and few screens need it, so it is fetched when the first paper is shown. */
const reader = async (): Promise<typeof Pdfjs> => {
  const pdfjs = await import("pdfjs-dist");
  pdfjs.GlobalWorkerOptions.workerSrc ||= new URL("pdfjs-dist/build/pdf.worker.min.mjs", import.meta.url).href;
  return pdfjs;
};

/** Opens a PDF. The caller destroys the task it is given, which also ends a loading that is no longer wanted. */
export async function openPdf(base64: string): Promise<PDFDocumentLoadingTask> {
  const data = Uint8Array.from(atob(base64), (char) => char.charCodeAt(0));
  return (await reader()).getDocument({ data, useSystemFonts: false });
}

/** The words of a page in reading order, one line each. */
export async function pageText(page: PDFPageProxy): Promise<string> {
  const { items } = await page.getTextContent();
  return items.map((item) => ("str" in item ? item.str + (item.hasEOL ? "\n" : "") : "")).join("").trim();
}
