import type { BenchState } from '../devices/BenchState.ts';
import type { RigParameters } from '../devices/parameters.ts';

/** Absolute pressure in the inlet manifold, Pa: at altitude an engine draws the same share of a thinner atmosphere. */
export function manifoldPa(bench: BenchState, barometerPa: number, q: RigParameters): number {
  const vacuum = bench.key === 'running' ? q.engineVacuumPa : 0;
  return barometerPa * (1 - vacuum / 101_325);
}
