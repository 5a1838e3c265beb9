import type { Finding, Moment } from "../../shared/checks";
import type { Place } from "../session/types";

/** Which place a moment's findings are counted at; Write shows them all, so it counts none. */
const PLACE_OF: Readonly<Record<Moment, Place>> = { "before filming": "shoot", "before speaking": "speak", "before publishing": "publish" };

/** Findings still open, by the place where they are dealt with. */
export function openCounts(findings: readonly Finding[]): Record<Place, number> {
  const counts: Record<Place, number> = { write: 0, train: 0, shoot: 0, speak: 0, publish: 0 };
  for (const finding of findings) if (finding.waiver === null) counts[PLACE_OF[finding.moment]]++;
  return counts;
}
