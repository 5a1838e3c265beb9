import { memo, useMemo, useRef, type CSSProperties } from "react";
import { blockFilming, blockName, type Episode, type PlacedMark } from "../../../shared/episode";
import { floorOf } from "../../../shared/filming";
import type { ShootBlock, ShootPlan } from "../../../shared/shoot-plan";
import { useActions } from "../../session/context";
import { count } from "../../words/count";
import { useNear } from "../../words/use-near";
import { BlockPart } from "../place";
import { CoverageTable } from "./coverage-table";
import { FloorPlan } from "./floor-plan";
import { Lost } from "./lost";
import { Marks } from "./marks";
import { Room } from "./room";
import { samePart } from "./same-part";

/** Pixels outside of what is in sight in which a part is drawn in full. */
const NEAR = 1200;

interface Props {
  readonly episode: Episode;
  readonly plan: ShootPlan;
  readonly shoot: ShootBlock;
  readonly number: number;
}

/** One block: where its marks stand, what each set is filmed from, and what is lost. */
export const ShootPart = memo(function ShootPart({ episode, plan, shoot, number }: Props) {
  const { goTo } = useActions();
  const root = useRef<HTMLDivElement>(null);
  const isNear = useNear(root, ".app-place", NEAR);
  const { block, sets, marks, moves, lost, recordedSeconds } = shoot;
  const words = [`${Math.ceil(recordedSeconds / 60)} min recorded`, ...(moves.length > 0 ? [count(moves.length, "move")] : []), ...(lost.length > 0 ? [`${lost.length} lost`] : [])].join(", ");
  return (
    <BlockPart block={block} number={number} aside={marks.length > 0 ? words : undefined}>
      <div ref={root}>
        {marks.length === 0
          ? <p><span className="missing">No shot.</span> <button type="button" className="word-button" onClick={() => goTo({ block: block.id })}>Write one</button></p>
          : isNear ? <Station episode={episode} plan={plan} shoot={shoot} /> : <div className="station-afar" style={{ "--marks": marks.length, "--sets": sets.length } as CSSProperties} aria-hidden="true" />}
      </div>
    </BlockPart>
  );
}, samePart);

function Station({ episode, plan, shoot }: Omit<Props, "number">) {
  const { mend } = useActions();
  const { block, kept, marks } = shoot;
  const floor = useMemo(() => floorOf(episode, block), [episode, block]);
  const filming = blockFilming(block);
  const onMove = (placed: PlacedMark): void => mend([{ type: "set-block", block: block.id, fields: { filming: { ...filming, marks: [...filming.marks.filter(({ mark }) => mark !== placed.mark), placed] } } }]);
  return (
    <>
      <div className="station">
        <FloorPlan floor={floor} name={blockName(block)} onMove={onMove} />
        <Marks shoot={shoot} floor={floor} />
      </div>
      {floor.problems.length > 0 && <ul className="floor-problems">{floor.problems.map((problem) => <li key={problem}>{problem}</li>)}</ul>}
      {kept.length > 0 && <p className="second">{kept.map(({ camera, mark }) => `${episode.session.cameras > 1 ? `Camera ${camera}` : "The camera"} stays at ${marks.find(({ key }) => key === mark)?.letter ?? mark} from the block before.`).join(" ")}</p>}
      <CoverageTable shoot={shoot} cameras={episode.session.cameras} />
      <Lost plan={plan} shoot={shoot} />
      <Room session={episode.session} floor={floor} />
    </>
  );
}
