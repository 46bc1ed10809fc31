import { faultById } from '../../sim/faults/catalogue.ts';
import { triedBy } from '../../sim/faults/Fault.ts';
import { trialsFor } from '../evidence/trialsFor.ts';
import type { Scenario } from '../scenario/Scenario.ts';

/** Common practice asks for two or three repeats; no source. */
const LEAST_TRIALS = 3;

/** How many trials a rule asks for where something shows with this chance each time: 9 at 0.3, and three at the least. */
export function trialsAskedAt(chance: number): number {
  return Math.max(LEAST_TRIALS, trialsFor(chance));
}

/**
 * How often this job asks for a trial of what is energised, or of what is drawn: three times, and for a complaint that comes
 * and goes as often as its chance demands.
 */
export function trialsAsked({ faults }: Scenario, of: 'energised' | 'drawn'): number {
  const asked = faults.flatMap(({ fault, severity }) => {
    const entry = faultById(fault);
    if (entry?.intermittent !== 'each-trial' || entry.severity === null) return [];
    if (triedBy(entry) !== of) return [];
    const { mildest, worst } = entry.severity;
    return [trialsAskedAt(mildest + severity * (worst - mildest))];
  });
  return Math.max(LEAST_TRIALS, ...asked);
}
