import type { Tick } from '../../base/ticks.ts';
import { inH2OToPa } from '../../base/units.ts';
import type { Strain } from '../rigs/RigAir.ts';
import type { Rig } from './Rig.ts';

/** Reach of the water manometer: more than this either way and its water is gone. */
export const MANOMETER_REACH_PA = inH2OToPa(30);

/** What too much vacuum or pressure does: to the rig what its definition says, and a manometer loses its water. */
export function watchAirDamage(rig: Rig, tick: Tick): void {
  const { air } = rig;
  const { bench } = rig.state;
  for (const strain of rig.definition.air.strains) {
    if (!strained(rig, strain)) continue;
    const before = bench.acquired.length;
    rig.damage(strain.fault, strain.severity);
    if (strain.heardAt !== null && bench.acquired.length > before)
      rig.happen('crack-heard', strain.heardAt, tick);
  }
  if (!bench.waterLost && Math.abs(air.vacuum('manometer')) > MANOMETER_REACH_PA) {
    bench.waterLost = true;
    rig.happen('water-lost', 'manometer', tick);
    rig.sync();
  }
}

function strained({ air, parameters }: Rig, { in: volumes, by, beyond }: Strain): boolean {
  return volumes.some((volume) => {
    const vacuum = air.vacuum(volume);
    return (by === 'vacuum' ? vacuum : -vacuum) > parameters[beyond];
  });
}
