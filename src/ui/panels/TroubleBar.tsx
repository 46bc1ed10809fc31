import { say } from '../../text/translate.ts';
import type { Shop } from './Shop.ts';

/** One sentence about what went wrong, and what can be done. */
export function TroubleBar({ shop }: { readonly shop: Shop }) {
  const trouble = shop.trouble.value;
  if (trouble === null) return null;
  return (
    <div class="trouble" role="alert">
      <p>{say(trouble.key, trouble.detail === undefined ? {} : { detail: trouble.detail })}</p>
      {trouble.offers.map((offer) => (
        <button key={offer.label} type="button" onClick={() => offer.run()}>
          {say(offer.label)}
        </button>
      ))}
      <button type="button" class="plain" onClick={() => (shop.trouble.value = null)}>
        {say('troubles.dismiss')}
      </button>
    </div>
  );
}
