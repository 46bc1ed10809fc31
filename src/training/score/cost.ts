import { bookMinutes, priceOf } from '../sitting/book.ts';
import type { SittingAction } from '../sitting/SittingAction.ts';
import { TRIAL_FIT_MINUTES } from '../sitting/Spending.ts';
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
 * Book minutes and dollars of parts of the whole job, and of them what had been spent with the verdict; minutes to a
 * tenth. The known-good unit put on the truck to see counts what fitting a unit counts, instead of the minutes of the swap.
 */
export function costOf(timeline: Timeline): DebriefFacts['cost'] {
  const actions = timeline.moments.flatMap(({ action }) => (action === null ? [] : [action]));
  const untilVerdict = actions.slice(0, actions.findIndex(({ kind }) => kind === 'give-verdict') + 1);
  const trials = trialFits(timeline).length * TRIAL_FIT_MINUTES;
  return { ...spentOn(actions, trials), untilVerdict: spentOn(untilVerdict, trials) };
}

function spentOn(actions: readonly SittingAction[], trials: number): JobCost {
  const minutes = actions.reduce((sum, action) => sum + bookMinutes(action), trials);
  const money = actions.reduce(
    (sum, action) => sum + (action.kind === 'renew' ? priceOf(action.item) : 0),
    0,
  );
  return { money, bookMinutes: toTenth(minutes) };
}

const toTenth = (minutes: number): number => Math.floor(minutes * 10 + 0.5) / 10;
