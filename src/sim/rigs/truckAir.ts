import type { BenchState } from '../devices/BenchState.ts';
import type { RigParameters } from '../devices/parameters.ts';
import type { AirFabric } from './AirFabric.ts';
import type { AirNodes } from './airVolumes.ts';

/** Share of the tank that stays free of fuel at the least. */
const LEAST_VAPOUR_SHARE = 0.02;
/** The tank's relief opens fully over this much more vacuum, Pa. */
const RELIEF_LIFT_PA = 500;
const RESERVOIR_CHECK_PA = 100;

/** Vapour space of the tank, m³, at a fuel level of 0 to 1. */
export function vapourSpace(fuelLevel: number, q: RigParameters): number {
  return Math.max(1 - fuelLevel, LEAST_VAPOUR_SHARE) * q.tankM3;
}

/**
 * The truck's side: canister hose, canister and tank; air hose and filter; engine hose, reservoir and purge valve. The
 * inlet manifold is `engine`, the outside air `room`.
 */
export function addTruckAir(
  fabric: AirFabric,
  at: AirNodes,
  room: number,
  engine: number,
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

  fabric.bore(at['air-hose'], room, (now) => inSeries(now.airHoseM, now.filterM), {
    seen: 'filter',
    heard: 'filter',
  });

  fabric.check(at.reservoir, engine, { diameterM: q.enginePortM, crackingPa: RESERVOIR_CHECK_PA });
  fabric.bore(at.reservoir, at['engine-hose'], 'engineHoseM');
  fabric.bore(at['engine-hose'], room, 'engineHoseLeakM', { seen: 'engine-hose', heard: 'engine-hose' });
}

/**
 * The one bore that passes what two in a row do, m. Law: pressure losses add and go with the square of flow over area,
 * so 1/d⁴ = 1/a⁴ + 1/b⁴; exact for small losses, a few per cent off where one of the two is choked.
 */
export function inSeries(a: number, b: number): number {
  if (a === 0 || b === 0) return 0;
  const square = (Math.min(a, b) / Math.max(a, b)) * (Math.min(a, b) / Math.max(a, b));
  return Math.min(a, b) / Math.sqrt(Math.sqrt(1 + square * square));
}

/** Absolute pressure in the inlet manifold, Pa: at altitude an engine draws the same share of a thinner atmosphere. */
export function manifoldPa(bench: BenchState, barometerPa: number, q: RigParameters): number {
  const vacuum = bench.key === 'running' ? q.engineVacuumPa : 0;
  return barometerPa * (1 - vacuum / 101_325);
}
