import { useId } from "react";
import { bandPath, curvePath, figuresShown, type RibbonShape } from "./geometry";
import { clock, minutes } from "../words/clock";
import type { RibbonRow } from "./rows";

/** Room for the figures beside the ribbon, in pixels: minutes left, m:ss right. */
export const LEFT_MARGIN = 26;
export const RIGHT_MARGIN = 38;
/** Least pixels between the middles of two edge figures. */
const FIGURE_GAP = 13;

interface Props {
  readonly rows: readonly RibbonRow[];
  readonly shape: RibbonShape;
  readonly width: number;
  readonly height: number;
  /** Indexes; -1 for none. */
  readonly selected: number;
  readonly hovered: number;
  readonly focused: number;
  readonly dragged: number;
  /** The cut a dragged band would drop into, or null. */
  readonly drop: number | null;
}

/** The drawing alone; the same content stands in the list over it for screen readers and keys. */
export function Bands({ rows, shape, width, height, selected, hovered, focused, dragged, drop }: Props) {
  const hatch = useId();
  const outline = useId();
  const from = LEFT_MARGIN;
  const to = width - RIGHT_MARGIN;
  const first = [selected, hovered, focused].filter((i) => i >= 0);
  const leftShown = figuresShown(shape.bands.map((band) => band.left), FIGURE_GAP, first);
  const rightShown = figuresShown(shape.bands.map((band) => band.right), FIGURE_GAP, first);
  const over = shape.limit.left < height || shape.limit.right < height;
  const dropAt = drop === null ? null : cutEdges(shape, drop);
  return (
    <svg className="ribbon-drawing" width={width} height={height} aria-hidden="true">
      <defs>
        <pattern id={hatch} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path d="M1 0V7" className="ribbon-hatch-line" />
        </pattern>
        <clipPath id={outline}>
          <path d={`M${from} 0H${to}V${shape.end.right}${curvePath(shape.end.right, shape.end.left, to, from)}Z`} />
        </clipPath>
      </defs>
      <path className="ribbon-free" d={`M${from} ${shape.end.left}V${height}M${to} ${shape.end.right}V${height}`} />
      {shape.bands.map((band, i) => (
        <path
          key={rows[i]?.id}
          d={bandPath(band, from, to, 1.2)}
          className={`ribbon-band${i === selected ? " selected" : ""}${i === hovered ? " hovered" : ""}${i === dragged ? " dragged" : ""}`}
        />
      ))}
      {over && (
        <g clipPath={`url(#${outline})`}>
          <path fill={`url(#${hatch})`} d={`M${from} ${shape.limit.left}${curvePath(shape.limit.left, shape.limit.right, from, to)}V${height}H${from}Z`} />
        </g>
      )}
      {over && <path className="ribbon-limit" d={`M${from - 6} ${shape.limit.left}H${from}${curvePath(shape.limit.left, shape.limit.right, from, to)}H${to + 6}`} />}
      {shape.bands.map((band, i) => {
        const row = rows[i];
        if (!row) return null;
        const strong = first.includes(i) ? "ribbon-figure strong" : "ribbon-figure";
        return (
          <g key={row.id}>
            {leftShown.has(i) && <text className={strong} x={from - 5} y={(band.left.top + band.left.bottom) / 2 + 4} textAnchor="end">{minutes(row.floor)}</text>}
            {rightShown.has(i) && <text className={strong} x={to + 5} y={(band.right.top + band.right.bottom) / 2 + 4}>{clock(row.screen)}</text>}
          </g>
        );
      })}
      <FocusRing shape={shape} focused={focused} onPlum={focused === selected} from={from} to={to} />
      {dropAt && (
        <g className="ribbon-drop">
          <path d={`M${from - 8} ${dropAt.left}H${from}${curvePath(dropAt.left, dropAt.right, from, to)}H${to + 8}`} />
          <path d={`M${from - 8} ${dropAt.left - 5}v10M${to + 8} ${dropAt.right - 5}v10`} />
        </g>
      )}
    </svg>
  );
}

/** Follows the band's own shape; inside a selected band it is drawn in the colour that stands on plum. */
function FocusRing({ shape, focused, onPlum, from, to }: { shape: RibbonShape; focused: number; onPlum: boolean; from: number; to: number }) {
  const band = shape.bands[focused];
  if (!band) return null;
  return <path className={onPlum ? "ribbon-focus on-plum" : "ribbon-focus"} d={bandPath(band, from + (onPlum ? 4 : 0), to - (onPlum ? 4 : 0), onPlum ? 5 : -1)} />;
}

/** The edge points of a cut: 0 above the first band, then below each band. */
export function cutEdges(shape: RibbonShape, cut: number): { left: number; right: number } {
  const band = shape.bands[cut - 1];
  return band ? { left: band.left.bottom, right: band.right.bottom } : { left: 0, right: 0 };
}
