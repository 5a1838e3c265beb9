/** Paper: the tree documents are written in, and the two renderers that draw it. */
export * from "./tree";
export { pagesOf, renderPdf, PAGE_SIZES, MARGIN } from "./pdf";
export { PANELS } from "./fold";
export { renderDocx, DOCX_NOTES, type DocxOptions } from "./docx";
