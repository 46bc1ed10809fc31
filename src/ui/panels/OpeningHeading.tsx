import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/**
 * The heading of a page that takes the place of another. It takes the focus, which was on a control that is gone: keys and
 * screen reader go on from here.
 */
export function OpeningHeading({ children }: { readonly children: ComponentChildren }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus({ preventScroll: true }), []);
  return (
    <h1 ref={heading} tabIndex={-1} class="opening">
      {children}
    </h1>
  );
}
