import type { Tick } from '../../../base/ticks.ts';
import type { RuleOutcome } from '../DebriefFacts.ts';
import type { Timeline } from '../Timeline.ts';

export type RuleFinding = Omit<RuleOutcome, 'rule'>;
/** How one method rule went in a sitting. */
export type MethodRule = (timeline: Timeline) => RuleFinding;

export const NO_OCCASION: RuleFinding = { outcome: 'no-occasion', entries: [], ticks: [] };

export function kept(ticks: readonly Tick[], entries: readonly number[] = []): RuleFinding {
  return { outcome: 'kept', entries, ticks };
}

/** `ticks` are the actions that broke the rule; none when the thing was simply never done. */
export function missed(ticks: readonly Tick[] = []): RuleFinding {
  return { outcome: 'missed', entries: [], ticks };
}

/** A duty that was done at these ticks only, and asks for more times; never done, it is simply missed. */
export function tooFew(ticks: readonly Tick[], of: number): RuleFinding {
  return ticks.length === 0 ? missed() : { ...missed(), tooFew: { ticks, of } };
}

/** A prohibition: no occasion without an occasion, missed where it was broken. */
export function unlessBroken(occasions: readonly Tick[], broken: readonly Tick[]): RuleFinding {
  if (broken.length > 0) return missed(broken);
  return occasions.length > 0 ? kept(occasions) : NO_OCCASION;
}
