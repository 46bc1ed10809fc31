import type { Tick } from '../../base/ticks.ts';
import { bookMinutes, priceOf } from '../sitting/book.ts';
import type { DebriefFacts, JobCost } from './DebriefFacts.ts';
import type { Timeline } from './Timeline.ts';
import { trialFits } from './trialFits.ts';
import { truthOf } from './truth.ts';

/** Every renewal, in order, with its price and whether it was needed. A second of the same is not needed any more. */
export function renewals({ moments, scenario }: Timeline): DebriefFacts['renewed'] {
  const faulty = new Set<string>(truthOf(scenario).map(({ item }) => item));
  return moments.flatMap(({ tick, action }) => {
    if (action?.kind !== 'renew') return [];
    const needed = faulty.delete(action.item);
    return [{ item: action.item, needed, money: priceOf(action.item), tick }];
  });
}

/**
 * Book minutes and dollars of parts until a tick, minutes to a tenth. The known-good unit put on the truck to see counts
 * what fitting a unit counts, instead of the minutes of the swap.
 */
export function costUntil(timeline: Timeline, until: Tick): JobCost {
  let bookMinutesSum = 0;
  let money = 0;
  for (const { tick, action } of timeline.moments) {
    if (action === null || tick > until) continue;
    bookMinutesSum += bookMinutes(action);
    if (action.kind === 'renew') money += priceOf(action.item);
  }
  const fits = trialFits(timeline).filter((tick) => tick <= until).length;
  const fitting =
    bookMinutes({ kind: 'renew', item: 'unit' }) - bookMinutes({ kind: 'swap-unit', to: 'truck' });
  return { money, bookMinutes: toTenth(bookMinutesSum + fits * fitting) };
}

const toTenth = (minutes: number): number => Math.floor(minutes * 10 + 0.5) / 10;
