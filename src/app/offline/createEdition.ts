import { type Signal, signal } from '@preact/signals';
import type { Edition, NewerVersion } from '../../ui/panels/Edition.ts';

/** The edition as it is before anything is known of it; whoever learns more writes it in. */
export interface OpenEdition extends Edition {
  readonly kept: Signal<'unknown' | 'kept' | 'not-kept'>;
  readonly newer: Signal<NewerVersion | null>;
  take: () => void;
}

export function createEdition(): OpenEdition {
  const edition: OpenEdition = {
    kept: signal('unknown'),
    newer: signal(null),
    take: () => {},
    takeNewer: () => edition.take(),
  };
  return edition;
}
