import type { Episode } from "../../../shared/episode";
import type { ShootBlock } from "../../../shared/shoot-plan";

interface Part {
  readonly episode: Episode;
  readonly shoot: ShootBlock;
  readonly number: number;
}

/** What the plan decides of a block; its sets, wants and marks follow from the block and the session. */
const decided = ({ stands, shots, lost, moves, kept }: ShootBlock): string => JSON.stringify([stands, shots, lost, moves, kept]);

/** Whether a block's part would be drawn the same: an edit to one block leaves the others as they are. */
export function samePart(a: Part, b: Part): boolean {
  if (a.number !== b.number || a.shoot.block !== b.shoot.block || a.episode.session !== b.episode.session || a.episode.video !== b.episode.video) return false;
  return a.shoot === b.shoot || decided(a.shoot) === decided(b.shoot);
}
