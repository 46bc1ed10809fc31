import type { Page } from '@playwright/test';

/**
 * Words that cannot be read where they stand: cut off by a box that does not scroll, or out of the window sideways. The bench itself
 * is a drawing in two dimensions and may be moved sideways, and so may a table (WCAG 2.2, 1.4.10, its exceptions); nothing else may.
 */
export function layoutFaults(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const SLACK = 1.5;
    const faults: string[] = [];
    const width = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth > width + 1) {
      faults.push(`the page is ${document.documentElement.scrollWidth} wide in a window of ${width}`);
    }
    const open = document.querySelectorAll('dialog[open]');
    const root = open[open.length - 1] ?? document.body;
    const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
    // Words for the ear alone have a box of one pixel.
    const isForEars = (one: Element): boolean => {
      for (let box: Element | null = one; box !== null; box = box.parentElement) {
        if (getComputedStyle(box).clipPath === 'inset(50%)') return true;
      }
      return false;
    };
    const name = (one: Element): string => `${one.tagName.toLowerCase()}.${one.className}`;
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const words = node.textContent?.trim() ?? '';
      const parent = node.parentElement;
      if (words === '' || parent === null) continue;
      if (parent.closest('[aria-hidden=true], svg, script, style, .stage-host') !== null) continue;
      if (!parent.checkVisibility({ visibilityProperty: true }) || isForEars(parent)) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      const text = range.getBoundingClientRect();
      if (text.width === 0 || text.height === 0) continue;
      let sideways = false;
      /** What stands out of the flow is not cut off by boxes that do not hold it. */
      let held: 'any' | 'positioned' = 'any';
      for (
        let box: Element | null = parent;
        box !== null && box !== document.documentElement;
        box = box.parentElement
      ) {
        const { position } = getComputedStyle(box);
        if (held === 'positioned' && position === 'static') continue;
        held = position === 'absolute' ? 'positioned' : 'any';
        const { overflowX, overflowY } = getComputedStyle(box);
        const room = box.getBoundingClientRect();
        if (/auto|scroll/.test(overflowX) && box.scrollWidth > box.clientWidth + 1) {
          if (!box.matches('.bench-area, .stage, .table-scroll'))
            faults.push(`${name(box)} scrolls sideways: "${words.slice(0, 40)}"`);
          sideways = true;
        }
        const cutX =
          /hidden|clip/.test(overflowX) && (text.left < room.left - SLACK || text.right > room.right + SLACK);
        const cutY =
          /hidden|clip/.test(overflowY) && (text.top < room.top - SLACK || text.bottom > room.bottom + SLACK);
        if (cutX || cutY) {
          faults.push(`${name(box)} cuts off "${words.slice(0, 40)}"`);
          break;
        }
        if (/auto|scroll/.test(overflowY) && !cutY) {
          // What lies further down comes with scrolling: only its sides count from here on.
          if (text.top < room.top || text.bottom > room.bottom) break;
        }
        if (position === 'fixed' || box.matches('dialog')) break;
      }
      if (!sideways && (text.left < -SLACK || text.right > width + SLACK)) {
        faults.push(`out of the window sideways: "${words.slice(0, 40)}" in ${name(parent)}`);
      }
    }
    return [...new Set(faults)];
  });
}
