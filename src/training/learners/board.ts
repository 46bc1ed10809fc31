import { truckItemsOf } from '../evidence/chanceOf.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';
import type { Beliefs } from './Beliefs.ts';
import { Citations } from './cites.ts';
import type { LearnersBench } from './LearnersBench.ts';

/** An item is cleared once so little of it is left, and far less than the complaint left; it is convicted from so much on. */
const CLEARED = 0.015;
const CLEARED_OF_PRIOR = 0.2;
const CONVICTED = 0.92;

/** Marks every item that everything shown and eight entries at most carry by themselves. */
export function markBoard(bench: LearnersBench, beliefs: Beliefs, named: VerdictItem): void {
  const citations = new Citations(beliefs);
  const before = beliefs.posteriorOf(beliefs.prior);
  const now = beliefs.posterior;
  for (const item of truckItemsOf(bench.tables.rig)) {
    const least = Math.min(CLEARED, CLEARED_OF_PRIOR * before.ofItem(item));
    if (item === named) {
      const { cites, chance } = citations.best(item, 'for');
      if (now.ofItem(item) >= CONVICTED && chance >= CONVICTED)
        bench.do({ kind: 'mark-item', item, mark: 'convicted', cites });
    } else if (now.ofItem(item) <= least) {
      const { cites, chance } = citations.best(item, 'against');
      if (chance <= least) bench.do({ kind: 'mark-item', item, mark: 'cleared', cites });
    }
  }
}
