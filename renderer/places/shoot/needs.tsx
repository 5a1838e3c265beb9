import { useMemo } from "react";
import { blockName, type Episode } from "../../../shared/episode";
import { wantsOf, type EpisodeWant } from "../../../shared/filming";
import { useActions } from "../../session/context";
import { count } from "../../words/count";
import { writeWant } from "./write-want";

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What the finished video needs whatever is taught in it, and what its cues need to be seen: open ones first, each written at a press. */
export function Needs({ episode }: { episode: Episode }) {
  const wants = useMemo(() => wantsOf(episode), [episode]);
  const open = wants.filter(({ coveredBy }) => coveredBy === null);
  const must = open.filter(({ need }) => need === "must");
  const nice = open.filter(({ need }) => need === "nice");
  const covered = wants.filter(({ coveredBy }) => coveredBy !== null);
  const listOf = (some: readonly EpisodeWant[]) => <ul>{some.map((want) => <Need key={want.id} episode={episode} want={want} />)}</ul>;
  return (
    <section className="needs" aria-labelledby="needs">
      <h2 id="needs">What the episode needs anyway</h2>
      {open.length === 0 && <p>Everything it usually needs has a shot.</p>}
      {must.length > 0 && listOf(must)}
      {nice.length > 0 && <details open={must.length === 0}><summary>{count(nice.length, "more", "more")} that would be nice</summary>{listOf(nice)}</details>}
      {covered.length > 0 && <details><summary>{covered.length === 1 ? "1 has a shot" : `${covered.length} have a shot`}</summary>{listOf(covered)}</details>}
    </section>
  );
}

/** One thing that is needed: where, and the shot that shows it or would. */
function Need({ episode, want }: { episode: Episode; want: EpisodeWant }) {
  const { mend, newId, goTo } = useActions();
  const block = episode.blocks.find(({ id, lines }) => (want.coveredBy === null ? id === want.block : lines.some((line) => line.id === want.coveredBy)));
  const cover = block?.lines.find(({ id }) => id === want.coveredBy);
  const where = block && !want.what.includes(blockName(block)) ? `${blockName(block)}: ` : "";
  return (
    <li>
      <span className={want.need === "must" ? "need must" : "need"}>{want.need}</span>
      <span>{capital(want.what)}<span className="second need-shot">{where}{cover?.text ?? want.shot}</span></span>
      {want.coveredBy === null && <button type="button" className="word-button" aria-label={`Write this shot: ${want.what}`} onClick={() => mend(writeWant(episode, want, newId))}>Write this shot</button>}
      {block && cover && <button type="button" className="word-button" aria-label={`Go to the shot: ${want.what}`} onClick={() => goTo({ block: block.id, line: cover.id })}>Go to it</button>}
    </li>
  );
}
