import { useEffect, useId, useRef, useState } from "react";
import { pageText, type PDFDocumentProxy } from "./pdf";

interface Props {
  readonly pdf: PDFDocumentProxy;
  readonly number: number;
  readonly title: string;
  /** CSS pixels. */
  readonly width: number;
}

/** One page as a picture, drawn when it comes near the screen, with its words for those who cannot see it. */
export function PaperPage({ pdf, number, title, width }: Props) {
  const frame = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const [near, setNear] = useState(false);
  const [words, setWords] = useState("");
  const wordsId = useId();

  useEffect(() => {
    const node = frame.current;
    if (!node) return;
    const observer = new IntersectionObserver((entries) => setNear(entries.some((entry) => entry.isIntersecting)), { rootMargin: "600px" });
    observer.observe(node);
    return () => observer.disconnect();
  }, []);

  useEffect(() => {
    if (!near || width === 0) return;
    let wanted = true;
    let stop = (): void => undefined;
    const draw = async (): Promise<void> => {
      const page = await pdf.getPage(number);
      const shape = page.getViewport({ scale: 1 });
      const scale = (width / shape.width) * window.devicePixelRatio;
      const viewport = page.getViewport({ scale });
      // Drawn beside the screen and put on it in one go, so that a new version does not flash white.
      const sheet = document.createElement("canvas");
      sheet.width = Math.floor(viewport.width);
      sheet.height = Math.floor(viewport.height);
      const task = page.render({ canvas: sheet, viewport });
      stop = () => task.cancel();
      await task.promise;
      const shown = canvas.current;
      if (!wanted || !shown) return;
      shown.width = sheet.width;
      shown.height = sheet.height;
      shown.style.aspectRatio = `${shape.width} / ${shape.height}`;
      shown.getContext("2d")?.drawImage(sheet, 0, 0);
      const text = await pageText(page);
      if (wanted) setWords(text);
    };
    // A drawing that was cancelled, or whose document was replaced, has nobody left to tell.
    draw().catch((error: unknown) => wanted && console.error(error));
    return () => {
      wanted = false;
      stop();
    };
  }, [pdf, number, width, near]);

  return (
    <div ref={frame} className="paper-page">
      <canvas ref={canvas} role="img" aria-label={`${title}, page ${number} of ${pdf.numPages}`} aria-describedby={wordsId} />
      <p id={wordsId} className="visually-hidden">{words}</p>
    </div>
  );
}
