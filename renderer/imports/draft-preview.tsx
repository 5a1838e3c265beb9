import { useEffect, useRef } from "react";
import { BLOCK_KIND_NAMES, blockName } from "../../shared/episode";
import type { Imported } from "../../shared/imports";
import { count } from "../words/count";

/** Seconds as "4:07". */
const clock = (seconds: number): string => `${Math.floor(seconds / 60)}:${String(Math.floor(seconds % 60)).padStart(2, "0")}`;

/** What was understood, block by block, and what was not, word for word. */
export function DraftPreview({ draft }: { draft: Imported }) {
  const { episode, missing, notUnderstood, problems } = draft;
  // It comes in place of what was pressed, so the keys go on here; a long one is scrolled with them.
  const part = useRef<HTMLDivElement>(null);
  useEffect(() => part.current?.focus(), []);
  const names = new Map(episode.blocks.map((block) => [block.id, blockName(block)]));
  return (
    <div className="import-columns" ref={part} role="region" aria-label="The draft" tabIndex={0}>
      <section aria-label="Understood">
        <h3>Understood</h3>
        <ol className="import-blocks">
          {episode.blocks.map((block) => (
            <li key={block.id}>
              <details>
                <summary>
                  <b>{blockName(block)}</b>{" "}
                  <span className="second">{blockName(block) === BLOCK_KIND_NAMES[block.kind] ? "" : `${block.kind}, `}{count(block.lines.length, "line")}</span>
                </summary>
                <ul>{block.lines.map((line) => <li key={line.id}><span className="import-kind">{line.kind}</span> <span>{line.text}</span></li>)}</ul>
              </details>
              {block.sets.map((set) => <p key={set.id} className="import-set">{set.role === "working" ? "" : `${set.role}: `}{set.text}</p>)}
              {block.kind === "exercise" && block.sets.length === 0 && <p className="second">no sets found</p>}
            </li>
          ))}
        </ol>
        {missing.length > 0 && <p className="import-missing">Not found: {missing.join(", ")}.</p>}
      </section>
      <section aria-label="Not understood">
        <h3>Not understood, or only in part</h3>
        {notUnderstood.length === 0 && problems.length === 0 && <p className="soft">Nothing is left over.</p>}
        <ul className="import-rest">
          {notUnderstood.map((piece, at) => (
            <li key={at}>
              <q>{piece.text}</q>
              <span className="second">{piece.at === null ? "" : `${clock(piece.at)} `}{piece.block === null ? "" : `${names.get(piece.block) ?? ""}: `}{piece.sentence}</span>
            </li>
          ))}
          {problems.map((problem, at) => <li key={`file-${at}`} className="second">{problem.sentence}</li>)}
        </ul>
      </section>
    </div>
  );
}
