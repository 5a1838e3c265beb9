import type { FloorSide } from "../../../shared/episode";
import type { Strip, WallLine } from "./plan-geometry";

/** A wall of the room; a mirror is drawn as two lines and says so. */
export function Wall({ side, wall: [x1, y1, x2, y2], isMirror }: { side: FloorSide; wall: WallLine; isMirror: boolean }) {
  if (!isMirror) return <path d={`M${x1} ${y1}L${x2} ${y2}`} className="plan-wall" />;
  const isAcross = side === "ahead" || side === "behind";
  // The glass is on the inner side.
  const [dx, dy] = { ahead: [0, 4], behind: [0, -4], left: [4, 0], right: [-4, 0] }[side] as [number, number];
  const word = isAcross ? { x: x2 - 8, y: side === "ahead" ? y1 + 19 : y1 - 11, anchor: "end" as const } : { x: side === "left" ? x1 + 11 : x1 - 11, y: y2 - 34, anchor: side === "left" ? "start" as const : "end" as const };
  return (
    <g className="plan-mirror">
      <path className="plan-wall" d={`M${x1} ${y1}L${x2} ${y2}`} />
      <path d={`M${x1 + dx} ${y1 + dy}L${x2 + dx} ${y2 + dy}`} />
      <text x={word.x} y={word.y} textAnchor={word.anchor}>mirror</text>
    </g>
  );
}

/** The strip where people walk past: nothing stands there. */
export function Aisle({ side, strip: { x, y, width, height }, fill }: { side: FloorSide; strip: Strip; fill: string }) {
  const isAcross = side === "ahead" || side === "behind";
  return (
    <g className="plan-aisle">
      <rect x={x} y={y} width={width} height={height} style={{ fill }} />
      {isAcross ? <text x={x + 8} y={y + height - 4}>aisle, keep free</text> : <text transform={`translate(${x + width - 4} ${y + height - 34}) rotate(-90)`}>aisle, keep free</text>}
    </g>
  );
}
