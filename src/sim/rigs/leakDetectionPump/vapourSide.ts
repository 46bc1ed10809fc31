import type { RigParameters } from '../../devices/parameters.ts';
import type { AirFabric } from '../AirFabric.ts';
import type { AirNodes } from '../airVolumes.ts';
import type { AirEnds } from '../RigAir.ts';

/** Share of the tank that stays free of fuel at the least. */
const LEAST_VAPOUR_SHARE = 0.02;
/** The tank's relief opens fully over this much more vacuum, Pa. */
const RELIEF_LIFT_PA = 500;

/** Vapour space of the tank, m³, at a fuel level of 0 to 1. */
export function vapourSpace(fuelLevel: number, q: RigParameters): number {
  return Math.max(1 - fuelLevel, LEAST_VAPOUR_SHARE) * q.tankM3;
}

/** The vapour side: canister hose, canister with its purge valve, tank with its cap and seals. */
export function addVapourSide(
  fabric: AirFabric,
  at: AirNodes,
  { room, engine }: AirEnds,
  parameters: () => RigParameters,
): void {
  const q = parameters();
  const hoseOff = (): boolean => parameters().canisterHoseOff === 1;
  fabric.bore(at['canister-hose'], at['canister-vessel'], 'portM', { open: () => !hoseOff() });
  fabric.bore(at['canister-hose'], room, 'portM', {
    open: hoseOff,
    seen: 'canister-hose',
    heard: 'canister-hose',
  });
  fabric.bore(at['canister-vessel'], room, 'portM', { open: hoseOff, seen: 'canister', heard: 'canister' });
  fabric.bore(at['canister-hose'], room, 'canisterHoseSplitM', {
    seen: 'canister-hose',
    heard: 'canister-hose',
  });
  fabric.bore(at['canister-vessel'], room, 'canisterCrackM', { seen: 'canister', heard: 'canister' });
  fabric.bore(at['canister-vessel'], engine, 'purgeLeakM', { seen: 'purge-valve', heard: 'purge-valve' });
  fabric.bore(at['canister-vessel'], at.tank, 'portM');
  fabric.bore(at.tank, room, 'fillerCapLeakM', { seen: 'filler-cap', heard: 'filler-cap' });
  fabric.bore(at.tank, room, 'tankSealLeakM', { seen: 'tank-seal', heard: 'tank' });
  // The seep is spread over every seam: nowhere is there enough of it to see or to hear.
  fabric.bore(at.tank, room, 'seepM');
  fabric.check(room, at.tank, {
    diameterM: q.portM,
    crackingPa: q.tankReliefPa,
    liftPa: RELIEF_LIFT_PA,
  });
}
