import { ln } from '../../base/maths.ts';
import { faultById } from '../../sim/faults/catalogue.ts';
import type { Scenario } from '../scenario/Scenario.ts';

/** Common practice asks for two or three repeats; no source. */
const LEAST_TRIALS = 3;
/** How sure a run of good trials must make that nothing comes and goes. */
const SURE = 0.95;

/** How many trials show a fault at least once, as surely as `SURE`, that shows with this chance each time: 9 at 0.3. */
export function trialsFor(chance: number): number {
  if (chance >= SURE) return LEAST_TRIALS;
  return Math.max(LEAST_TRIALS, -Math.floor(-ln(1 - SURE) / ln(1 - chance)));
}

/**
 * How often this job asks for a trial of what is energised, or of what is drawn: three times, and for a complaint that comes
 * and goes as often as its chance demands.
 */
export function trialsAsked({ faults }: Scenario, of: 'energised' | 'drawn'): number {
  const asked = faults.flatMap(({ fault, severity }) => {
    const entry = faultById(fault);
    if (entry?.intermittent !== 'each-trial' || entry.severity === null) return [];
    if ((entry.mode === 'vacuum-switch' ? 'drawn' : 'energised') !== of) return [];
    const { mildest, worst } = entry.severity;
    return [trialsFor(mildest + severity * (worst - mildest))];
  });
  return Math.max(LEAST_TRIALS, ...asked);
}
