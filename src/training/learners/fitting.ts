import type { ItemId } from '../../sim/devices/items.ts';
import type { Fitting, UnitPort } from '../../sim/devices/places.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import type { SittingAction } from '../sitting/SittingAction.ts';
import type { LearnersBench } from './LearnersBench.ts';

/** The truck's own hoses on the unit's ports. */
function ownHoses({ surface }: Observation): readonly (readonly [UnitPort, Fitting])[] {
  return surface.ports.flatMap((port) => {
    const hose = surface.hoses[port];
    return hose === undefined ? [] : [[port, hose] as const];
  });
}

/** Puts together what stands open: fuse in, plug mated, hoses on their ports and hand tight. The key is off. */
export function putTogether(bench: LearnersBench): void {
  const seen = bench.see();
  const { fuse, plug, sites, clamps } = seen;
  const steps: SittingAction[] = [];
  if (!fuse.fitted) steps.push({ kind: 'fit-fuse' });
  if (!plug.mated) steps.push({ kind: 'mate-plug' });
  for (const [port, item] of ownHoses(seen)) {
    if (sites[port] !== item) steps.push({ kind: 'fit', item, site: port });
    if (sites[port] !== item || clamps[port] !== 'hand-tight')
      steps.push({ kind: 'clamp', port, setting: 'hand-tight' });
  }
  bench.do(...steps);
}

/** Lays the unit bare, for another to take its place. */
function layBare(bench: LearnersBench): void {
  const seen = bench.see();
  const { plug, sites } = seen;
  if (plug.mated) bench.do({ kind: 'part-plug' });
  for (const [port, item] of ownHoses(seen)) if (sites[port] === item) bench.do({ kind: 'take-off', item });
}

/** Fits a new item; with the key off and the unit bare where it is the unit. */
export function renew(bench: LearnersBench, item: ItemId): void {
  if (item === 'unit') layBare(bench);
  if (item === 'plug' && bench.see().plug.mated) bench.do({ kind: 'part-plug' });
  bench.do({ kind: 'renew', item });
  putTogether(bench);
}

/** Lays the cupboard's unit in the place of the truck's, bare, works on it, and puts the truck's back, bare. */
export function onKnownGood(bench: LearnersBench, work: () => void): void {
  layBare(bench);
  bench.do({ kind: 'swap-unit', to: 'known-good' });
  work();
  bench.do({ kind: 'swap-unit', to: 'truck' });
}
