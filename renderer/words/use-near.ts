import { useEffect, useState, type RefObject } from "react";

/**
 * Whether an element has come near the part of a scrolling place that is in sight; true from then on.
 * @param within - selector of the scrolling place around it
 * @param margin - pixels above and below what is in sight
 */
export function useNear(element: RefObject<HTMLElement | null>, within: string, margin: number): boolean {
  const [isNear, setNear] = useState(false);
  useEffect(() => {
    const node = element.current;
    if (!node || isNear) return;
    const observer = new IntersectionObserver((entries) => {
      if (entries.some((entry) => entry.isIntersecting)) setNear(true);
    }, { root: node.closest(within), rootMargin: `${margin}px 0px` });
    observer.observe(node);
    return () => observer.disconnect();
  }, [element, within, margin, isNear]);
  return isNear;
}
