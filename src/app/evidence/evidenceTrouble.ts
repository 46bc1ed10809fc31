import type { Trouble } from '../../ui/panels/Shop.ts';
import type { EvidenceFailure } from './messages.ts';

/** The evidence cannot be weighed while the bench is in use: one sentence, and the way out. */
export function evidenceTrouble({ code, detail }: EvidenceFailure, again: () => void): Trouble {
  return {
    key: `evidence.benchGoesOn.${code}`,
    detail,
    offers:
      code === 'other-rig'
        ? [{ label: 'evidence.reload', run: () => location.reload() }]
        : [{ label: 'evidence.again', run: again }],
  };
}
