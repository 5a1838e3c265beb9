/** A block's two shares, in seconds. */
export interface Share {
  readonly floor: number;
  readonly screen: number;
}

/** Where a band meets one edge, in pixels from the top. */
export interface Edge {
  readonly top: number;
  readonly bottom: number;
}

export interface Band {
  readonly left: Edge;
  readonly right: Edge;
}

export interface RibbonShape {
  readonly bands: readonly Band[];
  /** Where slot and target lie on their edges; equal to the height when nothing passes them. */
  readonly limit: { readonly left: number; readonly right: number };
  /** Where the last band ends on each edge. */
  readonly end: { readonly left: number; readonly right: number };
}

/** The thinnest a band may get, so that a block without time yet can still be seen and pressed. */
const THINNEST = 3;

/** One edge: pixel positions of the cuts between blocks, and of the limit. */
function cuts(values: readonly number[], limit: number, height: number): { at: number[]; limit: number } {
  const least = values.length === 0 ? 0 : Math.min(THINNEST, height / (3 * values.length));
  const total = values.reduce((sum, value) => sum + value, 0);
  const scale = Math.max(total, limit) || 1;
  const perSecond = (height - least * values.length) / scale;
  const at = [0];
  for (const value of values) at.push((at.at(-1) ?? 0) + least + value * perSecond);
  if (total <= limit) return { at, limit: height };
  let passed = 0;
  for (const [i, value] of values.entries()) {
    if (passed + value > limit) return { at, limit: (at[i] ?? 0) + least + (limit - passed) * perSecond };
    passed += value;
  }
  return { at, limit: height };
}

/**
 * Lays the running order out between two time axes: floor time down the left edge, screen time down the right.
 * Each axis is as long as its limit (slot, target), or as what is planned when that is longer.
 *
 * @param height - pixels
 */
export function ribbonShape(shares: readonly Share[], slotSeconds: number, targetSeconds: number, height: number): RibbonShape {
  const left = cuts(shares.map((share) => share.floor), slotSeconds, height);
  const right = cuts(shares.map((share) => share.screen), targetSeconds, height);
  const bands = shares.map((_, i) => ({
    left: { top: left.at[i] ?? 0, bottom: left.at[i + 1] ?? 0 },
    right: { top: right.at[i] ?? 0, bottom: right.at[i + 1] ?? 0 },
  }));
  return { bands, limit: { left: left.limit, right: right.limit }, end: { left: left.at.at(-1) ?? 0, right: right.at.at(-1) ?? 0 } };
}

/** How far down the curve between two edge points is, `across` running from 0 (left) to 1 (right). */
export function curveAt(left: number, right: number, across: number): number {
  const t = Math.max(0, Math.min(1, across));
  return left + (right - left) * (3 * t * t - 2 * t * t * t);
}

/** Which band lies under a point, or the nearest when it is above or below all of them; -1 when there are none. */
export function bandAt(shape: RibbonShape, across: number, y: number): number {
  const found = shape.bands.findIndex((band) => y < curveAt(band.left.bottom, band.right.bottom, across));
  return found === -1 ? shape.bands.length - 1 : found;
}

/** Which cut between bands is nearest to a point: 0 is before the first band, `bands.length` after the last. */
export function cutAt(shape: RibbonShape, across: number, y: number): number {
  const on = bandAt(shape, across, y);
  const band = shape.bands[on];
  if (!band) return 0;
  const middle = (curveAt(band.left.top, band.right.top, across) + curveAt(band.left.bottom, band.right.bottom, across)) / 2;
  return y < middle ? on : on + 1;
}

/** SVG path data of the curve from one edge to the other; thirds make the curve of `curveAt`. */
export function curvePath(left: number, right: number, from: number, to: number): string {
  const third = (to - from) / 3;
  return `C${from + third} ${left} ${to - third} ${right} ${to} ${right}`;
}

/** SVG path data of a band between x = `from` and x = `to`, drawn in by `gap` at top and bottom. */
export function bandPath(band: Band, from: number, to: number, gap: number): string {
  const inset = (edge: Edge): Edge => {
    const by = Math.min(gap, (edge.bottom - edge.top) / 3);
    return { top: edge.top + by, bottom: edge.bottom - by };
  };
  const left = inset(band.left);
  const right = inset(band.right);
  return `M${from} ${left.top}${curvePath(left.top, right.top, from, to)}V${right.bottom}${curvePath(right.bottom, left.bottom, to, from)}Z`;
}

/**
 * Which edge figures are shown so that none covers another: those in `first` come before all others, then the larger shares.
 * @param gap - least pixels between the middles of two figures
 */
export function figuresShown(edges: readonly Edge[], gap: number, first: readonly number[] = []): ReadonlySet<number> {
  const middle = (i: number): number => ((edges[i]?.top ?? 0) + (edges[i]?.bottom ?? 0)) / 2;
  const size = (i: number): number => (edges[i]?.bottom ?? 0) - (edges[i]?.top ?? 0);
  const rank = (i: number): number => (first.includes(i) ? 0 : 1);
  const order = edges.map((_, i) => i).sort((a, b) => rank(a) - rank(b) || size(b) - size(a) || a - b);
  const shown = new Set<number>();
  for (const i of order) {
    if ([...shown].every((other) => Math.abs(middle(other) - middle(i)) >= gap)) shown.add(i);
  }
  return shown;
}
