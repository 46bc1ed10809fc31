import { KEY_POSITIONS } from '../../../../sim/devices/places.ts';
import type { Observation } from '../../../../sim/world/Observation.ts';
import { FUSE_FITTED, FUSE_LAID_OUT, KEY_CENTRE, KEY_LABELS, SUPPLY_SWITCH } from '../benchPlan.ts';
import { boxAround } from '../geometry.ts';
import type { PlacedHotspot } from '../PlacedHotspot.ts';
import { type FixedPoint, POINTS } from '../points.ts';
import { spot } from './spot.ts';

const POWER_POINTS: readonly FixedPoint[] = [
  'battery-positive',
  'battery-negative',
  'supply-positive',
  'supply-negative',
  'fuse-in',
  'fuse-out',
  'chassis-stud',
  'ground-splice',
  'controller-feed',
  'controller-sense',
];

/** Battery, bench supply, fuse, grounds, controller and key. */
export function powerSpots(observation: Observation): readonly PlacedHotspot[] {
  const fuse = observation.fuse.fitted ? FUSE_FITTED : FUSE_LAID_OUT;
  return [
    spot('key', 'power', boxAround(KEY_CENTRE, 76)),
    ...KEY_POSITIONS.map((position) => {
      const box = boxAround(KEY_LABELS[position], position === 'running' ? 78 : 46, 36);
      return spot(`key-position:${position}`, 'power', box);
    }),
    spot('fuse', 'power', boxAround(fuse, 52, 44)),
    spot('supply-switch', 'power', boxAround(SUPPLY_SWITCH, 46, 44)),
    ...POWER_POINTS.map((point) => spot(`point:${point}`, 'power', boxAround(POINTS[point], 38))),
  ];
}
