import type { LevelCounts } from "../shared/checks";
import { countsInWords, gravest } from "./words/open-counts";

/** Under a place's name: its gravest open findings, and how many lesser ones. Read out in full. */
export function PlaceCount({ counts }: { counts: LevelCounts }) {
  const worst = gravest(counts);
  if (worst === null) return <small><span className="more">nothing open</span></small>;
  return (
    <small>
      <span aria-hidden="true"><span className={`count ${worst.level}`}>{worst.count} {worst.level}</span>{worst.more > 0 && <span className="more">, {worst.more} more</span>}</span>
      <span className="visually-hidden">, open findings: {countsInWords(counts)}</span>
    </small>
  );
}
