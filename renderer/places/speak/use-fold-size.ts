import { useEffect, useMemo, useState, type RefObject } from "react";
import { useSize } from "../../words/use-size";
import { rowSecondsFor, type FoldSize } from "./fold";

/** The say size in rem, as in the tokens. */
const SAY_REM = 1.03125;

/** How wide words are in the page's own face; each word is measured once. */
function wordMeasure(pixels: number): (text: string) => number {
  const pen = document.createElement("canvas").getContext("2d");
  if (pen) pen.font = `400 ${pixels}px "Atkinson Hyperlegible Next", sans-serif`;
  const known = new Map<string, number>();
  return (text) => {
    const hit = known.get(text);
    if (hit !== undefined) return hit;
    const wide = pen ? pen.measureText(text).width : text.length * pixels * 0.5;
    known.set(text, wide);
    return wide;
  };
}

/**
 * The size of a row of ruler. Changes with the place's width, the text size and the pace, never with the words, so typing does not fold anew.
 * @param ruler - an element as wide as the rulers; `rem` - one that is 1 rem wide
 */
export function useFoldSize(ruler: RefObject<HTMLElement | null>, rem: RefObject<HTMLElement | null>, syllablesPerSecond: number): FoldSize | null {
  const { width } = useSize(ruler);
  const { width: pixels } = useSize(rem);
  const [faces, setFaces] = useState(0);
  useEffect(() => {
    let gone = false;
    void document.fonts.ready.then(() => {
      if (!gone) setFaces((seen) => seen + 1);
    });
    return () => {
      gone = true;
    };
  }, []);
  const size = pixels || 16;
  // Measured again once the faces are there: until then a stand-in is as wide as it is.
  const measure = useMemo(() => (faces >= 0 ? wordMeasure(size * SAY_REM) : wordMeasure(size)), [size, faces]);
  return useMemo(() => (width > 0 ? { width, measure, rowSeconds: rowSecondsFor(width, syllablesPerSecond, size) } : null), [width, measure, syllablesPerSecond, size]);
}
