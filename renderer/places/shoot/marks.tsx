import type { BlockFilming } from "../../../shared/episode";
import type { BlockFloor } from "../../../shared/filming";
import type { ShootBlock } from "../../../shared/shoot-plan";
import { useActions } from "../../session/context";
import { markWords, stepsInWords, tiltInWords } from "./mark-words";

/** Where the camera stands: the numbers a person needs on the floor, large, and what the frame shows from there. */
export function Marks({ shoot: { block, marks }, floor }: { shoot: ShootBlock; floor: BlockFloor }) {
  const { mend } = useActions();
  const filming: BlockFilming = block.filming ?? { marks: [], filmed: [] };
  return (
    <ul className="marks">
      {marks.map((mark) => {
        const placed = floor.marks.find(({ mark: key }) => key === mark.key);
        const stand = placed?.stand ?? mark.stand;
        return (
          <li key={mark.key}>
            <p><b>{mark.letter}</b> {markWords(mark)}</p>
            <dl>
              <div><dt>away, {stepsInWords(stand.steps)}</dt><dd>{stand.distance.toFixed(1)} m</dd></div>
              <div><dt>{stand.level ? `high, at the ${stand.level}` : "high"}{stand.tilt === 0 ? "" : `, ${tiltInWords(stand.tilt)}`}</dt><dd>{stand.height.toFixed(1)} m</dd></div>
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
