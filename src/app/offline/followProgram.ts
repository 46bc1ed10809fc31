import { effect, type ReadonlySignal } from '@preact/signals';
import { askToStay } from '../../platform/browser/askToStay.ts';
import type { AppShop } from '../createShop.ts';
import { jobsHeld } from '../holdJob.ts';
import type { OpenEdition } from './createEdition.ts';
import { keepProgram, type ProgramWorld } from './keepProgram.ts';

/** A job that was just left is written and let go within this. */
const LEAVING_MS = 3000;
/** A page that stays open for days looks for a new version at most so often, when it comes back to the job board. */
const LOOK_EVERY_MS = 10 * 60_000;

/** Keeps the program for work without the network, beside whatever the page does. Where a page may not, nothing happens. */
export async function followProgram(edition: OpenEdition, shop: AppShop): Promise<void> {
  stayOnceWorthwhile(shop);
  if (!window.isSecureContext) return;
  const look = await keepProgram(edition, pageWorld(shop));
  let lookedAt = performance.now();
  effect(() => {
    if (shop.route.value.screen !== 'board' || performance.now() - lookedAt < LOOK_EVERY_MS) return;
    lookedAt = performance.now();
    look();
  });
}

function pageWorld(shop: AppShop): ProgramWorld {
  const scope = new URL('./', location.href.split(/[?#]/)[0]).href;
  const script = document.querySelector<HTMLScriptElement>('script[type="module"][src]')?.src ?? '';
  return {
    container: 'serviceWorker' in navigator ? navigator.serviceWorker : null,
    locks: 'locks' in navigator ? navigator.locks : null,
    scope,
    pageScript: script.startsWith(scope) ? script.slice(scope.length) : script,
    onBoard: () => shop.route.peek().screen === 'board',
    allSaved: async () => {
      const until = performance.now() + LEAVING_MS;
      while (await jobsHeld()) {
        if (performance.now() > until) return false;
        await new Promise((resolve) => setTimeout(resolve, 100));
      }
      return true;
    },
    reload: () => location.reload(),
  };
}

/** The browser is asked not to clear what is kept once there is a job to lose, and on the board, where a question disturbs nobody. */
function stayOnceWorthwhile(shop: {
  readonly route: ReadonlySignal<{ readonly screen: string }>;
  readonly kept: AppShop['kept'];
}): void {
  let asked = false;
  effect(() => {
    if (asked || shop.route.value.screen !== 'board' || shop.kept.value.length === 0) return;
    asked = true;
    void askToStay();
  });
}
