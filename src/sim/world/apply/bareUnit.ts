import type { BenchState } from '../../devices/BenchState.ts';
import { LEAD_ENDS, UNIT_PORTS } from '../../devices/places.ts';

/**
 * Another unit lies in the unit's place: plug parted, barbs bare, clamps slid back, leads off its terminals, everything
 * inside it at rest.
 */
export function layBareUnit(bench: BenchState): void {
  bench.plugMated = false;
  for (const end of LEAD_ENDS) if (bench.leads[end]?.startsWith('unit-')) bench.leads[end] = null;
  for (const port of UNIT_PORTS) {
    bench.sites[port] = null;
    bench.clamps[port] = 'loose';
  }
  bench.plunger = 'rest';
  bench.plungerTravel = 0;
  bench.plungerHangs = false;
  bench.pulled = false;
  bench.vacuumSwitch = 'open';
  bench.contactClosed = false;
  bench.switchMisses = false;
  bench.vent = 'open';
}
