import { faceOf, type FaceName, type FontBook, type StyledText, type TextStyle } from "./fonts";
import type { Form } from "./form";
import type { Outline } from "./outline";
import type { Piece } from "./pieces";
import type { Tag } from "./tagger";
import { wrap, type TextLine } from "./text";
import { runsOf, type Run, type Text, type Weight } from "./tree";

/** What laying out needs to know beyond the tree. */
export interface Room {
  readonly fonts: FontBook;
  readonly form: Form;
  readonly outline: Outline;
  /** Height of a page's content; nothing unsplittable may be taller. Points. */
  readonly page: number;
}

/** Line height as a multiple of the size. */
export const LEADING = { body: 1.38, heading: 1.16 } as const;

export interface TextSetting {
  readonly size: number;
  readonly weight?: Weight;
  readonly grey?: boolean;
  readonly leading?: number;
  readonly align?: "left" | "right" | "centre";
}

/** The lines of a text at a width. */
export function lines(text: Text, width: number, set: TextSetting, fonts: FontBook): readonly TextLine<TextStyle>[] {
  const styles = new Map<string, TextStyle>();
  const styled: StyledText[] = runsOf(text).flatMap((run: Run) => {
    const want: FaceName = faceOf(run.weight ?? set.weight ?? "regular", run.italic ?? false);
    const size = run.size ?? set.size;
    const grey = run.grey ?? set.grey ?? false;
    return fonts.split(run.text, want).map(({ text: part, face }) => {
      const key = `${face} ${size} ${grey}`;
      const style = styles.get(key) ?? { face, size, grey };
      // Squares never join: each stands for its own character, so each has a style of its own.
      if (face !== "missing") styles.set(key, style);
      return { text: part, style };
    });
  });
  return wrap(styled, width, (part, style) => fonts.measure(part, style.face, style.size));
}

/** One piece a line; first two and last two lines stay together, so that none stands alone. */
export function textPieces(text: Text, width: number, set: TextSetting, tag: Tag | null, room: Room, space: { before?: number; after?: number; glue?: boolean } = {}): Piece[] {
  const laid = lines(text, width, set, room.fonts);
  return laid.map((line, i) => {
    const size = Math.max(set.size * (line.segments.length === 0 ? 1 : 0), ...line.segments.map((segment) => segment.style.size));
    const height = size * (set.leading ?? LEADING.body);
    const shift = set.align === "right" ? width - line.width : set.align === "centre" ? (width - line.width) / 2 : 0;
    const last = i === laid.length - 1;
    return {
      height,
      before: i === 0 ? (space.before ?? 0) : 0,
      after: last ? (space.after ?? 0) : 0,
      glue: last ? (space.glue ?? false) : i === 0 || i === laid.length - 2,
      paint: (pen, x, y) => {
        // Capitals stand in the middle of the line.
        const draw = () => pen.text(line, x + shift, y + height / 2 + size * 0.33);
        if (tag) pen.mark(tag, draw);
        else pen.artifact(draw);
      },
    };
  });
}

/** Pieces that stay on one page with each other. */
export const glued = (pieces: readonly Piece[]): readonly Piece[] => pieces.map((piece, i) => (i < pieces.length - 1 ? { ...piece, glue: true } : piece));
