import type { Pen } from "./pen";

interface Size {
  readonly width: number;
  readonly height: number;
}

/** White round a page, points. */
export interface Margins {
  readonly side: number;
  readonly top: number;
  readonly bottom: number;
}

/** Small pages on a sheet that is folded in half twice. */
export const PANELS = 4;
/** A fold takes a millimetre or two of a page, and a printer does not reach the edge. */
export const PANEL_MARGIN: Margins = { side: 24, top: 22, bottom: 20 };

export const panelSize = ({ width, height }: Size): Size => ({ width: width / 2, height: height / 2 });

/**
 * Where the small pages lie on the sheet, so that it reads like a booklet when the upper half is folded back and the left half behind the
 * right one: 1 in front and 4 at the back along the lower half; 2 and 3 inside, upside down along the upper half.
 * @returns the matrix of small page `index` (0 to 3)
 */
export function panelMatrix(index: number, { width, height }: Size): readonly [number, number, number, number, number, number] {
  const w = width / 2;
  switch (index % PANELS) {
    case 0: return [1, 0, 0, 1, w, 0];
    case 1: return [-1, 0, 0, -1, width, height];
    case 2: return [-1, 0, 0, -1, w, height];
    default: return [1, 0, 0, 1, 0, 0];
  }
}

/** The two folds as thin dashed lines. */
export function paintFolds(pen: Pen, { width, height }: Size): void {
  const stroke = { width: 0.5, grey: 0.6, dash: [2, 4] as const };
  pen.artifact(() => {
    pen.line([[0, height / 2], [width, height / 2]], stroke);
    pen.line([[width / 2, 0], [width / 2, height]], stroke);
  });
}
