/** Gives the focus to the first of these once the page shows what was just changed. */
export function focusSoon(selector: string): void {
  requestAnimationFrame(() => {
    requestAnimationFrame(() => {
      const found = document.querySelector<HTMLElement>(selector);
      found?.focus();
      found?.scrollIntoView({ block: 'nearest' });
    });
  });
}
