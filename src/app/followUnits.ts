import { effect, type Signal, signal } from '@preact/signals';
import type { Settings } from '../platform/browser/settings.ts';
import { heedUnits, setDisplayUnits } from '../text/units.ts';

/** Keeps the page in the units of the settings: every sentence, and everything that was drawn with a number in it. */
export function followUnits(settings: Signal<Settings>): void {
  const shown = signal<Settings['units']>('us');
  heedUnits(() => void shown.value);
  effect(() => {
    const { units } = settings.value;
    setDisplayUnits(units);
    // Charts are drawn by hand: they watch the page's root, as for its colours.
    document.documentElement.dataset['units'] = units;
    shown.value = units;
  });
}
