import { useEffect, useState } from "react";
import type { Units } from "../../shared/episode";
import type { DocumentId, PaperSize } from "../../shared/exports";
import { useApi, useSession } from "../session/context";
import { openPdf, type PDFDocumentProxy } from "./pdf";

/** How long the words must rest before a paper is drawn again. */
const REST_MS = 700;

export interface Paper {
  /** The newest finished drawing; stays while the next one is made. */
  readonly pdf: PDFDocumentProxy | null;
  readonly notes: readonly string[];
  readonly working: boolean;
  readonly problem: string | null;
}

/** One document of the open episode as a PDF, drawn again when the episode changes and rests. */
export function usePaper(document: DocumentId, paper: PaperSize, units: Units): Paper {
  const { episode } = useSession();
  const api = useApi();
  const [state, setState] = useState<Paper>({ pdf: null, notes: [], working: true, problem: null });

  useEffect(() => {
    let wanted = true;
    const draw = async (): Promise<void> => {
      setState((known) => ({ ...known, working: true }));
      const answer = await api["papers:render"]({ episode, document, paper, units });
      if (!wanted) return;
      if (!answer.ok) return setState((known) => ({ ...known, working: false, problem: answer.message }));
      const pdf = await (await openPdf(answer.base64)).promise;
      if (wanted) setState({ pdf, notes: answer.notes, working: false, problem: null });
      else await pdf.loadingTask.destroy();
    };
    const fail = (error: unknown): void => {
      if (wanted) setState((known) => ({ ...known, working: false, problem: `The paper could not be drawn: ${error instanceof Error ? error.message : String(error)}` }));
    };
    const timer = window.setTimeout(() => void draw().catch(fail), state.pdf === null && state.problem === null ? 0 : REST_MS);
    return () => {
      wanted = false;
      window.clearTimeout(timer);
    };
    // The state only decides how long to wait; it must not start another drawing.
  }, [api, episode, document, paper, units]);

  // A drawing that was replaced gives its memory back.
  const { pdf } = state;
  useEffect(() => () => void pdf?.loadingTask.destroy(), [pdf]);
  return state;
}
