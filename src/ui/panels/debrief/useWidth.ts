import type { RefObject } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/** Width of an element as it is laid out, CSS pixels; `first` until it is known. */
export function useWidth(host: RefObject<HTMLDivElement | null>, first: number): number {
  const [width, setWidth] = useState(first);
  useEffect(() => {
    const element = host.current;
    if (element === null) return;
    const measure = (): void => {
      if (element.clientWidth > 0) setWidth(element.clientWidth);
    };
    measure();
    const sized = new ResizeObserver(measure);
    sized.observe(element);
    return () => sized.disconnect();
  }, [host]);
  return width;
}

/** How much larger the page's letters are than sixteen pixels: what is drawn beside letters grows with them. */
export function letterScale(): number {
  if (typeof document === 'undefined') return 1;
  return (Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16) / 16;
}
