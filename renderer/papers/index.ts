export { MakePapers } from "./make-papers";
export { PaperPreview } from "./paper-preview";
