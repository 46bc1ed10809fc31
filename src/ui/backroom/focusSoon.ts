/** A dialog that is closing may take as long to go; as it goes, it gives the focus back to where it was. */
const MOST_FRAMES = 60;

/** Gives the focus to the first of these once the page shows what was just changed. */
export function focusSoon(selector: string): void {
  requestAnimationFrame(() => requestAnimationFrame(() => land(selector, MOST_FRAMES)));
}

function land(selector: string, frames: number): void {
  const found = document.querySelector<HTMLElement>(selector);
  const dialog = document.querySelector('dialog[open]');
  if (frames > 0 && dialog !== null && !dialog.contains(found)) {
    requestAnimationFrame(() => land(selector, frames - 1));
    return;
  }
  found?.focus();
  found?.scrollIntoView({ block: 'nearest' });
}
