import type { HotspotId } from './layout/PlacedHotspot.ts';

/** What the present step asks a hand to touch next: something on the bench, or the button that logs. */
export type Touch = { readonly kind: 'bench'; readonly at: HotspotId } | { readonly kind: 'log' };

export function sameTouch(a: Touch | null, b: Touch | null): boolean {
  if (a === null || b === null) return a === b;
  return a.kind === 'bench' ? b.kind === 'bench' && a.at === b.at : b.kind === 'log';
}
