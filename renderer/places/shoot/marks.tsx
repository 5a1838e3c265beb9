import { blockFilming } from "../../../shared/episode";
import { floorMark, markWords, metres, standOf, tiltInWords, type BlockFloor } from "../../../shared/filming";
import type { ShootBlock } from "../../../shared/shoot-plan";
import { useActions } from "../../session/context";
import { stepsSaid } from "./mark-words";

/** Where the camera stands: the numbers a person needs on the floor, large, and what the frame shows from there. */
export function Marks({ shoot: { block, marks }, floor }: { shoot: ShootBlock; floor: BlockFloor }) {
  const { mend } = useActions();
  const filming = blockFilming(block);
  return (
    <ul className="marks">
      {marks.map((mark) => {
        const placed = floorMark(floor, mark);
        const stand = standOf(floor, mark);
        return (
          <li key={mark.key}>
            <p><b>{mark.letter}</b> {markWords(mark)}</p>
            <dl>
              <div><dt>away, {stepsSaid(stand.steps)}</dt><dd>{metres(stand.distance)}</dd></div>
              <div><dt>{stand.level ? `high, at the ${stand.level}` : "high"}{stand.tilt === 0 ? "" : `, ${tiltInWords(stand.tilt)}`}</dt><dd>{metres(stand.height)}</dd></div>
            </dl>
            {placed && <p className="second">Shows {placed.shows}.</p>}
            {placed?.isMoved && (
              <button type="button" className="word-button" onClick={() => mend([{ type: "set-block", block: block.id, fields: { filming: { ...filming, marks: filming.marks.filter(({ mark: key }) => key !== mark.key) } } }])}>
                Put {mark.letter} back
              </button>
            )}
          </li>
        );
      })}
    </ul>
  );
}
