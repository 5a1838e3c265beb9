import { lazy, Suspense, useState } from "react";
import type { DocumentId } from "../../../shared/exports";
import { Choice } from "../../fields/choice";

const PaperPreview = lazy(() => import("../../papers").then(({ PaperPreview: preview }) => ({ default: preview })));

const PAPERS = [{ value: "shot-list.pdf", label: "Shot list, a page a station" }, { value: "pocket-list.pdf", label: "Pocket list, folded twice" }] as const satisfies readonly { value: DocumentId; label: string }[];

/** The papers for the floor as they print. */
export function FloorPapers() {
  const [shown, setShown] = useState<(typeof PAPERS)[number]["value"]>("shot-list.pdf");
  return (
    <section className="floor-papers" aria-labelledby="floor-papers">
      <h2 id="floor-papers">On paper</h2>
      <Choice label="Show" value={shown} options={PAPERS} onChoose={setShown} />
      <p className="second">The phone sheet, with timers and ticks for the floor, is one of the papers under "Make papers".</p>
      <Suspense fallback={<p className="soft">Fetching the paper.</p>}>
        <PaperPreview key={shown} document={shown} />
      </Suspense>
    </section>
  );
}
