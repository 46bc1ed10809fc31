import { effect, type ReadonlySignal } from '@preact/signals';
import type { StoreTrouble } from '../platform/browser/StoredSitting.ts';
import type { Trouble } from '../ui/panels/Shop.ts';
import type { AppShop } from './createShop.ts';

/**
 * Says that sittings cannot be kept, once on whatever page that is found, and again when a job is opened, with its record to take
 * away: there it matters. When saving goes well again the sentence goes.
 */
export function tellStoreTrouble(
  shop: Pick<AppShop, 'route' | 'trouble' | 'exportKept'>,
  found: ReadonlySignal<StoreTrouble | null>,
): void {
  let told: Trouble | null = null;
  effect(() => {
    const trouble = found.value;
    const route = shop.route.value;
    const shown = shop.trouble.peek();
    if (trouble === null) {
      if (told !== null && shown === told) shop.trouble.value = null;
      told = null;
      return;
    }
    // Whatever waits for the user's choice stays.
    if (shown !== null && shown !== told && shown.offers.length > 0) return;
    told = {
      key: `troubles.${trouble}`,
      offers:
        route.screen === 'job'
          ? [{ label: 'troubles.exportRecord', run: () => shop.exportKept(route.scenario) }]
          : [],
    };
    shop.trouble.value = told;
  });
}
