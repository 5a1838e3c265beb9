import { useRef } from "react";
import { useSession } from "../session/context";
import { AddBlock } from "./add-block";
import { RibbonPlot } from "./ribbon-plot";
import { axisHeads, ribbonRows, sameRows, type AxisHead, type RibbonRow } from "./rows";
import "./ribbon.css";

/** The running order: what each block costs on the floor, and what it gives on screen. */
export function Ribbon() {
  const { episode, clocks, here, place } = useSession();
  const rows = useSameRows(ribbonRows(episode, clocks));
  const heads = axisHeads(clocks);
  return (
    <div className="ribbon">
      <div className="ribbon-heads">
        <Head {...heads.floor} />
        <Head {...heads.screen} />
      </div>
      <RibbonPlot rows={rows} slot={clocks.gym.slotSeconds} target={clocks.screen.targetSeconds} here={here.block} isWriting={place === "write"} />
      <AddBlock />
    </div>
  );
}

/** Keeps the rows' identity while they say the same, so that the drawing rests during typing. */
function useSameRows(next: readonly RibbonRow[]): readonly RibbonRow[] {
  const kept = useRef(next);
  if (!sameRows(kept.current, next)) kept.current = next;
  return kept.current;
}

function Head({ label, figure, over }: AxisHead) {
  return (
    <p className="ribbon-head">
      {label} <b>{figure}</b>
      {over && <em>{over}</em>}
    </p>
  );
}
