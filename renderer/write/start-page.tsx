import type { LexicalEditor } from "lexical";
import { BLOCK_KIND_NAMES, emptyBlock, type BlockKind, type Edit } from "../../shared/episode";
import { useActions } from "../session/context";

const OUTLINE: readonly BlockKind[] = ["opening", "warm-up", "exercise", "cool-down", "closing"];

/** What an empty page offers: type, or begin with the usual five parts. */
export function StartPage({ editor }: { editor: LexicalEditor }) {
  const { apply, newId, openDemo } = useActions();
  const layOut = (): void => {
    const edits = OUTLINE.map((kind): Edit => ({
      type: "insert-block", at: null,
      block: emptyBlock(newId, kind, kind === "exercise" ? {} : { title: BLOCK_KIND_NAMES[kind], minutes: kind === "warm-up" ? 8 : kind === "cool-down" ? 5 : 1 }),
    }));
    apply(edits);
    editor.focus();
  };
  return (
    <div className="start-page">
      <p>Type the name of the first block below and press Enter, or paste your notes.</p>
      <p>
        <button type="button" className="word-button" onClick={layOut}>Lay out opening, warm-up, exercise, cool-down and closing</button>{" "}
        <button type="button" className="word-button" onClick={openDemo}>Look at the demo episode</button>
      </p>
    </div>
  );
}
