import { useLayoutEffect, useState, type RefObject } from "react";

/** The size of an element in CSS pixels, kept up to date; 0 by 0 until it is laid out. */
export function useSize(element: RefObject<HTMLElement | null>): { readonly width: number; readonly height: number } {
  const [size, setSize] = useState({ width: 0, height: 0 });
  useLayoutEffect(() => {
    const node = element.current;
    if (!node) return;
    const measure = (): void => {
      const next = { width: node.clientWidth, height: node.clientHeight };
      setSize((known) => (known.width === next.width && known.height === next.height ? known : next));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(node);
    return () => observer.disconnect();
  }, [element]);
  return size;
}
