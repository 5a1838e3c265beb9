import type { Pen, RuleWeight } from "./pen";

/**
 * A slice of a page that is drawn as one: a line of text, a table row, a drawing.
 * Layout turns the tree into a stack of these; the stack is then cut into pages.
 */
export interface Piece {
  readonly height: number;
  /** Space above it, dropped at the top of a page; and below it, dropped at the foot. */
  readonly before: number;
  readonly after: number;
  /** The next piece must stand on the same page. */
  readonly glue: boolean;
  /** @param y - top of the piece, from the top of the page */
  readonly paint: (pen: Pen, x: number, y: number) => void;
  /** Cuts it in two for a page that has `room` points left; only asked when it is taller than a page. Null: cannot be. */
  readonly split?: (room: number) => readonly [Piece, Piece] | null;
  /** Drawn again above it when it begins a page: the head of its table. */
  readonly head?: Piece;
  /** Begins a new page and draws nothing. */
  readonly breaks?: true;
  /** Empty room between two things, dropped at the top of a page. */
  readonly gap?: true;
}

export const blank: Piece = { height: 0, before: 0, after: 0, glue: false, paint: () => undefined };

/** Where each piece of a stack stands below the stack's top, and how high the stack is. */
export function stack(pieces: readonly Piece[]): { readonly tops: readonly number[]; readonly height: number } {
  let y = 0;
  let space = 0;
  const tops = pieces.map((piece, i) => {
    y += i === 0 ? 0 : space + piece.before;
    const top = y;
    y += piece.height;
    space = piece.after;
    return top;
  });
  return { tops, height: y };
}

/** How many pieces from `from` on must stay on one page. */
function groupEnd(pieces: readonly Piece[], from: number): number {
  let end = from;
  while (pieces[end]?.glue && end + 1 < pieces.length && !pieces[end + 1]?.breaks) end++;
  return end + 1;
}

const withHead = (pieces: readonly Piece[]): readonly Piece[] => {
  const head = pieces[0]?.head;
  return head ? [head, ...pieces] : pieces;
};

/** Smallest strip worth beginning something tall in; below it, the tall thing begins on the next page. */
const MIN_STRIP = 72;

/** Fills `room` from the top of a stack; the rest comes back. `begun` says that the page already holds something. */
function fill(pieces: readonly Piece[], room: number, page: number, begun: boolean): readonly [readonly Piece[], readonly Piece[]] {
  const taken: Piece[] = [];
  let at = 0;
  let left = room;
  while (at < pieces.length) {
    const first = pieces[at];
    if (!first) break;
    const fresh = taken.length === 0 && !begun;
    if (first.breaks) {
      // The break itself is used up by the page it ends.
      if (!fresh) return [taken, pieces.slice(at + 1)];
      at++;
      continue;
    }
    if (fresh && first.gap) {
      at++;
      continue;
    }
    const space = taken.length === 0 ? (begun ? first.before : 0) : (taken.at(-1)?.after ?? 0) + first.before;
    const end = groupEnd(pieces, at);
    const group = pieces.slice(at, end);
    const height = stack(group).height;
    if (space + height <= left + 1e-6) {
      taken.push(...group);
      left -= space + height;
      at = end;
      continue;
    }
    // It fits a page of its own: leave it for the next one.
    if (!fresh && stack(withHead(group)).height <= page) return [taken, withHead(pieces.slice(at))];
    // Too tall for any page: piece by piece, and the piece that is itself too tall is cut.
    const strip = left - space - (first.glue ? first.height : 0);
    if (!fresh && strip < MIN_STRIP) return [taken, withHead(pieces.slice(at))];
    if (space + first.height <= left + 1e-6) {
      taken.push({ ...first, glue: false });
      left -= space + first.height;
      at++;
      continue;
    }
    const halves = first.split?.(left - space);
    if (halves) return [[...taken, halves[0]], withHead([halves[1], ...pieces.slice(at + 1)])];
    if (!fresh) return [taken, withHead(pieces.slice(at))];
    // Nothing is left to try: it overflows an empty page. Layout keeps every piece below that height.
    taken.push(first);
    at++;
    left = 0;
  }
  return [taken, []];
}

/** Cuts a stack in two at most `room` below its top. */
export function splitStack(pieces: readonly Piece[], room: number): readonly [readonly Piece[], readonly Piece[]] {
  return fill(pieces, room, room, false);
}

/**
 * Cuts a stack into pages.
 * @param room - height of a full page's content
 * @param first - what is left of the first page; less than `room` when something stands on it already
 */
export function paginate(pieces: readonly Piece[], room: number, first = room): (readonly Piece[])[] {
  const pages: (readonly Piece[])[] = [];
  let rest: readonly Piece[] = pieces;
  let left = first;
  do {
    const [taken, more] = fill(rest, left, room, left < room);
    pages.push(taken);
    rest = more;
    left = room;
  } while (rest.length > 0);
  return pages;
}

export interface Cell {
  /** Offset from the left edge, and width. */
  readonly x: number;
  readonly width: number;
  readonly pieces: readonly Piece[];
}

export interface Frame {
  readonly padding: { readonly top: number; readonly bottom: number };
  readonly width: number;
  readonly valign?: "top" | "middle";
  readonly above?: RuleWeight;
  readonly below?: RuleWeight;
  /** Line all round, or a bar at the left. */
  readonly edge?: "outline" | "bar";
}

const BAR = 3.6;

/** Stacks side by side, drawn as one piece: a table row, columns, a box. Taller than a page, it is cut through all of them. */
export function sideBySide(cells: readonly Cell[], frame: Frame): Piece {
  const stacks = cells.map((cell) => stack(cell.pieces));
  const inner = Math.max(0, ...stacks.map((s) => s.height));
  const { padding, width } = frame;
  const height = inner + padding.top + padding.bottom;
  return {
    ...blank,
    height,
    paint: (pen, x, y) => {
      const { above, below, edge } = frame;
      if (above ?? below ?? edge) {
        pen.artifact(() => {
          if (above) pen.rule(above, x, y, width);
          if (below) pen.rule(below, x, y + height, width);
          if (edge === "outline") pen.rect(x + 0.6, y + 0.6, width - 1.2, height - 1.2, { width: 1.2, grey: 0 });
          if (edge === "bar") pen.area(x, y, BAR, height, 0);
        });
      }
      cells.forEach((cell, c) => {
        const laid = stacks[c];
        if (!laid) return;
        const top = y + padding.top + (frame.valign === "middle" ? (inner - laid.height) / 2 : 0);
        cell.pieces.forEach((piece, i) => piece.paint(pen, x + cell.x, top + (laid.tops[i] ?? 0)));
      });
    },
    split: (room) => {
      const halves = cells.map((cell) => splitStack(cell.pieces, room - padding.top - padding.bottom));
      if (room - padding.top - padding.bottom < 14) return null;
      const part = (which: 0 | 1) => sideBySide(cells.map((cell, c) => ({ ...cell, pieces: halves[c]?.[which] ?? [] })), { ...frame, valign: "top" });
      return [part(0), part(1)];
    },
  };
}
