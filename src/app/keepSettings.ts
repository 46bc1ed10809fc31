import { effect, type Signal } from '@preact/signals';
import { type Settings, saveSettings } from '../platform/browser/settings.ts';
import type { Trouble } from '../ui/panels/Shop.ts';

/** Keeps what the user sets. Where nothing is kept it says so once, when something is set, and where nothing else is being said. */
export function keepSettings(settings: Signal<Settings>, trouble: Signal<Trouble | null>): void {
  const begun = settings.peek();
  let told = false;
  effect(() => {
    const kept = saveSettings(settings.value);
    if (kept || told || settings.value === begun || trouble.peek() !== null) return;
    told = true;
    trouble.value = { key: 'troubles.settings-not-kept', offers: [] };
  });
}
