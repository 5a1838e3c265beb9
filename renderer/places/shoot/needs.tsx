import { blockName, emptyBlock, newLine, type Edit, type Episode } from "../../../shared/episode";
import { wantsOf, type EpisodeWant } from "../../../shared/filming";
import { useActions } from "../../session/context";
import { count } from "../../words/count";

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What writes a want's shot: into its block, or with the block that is missing. */
function writing(episode: Episode, want: EpisodeWant, newId: () => string): Edit[] {
  const line = newLine(newId, "shot", want.shot);
  if (want.block !== null) return [{ type: "insert-line", block: want.block, at: null, line }];
  const isClosing = want.id.startsWith("closing");
  if (isClosing || want.id.startsWith("opening")) return [{ type: "insert-block", at: isClosing ? null : 0, block: emptyBlock(newId, isClosing ? "closing" : "opening", { lines: [line] }) }];
  const last = episode.blocks.at(-1);
  return last ? [{ type: "insert-line", block: last.id, at: null, line }] : [];
}

/** What the finished video needs whatever is taught in it, and what its cues need to be seen: open ones first, each written at a press. */
export function Needs({ episode }: { episode: Episode }) {
  const { mend, newId } = useActions();
  const wants = wantsOf(episode);
  const open = wants.filter(({ coveredBy }) => coveredBy === null);
  const must = open.filter(({ need }) => need === "must");
  const nice = open.filter(({ need }) => need === "nice");
  const covered = wants.length - open.length;
  const nameOf = (id: string | null): string => {
    const block = episode.blocks.find((each) => each.id === id);
    return block ? blockName(block) : "";
  };
  const item = (want: EpisodeWant) => {
    const edits = writing(episode, want, newId);
    return (
      <li key={want.id}>
        <span className={want.need === "must" ? "need must" : "need"}>{want.need}</span>
        <span>{capital(want.what)}{nameOf(want.block) !== "" && !want.what.includes(nameOf(want.block)) && <span className="second"> in {nameOf(want.block)}</span>} <span className="second">{want.shot}</span></span>
        {edits.length > 0 && <button type="button" className="word-button" aria-label={`Write this shot: ${want.what}`} onClick={() => mend(edits)}>Write this shot</button>}
      </li>
    );
  };
  return (
    <section className="needs" aria-labelledby="needs">
      <h2 id="needs">What the episode needs anyway</h2>
      {open.length === 0 && <p>Everything it usually needs has a shot.</p>}
      {must.length > 0 && <ul>{must.map(item)}</ul>}
      {nice.length > 0 && <details open={must.length === 0}><summary>{capital(count(nice.length, "more"," more"))} that would be nice</summary><ul>{nice.map(item)}</ul></details>}
      {covered > 0 && <p className="second">{covered} of {wants.length} things have a shot already.</p>}
    </section>
  );
}
