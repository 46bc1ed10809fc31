import { say } from '../../text/translate.ts';
import type { Shop } from './Shop.ts';

/** Where a screen would stand that cannot be opened: the notice above says why, and here is the way on. */
export function NotOpened({ shop }: { readonly shop: Shop }) {
  return (
    <main class="order-page">
      <section class="sheet not-opened">
        <h1>{say('app.notOpened')}</h1>
        <button type="button" class="act" onClick={() => shop.toBoard()}>
          {say('app.back')}
        </button>
      </section>
    </main>
  );
}
