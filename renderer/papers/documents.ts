import type { DocumentId } from "../../shared/exports";

/** The papers as people call them, each with the formats it comes in. */
export const PAPERS: readonly { readonly title: string; readonly forWhom: string; readonly formats: readonly { readonly id: DocumentId; readonly label: string }[] }[] = [
  { title: "Shot list", forWhom: "for you, on the floor", formats: [{ id: "shot-list.pdf", label: "PDF" }, { id: "shot-list.docx", label: "DOCX" }] },
  { title: "Pocket list", forWhom: "for you, a sheet folded twice", formats: [{ id: "pocket-list.pdf", label: "PDF" }] },
  { title: "Phone sheet", forWhom: "for you, on the floor, with timers", formats: [{ id: "phone-sheet.html", label: "HTML" }] },
  { title: "Voiceover script", forWhom: "for you, at the microphone", formats: [{ id: "voiceover.pdf", label: "PDF" }, { id: "voiceover.docx", label: "DOCX" }, { id: "voiceover.txt", label: "Plain text" }] },
  { title: "Cue card", forWhom: "for you, without a script", formats: [{ id: "cue-card.pdf", label: "PDF" }, { id: "cue-card.docx", label: "DOCX" }] },
  { title: "Captions", forWhom: "for viewers, with the video", formats: [{ id: "captions.vtt", label: "WebVTT" }, { id: "captions.srt", label: "SubRip" }] },
  { title: "Handout", forWhom: "for viewers", formats: [{ id: "handout.pdf", label: "PDF" }] },
];

/** "Shot list, PDF" */
export function documentName(id: DocumentId): string {
  for (const paper of PAPERS) {
    const format = paper.formats.find((one) => one.id === id);
    if (format) return `${paper.title}, ${format.label}`;
  }
  return id;
}
