import type { BenchState } from '../devices/BenchState.ts';
import { faultById } from '../faults/catalogue.ts';
import { timesRenewed } from '../rigs/rigParameters.ts';

/** Severity of damage done once more: the mildest the first time, then a little worse each time, 1 at most. */
export function worseBy(bench: BenchState, fault: string, step: number): number {
  const item = faultById(fault)?.item;
  const known = bench.acquired.find(
    (was) =>
      was.fault === fault &&
      item !== undefined &&
      was.renewals === timesRenewed(bench.renewed, item) &&
      (item !== 'unit' || was.unit === bench.unit),
  );
  return known === undefined ? 0 : Math.min(known.severity + step, 1);
}
