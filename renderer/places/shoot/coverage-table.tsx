import { Fragment } from "react";
import { blockName } from "../../../shared/episode";
import { markWords, secondsOf, type Shot } from "../../../shared/filming";
import type { ShootBlock } from "../../../shared/shoot-plan";
import { WideTable } from "../place";
import { coverageRows, type CoverageCell } from "./coverage-rows";

/** Sets down, marks across: what is filmed where, where a camera only stands, and what is carried in between. */
export function CoverageTable({ shoot, cameras }: { shoot: ShootBlock; cameras: number }) {
  return (
    <WideTable label={`Sets and marks of ${blockName(shoot.block)}`}>
      <thead>
        <tr>
          <th scope="col">Filmed on</th>
          {shoot.marks.map((mark) => <th key={mark.key} scope="col"><b className="mark-letter">{mark.letter}</b> {markWords(mark)}</th>)}
        </tr>
      </thead>
      <tbody>
        {coverageRows(shoot, cameras).map(({ set, work, cells, move }) => (
          <Fragment key={set.id}>
            {move && <tr className="move"><td colSpan={shoot.marks.length + 1} className={move.fits ? "second" : "second late"}>{move.words}</td></tr>}
            <tr>
              <th scope="row">{set.name} {work !== "" && <span className="second">{work}</span>}</th>
              {cells.map((cell, i) => <Cell key={shoot.marks[i]?.key ?? i} cell={cell} cameras={cameras} />)}
            </tr>
          </Fragment>
        ))}
      </tbody>
    </WideTable>
  );
}

function Cell({ cell: { cameras: here, shots }, cameras }: { cell: CoverageCell; cameras: number }) {
  if (here.length === 0) return <td><span className="soft" aria-hidden="true">–</span><span className="visually-hidden">no camera</span></td>;
  return (
    <td className="stands">
      {cameras > 1 && <span className="second camera">camera {here.join(" and ")}</span>}
      {shots.length === 0 ? <span className="second">stands, spare take</span> : shots.map((shot, i) => <ShotWords key={i} shot={shot} />)}
    </td>
  );
}

function ShotWords({ shot }: { shot: Shot }) {
  return <p className="shot-words">{shot.subject || "whole movement"} <span className="second">{`${secondsOf(shot)}\u00a0s`}{shot.need === "nice" ? ", nice" : ""}</span></p>;
}
