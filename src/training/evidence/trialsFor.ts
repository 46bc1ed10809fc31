import { ln } from '../../base/maths.ts';

/** How sure a run of good trials must make that nothing comes and goes. */
const SURE = 0.95;

/** Trials in which something that shows with this chance each time shows itself at least once in 95 of 100 cases: 9 at 0.3. */
export function trialsFor(chance: number): number {
  return chance >= SURE ? 1 : -Math.floor(-ln(1 - SURE) / ln(1 - chance));
}
