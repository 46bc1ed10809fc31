/** Room left over what the page is scrolled to, CSS pixels. */
const LEFT_ABOVE_PX = 6;

/**
 * The least scroll of the page that shows a thing whole, above whatever stays at the lower edge of the window; of one that is higher
 * than the window, its upper part.
 */
export function bringIntoWindow(one: Element): void {
  const { top, bottom } = one.getBoundingClientRect();
  const covered = Number.parseFloat(getComputedStyle(document.documentElement).scrollPaddingBottom) || 0;
  const below = bottom - (window.innerHeight - covered);
  const by = top < 0 ? top - LEFT_ABOVE_PX : Math.min(below, top - LEFT_ABOVE_PX);
  if (top < 0 || by > 0) window.scrollBy(0, by);
}
