import { useRef } from "react";
import type { Units } from "../../shared/episode";
import type { DocumentId, PaperSize } from "../../shared/exports";
import { useSession } from "../session/context";
import { useSize } from "../words/use-size";
import { documentName } from "./documents";
import { PaperPage } from "./paper-page";
import { usePaper } from "./use-paper";
import "./papers.css";

interface Props {
  /** One of the PDF documents. */
  readonly document: DocumentId;
  readonly paper?: PaperSize;
  /** The session's own when left out. */
  readonly units?: Units;
}

/** The pages of a document as they will be printed, following the episode. */
export function PaperPreview({ document, paper = "a4", units }: Props) {
  const { episode } = useSession();
  const root = useRef<HTMLElement>(null);
  const { width } = useSize(root);
  const { pdf, notes, working, problem } = usePaper(document, paper, units ?? episode.session.units);
  const title = documentName(document);
  return (
    <section className="paper-preview" ref={root} aria-label={`${title}, as it will be printed`} aria-busy={working}>
      {problem !== null && <p className="field-problem" role="status">{problem}</p>}
      {pdf === null && problem === null && <p className="paper-wait">Drawing the pages.</p>}
      {pdf !== null && (
        <>
          <p className="second">{pdf.numPages === 1 ? "1 page" : `${pdf.numPages} pages`}{working ? ", being drawn again" : ""}</p>
          {Array.from({ length: pdf.numPages }, (_, i) => <PaperPage key={i} pdf={pdf} number={i + 1} title={title} width={width} />)}
        </>
      )}
      {notes.length > 0 && (
        <ul className="paper-notes" aria-label="Notes">
          {notes.map((note) => <li key={note} className="second">{note}</li>)}
        </ul>
      )}
    </section>
  );
}
