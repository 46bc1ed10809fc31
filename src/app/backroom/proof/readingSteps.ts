import type { ReadBench, TestReadings } from '../../../training/proof/FaultReadings.ts';
import { GoodBenches } from '../../../training/proof/GoodBenches.ts';
import { readingsInSteps, warmInSteps } from '../../../training/proof/readingsInSteps.ts';

/** Reads benches one after the other; as long as only the faults change, the good ones are worked once. */
export function createReader(): (bench: ReadBench) => AsyncGenerator<TestReadings | null, void, void> {
  let good: GoodBenches | null = null;
  return async function* readingSteps(bench) {
    if (good === null || !good.isBeside(bench)) good = new GoodBenches(bench);
    // While no fault is set, the good bench is read ahead of the first one.
    if (bench.faults.length === 0) {
      for (const _ of warmInSteps(good)) yield null;
      return;
    }
    yield* readingsInSteps(bench, good);
  };
}
