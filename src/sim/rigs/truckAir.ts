import type { RigParameters } from '../devices/parameters.ts';
import type { AirFabric } from './AirFabric.ts';
import type { AirNodes } from './airVolumes.ts';
import type { AirEnds } from './RigAir.ts';

const RESERVOIR_CHECK_PA = 100;

/** Air hose and filter, engine hose with its reservoir. The inlet manifold is `engine`, the outside air `room`. */
export function addBreathingAndVacuum(
  fabric: AirFabric,
  at: AirNodes,
  { room, engine }: AirEnds,
  parameters: () => RigParameters,
): void {
  const q = parameters();
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
