import { Suspense, lazy } from "react";
import { blockName, type Block } from "../../shared/episode";
import { cameraMoves, marksOf, recording, secondsOf, setupOf, type Mark, type Shot } from "../../shared/filming";
import { useActions, useSession } from "../session/context";
import { count, listed } from "../words/count";
import { BackFromGym } from "./back-from-gym";
import { BlockPart, EmptyPlace, Figure, PlaceFrame, WideTable } from "./place";
import { coverageRows, isUnfilmed, markWords } from "./shoot-rows";
import "./shoot.css";

const PaperPreview = lazy(() => import("../papers").then(({ PaperPreview: preview }) => ({ default: preview })));

/** Which mark films which set, from where, how far and how high. */
export function Shoot() {
  const { episode } = useSession();
  const { minutes, gigabytes, batteries } = recording(episode);
  const unfilmed = episode.blocks.filter(isUnfilmed);
  const moves = episode.blocks.reduce((sum, block) => sum + cameraMoves(block).length, 0);
  return (
    <PlaceFrame
      title="Shoot"
      about={`Which mark films which set, with ${episode.session.cameras === 2 ? "two cameras" : "one camera"}. Distances are for a phone's main lens held ${episode.video.aspect === "9:16" ? "upright" : "sideways"}.`}
      figures={
        <>
          <Figure value={count(moves, "move")} label="of the camera between sets" />
          <Figure value={`${Math.ceil(minutes)} min`} label={`recorded, ${batteries > 1 ? `${Math.ceil(batteries)} batteries` : "one battery holds"}`} />
          <Figure value={`${gigabytes.toFixed(1)} GB`} label="free on the card, margin included" />
        </>
      }
    >
      {episode.blocks.length === 0 && <EmptyPlace>No shots yet. Write a line that begins with "shot:", such as "shot: side, full, set 2: the whole arm path".</EmptyPlace>}
      {unfilmed.length > 0 && (
        <p className="missing unfilmed">
          {unfilmed.length === 1 ? "One block has" : `${count(unfilmed.length, "block")} have`} no shot: {listed(unfilmed.map(blockName))}. Nothing of {unfilmed.length === 1 ? "it" : "them"} would be filmed.
        </p>
      )}
      {episode.blocks.map((block, i) => <ShootPart key={block.id} block={block} number={i + 1} />)}
      {episode.blocks.length > 0 && <BackFromGym />}
      {episode.blocks.length > 0 && (
        <>
          <h2>The shot list on paper</h2>
          <Suspense fallback={<p className="soft">Fetching the paper.</p>}>
            <PaperPreview document="shot-list.pdf" />
          </Suspense>
        </>
      )}
    </PlaceFrame>
  );
}

function ShootPart({ block, number }: { block: Block; number: number }) {
  const { episode } = useSession();
  const actions = useActions();
  const marks = marksOf(block, setupOf(episode, block));
  const moves = cameraMoves(block);
  const rows = coverageRows(block, marks, new Map(moves.map((move) => [move.afterSet, move.seconds])));
  const blockMinutes = recording([block]).minutes;
  return (
    <BlockPart block={block} number={number} aside={marks.length > 0 ? `${Math.ceil(blockMinutes)} min recorded${moves.length > 0 ? `, ${count(moves.length, "move")}` : ""}` : undefined}>
      {marks.length === 0 ? (
        <p><span className="missing">No shot.</span> <button type="button" className="word-button" onClick={() => actions.goTo({ block: block.id })}>Write one</button></p>
      ) : (
        <>
          <Marks marks={marks} />
          <WideTable label={`Sets and marks of ${blockName(block)}`}>
            <thead>
              <tr>
                <th scope="col">Filmed on</th>
                {marks.map((mark) => <th key={mark.letter} scope="col">{mark.letter}, {markWords(mark)}</th>)}
              </tr>
            </thead>
            <tbody>
              {rows.map((row) => (
                <tr key={row.name}>
                  <th scope="row">
                    {row.name} <span className="second">{row.work}</span>
                    {row.name === "No such set" && <span className="missing"> The shot names a set that is not planned.</span>}
                    {row.moveBefore !== null && <span className="second move">move first, {row.moveBefore} s of the rest</span>}
                  </th>
                  {row.shots.map((shots, i) => <td key={marks[i]?.letter}>{shots.length === 0 ? <NotFilmed /> : shots.map((shot, j) => <ShotWords key={j} shot={shot} />)}</td>)}
                </tr>
              ))}
            </tbody>
          </WideTable>
        </>
      )}
    </BlockPart>
  );
}

function NotFilmed() {
  return <><span className="soft" aria-hidden="true">–</span><span className="visually-hidden">not filmed</span></>;
}

function ShotWords({ shot }: { shot: Shot }) {
  return (
    <p className="shot-words">
      {shot.subject || "whole movement"} <span className="second">{secondsOf(shot)} s{shot.need === "nice" ? ", if there is time" : ""}</span>
    </p>
  );
}

/** Where the camera stands: the numbers a person needs on the floor, large. */
function Marks({ marks }: { marks: readonly Mark[] }) {
  return (
    <ul className="marks">
      {marks.map((mark) => (
        <li key={mark.letter}>
          <p><b>{mark.letter}</b> {markWords(mark)}</p>
          <dl>
            <div><dt>away, {stepsInWords(mark.stand.steps)}</dt><dd>{mark.stand.distance.toFixed(1)} m</dd></div>
            <div><dt>{mark.stand.level ? `high, at the ${mark.stand.level}` : "high"}</dt><dd>{mark.stand.height.toFixed(1)} m</dd></div>
          </dl>
        </li>
      ))}
    </ul>
  );
}

/** "4 steps", "2½ steps", "half a step" */
function stepsInWords(steps: number): string {
  if (steps === 0.5) return "half a step";
  const whole = Math.floor(steps);
  return `${whole}${steps > whole ? "½" : ""} ${steps === 1 ? "step" : "steps"}`;
}
