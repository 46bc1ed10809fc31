import type { Tick } from '../../base/ticks.ts';
import { inH2OToPa } from '../../base/units.ts';
import type { Rig } from './Rig.ts';

/** Reach of the water manometer: more than this either way and its water is gone. */
export const MANOMETER_REACH_PA = inH2OToPa(30);

/** What too much vacuum or pressure does: a torn capsule, a cracked canister, a manometer without its water. */
export function watchAirDamage(rig: Rig, tick: Tick): void {
  const { parameters, air } = rig;
  const { bench } = rig.state;
  if (air.vacuum('canister') > parameters.capsuleTearsPa) rig.damage('capsule-torn', 0);
  const pressure = -Math.min(air.vacuum('canister-vessel'), air.vacuum('tank'));
  if (pressure > parameters.canisterBurstsPa) {
    const before = bench.acquired.length;
    rig.damage('canister-cracked', 1);
    if (bench.acquired.length > before) rig.happen('crack-heard', 'canister', tick);
  }
  if (!bench.waterLost && Math.abs(air.vacuum('manometer')) > MANOMETER_REACH_PA) {
    bench.waterLost = true;
    rig.happen('water-lost', 'manometer', tick);
    rig.sync();
  }
}
