import type { PaperSize } from "../types";

/** The face by the name its files give it; a program that lacks it takes the stand-in named in the font table. */
export const FACE = "Atkinson Hyperlegible Next";
/** Word's own face for tick boxes, installed with it everywhere. */
export const TICK_FACE = "MS Gothic";

export const BLACK = "000000";
/** Dark grey, 8:1 on white. */
export const GREY = "4D4D4D";
/** Hair rules. */
export const PALE = "A6A6A6";

/** Points to twips, twentieths of a point (ECMA-376 part 1, ST_TwipsMeasure). */
export const twips = (points: number): number => Math.round(points * 20);
/** Points to half-points, the unit of type sizes (ST_HpsMeasure). */
export const halfPoints = (points: number): number => Math.round(points * 2);
/** Points to eighths of a point, the unit of border widths (ST_EighthPointMeasure). */
export const eighths = (points: number): number => Math.round(points * 8);
/** Points to CSS pixels (96 to the inch), the unit drawings are measured in. */
export const pixels = (points: number): number => (points * 96) / 72;

/** Sheet sizes in points: ISO 216 A4 (210 x 297 mm) and US Letter (8.5 x 11 in). */
export const SHEETS: Readonly<Record<PaperSize, { readonly width: number; readonly height: number }>> = {
  a4: { width: 595.3, height: 841.9 },
  letter: { width: 612, height: 792 },
};

/** Distances from the sheet's edges to text, in points. `head` and `foot` are where the running lines stand. */
export const MARGINS = { side: 42, top: 40, topUnderHead: 68, bottom: 58, head: 32, foot: 26 } as const;
