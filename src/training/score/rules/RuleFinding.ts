import type { Tick } from '../../../base/ticks.ts';
import type { VerdictItem } from '../../sitting/SittingAction.ts';
import type { RuleOutcome } from '../DebriefFacts.ts';
import type { JudgedJob } from '../JudgedJob.ts';

/** How a rule went, by the sitting alone; what the plan behind par asks for is laid beside it afterwards. */
export type RuleFinding = Omit<RuleOutcome, 'rule' | 'calledBy'>;
/** How one method rule went in a sitting. `no-occasion` where nothing in the sitting called for it. */
export type MethodRule = (job: JudgedJob) => RuleFinding;

export const NO_OCCASION: RuleFinding = { outcome: 'no-occasion', entries: [], ticks: [] };

export function kept(ticks: readonly Tick[], entries: readonly number[] = []): RuleFinding {
  return { outcome: 'kept', entries, ticks };
}

/** `ticks` are the actions that broke the rule; none when the thing was simply never done. */
export function missed(ticks: readonly Tick[] = []): RuleFinding {
  return { outcome: 'missed', entries: [], ticks };
}

/** Missed on these items. */
export function missedOn(items: readonly VerdictItem[]): RuleFinding {
  return { ...missed(), items };
}

/** A duty that was done at these ticks only, and asks for more times; never done, it had no occasion in the sitting. */
export function tooFew(ticks: readonly Tick[], of: number): RuleFinding {
  return ticks.length === 0 ? NO_OCCASION : { ...missed(), tooFew: { ticks, of } };
}

/** A prohibition: no occasion without an occasion, missed where it was broken. */
export function unlessBroken(occasions: readonly Tick[], broken: readonly Tick[]): RuleFinding {
  if (broken.length > 0) return missed(broken);
  return occasions.length > 0 ? kept(occasions) : NO_OCCASION;
}
