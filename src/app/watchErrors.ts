import type { AppShop } from './createShop.ts';
import { exportStored } from './exportStored.ts';
import { missingPart } from './missingPart.ts';

/** Anything that nobody caught becomes a sentence, with the record of the open job to take away. */
export function watchErrors(shop: AppShop): void {
  const tell = (reason: unknown): void => {
    const route = shop.route.value;
    shop.trouble.value = missingPart(reason) ?? {
      key: 'troubles.unexpected',
      detail: reason instanceof Error ? reason.message : String(reason),
      offers: [
        ...(route.screen === 'job'
          ? [{ label: 'troubles.exportRecord' as const, run: () => exportOpen(shop, route.scenario) }]
          : []),
        { label: 'troubles.reload', run: () => location.reload() },
      ],
    };
  };
  window.addEventListener('error', (event) => {
    // Layout that needs a second pass is reported as an error without an error; nothing is broken by it.
    if (event.error === null && event.message.startsWith('ResizeObserver loop')) return;
    tell(event.error ?? event.message);
  });
  window.addEventListener('unhandledrejection', (event) => tell(event.reason));
}

function exportOpen(shop: AppShop, scenario: string): void {
  void shop.store.get(scenario).then((sitting) => {
    if (sitting !== undefined) exportStored(sitting);
  });
}
